import type { Problem } from '../units/index.ts';

const codeOf = (fault: unknown): string =>
  fault instanceof Error && 'code' in fault && typeof fault.code === 'string' ? fault.code : '';

/** SQLite and system error codes, by what they mean to the owner of the workroom. */
const meanings: readonly (readonly [RegExp, string])[] = [
  // A shared-memory file that cannot grow is how a full disk shows itself first in WAL mode.
  [/^(SQLITE_FULL|ENOSPC|EDQUOT|SQLITE_IOERR_SHMSIZE)$/, 'store.disk-full'],
  [/^(SQLITE_CORRUPT|SQLITE_NOTADB)/, 'store.corrupt'],
  [/^(SQLITE_READONLY|SQLITE_CANTOPEN|SQLITE_PERM|EACCES|EPERM|EROFS|ENOTDIR|EEXIST|EISDIR)/, 'store.not-writable'],
  [/^SQLITE_BUSY/, 'store.busy'],
  [/^(SQLITE_IOERR|EIO)/, 'store.disk-fault'],
];

/**
 * What an error from the database or the file system means, as a problem; undefined where it is none
 * of these and so a fault of the program's own, which is thrown on.
 */
export const problemFromFault = (fault: unknown, place: string): Problem | undefined => {
  const code = codeOf(fault);
  const meaning = meanings.find(([pattern]) => pattern.test(code))?.[1];
  return meaning ? { code: meaning, values: { place, detail: code } } : undefined;
};
