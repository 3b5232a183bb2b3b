import { pathBounds, pathEnd, pathStart, tolerance } from '../geometry/index.ts';
import { type Garment, type Level, outlineOf, type Piece, pieceOf } from '../pattern/index.ts';
import { bad, type Result } from '../units/index.ts';
import { type CutAcross, heightsOnPiece, slideAcross } from './across.ts';
import { held } from './checks.ts';
import { girthChanges } from './girths.ts';
import { heldOthers } from './held-edges.ts';
import { isSleeve, lowerEnd } from './parts.ts';
import type { Alteration, Applied, Change, Handle, Held, Params } from './types.ts';
import { walkSeams } from './walk-seams.ts';
import { beginWork, finishWork, pieceNow, type Work, withJoined } from './work.ts';

const places = ['above-waist', 'below-waist', 'rise', 'leg', 'sleeve'] as const;
type Where = (typeof places)[number];

const levelOf = (piece: Piece, id: string) => piece.levels.find((level) => level.id === id);

/** Heights at which a piece says it may be lengthened, downward. */
const markedHeights = (piece: Piece): readonly number[] =>
  piece.lines
    .filter(
      ({ kind, path }) =>
        kind === 'lengthen-or-shorten' && Math.abs(pathStart(path).y - pathEnd(path).y) <= tolerance.holds,
    )
    .map(({ path }) => pathStart(path).y)
    .sort((a, b) => a - b);

/** The piece's own lengthening line in the zone asked for; null where it has none. On a sleeve the lowest, clear of the elbow. */
const ownHeight = (piece: Piece, where: Where): number | null => {
  const marked = markedHeights(piece);
  if (where === 'sleeve') return marked.at(-1) ?? null;
  const level = nearestLevel(piece, where)?.from.y;
  if (level === undefined) return null;
  const above = where === 'above-waist' || where === 'rise';
  return (above ? marked.filter((y) => y < level).at(-1) : marked.find((y) => y > level)) ?? null;
};

/**
 * The level the cut lies next to: the waist; on what hangs from a waistband, and so is lengthened below it only, the
 * hip. Legs have their own: the rise above the hip, and below the knee.
 */
const nearestLevel = (piece: Piece, where: Where): Level | undefined => {
  if (where === 'rise') return levelOf(piece, 'thigh') && levelOf(piece, 'hip');
  if (where === 'leg') return levelOf(piece, 'knee');
  return levelOf(piece, 'waist') ?? (where === 'below-waist' ? levelOf(piece, 'hip') : undefined);
};

const inZone = (piece: Piece, where: Where): boolean =>
  isSleeve(piece) === (where === 'sleeve') &&
  (where === 'sleeve' || (nearestLevel(piece, where) !== undefined && piece.role !== 'waistband'));

/**
 * The same body level on every piece that carries it: where a piece has a lengthening line in the zone it is cut there;
 * one that has none is cut as far from its waist, or hip, as the first that has.
 */
const heights = (garment: Garment, where: Where): readonly { readonly piece: Piece; readonly y: number }[] => {
  const carriers = garment.pieces.filter((piece) => inZone(piece, where));
  const marked = carriers.map((piece) => ownHeight(piece, where));
  const first = marked.findIndex((y) => y !== null);
  const levelAt = (piece: Piece | undefined): Level | undefined => piece && nearestLevel(piece, where);
  const next = levelAt(carriers[first]);
  const from = next ? (marked[first] as number) - next.from.y : null;
  const chosen = carriers.flatMap((piece, i) => {
    const own = marked[i] ?? null;
    if (own !== null) return [{ piece, y: own }];
    const level = levelAt(piece);
    const alike = where !== 'sleeve' && level?.id === next?.id;
    return !alike || !level || from === null ? [] : [{ piece, y: level.from.y + from }];
  });
  return [...chosen, ...markedAlike(garment, chosen)];
};

