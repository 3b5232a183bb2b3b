import { readFileSync } from 'node:fs';
import { PDFDocument } from '@cantoo/pdf-lib';
import { describe, expect, it } from 'vitest';
import { applyAlterations } from '../src/alter/index.ts';
import { housePattern } from '../src/drafting/index.ts';
import { sampleGarment, sampleStrip } from '../src/draw/testing/garment.ts';
import type { PrintContext, PrintRequest } from '../src/formats/index.ts';
import { printPdf } from '../src/formats/index.ts';
import { pathToSvg } from '../src/geometry/index.ts';
import { cutLine, type Garment, outlineOf, transformPiece } from '../src/pattern/index.ts';
import { assemble, judgeRuns, judgeScale, testSquare } from './oracle/assemble.ts';
import { readRuns, type Strokes } from './oracle/path.ts';
import { type PdfPrint, readPdf } from './oracle/read-pdf.ts';

const fontFile = (folder: string): Uint8Array =>
  new Uint8Array(
    readFileSync(
      new URL(`../node_modules/@expo-google-fonts/alegreya-sans/${folder}/AlegreyaSans_${folder}.ttf`, import.meta.url),
    ),
  );
const fonts = { regular: fontFile('400Regular'), bold: fontFile('700Bold') };

const asked: PrintRequest = {
  garment: sampleGarment,
  title: 'Harbour blouse',
  size: '42',
  make: 'Advent concert blouse',
  paper: 'a4',
  unit: 'cm',
  fonts,
};

const printed = async (request: Partial<PrintRequest> = {}, context: PrintContext = {}) => {
  const result = await printPdf({ ...asked, ...request }, context);
  if (!result.ok) throw new Error(result.problem.code);
  return result.value;
};

/** The plain A4 print, read back: many tests look at it, none changes it. */
let plainPrint: ReturnType<typeof printed> | null = null;
const plain = () => (plainPrint ??= printed());
let plainRead: Promise<PdfPrint> | null = null;
const plainPages = () => (plainRead ??= plain().then(({ bytes }) => readPdf(bytes)));

const runOf = (svg: string): Strokes => readRuns(svg)[0] as Strokes;
const cuts = (garment: Garment) =>
  garment.pieces.map((piece) => ({ name: piece.name, run: runOf(pathToSvg(cutLine(piece))) }));
const seams = (garment: Garment) =>
  garment.pieces.map((piece) => ({ name: piece.name, run: runOf(pathToSvg(outlineOf(piece))) }));
const wordsOf = (print: PdfPrint): string =>
  print.pages.flatMap((page) => page.texts.map(({ text }) => text)).join('\n');

