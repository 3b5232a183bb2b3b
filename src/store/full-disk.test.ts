import { spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, rmSync, statfsSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { sentence } from '../words/index.ts';
import { placesOf } from './folder.ts';
import { restoreBackup } from './restore.ts';
import type { Connection } from './sqlite.ts';
import { codeOf, open, poplin, temporaryFolder, valueIn } from './testing/workroom.ts';
import { openWorkroom, type Workroom } from './workroom.ts';

const heavy = () => poplin('wool '.repeat(3000));

/** Stores until it is refused; what was acknowledged until then. */
const fillUp = (workroom: Workroom) => {
  const acknowledged: string[] = [];
  for (let count = 0; count < 2000; count++) {
    const result = workroom.create('cloth', heavy());
    if (!result.ok) return { acknowledged, problem: result.problem };
    acknowledged.push(result.value.id);
  }
  throw new Error('the disk did not fill');
};

test('a database that may not grow refuses with a sentence, and holds nothing half-written', async () => {
  const folder = temporaryFolder();
  let connection: Connection | undefined;
  const workroom = await open(folder, {
    prepare: (opened) => {
      connection = opened;
      opened.pragma('max_page_count = 60');
    },
  });
  const first = valueIn(workroom.create('cloth', poplin('first')));
  const { acknowledged, problem } = fillUp(workroom);
  expect(problem.code).toBe('store.disk-full');
  expect(sentence(problem, 'cm').message).toBe(`The disk with ${folder} is full, so nothing was stored.`);
  expect(connection?.inTransaction).toBe(false);

  // A change needs room for two states; neither half of it may be left.
  expect(codeOf(workroom.update(first.id, 1, heavy()))).toBe('store.disk-full');
  expect(valueIn(workroom.read(first.id))).toEqual(first);
  expect(valueIn(workroom.history(first.id))).toHaveLength(1);
  const drafts = ['a', 'b', 'c'].map((id) => ({ id, kind: 'cloth', body: heavy() }) as const);
  expect(codeOf(workroom.start('demo', drafts))).toBe('store.disk-full');
  expect(workroom.facts().started).toBe(false);

  connection?.pragma('max_page_count = 10000');
  const later = valueIn(workroom.create('cloth', poplin('room again')));
  await workroom.close();
  const again = await open(folder);
  const ids = valueIn(again.list({ deleted: true })).map(({ id }) => id);
  expect(ids.sort()).toEqual([first.id, ...acknowledged, later.id].sort());
});

const mount = (place: string, kilobytes: number): boolean =>
  spawnSync('mount', ['-t', 'tmpfs', '-o', `size=${kilobytes}k`, 'tmpfs', place], { stdio: 'ignore' }).status === 0;

/** A disk of its own with very little room, where this system lets us make one (Linux, as root). */
const smallDisk = (kilobytes: number): string | undefined => {
  const place = join(temporaryFolder(), 'disk');
  mkdirSync(place);
  if (process.platform !== 'linux' || !mount(place, kilobytes)) return undefined;
  onTestFinished(() => {
    spawnSync('umount', ['-l', place]);
  });
  return place;
};

test('a real disk that fills up refuses, and goes on once there is room', async (context) => {
  const disk = smallDisk(700);
  if (!disk) return context.skip('this system does not let the test make a small disk');
  const ballast = join(disk, 'ballast');
  writeFileSync(ballast, Buffer.alloc(60_000));
  const folder = join(disk, 'workroom');
  const workroom = await open(folder);
  const { acknowledged, problem } = fillUp(workroom);
  expect(problem.code).toBe('store.disk-full');
  expect(acknowledged.length).toBeGreaterThan(3);
  expect(codeOf(await workroom.backup())).toBe('store.disk-full');
  expect(readdirSync(placesOf(folder).backups)).toEqual([]);
  expect(
    valueIn(workroom.list())
      .map(({ id }) => id)
      .sort(),
  ).toEqual([...acknowledged].sort());
  rmSync(ballast);
  const later = valueIn(workroom.create('cloth', poplin('room again')));
  await workroom.close();
  const again = await open(folder);
  expect(valueIn(again.list())).toHaveLength(acknowledged.length + 1);
  expect(valueIn(again.read(later.id))).toEqual(later);
});

test('a workroom that cannot be set up for want of room leaves nothing half set up', async (context) => {
  const disk = smallDisk(64);
  if (!disk) return context.skip('this system does not let the test make a small disk');
  const ballast = join(disk, 'ballast');
  writeFileSync(ballast, Buffer.alloc(40_000));
  const folder = join(disk, 'workroom');
  expect(codeOf(await openWorkroom(folder))).toBe('store.disk-full');
  expect(readdirSync(folder)).not.toContain('workroom.sqlite');
});

test('going back to a backup without room for it moves nothing', async (context) => {
  const disk = smallDisk(700);
  if (!disk) return context.skip('this system does not let the test make a small disk');
  const folder = join(disk, 'workroom');
  const workroom = await open(folder);
  for (let count = 0; count < 5; count++) valueIn(workroom.create('cloth', heavy()));
  valueIn(await workroom.backup());
  await workroom.close();
  const { database } = placesOf(folder);
  truncateSync(database, 5000);
  const ballast = join(disk, 'ballast');
  writeFileSync(ballast, Buffer.alloc(statfsSync(disk).bavail * statfsSync(disk).bsize - 20_000));
  const before = readdirSync(folder);
  expect(codeOf(await restoreBackup(folder))).toBe('store.disk-full');
  expect(readdirSync(folder)).toEqual(expect.arrayContaining(before));
  expect(readdirSync(folder).filter((name) => name.includes('damaged-'))).toEqual([]);
  rmSync(ballast);
  valueIn(await restoreBackup(folder));
  expect(valueIn((await open(folder)).list())).toHaveLength(5);
});
