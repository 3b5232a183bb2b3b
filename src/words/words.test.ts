import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { fill, fitWords, problemWords, sentence } from './index.ts';

const source = join(import.meta.dirname, '..');
const files = readdirSync(source, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.ts') && !name.endsWith('.test.ts') && !name.startsWith('words/'))
  .map((name) => ({ name, text: readFileSync(join(source, name), 'utf8') }));

/** Codes as they stand in the source: `bad('room.code'…)` and `code: 'room.code'`. */
const used = files.flatMap(({ name, text }) =>
  [...text.matchAll(/(?:\bbad\(\s*|\bcode: )'([a-z]+\.[a-z0-9-]+)'/g)].map((match) => ({ name, code: match[1] ?? '' })),
);

describe('problem sentences', () => {
  it('are found by looking through the source', () => {
    expect(used.length).toBeGreaterThan(10);
  });

  it('exist for every code in use', () => {
    const unworded = used
      .filter(({ code }) => !(code in problemWords) && !(code in fitWords.reasons))
      .map(({ name, code }) => `${code} (${name})`);
    expect(unworded).toEqual([]);
  });

  it.each(Object.entries(problemWords))('%s is a sentence and says what to do', (code, words) => {
    expect(code).toMatch(/^[a-z]+\.[a-z0-9-]+$/);
    expect(words.message).toMatch(/^[“‘`{A-Z].*[.?!}`]$/s);
    expect(words.remedy).toMatch(/^[“‘`{A-Z].*[.?!}`]$/s);
  });
});

describe('filling in', () => {
  it('prints lengths in the reader’s unit', () => {
    expect(fill('{a} by {b} of {c}', { a: { mm: 254 }, b: 1234.5, c: 'linen' }, 'in')).toBe('10″ by 1,234.5 of linen');
    expect(fill('{a} and {b}', { a: { mm: 30 }, b: { mm: 60 } }, 'in')).toBe('1³⁄₁₆″ and 2⅜″');
    expect(fill('{a}', { a: { mm: 254 } }, 'cm', 'de')).toBe('25,4\u00a0cm');
  });
  it('leaves a name without a value standing', () => {
    expect(fill('{a} and {b}', { a: 1 }, 'cm')).toBe('1 and {b}');
  });
  it('takes values as they are, even when they look like a name', () => {
    expect(fill('{a}', { a: '{b} $& $1', b: 'no' }, 'cm')).toBe('{b} $& $1');
  });
  it('gives an unknown code as such', () => {
    expect(sentence({ code: 'nowhere.nothing' }, 'cm').message).toContain('nowhere.nothing');
  });
});
