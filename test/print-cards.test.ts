import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { alterationCard, type Card, sayCard } from '../src/alter/index.ts';
import { harbourBlouse } from '../src/fit/testing/envelope.ts';
import { type CardPrintOptions, printCardsPdf } from '../src/formats/index.ts';
import { pathBounds } from '../src/geometry/index.ts';
import { type AlterationStep, cutLine, pieceOf } from '../src/pattern/index.ts';
import { sampled } from './oracle/path.ts';
import { type PdfPage, readPdf } from './oracle/read-pdf.ts';

const fontFile = (folder: string): Uint8Array =>
  new Uint8Array(
    readFileSync(
      new URL(`../node_modules/@expo-google-fonts/alegreya-sans/${folder}/AlegreyaSans_${folder}.ttf`, import.meta.url),
    ),
  );
const fonts = { regular: fontFile('400Regular'), bold: fontFile('700Bold') };

const cardOf = (alteration: string, params: AlterationStep['params']): Card => {
  const step = { id: alteration, alteration, version: 1, on: true, params };
  const card = alterationCard({ envelope: harbourBlouse, view: 'a', size: '14', step });
  if (!card.ok) throw new Error(card.problem.code);
  return card.value;
};
const cards = [
  cardOf('full-bust', { amount: 20 }),
  cardOf('small-bust', { amount: 7 }),
  cardOf('lengthen-shorten', { where: 'above-waist', amount: 25 }),
  cardOf('lengthen-shorten', { where: 'sleeve', amount: -25 }),
  cardOf('blend', { waist: '16', hip: '18' }),
];

const printed = async (options: Omit<CardPrintOptions, 'fonts'>, wanted: readonly Card[] = cards) => {
  const result = await printCardsPdf(wanted, { fonts, ...options });
  if (!result.ok) throw new Error(result.problem.code);
  return result.value;
};

/** Words as a reader puts them together, whatever the line breaks. */
const wordsOf = (page: PdfPage): string =>
  page.texts
    .map(({ text }) => text)
    .join(' ')
    .replace(/\s+/gu, ' ');
const spaced = (text: string): string => text.replace(/\s+/gu, ' ');

describe.each([
  { paper: 'a4', unit: 'cm', width: 210, height: 297 },
  { paper: 'letter', unit: 'in', width: 215.9, height: 279.4 },
] as const)('cards on $paper, read back', ({ paper, unit, width, height }) => {
  const print = printed({ paper, unit });
  const pages = print.then(({ bytes }) => readPdf(bytes)).then((read) => read.pages);
  it('stand one on each sheet, clear of its margins', async () => {
    expect(await pages).toHaveLength(cards.length);
    for (const page of await pages) {
      expect(page.width).toBeCloseTo(width, 2);
      expect(page.height).toBeCloseTo(height, 2);
      for (const { at, size } of page.texts) {
        expect(size).toBeGreaterThanOrEqual(3.5);
        expect(Math.min(at.x, at.y - size, width - at.x, height - at.y)).toBeGreaterThan(10);
      }
    }
  });
  it('say every word and amount in her unit', async () => {
    for (const [index, page] of (await pages).entries()) {
      const said = sayCard(cards[index] as Card, unit);
      const text = wordsOf(page);
      for (const line of [said.title, said.of, ...said.amounts]) expect(text).toContain(spaced(line));
      for (const line of [
        ...said.where,
        ...said.steps,
        ...said.follows,
        ...said.holds,
        ...said.cautions,
        ...said.cloth,
      ]) {
        expect(text).toContain(spaced(line));
      }
      expect(text).not.toMatch(unit === 'cm' ? /[″]/ : / (cm|mm)\b/);
    }
  });
  it('draw the piece to the scale they name', async () => {
    const { scales } = await print;
    for (const [index, page] of (await pages).entries()) {
      const { picture } = cards[index] as Card;
      const scale = scales[index];
      if (!picture || !scale) throw new Error('not drawn');
      expect(wordsOf(page)).toContain(`1:${scale}`);
      const firm = page.lines.filter(
        ({ painted, dash, width: line }) => painted === 'stroke' && dash.length === 0 && line > 0.55,
      );
      const widths = firm.flatMap(({ runs }) =>
        runs.map((run) => {
          const xs = sampled(run, 0.1).map(({ x }) => x);
          return Math.max(...xs) - Math.min(...xs);
        }),
      );
      const changed = picture.before.pieces.filter((piece) => pieceOf(picture.after, piece.id) !== piece);
      for (const piece of changed) {
        const { minX, maxX } = pathBounds(cutLine(piece));
        const wide = (maxX - minX) / scale;
        expect(
          widths.some((one) => Math.abs(one - wide) < 0.05),
          `${piece.id} ${wide} in ${widths}`,
        ).toBe(true);
      }
    }
  });
});

describe('card prints', () => {
  it('are the same bytes for the same cards', async () => {
    const [first] = cards;
    const once = await printed({ paper: 'a4', unit: 'cm' }, first ? [first] : []);
    const again = await printed({ paper: 'a4', unit: 'cm' }, first ? [first] : []);
    expect(Buffer.from(once.bytes).equals(Buffer.from(again.bytes))).toBe(true);
  });
  it('refuse no cards and fonts that are none', async () => {
    expect(await printCardsPdf([], { paper: 'a4', unit: 'cm', fonts })).toMatchObject({
      problem: { code: 'formats.no-cards' },
    });
    const broken = { regular: new Uint8Array([1, 2, 3]), bold: new Uint8Array([4]) };
    expect(await printCardsPdf(cards, { paper: 'a4', unit: 'cm', fonts: broken })).toMatchObject({
      problem: { code: 'formats.font-unreadable' },
    });
  });
});
