import { add, type Point, scale, subtract, tolerance, turnBetween } from '../../geometry/index.ts';
import { levelWidth } from '../../pattern/index.ts';
import { bad, good, type Result } from '../../units/index.ts';
import { held } from '../checks.ts';
import { heldOthers } from '../held-edges.ts';
import { partBeside, slide, swing } from '../move.ts';
import { type Alteration, type Held, sideParameter } from '../types.ts';
import { beginWork, cutAndMove, finishWork, pieceNow, type Work } from '../work.ts';
import { needsSleeve, type Sleeve, sleevesOf } from './anatomy.ts';
import { capKept } from './cap-line.ts';
import { headEaseChanges } from './head-ease.ts';
import { keptHem } from './hem-line.ts';
import { axisOf, type Pulled, pulledFor, quarterCuts } from './quarters.ts';

/** The cap may not fall under this share of its height (trade): beyond it the sleeve no longer hangs. */
const leastCap = 0.75;

const capHeight = (top: Point, corners: readonly [Point, Point], axis: Point): number =>
  corners.reduce((sum, corner) => sum + (subtract(corner, top).x * axis.x + subtract(corner, top).y * axis.y) / 2, 0);

/** One sleeve in four quarters, the upper two swung about the cap's top, the lower two about the wrist. */
export const pullQuarters = (given: Work, sleeve: Sleeve, pulled: Pulled): Result<Work> => {
  const { top, wrist, corners } = sleeve;
  const axis = axisOf(sleeve);
  const shift = scale(axis, pulled.down - (subtract(wrist, top).x * axis.x + subtract(wrist, top).y * axis.y));
  const wristNow = add(wrist, shift);
  const done = cutAndMove(given, sleeve.piece.id, quarterCuts(sleeve), {
    move: (pieces) => {
      let moved = pieces;
      for (const [i, upperHand, lowerHand] of [
        [0, 'left', 'right'],
        [1, 'right', 'left'],
      ] as const) {
        const [was, is] = [corners[i], pulled.corners[i]];
        const upper = partBeside(pieces, 'top', upperHand);
        moved = swing(moved, upper, top, turnBetween(subtract(was, top), subtract(is, top)));
        const lower = partBeside(pieces, 'wrist', lowerHand);
        moved = swing(moved, lower, wrist, turnBetween(subtract(was, wrist), subtract(is, wristNow)));
        moved = slide(moved, lower, shift);
      }
      return moved;
    },
    truing: () => 'none',
  });
  return done.ok ? good(keptHem(capKept(done.value, sleeve), sleeve)) : done;
};

/** Width at the upper arm, grown by what was asked; a lining may carry no such level. */
const heldWidth = (work: Work, { piece }: Sleeve, w: number): readonly Held[] =>
  piece.levels
    .filter(({ id }) => id === 'upper-arm')
    .map(({ id }) =>
      held(
        'width-grows',
        levelWidth(pieceNow(work, piece.id), id) - levelWidth(piece, id) - w,
        {
          piece: piece.id,
          level: id,
        },
        tolerance.upperArm,
      ),
    );

/**
 * Full upper arm by `amount`: each sleeve that much wider round the upper arm, its cap, its seams and its wrist as long
 * as they were. Negative for a thin arm.
 *
 *          T               cut from the middle up to the cap's top T, down to the wrist W
 *        .-|-.             and out to both underarms U; the upper quarters turn about T,
 *      /   |   \\           the lower ones about W, until U and U lie further apart:
 *     U----+----U          T and W come nearer, so the cap falls and the sleeve is shorter.
 *      \\   |   /
 *       \\__|__/            h′ = √(h² − q), l′ = √(l² − q) with Σ(√(b² + q) − b) = amount
 *          W
 *
 * Of a sleeve in two parts the upper one takes all of it: its seams keep their lengths and the under sleeve is not touched.
 *
 * Problems: `alter.cap-too-flat` where the cap would fall under three quarters of its height; those of cutting.
 * Source: the slash-and-spread upper arm alteration of fitting manuals.
 */
export const fullUpperArm: Alteration = {
  id: 'full-upper-arm',
  version: 1,
  family: 'sleeve',
  params: { amount: { unit: 'mm', min: -40, max: 80, usual: [5, 14] }, side: sideParameter },
  amount: 'amount',
  inAll: 1,
  needs: needsSleeve,
  handle: (garment) => {
    const sleeve = sleevesOf(garment)[0];
    return sleeve ? { piece: sleeve.piece.id, at: sleeve.corners[1], perMillimetre: { x: 0.5, y: 0 } } : null;
  },
  reverse: (params) => ({ alteration: 'full-upper-arm', params: { ...params, amount: -Number(params.amount) } }),
  holds: ['cap', 'sleeve-seams', 'wrist', 'upper-arm-grows', 'seam-walks'],
  follows: ['cap-falls', 'sleeve-shorter', 'lining'],
  apply: (garment, params) => {
    const w = Number(params.amount);
    let work = beginWork(garment);
    const sleeves = sleevesOf(garment);
    // A lining, which says nowhere where the upper arm lies, gets at its corners what its sleeve gets there.
    const marked = sleeves.filter(({ piece }) => piece.levels.some(({ id }) => id === 'upper-arm'));
    const atCorners = marked[0] ? (pulledFor(marked[0], w)?.atCorners ?? w) : w;
    for (const sleeve of sleeves) {
      const pulled = marked.includes(sleeve) ? pulledFor(sleeve, w) : pulledFor(sleeve, atCorners, 'atCorners');
      const axis = axisOf(sleeve);
      const height = capHeight(sleeve.top, sleeve.corners, axis);
      if (!pulled || capHeight(sleeve.top, pulled.corners, axis) < leastCap * height) {
        const most = mostFor(sleeve, height);
        return bad('alter.cap-too-flat', { amount: { mm: w }, most: { mm: Math.floor(most) } });
      }
      const done = pullQuarters(work, sleeve, pulled);
      if (!done.ok) return done;
      work = done.value;
    }
    return finishWork(work, {
      held: sleeves.flatMap((sleeve) => [...heldOthers(work, sleeve.piece.id), ...heldWidth(work, sleeve, w)]),
      changes: sleeves.flatMap((sleeve) => heightChanges(work, sleeve)),
    });
  },
};

/** The widest of which the cap keeps three quarters of its height, mm, by halving. */
const mostFor = (sleeve: Sleeve, height: number): number => {
  let [low, high] = [0, 200];
  for (let i = 0; i < 20; i += 1) {
    const middle = (low + high) / 2;
    const pulled = pulledFor(sleeve, middle);
    if (pulled && capHeight(sleeve.top, pulled.corners, axisOf(sleeve)) >= leastCap * height) low = middle;
    else high = middle;
  }
  return low;
};

const heightChanges = (work: Work, sleeve: Sleeve) => {
  const after = sleevesOf(work.garment).find(({ piece }) => piece.id === sleeve.piece.id);
  if (!after) return [];
  const axis = axisOf(sleeve);
  const [was, is] = [capHeight(sleeve.top, sleeve.corners, axis), capHeight(after.top, after.corners, axis)];
  const down = ({ top, wrist }: Sleeve): number => subtract(wrist, top).x * axis.x + subtract(wrist, top).y * axis.y;
  return [
    { what: 'cap-height', piece: sleeve.piece.id, by: is - was, now: is },
    { what: 'sleeve-length', piece: sleeve.piece.id, by: down(after) - down(sleeve), now: down(after) },
    ...headEaseChanges(work, sleeve.piece.id),
  ];
};
