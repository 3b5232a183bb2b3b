import * as fontkit from '@cantoo/fontkit';
import { type Mark, markBounds } from '../draw/index.ts';
import { type Bounds, boundsMeet } from '../geometry/index.ts';
import { bad, good, type Result } from '../units/index.ts';
import { fill, formatsWords as words } from '../words/index.ts';
import { clearOf } from './busy.ts';
import type { TileFrame } from './paper.ts';
import { openPdf, type PdfFile } from './pdf-file.ts';
import { clipped, furnitureOperators, layeredOperators } from './pdf-marks.ts';
import { heading, type PrintPlan, planPrint } from './print-plan.ts';
import type { PrintContext, PrintedPattern, PrintRequest } from './print-request.ts';
import { drawPlaced, pageHeight, tileHeight } from './print-sheet.ts';
import { tileFurniture } from './print-tile.ts';
import type { Tile } from './tiles.ts';

/**
 * A garment's pieces at full scale: laid on a virtual sheet, cut into tiles of the paper, with what is needed to
 * print, check and join them. Lines and cubics are written as they are; layers are `cut`, `seam`, `marks`, `original`.
 * Problems: `formats.nothing-to-print`, `formats.nothing-changed`, `formats.no-exchange`, `formats.font-unreadable`,
 * `formats.cancelled`. Warnings: `formats.letter-missing`,
 * `formats.label-left-out`.
 */
export const printPdf = async (request: PrintRequest, context: PrintContext = {}): Promise<Result<PrintedPattern>> => {
  if (request.garment.pieces.length === 0) return bad('formats.nothing-to-print');
  const file = await openFile(request);
  if (!file) return bad('formats.font-unreadable');
  const planned = planPrint(request, file.fonts.width);
  if (!planned.ok) return planned;
  const plan = planned.value;
  const { frame, sheet } = plan;
  const drawn = sheet.pieces.map((piece) => ({ piece, ...drawPlaced(piece, frame, request, file.fonts.width) }));
  const marks = drawn.flatMap((one) => one.marks);
  const pages = [
    ...plan.coverApart.map((page) => coverPage(page, frame, file)),
    ...tilePages(request, plan, marks, file),
  ];
  for (const [index, page] of pages.entries()) {
    await context.pause?.();
    if (context.cancelled?.()) return bad('formats.cancelled');
    file.addPage(frame.paper.width, page.height, page.operators());
    context.report?.((index + 1) / (pages.length + 1));
  }
  const bytes = await file.bytes();
  context.report?.(1);
  const unlabelled = drawn.filter(({ labelled }) => !labelled);
  return good({
    bytes,
    pages: pages.length,
    tiles: sheet.printed.map((tile) => tile.name),
    warnings: [
      ...file.fonts.warnings(),
      ...unlabelled.map(({ piece }) => ({ code: 'formats.label-left-out', values: { piece: piece.piece.name } })),
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

interface Page {
  readonly height: number;
  /** Made only when its turn comes, so that a cancelled print stops early. */
  operators(): string;
}

const coverPage = (marks: readonly Mark[], frame: TileFrame, file: PdfFile): Page => {
  const at = { origin: { x: frame.margin, y: frame.margin }, pageHeight: frame.paper.height };
  return { height: frame.paper.height, operators: () => furnitureOperators(at, marks, file.fonts) };
};

interface BoundedMark {
  readonly mark: Mark;
  readonly bounds: Bounds;
}

/** Lines printed at a border are half outside it: this much is looked beyond a sheet for marks that reach into it. */
const lineReach = 1;

const tilePages = (
  request: PrintRequest,
  { frame, sheet, coverHere: cover, exchange }: PrintPlan,
  marks: readonly Mark[],
  file: PdfFile,
): readonly Page[] => {
  const textWidth = file.fonts.width;
  const isClear = clearOf([...marks, ...cover], textWidth);
  const bounded = marks.flatMap((mark): BoundedMark[] => {
    const bounds = markBounds(mark, textWidth);
    return bounds ? [{ mark, bounds }] : [];
  });
  // A ring half on a sheet that stays must stand where it stood.
  const isClearAt = exchange?.isClear ?? isClear;
  return sheet.printed.map((tile, index): Page => {
    const height = tileHeight(tile, frame, sheet);
    const tall = pageHeight(height, frame);
    return {
      height: tall,
      operators: () => {
        const step = fill(words.tileSize, { width: shown(frame.stepX), height: shown(height) }, request.unit);
        const header = fill(
          exchange ? words.tileHeaderExchange : words.tileHeader,
          { title: heading(request), number: index + 1, count: sheet.printed.length, step },
          request.unit,
          request.locale,
        );
        const own = sheet.joints.filter((joint) => joint.first === tile || joint.second === tile);
        const furniture = tileFurniture(tile, own, frame, height, header, textWidth, isClear, isClearAt);
        return tileOperators(
          tile,
          frame,
          { height, pageHeight: tall },
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
