import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, rmSync, statSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { sentence } from '../words/index.ts';
import { isMendable } from './database.ts';
import { placesOf } from './folder.ts';
import { restoreBackup } from './restore.ts';
import { loadSqlite } from './sqlite.ts';
import { codeOf, handClock, open, poplin, temporaryFolder, valueIn } from './testing/workroom.ts';
import { openWorkroom } from './workroom.ts';

const fingerprint = (file: string) => createHash('sha256').update(readFileSync(file)).digest('hex');

/** A closed workroom with forty cloths, all but the last of them in a backup. */
const filled = async (withBackup: boolean) => {
  const folder = temporaryFolder();
  const clock = handClock('2026-05-03T14:02:11.000Z');
  const workroom = await open(folder, { now: clock.now });
  const cloths = Array.from(
    { length: 39 },
    (_, count) => ({ id: `c${count}`, kind: 'cloth', body: poplin('linen '.repeat(500)) }) as const,
  );
  valueIn(workroom.start('own', cloths));
  if (withBackup) valueIn(await workroom.backup());
  valueIn(workroom.create('cloth', poplin('after the backup')));
  await workroom.close();
  return { folder, places: placesOf(folder) };
};

const ways: readonly (readonly [string, (file: string) => void])[] = [
  ['cut short', (file) => truncateSync(file, Math.floor(statSync(file).size / 2))],
  ['cut to nothing', (file) => truncateSync(file, 0)],
  ['cut within its header', (file) => truncateSync(file, 10)],
  [
    'with a spoiled header',
    (file) => {
      const bytes = readFileSync(file);
      bytes.fill('x', 0, 16);
      writeFileSync(file, bytes);
    },
  ],
  [
    'with spoiled pages',
    (file) => {
      const bytes = readFileSync(file);
      bytes.fill(0xa5, 8192, bytes.length - 4096);
      writeFileSync(file, bytes);
    },
  ],
  ['replaced by something else', (file) => writeFileSync(file, 'A shopping list: thread, needles, tea.\n'.repeat(500))],
];

test.each(ways)('a database %s is told, its last good backup offered, and nothing deleted', async (_, spoil) => {
  const { folder, places } = await filled(true);
  spoil(places.database);
  const damaged = fingerprint(places.database);

  const opened = await openWorkroom(folder);
  if (opened.ok) throw new Error('it was opened');
  expect(opened.problem.code).toBe('store.damaged');
  expect(isMendable(opened.problem)).toBe(true);
  expect(sentence(opened.problem, 'cm').message).toMatch(/is damaged .* good backup of May 3, 2026/);
  expect(fingerprint(places.database)).toBe(damaged);

  const clock = handClock('2026-05-04T08:00:00.000Z');
  const restored = valueIn(await restoreBackup(folder, undefined, clock.now));
  expect(restored.backup.takenAt).toBe('2026-05-03T14:02:11Z');
  expect(restored.movedTo).toBe(join(folder, 'workroom-damaged-2026-05-04T08-00-00.sqlite'));
  expect(fingerprint(restored.movedTo ?? '')).toBe(damaged);
  expect(existsSync(restored.backup.file)).toBe(true);
  const again = await open(folder);
  expect(valueIn(again.list())).toHaveLength(39);
  valueIn(again.create('cloth', poplin()));
});

test('without a backup it is told too, and left alone', async () => {
  const { folder, places } = await filled(false);
  truncateSync(places.database, 5000);
  const before = readdirSync(folder);
  const opened = await openWorkroom(folder);
  expect(codeOf(opened)).toBe('store.damaged-no-backup');
  expect(codeOf(await restoreBackup(folder))).toBe('store.no-good-backup');
  expect(readdirSync(folder)).toEqual(expect.arrayContaining(before));
  expect(statSync(places.database).size).toBe(5000);
});

test('a database that has gone is not silently begun anew where its backups are', async () => {
  const { folder, places } = await filled(true);
  rmSync(places.database);
  const opened = await openWorkroom(folder);
  expect(codeOf(opened)).toBe('store.missing');
  expect(existsSync(places.database)).toBe(false);
  expect(valueIn(await restoreBackup(folder)).movedTo).toBeNull();
  expect(valueIn((await open(folder)).list())).toHaveLength(39);
});

test('what belongs to the damaged file moves aside with it', async () => {
  const { folder, places } = await filled(true);
  truncateSync(places.database, 100);
  writeFileSync(`${places.database}-wal`, 'the last writes');
  const { movedTo } = valueIn(await restoreBackup(folder));
  expect(readFileSync(`${movedTo}-wal`, 'utf8')).toBe('the last writes');
  expect(existsSync(`${places.database}-wal`)).toBe(false);
});

test('no backup is put in the place of a workroom that is open', async () => {
  const { folder } = await filled(true);
  await open(folder);
  expect(codeOf(await restoreBackup(folder))).toMatch(/^store\.in-use/);
});

test('a chosen older backup can be gone back to', async () => {
  const folder = temporaryFolder();
  const clock = handClock();
  const workroom = await open(folder, { now: clock.now });
  const first = valueIn(await workroom.backup());
  clock.forward(24);
  valueIn(workroom.create('cloth', poplin()));
  valueIn(await workroom.backup());
  await workroom.close();
  valueIn(await restoreBackup(folder, first.takenAt));
  expect(valueIn((await open(folder)).list())).toEqual([]);
  expect(codeOf(await restoreBackup(temporaryFolder(), first.takenAt))).toBe('store.no-good-backup');
});

test('a workroom left by a newer program is refused with a sentence and not touched', async () => {
  const { folder, places } = await filled(true);
  const sqlite = valueIn(await loadSqlite());
  const newer = new sqlite(places.database);
  newer.pragma('user_version = 99');
  newer.close();
  const before = fingerprint(places.database);
  const opened = await openWorkroom(folder);
  if (opened.ok) throw new Error('it was opened');
  expect(sentence(opened.problem, 'cm').message).toContain('last used with a newer Easewright');
  expect(isMendable(opened.problem)).toBe(false);
  expect(fingerprint(places.database)).toBe(before);
});

test('somebody else’s database is refused and not touched', async () => {
  const folder = temporaryFolder();
  const places = placesOf(folder);
  const sqlite = valueIn(await loadSqlite());
  const other = new sqlite(places.database);
  other.exec('CREATE TABLE recipes (name TEXT)');
  other.close();
  const before = fingerprint(places.database);
  expect(codeOf(await openWorkroom(folder))).toBe('store.not-a-workroom');
  expect(fingerprint(places.database)).toBe(before);
});

test('setting up that was cut short is begun again', async () => {
  const folder = temporaryFolder();
  writeFileSync(placesOf(folder).unfinished, 'half a database');
  valueIn((await open(folder)).create('cloth', poplin()));
  expect(existsSync(placesOf(folder).unfinished)).toBe(false);
});
