import * as fontkit from '@cantoo/fontkit';
import {
  type CutPlace,
  circle,
  cutPlaces,
  drawBeforeAfter,
  filledMark,
  type GroupMark,
  type Mark,
  marksBounds,
  moveMarks,
  pathMark,
  rectangle,
  type TextWidth,
  textMark,
} from '../draw/index.ts';
import {
  type Path,
  pathBounds,
  pathLength,
  pathPointAtLength,
  polyline,
  scaling,
  translation,
} from '../geometry/index.ts';
import { cutLine, dartOf, outlineOf } from '../pattern/index.ts';
import { bad, formatLength, good, type Problem, type Result } from '../units/index.ts';
import { fill, formatsWords } from '../words/index.ts';
import { paperSizes } from './paper.ts';
import { openPdf, type PdfFile } from './pdf-file.ts';
import type { FontFiles } from './pdf-fonts.ts';
import { furnitureOperators } from './pdf-marks.ts';
import { type ChangedPiece, changedPieces, type SummarySubject, summaryItems } from './summary-words.ts';
import { type Column, flow, wrap } from './text-flow.ts';

const words = formatsWords.summary;

export interface SummaryRequest extends SummarySubject {
  readonly paper: 'a4' | 'letter';
  readonly fonts: FontFiles;
}

export interface PrintedSummary {
  readonly bytes: Uint8Array;
  readonly pages: number;
  /** Em of the smallest words, mm. */
  readonly textSize: number;
  readonly warnings: readonly Problem[];
}

/** Left free on every side, mm. */
const margin = 11;
const gap = 6;
const titleSize = 5.6;
/** Ems of the words that are tried, the largest first: 10 down to 8 point. */
const textSizes = [3.53, 3.3, 3.1, 2.95, 2.83] as const;
/** Heights of the row of drawings that are tried, mm. */
const heights = [125, 110, 95, 80, 66] as const;

interface Panel {
  readonly marks: readonly Mark[];
  readonly width: number;
  readonly height: number;
}

const fitted = (marks: readonly Mark[], textWidth: TextWidth): Panel => {
  const box = marksBounds(marks, textWidth) ?? { minX: 0, minY: 0, maxX: 0, maxY: 0 };
  return {
    marks: moveMarks(marks, translation({ x: -box.minX, y: -box.minY })),
    width: box.maxX - box.minX,
    height: box.maxY - box.minY,
  };
};

/** The darts of a piece, from leg to leg over the point: without them nobody finds her way on a small drawing. */
const dartsOf = (piece: ChangedPiece['after']): readonly Path[] =>
  piece.darts.map(({ id }) => {
    const { point, legs } = dartOf(piece, id);
    return polyline([legs[0], point, legs[1]], false);
  });

/** The piece as it was with where each step cuts, hinges ringed and amounts at `size` once drawn `scale` times as large. */
const beforePanel = (
  { before, after }: ChangedPiece,
  cuts: readonly CutPlace[],
  { unit, locale = 'en' }: SummarySubject,
  size: number,
  textWidth: TextWidth,
): Panel => {
  const piece = before ?? after;
  const own = cuts.filter((cut) => cut.piece === after.id);
  const amounts: Mark[] = [];
  const taken: { x: number; y: number; width: number; text: string }[] = [];
  for (const cut of own) {
    if (cut.amount === null) continue;
    const amount = formatLength(Math.abs(cut.amount), unit, { purpose: 'amount', locale });
    const text = `${cut.step}: ${cut.amount < 0 ? '−' : '+'}${amount}`;
    const width = textWidth(text, size, 'bold');
    const at = pathPointAtLength(cut.path, pathLength(cut.path) / 2);
    // Two cuts of one step side by side, or the two legs of a wedge, are told once.
    if (taken.some((one) => one.text === text && Math.hypot(one.x - at.x, one.y - at.y) < width * 1.5)) continue;
    const tries = [0, 1, -1, 2, -2, 3, -3, 4, -4, 5].map((off) => ({ x: at.x, y: at.y + off * size * 1.15 }));
    const free = tries.find(
      (p) =>
        !taken.some((one) => Math.abs(one.y - p.y) < size * 1.1 && Math.abs(one.x - p.x) < (one.width + width) / 2),
    );
    if (!free) continue;
    taken.push({ ...free, width, text });
    amounts.push(
      filledMark('words', 'paper', rectangle(free.x - width / 2, free.y - size * 0.5, width, size)),
      textMark('words', 'mark', { x: free.x, y: free.y + size * 0.3 }, text, size, {
        anchor: 'middle',
        weight: 'bold',
      }),
    );
  }
  const red = own.map(({ path }) => path);
  const hinges = own.flatMap(({ hinge }) => (hinge ? [circle(hinge, size * 0.35)] : []));
  return fitted(
    [
      pathMark('cut', 'mark', cutLine(piece)),
      pathMark('seam', 'seam', outlineOf(piece), ...dartsOf(piece)),
      ...(red.length > 0 ? [pathMark('marks', 'changed', ...red)] : []),
      ...(hinges.length > 0 ? [pathMark('marks', 'mark', ...hinges)] : []),
      ...amounts,
      caption(piece, fill(words.before, { name: piece.name }, unit, locale), size),
    ],
    textWidth,
  );
};

