import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { applyAlterations } from '../src/alter/index.ts';
import { housePattern } from '../src/drafting/index.ts';
import { cutPlaces } from '../src/draw/index.ts';
import { type PrintRequest, printPdf, printSummaryPdf } from '../src/formats/index.ts';
import { type Path, pathToSvg } from '../src/geometry/index.ts';
import { type AlterationStep, cutLine, type Garment, outlineOf, type Piece } from '../src/pattern/index.ts';
import { sayStep } from '../src/words/index.ts';
import { assemble, judgeRuns, judgeScale } from './oracle/assemble.ts';
import { readRuns, type Spot, type Strokes, spotAt } from './oracle/path.ts';
import { type PdfPage, type PdfPrint, readPdf } from './oracle/read-pdf.ts';

const font = (file: string): Uint8Array =>
  new Uint8Array(readFileSync(`node_modules/@expo-google-fonts/alegreya-sans/${file}`));
const fonts = {
  regular: font('400Regular/AlegreyaSans_400Regular.ttf'),
  bold: font('700Bold/AlegreyaSans_700Bold.ttf'),
};

const sizeOf = (id: string) => {
  const size = housePattern(id)?.pattern().sizes[5];
  if (!size) throw new Error(`no ${id}`);
  return size;
};
const step = (id: string, alteration: string, params: AlterationStep['params']): AlterationStep => ({
  id,
  alteration,
  version: 1,
  on: true,
  params,
});
const bust = step('s1', 'full-bust', { amount: 20 });
const longer = step('s2', 'lengthen-shorten', { where: 'below-waist', amount: 30 });

const size = sizeOf('blouse');
const altered = applyAlterations(size.garment, [bust, longer]);
const common = { title: 'Blouse', size: size.id, paper: 'a4', unit: 'cm', fonts } as const;

const printed = async (request: Partial<PrintRequest> = {}) => {
  const result = await printPdf({ ...common, garment: altered.garment, ...request });
  if (!result.ok) throw new Error(result.problem.code);
  return { ...result.value, read: await readPdf(result.value.bytes) };
};

const runOf = (path: Path): Strokes => readRuns(pathToSvg(path))[0] as Strokes;
const lines = (pieces: readonly Piece[], line: (piece: Piece) => Path) =>
  pieces.map((piece) => ({ name: piece.name, run: runOf(line(piece)) }));
const pieces = (garment: Garment, ...ids: readonly string[]) =>
  garment.pieces.filter(({ id }) => ids.length === 0 || ids.includes(id));
const wordsOf = (print: PdfPrint): string =>
  print.pages
    .flatMap((page) => page.texts.map(({ text }) => text))
    .join(' ')
    .replace(/\s+/g, ' ');

const plain = (text: string): string => text.replace(/\s+/g, ' ').toLowerCase();

/** Old lines of a piece that was printed apart still show on sheets that stay: she crosses them out. */
const butCrossedOut = (complaints: readonly string[]) => complaints.filter((one) => !/printed, \d+ expected/.test(one));

const spotsOn = (run: Strokes): readonly Spot[] =>
  run.flatMap((stroke) => Array.from({ length: 9 }, (_, i) => spotAt(stroke, i / 8)));

/** The greatest distance from a printed run to the lines it should be part of, each moved by the same amount. */
const farthest = (runs: readonly Strokes[], from: readonly Strokes[], by: Spot): number => {
  const dense = from.flatMap((run) =>
    run.flatMap((stroke) =>
      Array.from({ length: 200 }, (_, i) => [spotAt(stroke, i / 200), spotAt(stroke, (i + 1) / 200)] as const),
    ),
  );
  const near = (p: Spot): number =>
    Math.min(
      ...dense.map(([a, b]) => {
        const [dx, dy] = [b.x - a.x, b.y - a.y];
        const length = dx * dx + dy * dy;
        const [px, py] = [p.x - by.x - a.x, p.y - by.y - a.y];
        const t = length === 0 ? 0 : Math.max(0, Math.min(1, (px * dx + py * dy) / length));
        return Math.hypot(px - t * dx, py - t * dy);
      }),
    );
  return Math.max(...runs.flatMap((run) => spotsOn(run).map(near)));
};

