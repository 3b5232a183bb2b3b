import { copyFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { sentence } from '../words/index.ts';
import { placesOf } from './folder.ts';
import { inspectDatabase } from './inspect.ts';
import { migrations } from './migrations.ts';
import type { Picture } from './photographs.ts';
import { restoreBackup } from './restore.ts';
import { type Connection, loadSqlite } from './sqlite.ts';
import { codeOf, handClock, open, poplin, temporaryFolder, valueIn } from './testing/workroom.ts';
import { openWorkroom } from './workroom.ts';

/** Bytes nothing would squeeze: a picture to the store is whatever passed the door. */
const picture = (kilobytes = 4, mark = 1): Picture => ({
  mime: 'image/jpeg',
  bytes: Uint8Array.from({ length: kilobytes * 1024 }, (_, place) => (place * 197 + mark * 31 + (place >> 8)) & 0xff),
  width: 640,
  height: 480,
});

test('a photograph is kept to the byte, taken away and put back, and survives reopening', async () => {
  const folder = temporaryFolder();
  const clock = handClock();
  const workroom = await open(folder, { now: clock.now });
  const kept = valueIn(workroom.addPhotograph(picture()));
  expect(kept).toMatchObject({ mime: 'image/jpeg', width: 640, height: 480, deleted: false });
  expect(kept.added).toBe('2026-03-14T09:00:00.000Z');
  expect(Buffer.from(valueIn(workroom.photograph(kept.id)).bytes).equals(Buffer.from(picture().bytes))).toBe(true);

  expect(valueIn(workroom.removePhotograph(kept.id)).deleted).toBe(true);
  expect(valueIn(workroom.removePhotograph(kept.id)).deleted).toBe(true);
  expect(codeOf(workroom.photograph(kept.id))).toBe('store.no-such-photograph');
  expect(valueIn(workroom.photograph(kept.id, { deleted: true })).deleted).toBe(true);
  await workroom.close();

  const again = await open(folder);
  expect(valueIn(again.restorePhotograph(kept.id))).toEqual(kept);
  expect(Buffer.from(valueIn(again.photograph(kept.id)).bytes).equals(Buffer.from(picture().bytes))).toBe(true);
});

test('one that is not there is refused in words', async () => {
  const workroom = await open(temporaryFolder());
  for (const answer of [
    workroom.photograph('nowhere'),
    workroom.removePhotograph('nowhere'),
    workroom.restorePhotograph('nowhere'),
  ]) {
    if (answer.ok) throw new Error('it was found');
    expect(sentence(answer.problem, 'cm').message).toBe(
      'There is no photograph with the mark nowhere in this workroom.',
    );
  }
});

test('a backup has the photographs too, and going back to it brings them back', async () => {
  const folder = temporaryFolder();
  const workroom = await open(folder);
  const kept = valueIn(workroom.addPhotograph(picture(900, 7)));
  valueIn(await workroom.backup());
  const later = valueIn(workroom.addPhotograph(picture(4, 8)));
  await workroom.close();
  valueIn(await restoreBackup(folder));
  const again = await open(folder);
  expect(Buffer.from(valueIn(again.photograph(kept.id)).bytes).equals(Buffer.from(picture(900, 7).bytes))).toBe(true);
  expect(codeOf(again.photograph(later.id))).toBe('store.no-such-photograph');
});

test('a picture that finds no room is refused, and nothing of it is left', async () => {
  const folder = temporaryFolder();
  let connection: Connection | undefined;
  const workroom = await open(folder, {
    prepare: (opened) => {
      connection = opened;
      opened.pragma('max_page_count = 60');
    },
  });
  const cloth = valueIn(workroom.create('cloth', poplin('before')));
  expect(codeOf(workroom.addPhotograph(picture(2000)))).toBe('store.disk-full');
  expect(connection?.inTransaction).toBe(false);
  expect(connection?.prepare('SELECT count(*) FROM photographs').pluck().get()).toBe(0);
  expect(valueIn(workroom.read(cloth.id))).toEqual(cloth);
  const small = valueIn(workroom.addPhotograph(picture(8)));
  expect(valueIn(workroom.photograph(small.id)).bytes).toHaveLength(8 * 1024);
});

test('a workroom with photographs is left alone by the program of before them', async () => {
  const folder = temporaryFolder();
  const { database } = placesOf(folder);
  const workroom = await open(folder);
  valueIn(workroom.addPhotograph(picture()));
  await workroom.close();
  const sqlite = valueIn(await loadSqlite());
  const before = migrations.slice(0, 1);
  expect(inspectDatabase(sqlite, database, before)?.code).toBe('store.newer');
  expect(codeOf(await openWorkroom(folder, { migrations: before }))).toBe('store.newer');
});

test('a workroom of before photographs is brought up, and keeps them from then on', async () => {
  const folder = temporaryFolder();
  copyFileSync(`${import.meta.dirname}/old/version-1.sqlite`, placesOf(folder).database);
  const workroom = await open(folder);
  expect(valueIn(workroom.read('demo-jersey')).kind).toBe('cloth');
  const kept = valueIn(workroom.addPhotograph(picture()));
  valueIn(await workroom.backup());
  await workroom.close();
  expect(valueIn((await open(folder)).photograph(kept.id)).width).toBe(640);
});