const caption = (piece: ChangedPiece['after'], text: string, size: number): Mark => {
  const { minX, minY } = pathBounds(cutLine(piece));
  return textMark('words', 'mark', { x: minX, y: minY - size * 0.6 }, text, size, { weight: 'bold' });
};

const shownSmall: ReadonlySet<string> = new Set(['cut', 'seam', 'mark', 'original', 'changed']);

/** The piece as altered over the piece as it was. */
const afterPanel = ({ before, after }: ChangedPiece, subject: SummarySubject, size: number, textWidth: TextWidth) => {
  const alone = (piece: ChangedPiece['after']) => ({ pieces: [piece], seams: [], girths: [] });
  const drawing = drawBeforeAfter(alone(before ?? after), alone(after), { unit: subject.unit, amounts: 'none' });
  const group = drawing.marks.find((mark): mark is GroupMark => mark.kind === 'group');
  // Grain, levels and folds say nothing at this size, and a firm cut line would cover what changed.
  const lines = (group?.marks ?? []).flatMap((mark): Mark[] =>
    mark.kind !== 'path' || !shownSmall.has(mark.ink) || mark.filled
      ? []
      : [mark.ink === 'cut' ? { ...mark, ink: 'mark' } : mark],
  );
  const box = marksBounds(lines) ?? { minX: 0, minY: 0 };
  const said = textMark('words', 'mark', { x: box.minX, y: box.minY - size * 0.6 }, words.after, size);
  return fitted([...lines, said], textWidth);
};

/** All panels in one row `width` by at most `height` mm, their words `size` mm on paper. */
const drawings = (subject: SummarySubject, width: number, height: number, size: number, textWidth: TextWidth) => {
  const pieces = changedPieces(subject);
  const cuts = cutPlaces(subject.before, subject.altered);
  const panelsAt = (scale: number) =>
    pieces.flatMap((piece) => [
      beforePanel(piece, cuts, subject, size / scale, textWidth),
      afterPanel(piece, subject, size / scale, textWidth),
    ]);
  // Words keep their size while the pieces shrink, so the scale is narrowed down.
  let [low, high] = [0.005, 0.5];
  for (let i = 0; i < 7; i += 1) {
    const middle = (low + high) / 2;
    const box = inRows(panelsAt(middle), middle, width);
    if (box.width <= width && box.height <= height) low = middle;
    else high = middle;
  }
  return inRows(panelsAt(low), low, width);
};

/** Between panels, mm. */
const panelGap = 4;

