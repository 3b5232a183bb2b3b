import { existsSync, mkdirSync, readdirSync, renameSync, rmSync } from 'node:fs';
import { basename, join } from 'node:path';
import type { Result } from '../units/index.ts';
import { good } from '../units/index.ts';
import { problemFromFault } from './fault.ts';
import { momentOf, stamp, sync } from './files.ts';
import type { Places } from './folder.ts';
import { inspectDatabase } from './inspect.ts';
import type { Connection, Sqlite } from './sqlite.ts';

export interface Backup {
  readonly file: string;
  /** ISO moment, UTC. */
  readonly takenAt: string;
}

const kept = 10;
const dueAfter = 24 * 60 * 60 * 1000;
const named = /^workroom-(\d{4}-\d\d-\d\dT\d\d-\d\d-\d\d)\.sqlite$/;
/** What a backup cut short by a kill leaves behind. */
const leftOver = /^workroom-[\dT-]+\.sqlite\.part(-journal|-wal|-shm)?$/;

/** All backups, newest first. */
export const listBackups = (places: Places): readonly Backup[] =>
  (existsSync(places.backups) ? readdirSync(places.backups) : [])
    .flatMap((name) => {
      const written = named.exec(name)?.[1];
      return written ? [{ file: join(places.backups, name), takenAt: momentOf(written) }] : [];
    })
    .sort((a, b) => (a.takenAt < b.takenAt ? 1 : -1));

/** The newest backup that is whole. */
export const lastGoodBackup = (sqlite: Sqlite, places: Places): Backup | null =>
  listBackups(places).find(({ file }) => inspectDatabase(sqlite, file) === null) ?? null;

export const backupIsDue = (places: Places, now: Date): boolean => {
  const newest = listBackups(places)[0];
  return !newest || now.getTime() - Date.parse(newest.takenAt) >= dueAfter;
};

/** How much is kept, by table. One of before photographs were kept has no table for them, and is backed up too. */
const countKept = (connection: Connection): ReadonlyMap<string, number> => {
  const tables = connection
    .prepare("SELECT name FROM sqlite_schema WHERE type = 'table' AND name IN ('documents', 'photographs')")
    .pluck()
    .all() as string[];
  const count = (table: string) => connection.prepare(`SELECT count(*) FROM ${table}`).pluck().get() as number;
  return new Map(tables.map((table) => [table, count(table)]));
};

/** Makes a fresh copy one file that needs no companions; throws unless it is whole and holds at least what was kept before. */
const verify = (sqlite: Sqlite, file: string, least: ReadonlyMap<string, number>): void => {
  const copy = new sqlite(file);
  try {
    copy.pragma('journal_mode = DELETE');
    const found = countKept(copy);
    for (const [table, count] of least)
      if ((found.get(table) ?? 0) < count) throw new Error(`the backup ${basename(file)} lacks ${table}`);
  } finally {
    copy.close();
  }
  const problem = inspectDatabase(sqlite, file);
  if (problem) throw new Error(`the backup ${basename(file)} is not whole: ${JSON.stringify(problem)}`);
};

/**
 * Copies the open database while it may be in use, checks the copy, gives it its dated name and lets the
 * oldest beyond ten go. Nothing that fails on the way counts as a backup or takes an older one's place.
 */
export const takeBackup = async (
  sqlite: Sqlite,
  connection: Connection,
  places: Places,
  now: Date,
): Promise<Result<Backup>> => {
  const file = join(places.backups, `workroom-${stamp(now)}.sqlite`);
  const part = `${file}.part`;
  try {
    mkdirSync(places.backups, { recursive: true });
    for (const name of readdirSync(places.backups).filter((name) => leftOver.test(name)))
      rmSync(join(places.backups, name));
    const least = countKept(connection);
    await connection.backup(part);
    verify(sqlite, part, least);
    sync(part);
    renameSync(part, file);
    sync(places.backups);
  } catch (fault) {
    rmSync(part, { force: true });
    const problem = problemFromFault(fault, places.backups);
    if (!problem) throw fault;
    return { ok: false, problem };
  }
  for (const { file: old } of listBackups(places).slice(kept)) rmSync(old);
  return good({ file, takenAt: momentOf(stamp(now)) });
};
