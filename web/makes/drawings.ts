import {
  type Drawing,
  type DrawingCache,
  drawBeforeAfter,
  drawEase,
  drawLayout,
  drawSeamWalk,
  placeInBeforeAfter,
} from '../../src/draw/index.ts';
import type { Fit } from '../../src/fit/index.ts';
import type { Point } from '../../src/geometry/index.ts';
import type { Layout, LayoutProblem } from '../../src/lay/index.ts';
import type { Garment, SeamWalk } from '../../src/pattern/index.ts';
import type { Unit } from '../../src/units/index.ts';
import { locale } from '../app/settings.tsx';
import { narrowAspect, readableSize, tableAspect } from '../parts/draw-garment.ts';

/** Which pieces of a before-and-after lie on the table: those that changed, all, or one by its id. */
export type ShownPieces = 'changed' | 'all' | `piece:${string}`;

const only = (garment: Garment, shown: ShownPieces): Garment => {
  if (!shown.startsWith('piece:')) return garment;
  const id = shown.slice('piece:'.length);
  return { ...garment, pieces: garment.pieces.filter((one) => one.id === id) };
};

/** The ids of the pieces a before-and-after shows, in a word. */
export const papersOf = (drawing: Drawing): string =>
  drawing.marks.flatMap((mark) => (mark.kind === 'group' ? [mark.id] : [])).join(' ');

/** The em of words that reads when these papers are all seen. */
const sizeForPapers = (garment: Garment, papers: string): number => {
  const ids = papers.split(' ');
  const shown = { ...garment, pieces: garment.pieces.filter((piece) => ids.includes(piece.id)) };
  return readableSize(drawBeforeAfter(shown, shown, { unit: 'cm', textSize: 1, aspect: tableAspect }));
};

/** Amounts stand beside the edges of a piece that lies alone; beside each other there is no room, and words tell them. */
const amountsOn = (papers: string, moving: boolean) => {
  if (papers.includes(' ')) return moving ? 'none' : 'told';
  return moving ? 'jotted' : 'written';
};

export interface Changes {
  readonly drawing: Drawing;
  /** By how much a piece was moved to its place on the table; null for one that does not lie there. */
  readonly placeOf: (piece: string) => Point | null;
  readonly papers: string;
  readonly textSize: number;
}

/** What is to be shown of a list of alterations, and how. */
export interface ChangesAsked {
  readonly before: Garment;
  readonly after: Garment;
  readonly shown: ShownPieces;
  readonly label: string;
  readonly unit: Unit;
  /** An amount is under her hand: what she reads once it rests can wait until then. */
  readonly moving: boolean;
}

/**
 * The pieces as bought and as altered, one over the other. `last` is what was drawn before: while the same papers lie
 * on the table their words keep their size.
 */
export const drawChanges = (asked: ChangesAsked, last: Changes | null, cache: DrawingCache): Changes => {
  const { before, after, shown, label, unit, moving } = asked;
  const options = { unit, locale, cache, aspect: tableAspect, changedOnly: shown === 'changed' };
  const [old, now] = [only(before, shown), only(after, shown)];
  const draw = (papers: string, textSize: number) =>
    drawBeforeAfter(old, now, { ...options, textSize, amounts: amountsOn(papers, moving) });
  const first = draw(last?.papers ?? '', last?.textSize ?? 17);
  const papers = papersOf(first);
  const placeOf = (piece: string) => placeInBeforeAfter(old, now, piece, options);
  if (last?.papers === papers) return { drawing: { ...first, label }, papers, placeOf, textSize: last.textSize };
  const textSize = sizeForPapers(before, papers);
  return { drawing: { ...draw(papers, textSize), label }, papers, placeOf, textSize };
};

/** A seam walked, in words that can be read on a table of this kind. */
export const drawWalk = (walk: SeamWalk, garment: Garment, unit: Unit, narrow: boolean): Drawing =>
  drawSeamWalk(walk, garment, {
    unit,
    locale,
    ...(narrow ? { aspect: narrowAspect, textSize: walk.lengthA / 11 } : { aspect: tableAspect }),
  });

/** Ease at every level in every size against what is usual. */
export const drawFit = (fit: Fit, size: string, label: string, unit: Unit, narrow: boolean): Drawing => ({
  ...drawEase(fit, { unit, locale, size, narrow }),
  label,
});

/** Ems of words along the longest side of a plan that can still be read: on a broad table, and on a phone's. */
const emsAlong = { wide: 50, narrow: 22 } as const;

/** The plan on the cloth, in the cloth's own colour, in words that can be read on a table of this kind. */
export const drawPlan = (
  problem: LayoutProblem,
  plan: Layout,
  garment: Garment,
  colour: string,
  unit: Unit,
  narrow: boolean,
): Drawing => {
  const longest = Math.max(plan.length, problem.cloth.length ?? 0, problem.cloth.width);
  const textSize = longest / (narrow ? emsAlong.narrow : emsAlong.wide);
  // On a phone words are kept from growing smaller than they can be read: a name must find room as it is.
  return drawLayout(problem, plan, {
    unit,
    locale,
    garment,
    colour,
    textSize,
    ...(narrow ? { leastText: textSize } : {}),
  });
};
