import { tolerance } from '../../geometry/index.ts';
import { type Garment, levelWidth } from '../../pattern/index.ts';
import { bad, type Problem, type Result } from '../../units/index.ts';
import { held } from '../checks.ts';
import type { Knot } from '../course.ts';
import { follow } from '../follow.ts';
import { type Alteration, type Applied, type Held, sideParameter } from '../types.ts';
import { walkSeams } from '../walk-seams.ts';
import { beginWork, finishWork, pieceNow, redrawEdges, type Work } from '../work.ts';
import { heldAtHeight, sidesMoved } from './shift.ts';
import { type Side, sidesOf } from './sides.ts';

const places = ['waist', 'hip', 'hem'] as const;
type Where = (typeof places)[number];

/** A side stays as it is this far below a dart that opens in it, mm. */
const belowDart = 5;

/** Less than this between two knots, mm, leaves no room to blend. */
const leastBlend = 30;

/**
 * Where a side moves, and how far. All of the amount at its level; nothing at the levels above and below, or at the
 * underarm and the dart, except that below the hip, or below the lowest level of a bodice, it stays moved to the end.
 */
const knotsFor = (side: Side, where: Where, amount: number): readonly Knot[] => {
  const { heights, top, bottom } = side;
  const order = ['bust', 'waist', 'hip'] as const;
  const at = (order as readonly string[]).indexOf(where);
  const own = order.filter((id) => heights[id] !== undefined && heights[id] >= top - 1 && heights[id] <= bottom + 1);
  const knots: Knot[] = [];
  const stays = Math.max(side.underarm ? top : -Infinity, side.dart === null ? -Infinity : side.dart + belowDart);
  for (const id of own) {
    const level = order.indexOf(id);
    const below = where !== 'hem' && level > at;
    // What hangs from the hip moves with it; from the bust or waist only to the next level.
    const shift = id === where || (where === 'hip' && below) ? amount : 0;
    knots.push({ at: heights[id] as number, shift });
  }
  if (where === 'hem') knots.push({ at: bottom, shift: amount });
  const lastLevel = own.at(-1);
  const aboveAll = own.length === 0 || order.indexOf(own[0] as (typeof order)[number]) > at;
  // A skirt that hangs from the waist has it at its very top, a bodice that ends there at its bottom.
  if (where !== 'hem' && !own.some((id) => id === where)) {
    if (aboveAll && where === 'waist' && !side.underarm) knots.push({ at: top, shift: amount });
    else if (where === 'hip' && lastLevel === undefined && !side.underarm) knots.push({ at: top, shift: amount });
    else return [];
  } else if (!side.underarm && top < (knots[0]?.at ?? top) - leastBlend) {
    const first = own[0];
    knots.push({ at: top, shift: first === where && where === 'waist' ? amount : 0 });
  }
  const sorted = knots.toSorted((p, q) => p.at - q.at);
  if (stays === -Infinity) return sorted;
  return [{ at: stays, shift: 0 }, ...sorted.filter((knot) => knot.at > stays + leastBlend)];
};

const moveSide = (work: Work, { piece, edges, outward }: Side, knots: readonly Knot[]): Work =>
  redrawEdges(work, piece.id, sidesMoved(piece, edges, knots, outward));

/** Sides that carry the place, or hang from one that does. */
const sidesAt = (
  garment: Garment,
  where: Where,
  amount: number,
): readonly { readonly side: Side; readonly knots: readonly Knot[] }[] =>
  sidesOf(garment).flatMap((side) => {
    // A side carries the place whatever it is moved by, nothing among it.
    const carries = knotsFor(side, where, 1).some(({ shift }) => shift !== 0);
    return carries ? [{ side, knots: knotsFor(side, where, amount) }] : [];
  });

const needsSides = (garment: Garment): Problem | null =>
  sidesOf(garment).some(({ piece }) => piece.levels.length > 0) ? null : bad('alter.no-side-seams', {}).problem;

/** Widths at the level asked for grow on every piece by the amount. */
const heldWidths = (work: Work, moved: readonly Side[], where: Where, amount: number): readonly Held[] =>
  moved.flatMap(({ piece }) =>
    piece.levels
      .filter(({ id }) => id === where)
      .map(({ id }) =>
        held(
          'width-grows',
          levelWidth(pieceNow(work, piece.id), id) - levelWidth(piece, id) - amount,
          {
            piece: piece.id,
            level: id,
          },
          tolerance.girth,
        ),
      ),
  );

/**
 * Side seams let out (or taken in) by `amount` on every edge at one level, to nothing at the levels above and below; at
 * the hip all that hangs from it moves along, at the hem it is let out from nothing at the hip. Front and back alike, so
 * four times the amount in all on a body of four quarters.
 *
 *      \\      underarm stays
 *       )     waist:  moved out here …
 *      /
 *     |       hip … and back to nothing here
 *     |
 *
 * Waistbands, facings, pockets and linings follow. Source: letting out and taking in at the side, and running the sides
 * into another size, as in any manual of fitting.
 */
export const sideSeamsAlteration: Alteration = {
  id: 'run-sides',
  version: 1,
  family: 'width',
  params: {
    where: { unit: 'choice', choices: places, usual: 'waist' },
    amount: { unit: 'mm', min: -40, max: 60, usual: [-8, 12] },
    side: sideParameter,
  },
  amount: 'amount',
  inAll: 4,
  needs: needsSides,
  options: (garment, name) => (name === 'where' ? places.filter((where) => sidesAt(garment, where, 1).length > 0) : []),
  handle: (garment, params) => {
    const where = params.where as Where;
    const [found] = sidesAt(garment, where, 1);
    const knot = found?.knots.find(({ shift }) => shift === 1);
    return found && knot ? heldAtHeight(found.side.piece, found.side.edges, knot.at, found.side.outward) : null;
  },
  reverse: (params) => ({ alteration: 'run-sides', params: { ...params, amount: -Number(params.amount) } }),
  holds: ['underarm-stays', 'width-grows-here', 'seam-walks'],
  follows: ['waistband', 'facings', 'pockets', 'lining', 'hem'],
  apply: (garment, params): Result<Applied> => {
    const where = params.where as Where;
    const amount = Number(params.amount);
    const found = sidesAt(garment, where, amount);
    if (found.length === 0) return bad('alter.no-side-there', { where });
    let work = beginWork(garment);
    for (const { side, knots } of found) work = moveSide(work, side, knots);
    work = walkSeams(work);
    const followed = follow(work);
    if (!followed.ok) return followed;
    return finishWork(followed.value, {
      held: heldWidths(
        followed.value,
        found.map(({ side }) => side),
        where,
        amount,
      ),
    });
  },
};
