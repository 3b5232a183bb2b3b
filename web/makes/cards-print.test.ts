import { describe, expect, it } from 'vitest';
import { cardPaper, sayPrinted } from './cards-print.ts';

describe('printing the cards', () => {
  it('goes on the paper the program is set to, until she chooses another', () => {
    expect(cardPaper(null, 'letter')).toBe('letter');
    expect(cardPaper(null, 'a4')).toBe('a4');
    // A roll is for full-scale sheets.
    expect(cardPaper(null, 'roll36')).toBe('a4');
    expect(cardPaper('letter', 'a4')).toBe('letter');
    expect(cardPaper('a4', 'letter')).toBe('a4');
  });
  it('says one page as one page', () => {
    expect(sayPrinted(1, 1, 'en')).toBe('Done: one page, with one card.');
    expect(sayPrinted(3, 2, 'en')).toBe('Done: 3 pages, with 2 cards.');
  });
});
