import { copyFileSync, existsSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import type { Result } from '../units/index.ts';
import { bad, good } from '../units/index.ts';
import { type Backup, lastGoodBackup, listBackups } from './backup.ts';
import { problemFromFault } from './fault.ts';
import { freeName, stamp, sync } from './files.ts';
import { placesOf } from './folder.ts';
import { inspectDatabase } from './inspect.ts';
import { takeLock } from './lock.ts';
import { loadSqlite } from './sqlite.ts';

export interface Restored {
  readonly backup: Backup;
  /** Where the damaged database now lies; null where there was none. */
  readonly movedTo: string | null;
}

/**
 * Puts a backup in the place of a damaged database: the last good one, or the one taken at `takenAt`.
 * The damaged file and its companions are moved aside under a dated name; nothing is deleted. A copy that
 * cannot be made (a full disk) leaves everything as it was.
 */
export const restoreBackup = async (
  folder: string,
  takenAt?: string,
  now: () => Date = () => new Date(),
): Promise<Result<Restored>> => {
  const loaded = await loadSqlite();
  if (!loaded.ok) return loaded;
  const sqlite = loaded.value;
  const places = placesOf(folder);
  const lock = takeLock(sqlite, places, folder);
  if (!lock.ok) return lock;
  try {
    const backup = takenAt
      ? listBackups(places).find((candidate) => candidate.takenAt === takenAt)
      : lastGoodBackup(sqlite, places);
    if (!backup || inspectDatabase(sqlite, backup.file) !== null) return bad('store.no-good-backup', { folder });
    rmSync(places.unfinished, { force: true });
    copyFileSync(backup.file, places.unfinished);
    sync(places.unfinished);
    const aside = freeName((suffix) => join(folder, `workroom-damaged-${stamp(now())}${suffix}.sqlite`));
    const moved = [places.database, ...places.companions].filter((file) => existsSync(file));
    for (const file of moved) renameSync(file, aside + file.slice(places.database.length));
    renameSync(places.unfinished, places.database);
    sync(folder);
    return good({ backup, movedTo: moved.length > 0 ? aside : null });
  } catch (fault) {
    const problem = problemFromFault(fault, folder);
    if (!problem) throw fault;
    return { ok: false, problem };
  } finally {
    lock.value.release();
  }
};
