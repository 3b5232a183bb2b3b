import { closeSync, existsSync, fsyncSync, openSync } from 'node:fs';

/** Makes what was written to a file, or to a folder's list of names, outlast a power cut. */
export const sync = (path: string): void => {
  let descriptor: number | undefined;
  try {
    descriptor = openSync(path, 'r');
    fsyncSync(descriptor);
  } catch (fault) {
    // Windows opens no folders and syncs nothing opened for reading; there the rename itself has to do.
    const code = fault instanceof Error && 'code' in fault ? fault.code : '';
    if (process.platform !== 'win32' || !['EPERM', 'EISDIR', 'EACCES', 'EBADF'].includes(String(code))) throw fault;
  } finally {
    if (descriptor !== undefined) closeSync(descriptor);
  }
};

/** A moment as it stands in a file's name: `2026-05-03T14-02-11`, UTC. */
export const stamp = (moment: Date): string => moment.toISOString().slice(0, 19).replaceAll(':', '-');

/** The moment a stamp stands for. */
export const momentOf = (written: string): string =>
  `${written.slice(0, 10)}T${written.slice(11).replaceAll('-', ':')}Z`;

/** `wanted`, or with a number behind its stem where that name is taken. */
export const freeName = (name: (suffix: string) => string): string => {
  for (let count = 1; ; count++) {
    const candidate = name(count === 1 ? '' : `-${count}`);
    if (!existsSync(candidate)) return candidate;
  }
};
