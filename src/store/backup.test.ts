import { existsSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { lastGoodBackup, listBackups } from './backup.ts';
import { placesOf } from './folder.ts';
import { loadSqlite } from './sqlite.ts';
import { handClock, open, poplin, temporaryFolder, valueIn } from './testing/workroom.ts';

test('a backup is taken when the newest is a day old, and is one whole file', async () => {
  const folder = temporaryFolder();
  const places = placesOf(folder);
  const clock = handClock('2026-03-14T09:00:00.000Z');
  const workroom = await open(folder, { now: clock.now });
  valueIn(workroom.create('cloth', poplin('first')));
  expect(valueIn(await workroom.backupIfDue())).toMatchObject({ takenAt: '2026-03-14T09:00:00Z' });
  clock.forward(23.9);
  expect(valueIn(await workroom.backupIfDue())).toBeNull();
  clock.forward(0.1);
  expect(valueIn(await workroom.backupIfDue())).toMatchObject({ takenAt: '2026-03-15T09:00:00Z' });
  expect(readdirSync(places.backups).sort()).toEqual([
    'workroom-2026-03-14T09-00-00.sqlite',
    'workroom-2026-03-15T09-00-00.sqlite',
  ]);
});

test('what is written while a backup runs is stored, and the backup is whole', async () => {
  const folder = temporaryFolder();
  const workroom = await open(folder);
  for (let count = 0; count < 30; count++) valueIn(workroom.create('cloth', poplin('x'.repeat(15_000))));
  const running = workroom.backup();
  const late = valueIn(workroom.create('cloth', poplin('late')));
  const backup = valueIn(await running);
  expect(valueIn(workroom.read(late.id))).toEqual(late);
  const sqlite = valueIn(await loadSqlite());
  expect(lastGoodBackup(sqlite, placesOf(folder))).toEqual(backup);
  const copy = new sqlite(backup.file, { readonly: true });
  expect(copy.prepare('SELECT count(*) FROM documents').pluck().get()).toBeGreaterThanOrEqual(30);
  copy.close();
});

test('the last ten are kept, and nothing else in the folder is touched', async () => {
  const folder = temporaryFolder();
  const places = placesOf(folder);
  const clock = handClock();
  const workroom = await open(folder, { now: clock.now });
  const hers = join(places.backups, 'before the move.sqlite');
  writeFileSync(hers, 'hers');
  for (let day = 0; day < 13; day++) {
    valueIn(await workroom.backup());
    clock.forward(24);
  }
  expect(listBackups(places).map(({ takenAt }) => takenAt.slice(0, 10))).toEqual([
    ...['2026-03-26', '2026-03-25', '2026-03-24', '2026-03-23', '2026-03-22'],
    ...['2026-03-21', '2026-03-20', '2026-03-19', '2026-03-18', '2026-03-17'],
  ]);
  expect(existsSync(hers)).toBe(true);
});

test('a backup that is not whole is passed over for an older one', async () => {
  const folder = temporaryFolder();
  const places = placesOf(folder);
  const clock = handClock();
  const workroom = await open(folder, { now: clock.now });
  const good = valueIn(await workroom.backup());
  clock.forward(24);
  const spoiled = valueIn(await workroom.backup());
  writeFileSync(spoiled.file, 'spoiled');
  expect(lastGoodBackup(valueIn(await loadSqlite()), places)).toEqual(good);
});

test('what a backup cut short left behind is cleared by the next', async () => {
  const folder = temporaryFolder();
  const { backups } = placesOf(folder);
  const workroom = await open(folder);
  writeFileSync(join(backups, 'workroom-2026-03-14T09-00-00.sqlite.part'), 'half');
  writeFileSync(join(backups, 'workroom-2026-03-14T09-00-00.sqlite.part-journal'), 'half');
  valueIn(await workroom.backup());
  expect(readdirSync(backups)).toHaveLength(1);
});