describe('only the pieces that changed', () => {
  it('has those at their size, and says which were left out', async () => {
    const { read } = await printed({ original: size.garment, only: 'changed' });
    expect(judgeScale(read)).toEqual([]);
    const sheet = assemble(read);
    expect(sheet.complaints).toEqual([]);
    const changed = pieces(altered.garment, 'front', 'back');
    expect(judgeRuns(sheet, 'cut', lines(changed, cutLine), 0.1)).toEqual([]);
    expect(judgeRuns(sheet, 'seam', lines(changed, outlineOf), 0.1)).toEqual([]);
    expect(sheet.lines.filter(({ layer, closed, run }) => layer === 'cut' && closed && run.length > 3)).toHaveLength(2);
    expect(wordsOf(read)).toContain('nothing about it changed: Sleeve, Front neck facing, Back neck facing');
    // Planted: the judge tells the pieces as bought from the pieces as altered.
    expect(judgeRuns(sheet, 'cut', lines(pieces(size.garment, 'front'), cutLine), 0.1)).not.toEqual([]);
  });

  it('refuses when nothing changed', async () => {
    const result = await printPdf({ ...common, garment: size.garment, original: size.garment, only: 'changed' });
    expect(result).toMatchObject({ ok: false, problem: { code: 'formats.nothing-changed' } });
  });
});

describe('sheets exchanged in an earlier print', () => {
  const sameWords = (page: PdfPage): readonly string[] =>
    page.texts
      .filter(({ layer }) => layer !== null)
      .map(({ text, at }) => `${text} ${at.x.toFixed(2)} ${at.y.toFixed(2)}`);

  for (const [name, list, paper] of [
    ['blouse', [bust, longer], 'a4'],
    ['shirt-dress', [bust], 'letter'],
  ] as const) {
    it(`makes one whole print with the sheets of the ${name} that stay, on ${paper}`, async () => {
      const { garment } = sizeOf(name);
      const now = applyAlterations(garment, list).garment;
      const first = await printed({ garment, paper });
      const exchange = await printed({ garment: now, paper, printed: { garment } });
      const gone =
        /Take out, nothing is on them any more: ([^.]*)\./.exec(wordsOf(exchange.read))?.[1]?.split(', ') ?? [];
      const [before, after] = [assemble(first.read), assemble(exchange.read)];
      expect(exchange.tiles.length).toBeLessThan(first.tiles.length);
      const kept = before.tiles.filter(({ name: tile }) => !exchange.tiles.includes(tile) && !gone.includes(tile));
      expect(kept.length).toBeGreaterThan(0);
      const joined = assemble({
        ...exchange.read,
        pages: [...kept.map(({ page }) => page), ...after.tiles.map(({ page }) => page)],
      });
      expect(joined.tiles.length).toBe(kept.length + exchange.tiles.length);
      expect(butCrossedOut(judgeRuns(joined, 'cut', lines(pieces(now), cutLine), 0.1))).toEqual([]);
      expect(butCrossedOut(judgeRuns(joined, 'seam', lines(pieces(now), outlineOf), 0.1))).toEqual([]);
      // Planted: with one exchanged sheet forgotten the print is not whole.
      const forgotten = assemble({
        ...exchange.read,
        pages: [...kept.map(({ page }) => page), ...after.tiles.slice(1).map(({ page }) => page)],
      });
      expect(
        butCrossedOut(judgeRuns(forgotten, 'cut', lines(pieces(now), cutLine), 0.1)).length +
          forgotten.complaints.length,
      ).toBeGreaterThan(0);
    });
  }

  it('has nothing to exchange where nothing changed, and nothing on paper of a print shop', async () => {
    const same = { ...common, garment: size.garment, printed: { garment: size.garment } };
    expect(await printPdf(same)).toMatchObject({ ok: false, problem: { code: 'formats.nothing-changed' } });
    expect(await printPdf({ ...same, garment: altered.garment, paper: 'a0' })).toMatchObject({
      ok: false,
      problem: { code: 'formats.no-exchange' },
    });
  });

  it('prints unchanged pieces word for word as they were', async () => {
    const first = await printed({ garment: size.garment });
    const exchange = await printed({ printed: { garment: size.garment } });
    const sleeveOf = (page: PdfPage) => sameWords(page).filter((text) => text.startsWith('Sleeve'));
    const was = new Set(first.read.pages.flatMap(sleeveOf));
    expect(exchange.read.pages.flatMap(sleeveOf).every((text) => was.has(text))).toBe(true);
  });
});

