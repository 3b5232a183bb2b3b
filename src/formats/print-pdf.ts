import * as fontkit from '@cantoo/fontkit';
import { type Mark, markBounds, moveMarks, type TextWidth } from '../draw/index.ts';
import { type Bounds, boundsMeet, translation } from '../geometry/index.ts';
import { bad, good, type Result } from '../units/index.ts';
import { fill, formatsWords as words } from '../words/index.ts';
import { clearOf } from './busy.ts';
import { paperSizes, type TileFrame, tileFrame } from './paper.ts';
import { openPdf, type PdfFile } from './pdf-file.ts';
import { clipped, furnitureOperators, layeredOperators } from './pdf-marks.ts';
import { coverPages } from './print-cover.ts';
import { sheetMap } from './print-map.ts';
import type { PrintContext, PrintedPattern, PrintRequest } from './print-request.ts';
import { layOut, type PrintPiece, printPiece, type Sheet } from './print-sheet.ts';
import { tileFurniture } from './print-tile.ts';
import { jointsOf, type Tile } from './tiles.ts';

/** What is told about the print takes this width, on a large sheet too: that of the narrower home paper. */
const coverWidth = 194;
/** Round it, to the frame and to the pieces, mm. */
const coverInset = 6;
const insetCover = (marks: readonly Mark[]) => moveMarks(marks, translation({ x: coverInset, y: coverInset }));

/**
 * A garment's pieces at full scale: laid on a virtual sheet, cut into tiles of the paper, with what is needed to
 * print, check and join them. Lines and cubics are written as they are; layers are `cut`, `seam`, `marks`, `original`.
 * Problems: `formats.nothing-to-print`, `formats.font-unreadable`, `formats.cancelled`. Warnings: `formats.letter-missing`,
 * `formats.label-left-out`.
 */
export const printPdf = async (request: PrintRequest, context: PrintContext = {}): Promise<Result<PrintedPattern>> => {
  if (request.garment.pieces.length === 0) return bad('formats.nothing-to-print');
  const file = await openFile(request);
  if (!file) return bad('formats.font-unreadable');
  const frame = tileFrame(paperSizes[request.paper]);
  const textWidth = file.fonts.width;
  const pieces = request.garment.pieces.map((piece, index) => printPiece(piece, index + 1, request));
  const coverHeight = frame.paper.coverApart ? 0 : (coverOf(request, frame, pieces, null, textWidth)[0]?.height ?? 0);
  const reserved = coverHeight === 0 ? 0 : coverHeight + 2 * coverInset;
  const sheet = layOut(
    pieces,
    frame,
    { width: reserved === 0 ? 0 : coverWidth + 2 * coverInset, height: reserved },
    request,
    textWidth,
  );
  const cover = coverOf(request, frame, pieces, sheet, textWidth);
  const pages = [
    ...(frame.paper.coverApart ? cover.map((page) => coverPage(page.marks, frame, file)) : []),
    ...tilePages(request, frame, sheet, frame.paper.coverApart ? [] : insetCover(cover[0]?.marks ?? []), file),
  ];
  for (const [index, page] of pages.entries()) {
    await context.pause?.();
    if (context.cancelled?.()) return bad('formats.cancelled');
    file.addPage(frame.paper.width, page.height, page.operators());
    context.report?.((index + 1) / (pages.length + 1));
  }
  const bytes = await file.bytes();
  context.report?.(1);
  const unlabelled = sheet.pieces.filter((piece) => !piece.labelled);
  return good({
    bytes,
    pages: pages.length,
    tiles: sheet.tiles.map((tile) => tile.name),
    warnings: [
      ...file.fonts.warnings(),
      ...unlabelled.map(({ piece }) => ({ code: 'formats.label-left-out', values: { piece: piece.name } })),
    ],
  });
};

/** Null where the font files cannot be read. */
const openFile = async (request: PrintRequest): Promise<PdfFile | null> => {
  try {
    return await openPdf({ title: heading(request), subject: words.pdfSubject, fonts: request.fonts, fontkit });
  } catch {
    return null;
  }
};

const sizeFact = (request: PrintRequest) => fill(words.sizeFact, { size: request.size }, request.unit, request.locale);

const heading = (request: PrintRequest): string =>
  [request.title, sizeFact(request), ...(request.make === undefined ? [] : [request.make])].join(' · ');

interface Page {
  readonly height: number;
  /** Made only when its turn comes, so that a cancelled print stops early. */
  operators(): string;
}

const coverPage = (marks: readonly Mark[], frame: TileFrame, file: PdfFile): Page => {
  const at = { origin: { x: frame.margin, y: frame.margin }, pageHeight: frame.paper.height };
  return { height: frame.paper.height, operators: () => furnitureOperators(at, marks, file.fonts) };
};