/** Pockets, facings and stands that say nothing of the body's levels but carry a line of the very name the others are cut at. */
const markedAlike = (
  garment: Garment,
  chosen: readonly { readonly piece: Piece; readonly y: number }[],
): readonly { readonly piece: Piece; readonly y: number }[] => {
  const lineAt = (piece: Piece, y: number): string | undefined =>
    piece.lines.find(({ kind, path }) => kind === 'lengthen-or-shorten' && pathStart(path).y === y)?.id;
  const names = new Set(chosen.map(({ piece, y }) => lineAt(piece, y)));
  return garment.pieces.flatMap((piece) => {
    if (piece.levels.length > 0 || chosen.some((one) => one.piece === piece)) return [];
    const inner = piece.lines.find(({ id, kind }) => kind === 'lengthen-or-shorten' && names.has(id));
    return inner ? [{ piece, y: pathStart(inner.path).y }] : [];
  });
};

/** What is folded out keeps this much clear of darts and levels, mm. */
const clearance = 2;

const cornersAndMarks = (piece: Piece): readonly number[] => [
  ...piece.runs.map((run) => pathStart(run.path).y),
  ...heightsOnPiece(piece),
];

/**
 * How far the cut has to be lowered on all pieces so that what is folded out of none of them holds a dart, a corner or
 * a level; 0 where it is clear, or where there is no room for it above the next of those.
 */
const lowered = (cuts: readonly { readonly piece: Piece; readonly y: number }[], amount: number): number => {
  if (amount >= 0) return 0;
  const needed = cuts.map(({ piece, y }) => {
    const above = Math.max(...cornersAndMarks(piece).filter((mark) => mark < y));
    return above + clearance - (y + amount);
  });
  const room = cuts.map(({ piece, y }) => Math.min(...cornersAndMarks(piece).filter((mark) => mark > y)) - y);
  const down = Math.max(0, ...needed);
  return down <= Math.min(...room) ? down : 0;
};

/**
 * A shortening leaves at least this, mm, between what lies next above the cut and next below it: on a body, whose
 * levels lie apart; in a sleeve, where only the underarm and the hem may come near each other, a hem's turning.
 */
const leastBetween: Readonly<Record<Where, number>> = {
  'above-waist': 40,
  'below-waist': 40,
  rise: 20,
  leg: 40,
  sleeve: 20,
};

/** The first piece on which a shortening would bring what lies above the cut and what lies below it too close together. */
const crowded = (
  cuts: readonly { readonly piece: Piece; readonly y: number }[],
  where: Where,
  amount: number,
): Piece | null => {
  if (amount >= 0) return null;
  const found = cuts.find(({ piece, y }) => {
    const marks = cornersAndMarks(piece);
    const above = Math.max(...marks.filter((mark) => mark < y));
    const below = Math.min(...marks.filter((mark) => mark >= y));
    return below - above + amount < leastBetween[where];
  });
  return found?.piece ?? null;
};

/** What each piece holds: edges that were not cut keep their length, those at its ends their width. */
const heldOn = (work: Work, { before, joined }: CutAcross): readonly Held[] => {
  const { from, to } = pieceNow(work, before.id).grain;
  return [
    ...heldOthers(
      work,
      before.id,
      joined.formers.map(({ edge }) => edge),
    ),
    held('grain-straight', to.x - from.x - (before.grain.to.x - before.grain.from.x), { piece: before.id }),
  ];
};

/** Finished girths at the body's levels stay as they were, but for what blending the edges takes or gives. */
const heldWidths = ({ before, garment: after }: Work): readonly Held[] => {
  const changes = girthChanges(before, after) ?? [];
  const cut = (id: string): boolean => pieceOf(after, id) !== pieceOf(before, id);
  return before.girths
    .filter(({ pieces }) => pieces.some(({ piece }) => cut(piece)))
    .map(({ level }) => {
      const by = changes.find((change) => change.level === level)?.by ?? 0;
      return held('width-kept', by, { level }, tolerance.girthKept);
    });
};

