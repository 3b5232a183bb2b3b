import { expect, test } from 'vitest';
import { sentence } from '../words/index.ts';
import { loadSqlite, type Sqlite } from './sqlite.ts';

test('SQLite loads', async () => {
  expect((await loadSqlite()).ok).toBe(true);
});

test.each([
  [
    'was never built',
    async () =>
      function unbuilt() {
        throw new Error('Could not locate the bindings file. Tried:\n → build/Release/better_sqlite3.node');
      } as unknown as Sqlite,
  ],
  [
    'is not installed',
    async () => {
      throw new Error("Cannot find package 'better-sqlite3'");
    },
  ],
])('that its compiled part %s is said with what to do about it', async (_, loader) => {
  const loaded = await loadSqlite(loader);
  if (loaded.ok) throw new Error('it loaded');
  expect(loaded.problem.code).toBe('store.no-sqlite');
  const spoken = JSON.stringify(sentence(loaded.problem, 'cm'));
  expect(spoken).toMatch(/Could not locate|Cannot find package/);
  expect(spoken).toContain('compiler');
  expect(spoken).not.toContain('build/Release');
});