/** Before the sheet is laid out its height is already right: neither the map nor the number of sheets changes it. */
const coverOf = (
  request: PrintRequest,
  frame: TileFrame,
  pieces: readonly PrintPiece[],
  sheet: Sheet | null,
  textWidth: TextWidth,
) => {
  const { unit, locale } = request;
  const say = (template: string, values: Readonly<Record<string, string>>) => fill(template, values, unit, locale);
  const count = sheet?.tiles.length ?? 1;
  const apart = frame.paper.coverApart;
  const sheets =
    count === 1 ? (apart ? words.sheetApart : words.sheetHere) : apart ? words.sheetsApart : words.sheetsHere;
  return coverPages(
    {
      title: request.title,
      facts: [
        [
          sizeFact(request),
          ...(request.make === undefined ? [] : [say(words.makeFact, { make: request.make })]),
          ...(request.wearer === undefined ? [] : [say(words.wearerFact, { wearer: request.wearer })]),
        ].join(' · '),
        say(sheets, { count: `${count}`, paper: words.paper[request.paper] }),
      ],
      pieces: pieces.map((piece) => ({ number: piece.number, text: piece.entry })),
      alterations: (request.alterations ?? []).map((one) => one.text),
      joins: apart || count > 1,
      originals: request.original !== undefined,
      map: (box, textSize) => {
        if (!sheet) return { marks: [], height: 0 };
        const step = { x: frame.stepX, y: frame.paper.roll ? Math.min(frame.stepY, sheet.length) : frame.stepY };
        return sheetMap(sheet.tiles, step, sheet.pieces, box, textSize);
      },
    },
    apart ? frame.paper.width - 2 * frame.margin : coverWidth,
    apart ? frame.paper.height - 2 * frame.margin : null,
    textWidth,
  );
};

interface BoundedMark {
  readonly mark: Mark;
  readonly bounds: Bounds;
}

/** Lines printed at a border are half outside it: this much is looked beyond a sheet for marks that reach into it. */
const lineReach = 1;

const tilePages = (
  request: PrintRequest,
  frame: TileFrame,
  sheet: Sheet,
  cover: readonly Mark[],
  file: PdfFile,
): readonly Page[] => {
  const textWidth = file.fonts.width;
  const marks = sheet.pieces.flatMap((piece) => piece.marks);
  const isClear = clearOf([...marks, ...cover], textWidth);
  const bounded = marks.flatMap((mark): BoundedMark[] => {
    const bounds = markBounds(mark, textWidth);
    return bounds ? [{ mark, bounds }] : [];
  });
  const joints = jointsOf(sheet.tiles);
  return sheet.tiles.map((tile, index): Page => {
    const height = frame.paper.roll ? Math.min(frame.stepY, sheet.length - tile.row * frame.stepY) : frame.stepY;
    const pageHeight = height + frame.overlap + frame.header + 2 * frame.margin;
    return {
      height: pageHeight,
      operators: () => {
        const step = fill(words.tileSize, { width: shown(frame.stepX), height: shown(height) }, request.unit);
        const header = fill(
          words.tileHeader,
          { title: heading(request), number: index + 1, count: sheet.tiles.length, step },
          request.unit,
          request.locale,
        );
        const own = joints.filter((joint) => joint.first === tile || joint.second === tile);
        const furniture = tileFurniture(tile, own, frame, height, header, textWidth, isClear);
        return tileOperators(
          tile,
          frame,
          { height, pageHeight },
          bounded,
          {
            window: [...(index === 0 ? cover : []), ...furniture.window],
            header: furniture.header,
          },
          file,
        );
      },
    };
  });
};

/** Tenths of a millimetre, with a point whatever the language: a machine reads it too. */
const shown = (mm: number): string => String(Number(mm.toFixed(1)));

const tileOperators = (
  tile: Tile,
  frame: TileFrame,
  { height, pageHeight }: { readonly height: number; readonly pageHeight: number },
  marks: readonly BoundedMark[],
  furniture: { readonly window: readonly Mark[]; readonly header: readonly Mark[] },
  file: PdfFile,
): string => {
  const window = {
    x: tile.column * frame.stepX,
    y: tile.row * frame.stepY,
    width: frame.stepX + frame.overlap,
    height: height + frame.overlap,
  };
  const at = {
    origin: { x: frame.margin - window.x, y: frame.margin + frame.header - window.y },
    pageHeight,
  };
  const reach: Bounds = {
    minX: window.x,
    minY: window.y,
    maxX: window.x + window.width,
    maxY: window.y + window.height,
  };
  const here = marks.filter(({ bounds }) => boundsMeet(bounds, reach, lineReach)).map(({ mark }) => mark);
  const pattern = layeredOperators(at, here, file.fonts);
  return [
    clipped(at, window, [furnitureOperators(at, furniture.window, file.fonts), pattern].join('\n')),
    furnitureOperators(at, furniture.header, file.fonts),
  ].join('\n');
};
