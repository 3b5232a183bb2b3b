import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const bin = fileURLToPath(new URL('../../bin/easewright.js', import.meta.url));

export interface Answer {
  readonly status: number;
  /** One object a line of stdout. */
  readonly lines: readonly unknown[];
  readonly said: string;
}

/** Runs the built program as anyone would from a terminal, and reads the JSON it prints. */
export const easewright = (args: readonly string[]): Promise<Answer> =>
  new Promise((settle, fail) => {
    const child = spawn(process.execPath, [bin, ...args], { stdio: ['ignore', 'pipe', 'pipe'] });
    let printed = '';
    let said = '';
    child.stdout.setEncoding('utf8').on('data', (text: string) => {
      printed += text;
    });
    child.stderr.setEncoding('utf8').on('data', (text: string) => {
      said += text;
    });
    child.on('error', fail);
    child.on('close', (code) => {
      const lines = printed
        .split('\n')
        .filter((line) => line !== '')
        .map((line): unknown => JSON.parse(line));
      settle({ status: code ?? 1, lines, said });
    });
  });

/** Runs something with a folder of its own that is gone afterwards. */
export const withFolder = async <T>(use: (folder: string) => Promise<T>): Promise<T> => {
  const folder = mkdtempSync(join(tmpdir(), 'easewright-oracle-'));
  try {
    return await use(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
};

/** Writes a file there and gives its path. */
export const put = (folder: string, name: string, content: string): string => {
  const file = join(folder, name);
  writeFileSync(file, content);
  return file;
};