describe('a print read back by other code', () => {
  for (const paper of ['a4', 'letter', 'a0', 'roll36'] as const) {
    it(`has every piece at its size on ${paper}`, async () => {
      const print = await readPdf((await printed({ paper })).bytes);
      const sheet = assemble(print);
      expect(judgeScale(print)).toEqual([]);
      expect(sheet.complaints).toEqual([]);
      expect(judgeRuns(sheet, 'cut', cuts(sampleGarment), 0.1)).toEqual([]);
      expect(judgeRuns(sheet, 'seam', seams(sampleGarment), 0.1)).toEqual([]);
    });
  }

  it('prints in points to far less than a tenth of a millimetre', async () => {
    const sheet = assemble(await plainPages());
    expect(judgeRuns(sheet, 'cut', cuts(sampleGarment), 0.001)).toEqual([]);
    // Cubics stay cubics: as many strokes as the line has segments.
    const expected = cuts(sampleGarment).map(({ run }) => run.length);
    const counts = sheet.lines.filter((line) => line.layer === 'cut').map((line) => line.run.length);
    expect(counts.toSorted()).toEqual(expected.toSorted());
  });

  it('has the four layers, by their names, and its squares in both measures', async () => {
    const print = await plainPages();
    expect(print.layers).toEqual(['cut', 'seam', 'marks', 'original']);
    expect(testSquare(print, 100)?.width).toBeCloseTo(100, 2);
    expect(testSquare(print, 101.6)?.height).toBeCloseTo(101.6, 2);
    expect(print.printScaling).toBe('None');
  });

  it('prints the pattern as bought in its own layer, at the same place', async () => {
    const before: Garment = {
      ...sampleGarment,
      pieces: sampleGarment.pieces.map((piece) =>
        piece.id === 'strip' ? transformPiece(piece, { a: 0.9, b: 0, c: 0, d: 1, e: 0, f: 0 }) : piece,
      ),
    };
    const sheet = assemble(await readPdf((await printed({ original: before })).bytes));
    const originals = sheet.lines.filter((line) => line.layer === 'original' && line.closed);
    expect(originals.length).toBe(2 * sampleGarment.pieces.length);
    expect(originals.every((line) => line.dash.length > 0)).toBe(true);
    expect(judgeRuns(sheet, 'original', [...cuts(before), ...seams(before)], 0.1)).toEqual([]);
  });

  for (const paper of ['a4', 'a0'] as const) {
    it(`has the altered blouse and the blouse as drafted at their sizes on ${paper}`, async () => {
      const size = housePattern('blouse')?.pattern().sizes[5];
      if (!size) throw new Error('no blouse');
      const step = { id: 's1', alteration: 'full-bust', version: 1, on: true, params: { amount: 20 } };
      const { garment, refusal } = applyAlterations(size.garment, [step]);
      expect(refusal).toBeFalsy();
      const print = await printed({ garment, original: size.garment, size: size.id, paper });
      expect(print.warnings).toEqual([]);
      const sheet = assemble(await readPdf(print.bytes));
      expect(sheet.complaints).toEqual([]);
      expect(judgeRuns(sheet, 'cut', cuts(garment), 0.1)).toEqual([]);
      expect(judgeRuns(sheet, 'seam', seams(garment), 0.1)).toEqual([]);
      expect(judgeRuns(sheet, 'original', [...cuts(size.garment), ...seams(size.garment)], 0.1)).toEqual([]);
      // The alteration is big enough for the judge to tell the two apart.
      expect(judgeRuns(sheet, 'seam', seams(size.garment), 0.1)).not.toEqual([]);
    });
  }

  it('labels each piece with what it is, how it is cut, and for which make, within its own tile or across', async () => {
    const words = wordsOf(
      await readPdf((await printed({ alterations: [{ text: 'Full bust: 4.0 cm in all', pieces: ['front'] }] })).bytes),
    );
    for (const part of [
      'Front',
      'Cut 1 of cloth, on the fold',
      'Cut 2 of cloth, one mirrored',
      'Grain along the arrow',
    ]) {
      expect(words).toContain(part);
    }
    expect(words).toContain('Full bust: 4.0 cm in all');
    expect(words).toContain('Size 42 · Harbour blouse');
    expect(words).toContain('For Advent concert blouse');
    expect(words).toContain('Seam allowance 0.6 cm included');
  });

  it('names the wearer only when asked', async () => {
    expect(wordsOf(await plainPages())).not.toContain('Ottilie');
    expect(wordsOf(await readPdf((await printed({ wearer: 'Ottilie' })).bytes))).toContain('Worn by Ottilie');
  });

  it('leaves empty tiles out, and keeps those inside a large piece', async () => {
    const print = await plain();
    const [columns, rows] = [4, 3];
    expect(print.tiles.length).toBeLessThanOrEqual(columns * rows);
    const strip = await printed({ garment: { ...sampleGarment, pieces: [sampleStrip], seams: [] } });
    expect(strip.tiles).toEqual(['A1', 'B1', 'C1']);
    const big = transformPiece(sampleStrip, { a: 1.5, b: 0, c: 0, d: 36, e: 0, f: 0 });
    const large = await printed({ garment: { ...sampleGarment, pieces: [big], seams: [] } });
    expect(large.tiles).toContain('B2');
  });

  it('is the same bytes for the same print', async () => {
    expect(Buffer.compare(Buffer.from((await plain()).bytes), Buffer.from((await printed()).bytes))).toBe(0);
  });
});

