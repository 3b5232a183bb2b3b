import { readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import type { Problem, Result } from '../units/index.ts';
import { bad, good } from '../units/index.ts';
import { problemFromFault } from './fault.ts';
import type { Places } from './folder.ts';
import type { Connection, Sqlite } from './sqlite.ts';

/** Who has a workroom open, and how to reach them. The token lets this person's own programs write through the server. */
export interface Owner {
  readonly pid: number;
  readonly since: string;
  readonly token: string;
  /** `http://127.0.0.1:8317`; null while no server runs over the workroom. */
  readonly address: string | null;
}

export const readOwner = (places: Places): Owner | null => {
  try {
    const owner = JSON.parse(readFileSync(places.owner, 'utf8')) as Partial<Owner>;
    return typeof owner.pid === 'number' && typeof owner.token === 'string' && typeof owner.since === 'string'
      ? { pid: owner.pid, since: owner.since, token: owner.token, address: owner.address ?? null }
      : null;
  } catch {
    return null;
  }
};

/** Replaces the note in one step, readable by this person only. */
export const writeOwner = (places: Places, owner: Owner): void => {
  const draft = `${places.owner}.new`;
  writeFileSync(draft, `${JSON.stringify(owner)}\n`, { mode: 0o600 });
  renameSync(draft, places.owner);
};

export interface Lock {
  release(): void;
}

const inUse = (places: Places, folder: string): Problem => {
  const owner = readOwner(places);
  if (!owner) return { code: 'store.in-use', values: { folder } };
  return owner.address
    ? { code: 'store.in-use-at', values: { folder, process: String(owner.pid), address: owner.address } }
    : { code: 'store.in-use-by', values: { folder, process: String(owner.pid) } };
};

/**
 * Makes this process the workroom's one owner. The lock is the operating system's, held through SQLite
 * on a small file of its own, so that it vanishes with the process however that ends, and never stands
 * in the way of a reader of the database.
 */
export const takeLock = (sqlite: Sqlite, places: Places, folder: string): Result<Lock> => {
  let connection: Connection | undefined;
  try {
    connection = new sqlite(places.lock, { timeout: 0 });
    connection.exec('BEGIN EXCLUSIVE');
  } catch (fault) {
    connection?.close();
    const code = fault instanceof Error && 'code' in fault ? String(fault.code) : '';
    if (code.startsWith('SQLITE_BUSY')) return { ok: false, problem: inUse(places, folder) };
    const problem = problemFromFault(fault, folder);
    if (!problem) throw fault;
    return problem.code === 'store.corrupt'
      ? bad('store.lock-unusable', { file: places.lock })
      : { ok: false, problem };
  }
  const held = connection;
  return good({
    release: () => {
      rmSync(places.owner, { force: true });
      held.close();
    },
  });
};
