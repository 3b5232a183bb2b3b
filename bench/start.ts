import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/**
 * From the command to the first page, once built: how long until the server says its address, and until the page's
 * document and every script and style it names have come. Goal 2 s. A browser's own time is not counted here.
 */
const runs = 9;

interface Timing {
  readonly listening: number;
  readonly page: number;
}

const once = async (): Promise<Timing> => {
  const folder = mkdtempSync(join(tmpdir(), 'easewright-start-'));
  const started = performance.now();
  const child = spawn(process.execPath, ['bin/easewright.js', 'serve', '--data', folder, '--port', '0', '--no-open'], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  try {
    const address = await new Promise<string>((settle, fail) => {
      child.stdout.setEncoding('utf8').on('data', (text: string) => {
        const found = /http:\/\/\S+/.exec(text)?.[0];
        if (found) settle(found.replace(/\/$/, ''));
      });
      child.on('exit', () => fail(new Error('The server ended before it said its address')));
    });
    const listening = performance.now() - started;
    const html = await (await fetch(`${address}/`)).text();
    const assets = [...html.matchAll(/(?:src|href)="(\/[^"]+)"/g)].map((match) => match[1]);
    await Promise.all(assets.map(async (asset) => (await fetch(`${address}${asset}`)).arrayBuffer()));
    await (await fetch(`${address}/api/workroom`)).json();
    return { listening, page: performance.now() - started };
  } finally {
    child.removeAllListeners('exit');
    const ended = new Promise((settle) => child.once('exit', settle));
    child.kill('SIGTERM');
    await ended;
    rmSync(folder, { recursive: true, force: true });
  }
};

const timings: Timing[] = [];
await once();
for (let run = 0; run < runs; run += 1) timings.push(await once());

const spread = (values: readonly number[]): Record<string, string> => {
  const sorted = values.toSorted((a, b) => a - b);
  const at = (share: number) => `${(sorted[Math.round(share * (sorted.length - 1))] ?? Number.NaN).toFixed(0)} ms`;
  return { least: at(0), median: at(0.5), most: at(1) };
};

console.table({
  'until the address is said': spread(timings.map((timing) => timing.listening)),
  'until the first page has come': spread(timings.map((timing) => timing.page)),
});