describe('planted faults', () => {
  const scaled = async (factor: number): Promise<PdfPrint> => {
    const document = await PDFDocument.load((await plain()).bytes);
    for (const page of document.getPages()) page.scaleContent(factor, factor);
    return readPdf(await document.save());
  };

  it('a print at 99 % is rejected, by its square and by its pieces', async () => {
    const print = await scaled(0.99);
    expect(judgeScale(print).length).toBeGreaterThan(0);
    expect(judgeRuns(assemble(print), 'cut', cuts(sampleGarment), 0.1)).not.toEqual([]);
  });

  it('an untouched copy written by the same hand is not', async () => {
    expect(judgeScale(await scaled(1))).toEqual([]);
  });

  it('a piece 0.3 mm wider than printed is noticed', async () => {
    const sheet = assemble(await plainPages());
    const wider = sampleGarment.pieces.map((piece) =>
      piece.id === 'strip' ? transformPiece(piece, { a: 420.3 / 420, b: 0, c: 0, d: 1, e: 0, f: 0 }) : piece,
    );
    expect(judgeRuns(sheet, 'seam', seams({ ...sampleGarment, pieces: wider }), 0.1)).toHaveLength(1);
  });

  it('a missing sheet is noticed', async () => {
    const document = await PDFDocument.load((await plain()).bytes);
    document.removePage(3);
    expect(assemble(await readPdf(await document.save())).complaints).not.toEqual([]);
  });
});

describe('what can go wrong', () => {
  it('prints a box for a letter the font lacks, and says so once', async () => {
    const print = await printed({ make: '漢 concert 漢' });
    expect(print.warnings).toEqual([{ code: 'formats.letter-missing', values: { letter: '漢 (U+6F22)' } }]);
    expect(wordsOf(await readPdf(print.bytes))).toContain('For □ concert □');
  });

  it('prints the letters of many tongues as they are', async () => {
    const name = 'Łucja Šťastná, Þórdís, Αγγελική, Жанна — 38 ⅝″';
    const print = await printed({ make: name });
    expect(print.warnings).toEqual([]);
    expect(wordsOf(await readPdf(print.bytes))).toContain(name);
  });

  it('says when a piece is too small for words', async () => {
    const tiny = transformPiece(sampleStrip, { a: 0.02, b: 0, c: 0, d: 0.4, e: 0, f: 0 });
    const print = await printed({ garment: { ...sampleGarment, pieces: [tiny], seams: [] } });
    expect(print.warnings).toEqual([{ code: 'formats.label-left-out', values: { piece: 'Neck strip' } }]);
  });

  it('refuses nothing to print, and letters that are no font', async () => {
    const none = await printPdf({ ...asked, garment: { pieces: [], seams: [], girths: [] } });
    expect(none).toMatchObject({ ok: false, problem: { code: 'formats.nothing-to-print' } });
    const noFont = await printPdf({ ...asked, fonts: { ...fonts, bold: new Uint8Array([1, 2, 3]) } });
    expect(noFont).toMatchObject({ ok: false, problem: { code: 'formats.font-unreadable' } });
  });

  it('reports rising progress up to the end, and stops between pages when cancelled', async () => {
    const shares: number[] = [];
    await printed({}, { report: (share) => shares.push(share) });
    expect(shares).toEqual(shares.toSorted((a, b) => a - b));
    expect(shares.at(-1)).toBe(1);
    let pages = 0;
    const stopped = await printPdf(asked, { report: () => pages++, cancelled: () => pages >= 2 });
    expect(stopped).toMatchObject({ ok: false, problem: { code: 'formats.cancelled' } });
    expect(pages).toBe(2);
  });

  it('carries a list of pieces that is too long for one page on to the next', async () => {
    const shortStrip = transformPiece(sampleStrip, { a: 0.3, b: 0, c: 0, d: 2, e: 0, f: 0 });
    const pieces = Array.from({ length: 60 }, (_, index) => ({
      ...shortStrip,
      id: `strip-${index}`,
      name: `Strip ${index}`,
    }));
    const result = await printed({ garment: { pieces, seams: [], girths: [] } });
    const print = await readPdf(result.bytes);
    expect(result.pages).toBeGreaterThan(result.tiles.length + 1);
    expect(assemble(print).tiles.length).toBe(result.tiles.length);
    expect(wordsOf(print)).toContain('Strip 59');
  });
});
