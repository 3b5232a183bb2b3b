import { describe, expect, it } from 'vitest';
import { sentence } from '../../src/words/index.ts';
import { cupLetter } from './cup-letter.ts';

describe('a cup typed as a letter', () => {
  it.each([
    ['A', '1″'],
    ['b', '2″'],
    ['B cup', '2″'],
    ['cup C', '3″'],
    ['D-cup', '4″'],
  ])('%s is asked about in words, with what it mostly stands for', (typed, likely) => {
    const said = cupLetter(typed);
    expect(said?.code).toBe('web.cup-letter');
    expect(said && sentence(said, 'in').remedy).toContain(`write ${likely}.`);
  });
  it('is not taken for a letter where it is a length or another word', () => {
    for (const typed of ['5', '2"', '5 cm', 'E', 'abc', '']) expect(cupLetter(typed), typed).toBeNull();
  });
});