describe('overlays for the tissue', () => {
  const cuts = cutPlaces(size.garment, altered);
  const alterations = altered.outcomes.map(({ step: one }) => ({ text: sayStep(one, 'cm') }));

  it('has the old line and the new where they lie on the piece, and three places to lay it by', async () => {
    for (const id of ['front', 'back']) {
      const alone: Garment = { ...altered.garment, pieces: pieces(altered.garment, id) };
      const { read } = await printed({ garment: alone, original: size.garment, only: 'overlay', cuts, alterations });
      expect(judgeScale(read)).toEqual([]);
      expect(read.layers).toEqual(['cut', 'seam', 'marks', 'original']);
      const sheet = assemble(read);
      expect(sheet.complaints).toEqual([]);
      const [was, now] = [pieces(size.garment, id)[0] as Piece, pieces(altered.garment, id)[0] as Piece];
      const runs = (layer: string) =>
        sheet.lines.filter((line) => line.layer === layer && line.run.length > 0).map(({ run }) => run);
      const old = [runOf(cutLine(was)), runOf(outlineOf(was))];
      // Where the overlay lies on the sheet is read off the top left of its new cut line's neighbour, the old one: tried from each printed corner.
      const corners = old.flatMap((run) => run.map((stroke) => stroke.points[0]));
      const ends = runs('original').flatMap((run) => run.map((stroke) => stroke.points[0]));
      const shifts = ends.flatMap((start) =>
        corners.map((corner) => ({ x: start.x - corner.x, y: start.y - corner.y })),
      );
      const fits = (by: Spot) =>
        ends.filter((end) =>
          corners.some((corner) => Math.hypot(corner.x + by.x - end.x, corner.y + by.y - end.y) < 0.05),
        ).length;
      const by = shifts.toSorted((a, b) => fits(b) - fits(a))[0] as Spot;
      const legs = (piece: Piece): readonly Strokes[] =>
        piece.darts.flatMap((dart) => {
          const mouth = piece.runs.find((run) => run.kind === 'mouth' && run.dart === dart.id)?.path ?? [];
          return [mouth[0]?.from, mouth.at(-1)?.to].flatMap((end): Strokes[] =>
            end ? [[{ points: [end, dart.point] }]] : [],
          );
        });
      expect(farthest(runs('original'), [...old, ...legs(was)], by)).toBeLessThan(0.1);
      expect(farthest(runs('cut'), [runOf(cutLine(now))], by)).toBeLessThan(0.1);
      expect(farthest(runs('seam'), [runOf(outlineOf(now))], by)).toBeLessThan(0.1);
      // Planted: the old line is not taken for the new one.
      expect(
        farthest(runs('original'), [runOf(cutLine(now)), runOf(outlineOf(now)), ...legs(now)], by),
      ).toBeGreaterThan(5);
      const words = wordsOf(read);
      for (const number of [1, 2, 3]) expect(words).toContain(`Register here ${number}`);
      expect(words).toContain(`${now.name}: overlay for the tissue`);
      expect(words).toContain('2: 3.0 cm put in');
      if (id === 'front') expect(words).toContain('4.0 cm in all');
    }
  });
});

describe('the summary to work from', () => {
  const six = [
    bust,
    longer,
    step('s3', 'lengthen-shorten', { where: 'sleeve', amount: 20 }),
    step('s4', 'lengthen-shorten', { where: 'above-waist', amount: 10 }),
    step('s5', 'lengthen-shorten', { where: 'below-waist', amount: -8 }),
    step('s6', 'lengthen-shorten', { where: 'sleeve', amount: -6 }),
  ];

  for (const id of ['blouse', 'shirt-dress']) {
    for (const paper of ['a4', 'letter'] as const) {
      it(`is one page for six steps on the ${id}, on ${paper}, and says each step with its amounts`, async () => {
        const { garment, id: name } = sizeOf(id);
        const list = applyAlterations(garment, six);
        expect(list.refusal).toBeNull();
        const result = await printSummaryPdf({
          ...common,
          title: id,
          size: name,
          before: garment,
          altered: list,
          paper,
        });
        if (!result.ok) throw new Error(result.problem.code);
        const read = await readPdf(result.value.bytes);
        expect(read.pages).toHaveLength(1);
        const page = read.pages[0] as PdfPage;
        const said = wordsOf(read).toLowerCase();
        for (const one of list.outcomes) expect(said).toContain(plain(sayStep(one.step, 'cm')));
        expect(said).toContain('4.0 cm in all');
        expect(said).toContain('sleeve-head ease');
        // 8 point, and nothing off the paper.
        expect(Math.min(...page.texts.map(({ size: em }) => em))).toBeGreaterThan(2.82);
        for (const { at } of page.texts) {
          expect(at.x).toBeGreaterThan(5);
          expect(at.y).toBeLessThan(page.height - 5);
        }
        // Planted: a step that is not on the list is not said.
        expect(said).not.toContain(plain(sayStep(step('x', 'full-bust', { amount: 25 }), 'cm')));
      });
    }
  }
});