/** A zip that ends below the cut has to be as much longer. */
const zipChanges = (work: Work, before: Piece): readonly Change[] => {
  const after = pieceNow(work, before.id);
  return before.notches
    .filter(({ id }) => id.startsWith('zip'))
    .flatMap(({ id, edge, at }) => {
      const now = after.notches.find((notch) => notch.id === id);
      if (!now) return [];
      const fromTop = (piece: Piece, share: number) =>
        work.tape.edge(piece, edge) * (lowerEnd(piece, edge) === 'end' ? share : 1 - share);
      const length = fromTop(after, now.at);
      const by = length - fromTop(before, at);
      return Math.abs(by) <= tolerance.holds ? [] : [{ what: 'zip-length', piece: after.id, edge, by, now: length }];
    });
};

const lengthen = (garment: Garment, params: Params): Result<Applied> => {
  const where = params.where as Where;
  const amount = Number(params.amount);
  const chosen = heights(garment, where);
  const down = lowered(chosen, amount);
  const tooClose = crowded(
    chosen.map(({ piece, y }) => ({ piece, y: y + down })),
    where,
    amount,
  );
  if (tooClose) return bad('alter.no-room', { piece: tooClose.name, amount: { mm: -amount } });
  if (chosen.length === 0) return bad('alter.no-lengthen-line', { where });
  const cuts: CutAcross[] = [];
  for (const { piece, y } of chosen) {
    const made = slideAcross(piece, y + down, amount);
    if (!made.ok) return made;
    cuts.push(made.value);
  }
  const work = walkSeams(cuts.reduce<Work>((work, one) => withJoined(work, one), beginWork(garment)));
  return finishWork(work, {
    held: [...cuts.flatMap((one) => heldOn(work, one)), ...heldWidths(work)],
    changes: cuts.flatMap(({ before }) => zipChanges(work, before)),
  });
};

/** The middle of the cut on the first piece that is cut, which goes down with the part below it. */
const cutHandle = (garment: Garment, params: Params): Handle | null => {
  const amount = Number(params.amount);
  const cuts = heights(garment, params.where as Where);
  const [first] = cuts;
  if (!first) return null;
  const { minX, maxX } = pathBounds(outlineOf(first.piece));
  const y = first.y + lowered(cuts, amount) + amount;
  return { piece: first.piece.id, at: { x: (minX + maxX) / 2, y }, perMillimetre: { x: 0, y: 1 } };
};

/**
 * Lengthen or shorten by `amount` (negative shortens) at one body level: above the waist, below it, in the rise above
 * the hip or in the leg below the knee, or in the sleeve below the elbow. Every piece that carries the level is cut square to the grain and its lower part slid along it.
 *
 *     ______________
 *    |              |
 *    |--------------|  cut
 *    :              :  the lower part slides down by the amount
 *    |--------------|
 *    |______________|
 *
 * Source: the lengthening line of bought patterns; pattern-cutting manuals on altering length.
 */
export const lengthenShorten: Alteration = {
  id: 'lengthen-shorten',
  version: 1,
  family: 'length',
  params: {
    where: { unit: 'choice', choices: places, usual: 'above-waist' },
    amount: { unit: 'mm', min: -120, max: 150, usual: [-40, 60] },
  },
  amount: 'amount',
  inAll: 1,
  // Only places some piece of this garment can be cut at.
  options: (garment, parameter) =>
    parameter === 'where' ? places.filter((where) => heights(garment, where).length > 0) : [],
  needs: (garment) =>
    places.some((where) => heights(garment, where).length > 0)
      ? null
      : bad('alter.no-lengthen-line', { where: '' }).problem,
  reverse: (params) => ({
    alteration: 'lengthen-shorten',
    params: { ...params, amount: -Number(params.amount) },
  }),
  holds: ['end-widths', 'width-kept', 'grain-straight', 'seam-walks', 'edge-length'],
  follows: ['mates', 'facings', 'zip-length', 'levels'],
  handle: cutHandle,
  apply: lengthen,
};
