import { describe, expect, it } from 'vitest';
import { alterationCard } from '../alter/index.ts';
import { harbourBlouse } from '../fit/testing/envelope.ts';
import { writeSvg } from '../formats/index.ts';
import type { AlterationStep } from '../pattern/index.ts';
import { drawCard, type GroupMark, type Mark, type TextMark } from './index.ts';

const drawn = (alteration: string, params: AlterationStep['params']) => {
  const step = { id: alteration, alteration, version: 1, on: true, params };
  const card = alterationCard({ envelope: harbourBlouse, view: 'a', size: '14', step });
  if (!card.ok) throw new Error(card.problem.code);
  const drawing = drawCard(card.value, { unit: 'cm' });
  if (!drawing) throw new Error('not drawn');
  return drawing;
};

const textsOf = (marks: readonly Mark[]): readonly TextMark[] =>
  marks.flatMap((mark) => (mark.kind === 'group' ? textsOf(mark.marks) : mark.kind === 'text' ? [mark] : []));

describe('the drawing of a card', () => {
  it.each([
    ['full-bust', 'full-bust', { amount: 20 }],
    ['shorten-sleeve', 'lengthen-shorten', { where: 'sleeve', amount: -25 }],
    ['lengthen', 'lengthen-shorten', { where: 'above-waist', amount: 25 }],
    ['blend', 'blend', { waist: '16', hip: '18' }],
  ] as const)('is %s', async (name, alteration, params) => {
    const svg = writeSvg(drawn(alteration, params), { unit: 'mm', decimals: 2 });
    await expect(svg).toMatchFileSnapshot(`golden/card-${name}.svg`);
  });
  it('has the piece before and after, its amounts, and a bar for the scale', () => {
    const { marks, label } = drawn('full-bust', { amount: 20 });
    const groups = marks.filter((mark): mark is GroupMark => mark.kind === 'group');
    expect(groups.map(({ id }) => id)).toEqual(['front', 'front']);
    expect(label).toContain('Full bust');
    const said = textsOf(marks).map(({ text }) => text.replaceAll('\u00a0', ' '));
    expect(said).toEqual(expect.arrayContaining(['2.0 cm', '20.0 cm']));
  });
});
