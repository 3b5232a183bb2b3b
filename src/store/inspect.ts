import { closeSync, openSync, readSync, statSync } from 'node:fs';
import type { Problem } from '../units/index.ts';
import { problemFromFault } from './fault.ts';
import { applicationId, type Migration, migrations } from './migrations.ts';
import type { Connection, Sqlite } from './sqlite.ts';

const damaged = (file: string, detail: string): Problem => ({ code: 'store.corrupt', values: { place: file, detail } });

/** The first sixteen bytes of every SQLite 3 file: https://www.sqlite.org/fileformat.html#magic_header_string */
const magic = 'SQLite format 3\0';

const header = (file: string): string => {
  const descriptor = openSync(file, 'r');
  try {
    const bytes = Buffer.alloc(magic.length);
    return bytes.toString('latin1', 0, readSync(descriptor, bytes, 0, magic.length, 0));
  } finally {
    closeSync(descriptor);
  }
};

const examine = (connection: Connection, file: string, steps: readonly Migration[]): Problem | null => {
  if (connection.pragma('application_id', { simple: true }) !== applicationId) {
    return { code: 'store.not-a-workroom', values: { file } };
  }
  const version = connection.pragma('user_version', { simple: true }) as number;
  if (version > steps.length) {
    return { code: 'store.newer', values: { file, version: String(version), known: String(steps.length) } };
  }
  const found = connection.pragma('quick_check(1)', { simple: true }) as string;
  return found === 'ok' ? null : damaged(file, found.replaceAll(/\s+/g, ' '));
};

/**
 * What is wrong with a workroom's database file, or null. Reads only: a file left by a newer version of
 * the program, or one that is no workroom at all, is exactly as it was afterwards.
 */
export const inspectDatabase = (
  sqlite: Sqlite,
  file: string,
  steps: readonly Migration[] = migrations,
): Problem | null => {
  let connection: Connection | undefined;
  try {
    if (statSync(file).size === 0) return damaged(file, 'empty');
    if (header(file) !== magic) return damaged(file, 'header');
    connection = new sqlite(file, { readonly: true });
    return examine(connection, file, steps);
  } catch (fault) {
    const problem = problemFromFault(fault, file);
    if (!problem) throw fault;
    return problem;
  } finally {
    connection?.close();
  }
};
