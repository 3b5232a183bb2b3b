import { describe, expect, it } from 'vitest';
import { housePattern } from '../drafting/index.ts';
import { formatLength } from '../units/index.ts';
import { clothQuestions, usualWidths } from './index.ts';

describe('the questions of a table of cloth needed', () => {
  const pattern = housePattern('jacket')?.pattern();
  const size = pattern?.sizes[4];
  if (!pattern || !size) throw new Error('The house has no jacket');

  it('ask for the widths usual where cloth is sold by the metre, unless told others', () => {
    const asked = clothQuestions(size.garment, pattern.cloth);
    expect(asked).toEqual(clothQuestions(size.garment, pattern.cloth, usualWidths.cm));
    expect([...new Set(asked.filter(({ layer }) => layer === 'shell').map(({ width }) => width))]).toEqual([
      900, 1150, 1400, 1500,
    ]);
  });

  it('ask for whole inches where it is sold by the yard, every layer on its own', () => {
    const asked = clothQuestions(size.garment, pattern.cloth, usualWidths.in);
    const said = (of: string) => [
      ...new Set(asked.filter(({ layer }) => layer === of).map(({ width }) => formatLength(width, 'in'))),
    ];
    expect(said('shell')).toEqual(['36″', '45″', '54″', '60″']);
    expect(said('lining')).toEqual(['45″', '54″', '60″']);
    expect(said('interfacing')).toEqual(['36″']);
    // What is laid is laid on cloth of that width.
    for (const { width, problem } of asked) if (problem) expect(problem.cloth.width).toBe(width);
  });
});
