import { existsSync, renameSync, rmSync, statSync } from 'node:fs';
import type { Problem, Result } from '../units/index.ts';
import { good } from '../units/index.ts';
import { lastGoodBackup, takeBackup } from './backup.ts';
import { sync } from './files.ts';
import type { Places } from './folder.ts';
import { inspectDatabase } from './inspect.ts';
import { type Migration, migrate } from './migrations.ts';
import type { Connection, Sqlite } from './sqlite.ts';

/** Data is on the disk before a write is acknowledged, whatever is killed or unplugged afterwards. */
const makeDurable = (connection: Connection): void => {
  connection.pragma('journal_mode = WAL');
  connection.pragma('synchronous = FULL');
  connection.pragma('foreign_keys = ON');
  // macOS only promises this much with a request of its own; elsewhere these do nothing.
  connection.pragma('fullfsync = ON');
  connection.pragma('checkpoint_fullfsync = ON');
};

/** Sets up a new database beside its place and moves it there whole, so that an empty file there always means damage. */
const setUp = (sqlite: Sqlite, places: Places, folder: string, steps: readonly Migration[]): void => {
  for (const end of ['', '-journal', '-wal', '-shm']) rmSync(places.unfinished + end, { force: true });
  const connection = new sqlite(places.unfinished);
  try {
    migrate(connection, steps);
  } finally {
    connection.close();
  }
  sync(places.unfinished);
  renameSync(places.unfinished, places.database);
  sync(folder);
};

const spokenMoment = (iso: string): string =>
  new Intl.DateTimeFormat('en', { dateStyle: 'long', timeStyle: 'short' }).format(new Date(iso));

/** Damage with what can be done about it: the last good backup, where there is one. */
const damage = (sqlite: Sqlite, places: Places, folder: string, problem: Problem): Problem => {
  const gone = problem.code === 'store.missing';
  if (problem.code !== 'store.corrupt' && !gone) return problem;
  const backup = lastGoodBackup(sqlite, places);
  const values = { ...problem.values, place: folder };
  if (!backup) return { code: gone ? 'store.missing-no-backup' : 'store.damaged-no-backup', values };
  const offered = { ...values, backup: spokenMoment(backup.takenAt), takenAt: backup.takenAt };
  return { code: gone ? 'store.missing' : 'store.damaged', values: offered };
};

/** True for a problem of opening that going back to a backup can mend. */
export const isMendable = (problem: Problem): boolean =>
  problem.code === 'store.damaged' || problem.code === 'store.missing';

/**
 * Opens the database of a workroom this process owns: sets up a new one, or checks the one that is there,
 * backs it up before its tables are brought up, and says what is wrong where something is.
 */
export const openDatabase = async (
  sqlite: Sqlite,
  places: Places,
  folder: string,
  now: () => Date,
  steps: readonly Migration[],
): Promise<Result<Connection>> => {
  if (existsSync(places.database)) {
    const problem = inspectDatabase(sqlite, places.database, steps);
    if (problem) return { ok: false, problem: damage(sqlite, places, folder, problem) };
  } else {
    const traces =
      places.companions.some((file) => file.endsWith('-wal') && existsSync(file) && statSync(file).size > 0) ||
      lastGoodBackup(sqlite, places) !== null;
    if (traces) return { ok: false, problem: damage(sqlite, places, folder, { code: 'store.missing' }) };
    setUp(sqlite, places, folder, steps);
  }
  const connection = new sqlite(places.database, { fileMustExist: true });
  try {
    makeDurable(connection);
    if ((connection.pragma('user_version', { simple: true }) as number) < steps.length) {
      const saved = await takeBackup(sqlite, connection, places, now());
      if (!saved.ok) {
        connection.close();
        return saved;
      }
      migrate(connection, steps);
    }
    return good(connection);
  } catch (fault) {
    connection.close();
    throw fault;
  }
};
