import { createHash } from 'node:crypto';
import { copyFileSync, existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { listBackups } from './backup.ts';
import type { StoredDocument } from './documents.ts';
import { placesOf } from './folder.ts';
import { inspectDatabase } from './inspect.ts';
import { migrate, migrations } from './migrations.ts';
import { loadSqlite } from './sqlite.ts';
import { codeOf, open, temporaryFolder, valueIn } from './testing/workroom.ts';
import { openWorkroom } from './workroom.ts';

const here = dirname(fileURLToPath(import.meta.url));
const snapshotFile = join(here, 'schema.sql');
const oldFile = (version: number, end: 'sqlite' | 'json') => join(here, 'old', `version-${version}.${end}`);

const schemaNow = async (): Promise<string> => {
  const sqlite = valueIn(await loadSqlite());
  const connection = new sqlite(':memory:');
  migrate(connection);
  const tables = connection
    .prepare(
      "SELECT sql FROM sqlite_schema WHERE sql IS NOT NULL AND name NOT LIKE 'sqlite_%' ORDER BY type DESC, name",
    )
    .pluck()
    .all() as string[];
  connection.close();
  const released = migrations.map(({ name, sql }, index) => {
    const fingerprint = createHash('sha256').update(sql).digest('hex').slice(0, 16);
    return `-- migration ${index + 1}: ${name} (${fingerprint})`;
  });
  const plain = tables.map((sql) => `${sql.replaceAll(/^ {6}/gm, '')};`);
  return `${[...released, ...plain].join('\n')}\n`;
};

test('the schema is the one on record', async () => {
  const now = await schemaNow();
  if (process.env.EASEWRIGHT_RECORD_SCHEMA) writeFileSync(snapshotFile, now);
  const recorded = readFileSync(snapshotFile, 'utf8');
  expect(
    now,
    `The tables differ from src/store/schema.sql. To mend it:
 1. Change tables only by adding a migration at the end of src/store/migrations.ts. If a released one was edited
    (its fingerprint at the top of schema.sql changed), put it back as it was.
 2. Keep a file of the version before: check that src/store/old/ has version-N.sqlite and .json for every released N.
 3. Record the new schema: EASEWRIGHT_RECORD_SCHEMA=1 npx vitest run src/store/migrations.test.ts, and read the difference.`,
  ).toBe(recorded);
});

/** Writes the old file of the present version, once: `EASEWRIGHT_KEEP_OLD_FILE=1 npx vitest run src/store/migrations.test.ts`. */
const keepOldFile = async (version: number) => {
  const { demoDocuments } = await import('../../demo/index.ts');
  const folder = temporaryFolder();
  const workroom = valueIn(await openWorkroom(folder, { now: () => new Date('2026-03-14T09:00:00Z') }));
  valueIn(workroom.start('demo', demoDocuments()));
  const jersey = valueIn(workroom.read('demo-jersey'));
  valueIn(workroom.update(jersey.id, 1, { ...jersey.body, length: 900 }));
  valueIn(workroom.remove('demo-viscose', 1));
  // The smallest picture there is: one white point.
  const bytes = Buffer.from(
    'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGP4DwABAQEAsjF8KAAAAABJRU5ErkJggg==',
    'base64',
  );
  const photograph = valueIn(workroom.addPhotograph({ mime: 'image/png', bytes, width: 1, height: 1 }));
  const envelope = valueIn(workroom.read('demo-rehearsal-dress'));
  valueIn(workroom.update(envelope.id, 1, { ...envelope.body, photographs: [photograph.id] }));
  const documents = valueIn(workroom.list({ deleted: true }));
  await workroom.close();
  mkdirSync(join(here, 'old'), { recursive: true });
  copyFileSync(placesOf(folder).database, oldFile(version, 'sqlite'));
  writeFileSync(oldFile(version, 'json'), `${JSON.stringify(documents, null, 1)}\n`);
};

test.each(migrations.map((_, index) => index + 1))('a workroom left by version %i opens, whole', async (version) => {
  if (
    process.env.EASEWRIGHT_KEEP_OLD_FILE &&
    version === migrations.length &&
    !existsSync(oldFile(version, 'sqlite'))
  ) {
    await keepOldFile(version);
  }
  expect(
    existsSync(oldFile(version, 'sqlite')),
    `src/store/old/version-${version}.sqlite is missing. Write it once with the program of that version:
 EASEWRIGHT_KEEP_OLD_FILE=1 npx vitest run src/store/migrations.test.ts, then add it and its .json, and never change them.`,
  ).toBe(true);
  const folder = temporaryFolder();
  copyFileSync(oldFile(version, 'sqlite'), placesOf(folder).database);
  const workroom = await open(folder);
  const expected = JSON.parse(readFileSync(oldFile(version, 'json'), 'utf8')) as StoredDocument[];
  // Bodies may have been brought up since; what identifies and dates them may not have changed.
  const found = new Map(valueIn(workroom.list({ deleted: true })).map((document) => [document.id, document]));
  expect([...found.keys()].sort()).toEqual(expected.map(({ id }) => id).sort());
  for (const { body, ...rest } of expected) {
    expect(found.get(rest.id)).toMatchObject({ ...rest, body: { ...(body.name ? { name: body.name } : {}) } });
  }
  for (const { body } of found.values()) {
    for (const id of (body.photographs ?? []) as string[])
      expect(valueIn(workroom.photograph(id)).bytes.length).toBeGreaterThan(0);
  }
  expect(workroom.facts().demo).toBe(true);
  expect(valueIn(workroom.restore('demo-jersey')).body.length).toBe(1500);
});

test('steps are taken in order, once each, and each wholly or not at all', async () => {
  const sqlite = valueIn(await loadSqlite());
  const connection = new sqlite(':memory:');
  const first = { name: 'first', sql: 'CREATE TABLE ribbons (name TEXT) STRICT' };
  const second = { name: 'second', sql: "INSERT INTO ribbons VALUES ('grosgrain')" };
  const broken = { name: 'broken', sql: "INSERT INTO ribbons VALUES ('half'); INSERT INTO nowhere VALUES (1)" };
  migrate(connection, [first]);
  migrate(connection, [first, second]);
  migrate(connection, [first, second]);
  expect(() => migrate(connection, [first, second, broken])).toThrow(/nowhere/);
  expect(connection.prepare('SELECT name FROM ribbons').pluck().all()).toEqual(['grosgrain']);
  expect(connection.pragma('user_version', { simple: true })).toBe(2);
  connection.close();
});

test('a workroom of an older version is backed up before it is brought up', async () => {
  const folder = temporaryFolder();
  const places = placesOf(folder);
  await (await open(folder)).close();
  const added = { name: 'ribbons', sql: 'CREATE TABLE ribbons (name TEXT) STRICT' };
  const opened = await openWorkroom(folder, { migrations: [...migrations, added] });
  const workroom = valueIn(opened);
  const [backup] = listBackups(places);
  const sqlite = valueIn(await loadSqlite());
  const copy = new sqlite(backup?.file ?? '', { readonly: true });
  expect(copy.pragma('user_version', { simple: true })).toBe(migrations.length);
  copy.close();
  await workroom.close();
  // The program of before leaves it alone now.
  expect(inspectDatabase(sqlite, places.database)?.code).toBe('store.newer');
  expect(codeOf(await openWorkroom(folder))).toBe('store.newer');
});
