import { cpSync, existsSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { sentence } from '../words/index.ts';
import { placesOf } from './folder.ts';
import { readOwner } from './lock.ts';
import { codeOf, open, poplin, temporaryFolder, valueIn } from './testing/workroom.ts';
import { openWorkroom } from './workroom.ts';

test('a workroom open already is not opened twice, and who has it is said', async () => {
  const folder = temporaryFolder();
  const first = await open(folder);
  const second = await openWorkroom(folder);
  if (second.ok) throw new Error('it was opened twice');
  expect(sentence(second.problem, 'cm').message).toBe(
    `The workroom in ${folder} is already open: Easewright runs as process ${process.pid}.`,
  );
  valueIn(first.announce('http://127.0.0.1:8317'));
  const third = await openWorkroom(folder);
  if (third.ok) throw new Error('it was opened twice');
  expect(sentence(third.problem, 'cm').message).toContain('is already open at http://127.0.0.1:8317');
  // The owner is undisturbed by those who tried.
  expect(readOwner(placesOf(folder))).toMatchObject({ pid: process.pid, address: 'http://127.0.0.1:8317' });
  valueIn(first.create('cloth', poplin()));
  await first.close();
  expect(existsSync(placesOf(folder).owner)).toBe(false);
  const after = await open(folder);
  expect(valueIn(after.list())).toHaveLength(1);
});

test('a note of an owner who is gone keeps nobody out', async () => {
  const folder = temporaryFolder();
  await (await open(folder)).close();
  writeFileSync(placesOf(folder).owner, '{"pid": 1, "since": "2026-01-01T00:00:00Z", "token": "old", "address": null}');
  const workroom = await open(folder);
  expect(readOwner(placesOf(folder))).toMatchObject({ pid: process.pid, token: workroom.owner.token });
});

test('the note of the owner is readable by nobody else', async () => {
  const folder = temporaryFolder();
  const workroom = await open(folder);
  expect(workroom.owner.token).toMatch(/^[0-9a-f]{64}$/);
  if (process.platform !== 'win32') expect(statSync(placesOf(folder).owner).mode & 0o077).toBe(0);
});

test('a workroom is one folder that can be copied, even while it is open', async () => {
  const folder = temporaryFolder();
  const workroom = await open(folder);
  const made = valueIn(workroom.create('cloth', poplin()));
  const copy = join(temporaryFolder(), 'copy');
  cpSync(folder, copy, { recursive: true });
  const copied = await open(copy);
  expect(valueIn(copied.list())).toEqual([made]);
  // They are two workrooms now.
  valueIn(copied.update(made.id, 1, poplin('in the copy')));
  expect(valueIn(workroom.read(made.id))).toEqual(made);
});

test('a lock file that is no lock is said, and not overwritten', async () => {
  const folder = temporaryFolder();
  const { lock } = placesOf(folder);
  writeFileSync(lock, 'not a database, but long enough to have been taken for one by a careless reader of headers');
  const opened = await openWorkroom(folder);
  expect(codeOf(opened)).toBe('store.lock-unusable');
  expect(readFileSync(lock, 'utf8')).toMatch(/^not a database/);
});

test('a folder that cannot be written is said', async () => {
  const file = join(temporaryFolder(), 'a-file');
  writeFileSync(file, '');
  expect(codeOf(await openWorkroom(file))).toBe('store.not-writable');
  expect(codeOf(await openWorkroom(join(file, 'below')))).toBe('store.not-writable');
});