/** Panels at a scale, one after another in rows no wider than there is room; a piece as it was and as it is stay together. */
const inRows = (panels: readonly Panel[], scale: number, width: number) => {
  const marks: Mark[] = [];
  let [x, y, tall, wide] = [0, 0, 0, 0];
  for (let i = 0; i < panels.length; i += 2) {
    const pair = panels.slice(i, i + 2);
    const across = pair.reduce((sum, panel) => sum + panel.width * scale, 0) + panelGap;
    if (x > 0 && x + across > width) [x, y, tall] = [0, y + tall + panelGap, 0];
    for (const panel of pair) {
      marks.push(...moveMarks(moveMarks(panel.marks, scaling(scale, scale)), translation({ x, y })));
      wide = Math.max(wide, x + panel.width * scale);
      x += panel.width * scale + panelGap;
      tall = Math.max(tall, panel.height * scale);
    }
    x += panelGap;
  }
  return { marks, width: wide, height: y + tall };
};

const openFile = async (title: string, fonts: FontFiles): Promise<PdfFile | null> => {
  try {
    return await openPdf({ title, subject: title, fonts, fontkit });
  } catch {
    return null;
  }
};

/**
 * A page to work from at the table: what is altered in order, small drawings, the order of work, seams to walk, finished
 * measurements and cautions, with boxes to tick. Words and drawings are made smaller, words to 8 point at the least, until all
 * of it stands on one page; what still does not goes on to a second. Problems: `formats.no-summary`,
 * `formats.font-unreadable`.
 */
export const printSummaryPdf = async (request: SummaryRequest): Promise<Result<PrintedSummary>> => {
  const { unit, locale = 'en', altered } = request;
  if (altered.outcomes.length === 0) return bad('formats.no-summary');
  const title = fill(words.title, { title: request.title, size: request.size }, unit, locale);
  const file = await openFile(title, request.fonts);
  if (!file) return bad('formats.font-unreadable');
  const textWidth = file.fonts.width;
  const paper = paperSizes[request.paper];
  const [width, height] = [paper.width - 2 * margin, paper.height - 2 * margin];
  const items = summaryItems(request);
  const laidAt = (size: number, tall: number) => {
    const leading = size * 1.2;
    const head = [title, ...(request.make === undefined ? [] : [request.make])].flatMap((text, index) =>
      wrap(text, width, index === 0 ? titleSize : size, textWidth).map((part) => ({ part, bold: index === 0 })),
    );
    const marks: Mark[] = [];
    let y = 0;
    for (const { part, bold } of head) {
      const em = bold ? titleSize : size;
      marks.push(textMark('words', 'mark', { x: 0, y: y + em * 0.8 }, part, em, { weight: bold ? 'bold' : 'regular' }));
      y += em * 1.2;
    }
    const picture = drawings(request, width, tall, size, textWidth);
    y += 2;
    marks.push(...moveMarks(picture.marks, translation({ x: 0, y })));
    y += picture.height + 2;
    for (const part of wrap(words.note, width, size, textWidth)) {
      marks.push(textMark('words', 'mark', { x: 0, y: y + size * 0.8 }, part, size));
      y += leading;
    }
    const columnWidth = (width - gap) / 2;
    const top = y + 2;
    const columnAt = (index: number): Column => ({
      left: index % 2 === 0 ? 0 : columnWidth + gap,
      top: index < 2 ? top : 0,
      width: columnWidth,
      bottom: height,
    });
    const columns = flow(items, { size, leading, textWidth }, columnAt);
    return Array.from({ length: Math.ceil(columns.length / 2) }, (_, page) => [
      ...(page === 0 ? marks : []),
      ...columns.slice(2 * page, 2 * page + 2).flatMap((column) => column.marks),
    ]);
  };
  let [pages, textSize] = [laidAt(textSizes[0], heights[0]), textSizes[0] as number];
  search: for (const tall of heights) {
    for (const size of textSizes) {
      if (pages.length === 1) break search;
      [pages, textSize] = [laidAt(size, tall), size];
    }
  }
  const at = { origin: { x: margin, y: margin }, pageHeight: paper.height };
  for (const marks of pages) file.addPage(paper.width, paper.height, furnitureOperators(at, marks, file.fonts));
  return good({ bytes: await file.bytes(), pages: pages.length, textSize, warnings: file.fonts.warnings() });
};
