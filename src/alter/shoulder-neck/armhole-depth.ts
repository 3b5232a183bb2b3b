import {
  add,
  endTangent,
  type Path,
  type Point,
  pathLength,
  scale,
  startTangent,
  subtract,
  turnBetween,
} from '../../geometry/index.ts';
import { edgeLength, edgeRuns, type Piece } from '../../pattern/index.ts';
import { good, type Result } from '../../units/index.ts';
import { easedField, turningRate } from '../fields.ts';
import { follow } from '../follow.ts';
import { endPoint, isLining } from '../parts.ts';
import type { Drawn } from '../reshape.ts';
import { type Alteration, sideParameter } from '../types.ts';
import { warped } from '../warp.ts';
import { beginWork, finishWork, redrawEdges } from '../work.ts';
import { armholeChanges, headEase } from './account.ts';
import { drawnAlong, endOf, lineOf, slidEnd } from './lines.ts';
import { type Armhole, armholesOf, needsArmhole } from './upper.ts';

/** How much of an armhole, from the underarm up, is drawn anew when the underarm moves. */
const lowerShare = 0.6;

/** Where the lower part of the armhole is an edge of its own, sewn to the under sleeve, only that is drawn anew: the sleeve's upper part then stays. */
const leastUnder = 60;

const lowerReach = (piece: Piece, edges: readonly string[], length: number): number => {
  const under = edges.length > 1 ? edgeLength(piece, edges.at(-1) as string) : 0;
  return under >= leastUnder ? under : length * lowerShare;
};

const tangentAt = (runs: readonly Path[], end: 'start' | 'end'): Point =>
  end === 'end' ? endTangent(runs.at(-1) as Path) : startTangent(runs[0] as Path);

/** The underarm moved down the side seam, the armhole running out to it. */
const lowered = ({ piece, edges, reversed, foot }: Armhole, by: number): Result<Drawn> => {
  const line = lineOf(piece, edges, reversed);
  if (!line.ok) return line;
  const side = slidEnd(piece, foot.edge, foot.end, -by);
  if (!side.ok) return side;
  const moved = subtract(endOf(side.value, foot.end), endPoint(piece, foot));
  const length = pathLength(line.value);
  // The armhole keeps its angle to the side seam, so that it runs smoothly from front to back.
  const turn = turnBetween(tangentAt(edgeRuns(piece, foot.edge), foot.end), tangentAt(side.value, foot.end));
  const rate = turningRate(endTangent(line.value), turn);
  const from = length - lowerReach(piece, edges, length);
  const field = easedField(from, length, { by: { x: 0, y: 0 } }, { by: moved, rate });
  return good({ ...drawnAlong(piece, edges, reversed, warped(line.value, field)), [foot.edge]: side.value });
};

/** The direction in which a side seam leaves the underarm. */
const downSide = ({ piece, foot }: Armhole): Point =>
  scale(tangentAt(edgeRuns(piece, foot.edge), foot.end), foot.end === 'start' ? 1 : -1);

/**
 * An armhole deeper by `amount` (negative: higher), on front and back alike.
 *
 *      \\            the underarm slides down the side seam, the armhole
 *       |            runs out to it from above the notch as it did
 *       \\
 *        `-.__*     old underarm
 *         `-._|
 *             *     new
 *
 * The side seam is shorter by as much; the cap of the sleeve is fitted to the longer armhole. Problems:
 * `alter.edge-used-up` where a dart or the waist is nearer. Source: armhole depth in pattern-cutting manuals.
 */
export const armholeDepth: Alteration = {
  id: 'armhole-depth',
  version: 1,
  family: 'shoulder-neck',
  params: { amount: { unit: 'mm', min: -25, max: 60, usual: [5, 20] }, side: sideParameter },
  amount: 'amount',
  inAll: 1,
  needs: needsArmhole,
  handle: (garment, params) => {
    const armhole = armholesOf(garment).find(({ piece, underarm }) => underarm && !isLining(piece));
    if (!armhole) return null;
    const along = downSide(armhole);
    const at = add(endPoint(armhole.piece, armhole.foot), scale(along, Number(params['amount'] ?? 0)));
    return { piece: armhole.piece.id, at, perMillimetre: along };
  },
  reverse: (params) => ({ alteration: 'armhole-depth', params: { ...params, amount: -Number(params['amount']) } }),
  holds: ['shoulder', 'seam-walks'],
  follows: ['cap', 'lining-alike'],
  apply: (garment, params) => {
    let work = beginWork(garment);
    const armholes = armholesOf(garment).filter(({ underarm }) => underarm);
    for (const armhole of armholes) {
      const drawn = lowered(armhole, Number(params['amount']));
      if (!drawn.ok) return drawn;
      work = redrawEdges(work, armhole.piece.id, drawn.value);
    }
    const followed = follow(work);
    if (!followed.ok) return followed;
    return finishWork(followed.value, {
      changes: [...armholeChanges(followed.value, armholes), ...headEase(followed.value)],
    });
  },
};
