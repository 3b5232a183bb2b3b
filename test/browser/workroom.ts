import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const bin = fileURLToPath(new URL('../../bin/easewright.js', import.meta.url));

/** A workroom of the built program, served on this machine from a folder of its own. */
export interface Served {
  /** `http://127.0.0.1:PORT`, without a slash at the end. */
  readonly address: string;
  readonly port: number;
  /** Asks the program to stop, as a terminal does, and waits until it has. */
  readonly stop: () => Promise<void>;
}

export const newFolder = (): string => mkdtempSync(join(tmpdir(), 'easewright-browser-'));

export const removeFolder = (folder: string): void => rmSync(folder, { recursive: true, force: true });

const ended = (child: ChildProcess): Promise<void> =>
  child.exitCode !== null || child.signalCode !== null
    ? Promise.resolve()
    : new Promise((settle) => child.once('close', () => settle()));

/** Patience with a start on a busy machine, ms. */
const startPatience = 30_000;

/** Starts the built program and reads the address it prints. */
export const serve = (folder: string, port = 0): Promise<Served> =>
  new Promise((settle, fail) => {
    const child = spawn(process.execPath, [bin, 'serve', '--data', folder, '--port', String(port), '--no-open'], {
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    let said = '';
    const tooLate = setTimeout(() => {
      child.kill();
      fail(new Error(`The program printed no address within ${startPatience} ms: ${said}`));
    }, startPatience);
    const hear = (text: string) => {
      said += text;
      const found = /http:\/\/127\.0\.0\.1:(\d+)\//.exec(said);
      if (!found) return;
      clearTimeout(tooLate);
      settle({
        address: `http://127.0.0.1:${found[1]}`,
        port: Number(found[1]),
        stop: async () => {
          child.kill('SIGTERM');
          await ended(child);
        },
      });
    };
    child.stdout.setEncoding('utf8').on('data', hear);
    child.stderr.setEncoding('utf8').on('data', hear);
    child.once('close', (code) => {
      clearTimeout(tooLate);
      fail(new Error(`The program ended with ${code}: ${said}`));
    });
  });

/** Begins the workroom at an address as its first page does: with the demo, or empty. */
export const begin = async (address: string, choice: 'demo' | 'own'): Promise<void> => {
  const answer = await fetch(`${address}/api/workroom/start`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', origin: address },
    body: JSON.stringify({ choice }),
  });
  if (!answer.ok) throw new Error(`The workroom could not be begun: ${answer.status} ${await answer.text()}`);
};

export interface Stored {
  readonly id: string;
  readonly kind: string;
  readonly revision: number;
  readonly body: Readonly<Record<string, unknown>>;
}

/** All documents of a kind as the workroom has them, not as a page shows them. */
export const stored = async (address: string, kind: string): Promise<readonly Stored[]> => {
  const answer = await fetch(`${address}/api/documents?kind=${kind}`);
  const { documents } = (await answer.json()) as { documents: readonly Stored[] };
  return documents;
};
