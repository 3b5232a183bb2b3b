import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { problemWords } from '../words/index.ts';

test.each(['store', 'server'])('every problem of %s has its sentence, and every sentence its problem', (room) => {
  const folder = join(import.meta.dirname, '..', room);
  const source = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts') && !name.endsWith('.test.ts'))
    .map((name) => readFileSync(join(folder, name), 'utf8'))
    .join('\n');
  const used = new Set([...source.matchAll(new RegExp(`'(${room}\\.[a-z-]+)'`, 'g'))].map((match) => match[1] ?? ''));
  const worded = Object.keys(problemWords).filter((code) => code.startsWith(`${room}.`));
  expect([...used].filter((code) => !worded.includes(code))).toEqual([]);
  expect(worded.filter((code) => !used.has(code))).toEqual([]);
});
