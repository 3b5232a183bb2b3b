import {
  endTangent,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  scale,
  startTangent,
  subtract,
  tolerance,
  turnBetween,
} from '../../geometry/index.ts';
import type { Garment, Piece } from '../../pattern/index.ts';
import { good, type Result } from '../../units/index.ts';
import { easedField, sumOfFields, turningRate } from '../fields.ts';
import { follow, traceFacings } from '../follow.ts';
import { heldLengths } from '../held-edges.ts';
import { endPoint, matesOf } from '../parts.ts';
import type { Drawn } from '../reshape.ts';
import { secant } from '../secant.ts';
import { type Alteration, sideParameter } from '../types.ts';
import { warped, warpedTo } from '../warp.ts';
import { beginWork, finishWork, type Work } from '../work.ts';
import { armholeChanges, headEase } from './account.ts';
import { upperReach } from './armhole-line.ts';
import { drawnAlong, endOf, lineOf, slidEnd } from './lines.ts';
import { armholeAt, inTurn, paired, redrawn, swungHandle, swungPair } from './shoulders.ts';
import { dartsSwung, movedBy, type SwungPanel } from './swing.ts';
import { type Armhole, armholesOf, chainsOf, type Neckline, necklinesOf, needsArmhole } from './upper.ts';

const still: Point = { x: 0, y: 0 };

/** An armhole whose upper end was moved and turned, its underarm raised along the side seam by the same; as long as it was. */
const raisedArmhole = (armhole: Armhole, top: Point, turn: number, up: number): Result<Drawn> => {
  const { piece, edges, reversed, foot } = armhole;
  const line = lineOf(piece, edges, reversed);
  if (!line.ok) return line;
  const side = slidEnd(piece, foot.edge, foot.end, up);
  if (!side.ok) return side;
  const below = subtract(endOf(side.value, foot.end), endPoint(piece, foot));
  const length = pathLength(line.value);
  const reach = upperReach(armhole, line.value);
  const field = sumOfFields(
    easedField(
      0,
      reach,
      { by: subtract(top, below), rate: turningRate(startTangent(line.value), turn) },
      { by: still },
    ),
    () => ({ by: below, rate: still }),
  );
  const now = warpedTo(line.value, field, length, 0, reach);
  return good({ ...drawnAlong(piece, edges, reversed, now), [foot.edge]: side.value });
};

/** How much of a neckline, from the shoulder, turns with it. */
const neckShare = 0.7;

/** A neckline whose end turns with the shoulder it meets, as long as it was. */
const turnedNeckline = ({ piece, edges, reversed }: Neckline, turn: number): Result<Drawn> => {
  const line = lineOf(piece, edges, reversed);
  if (!line.ok) return line;
  const length = pathLength(line.value);
  const rate = turningRate(endTangent(line.value), turn);
  const field = easedField(length * (1 - neckShare), length, { by: still }, { by: still, rate });
  return good(drawnAlong(piece, edges, reversed, warpedTo(line.value, field, length, 0, length)));
};

/** How much of a back's upper edge, where a yoke is sewn to it, rises with the armhole. */
const yokeShare = 0.6;

/** How much steeper than its mean the edge rises where it meets the armhole. */
const risingShare = 1.6;

/** A back under a yoke: its upper edge rises towards the armhole, as long as it was. */
const raisedUnderYoke = (
  armhole: Armhole,
  up: number,
): Result<{ readonly drawn: Drawn; readonly top: Point; readonly turn: number }> => {
  const { piece, top } = armhole;
  const line = lineOf(piece, [top.edge], top.end === 'start');
  if (!line.ok) return line;
  const length = pathLength(line.value);
  const from = length * (1 - yokeShare);
  const drawn = (across: number): Path => {
    const by: Point = { x: across, y: -up };
    // Rising evenly all the way: a line that came to rest again would be a wave.
    const rate = scale(by, risingShare / (length - from));
    return warped(line.value, easedField(from, length, { by: still }, { by, rate }));
  };
  const across = secant((x) => pathLength(drawn(x)) - length, 0, 0.5, tolerance.walk) ?? 0;
  const now = drawn(across);
  return good({
    drawn: drawnAlong(piece, [top.edge], top.end === 'start', now),
    top: subtract(pathEnd(now), pathEnd(line.value)),
    turn: turnBetween(endTangent(line.value), endTangent(now)),
  });
};

/** Notches of edges that moved whole stay as far along them as they were. */
const notchesAlong = (before: Piece, after: Piece, edges: readonly string[]): Piece => ({
  ...after,
  notches: after.notches.map((notch) =>
    edges.includes(notch.edge)
      ? (before.notches.find(({ id, edge }) => id === notch.id && edge === notch.edge) ?? notch)
      : notch,
  ),
});

/** One swung stretch with what meets it: neckline and armhole. */
const swungPiece = (
  work: Work,
  swung: SwungPanel,
  { armholes, necklines }: { readonly armholes: readonly Armhole[]; readonly necklines: readonly Neckline[] },
  up: number,
): Result<Work> => {
  const { panel } = swung;
  let drawn = swung.drawn;
  const neckline = necklines.find(({ piece, shoulder }) => piece.id === panel.piece.id && shoulder.edge === panel.edge);
  if (neckline) {
    const turned = turnedNeckline(neckline, swung.turn);
    if (!turned.ok) return turned;
    drawn = { ...drawn, ...turned.value };
  }
  const armhole = armholeAt(armholes, panel);
  if (armhole) {
    const raised = raisedArmhole(armhole, movedBy(swung), swung.turn, up);
    if (!raised.ok) return raised;
    drawn = { ...drawn, ...raised.value };
  }
  return good(
    redrawn(work, panel.piece.id, drawn, (before, after) =>
      notchesAlong(before, dartsSwung(before, after, swung), armhole?.edges ?? []),
    ),
  );
};

/** Armholes that begin under a yoke: the shoulder itself is the yoke's, which stays. */
const underYoke = (garment: Garment, { piece, top, underarm }: Armhole): boolean =>
  underarm && matesOf(garment, piece.id, top.edge).some((mate) => mate.piece.role === 'yoke' && piece.role === 'back');

/**
 * Shoulders squarer by `amount` at the shoulder point (negative: more sloping), front and back alike.
 *
 *      *--__         *----.__     the shoulder swings about the neck point and
 *           `--*  →          *    keeps its length; the armhole rises whole with
 *             /             /     it, so that it keeps its length and the sleeve
 *            |             |      fits as before; the underarm rises along the
 *             `._*          `._*  side seam by the same
 *
 * Neckline and armhole turn at their ends with the shoulder, so that both still run smoothly over it. Under a yoke, which stays,
 * the upper edge of the back rises towards the armhole. Problems: `alter.shoulder-too-steep`, `alter.edge-used-up`.
 *
 * Source: square and sloping shoulders in fitting manuals, which move the whole armhole; the other way, moving the
 * shoulder alone, changes how deep the armhole is and so needs another sleeve.
 */
export const shoulderSlope: Alteration = {
  id: 'shoulder-slope',
  version: 1,
  family: 'shoulder-neck',
  params: { amount: { unit: 'mm', min: -30, max: 30, usual: [-12, 12] }, side: sideParameter },
  amount: 'amount',
  inAll: 2,
  needs: needsArmhole,
  handle: (garment, params) => swungHandle(garment, -Number(params['amount'] ?? 0), -1),
  reverse: (params) => ({ alteration: 'shoulder-slope', params: { ...params, amount: -Number(params['amount']) } }),
  holds: ['neck', 'shoulder', 'seam-walks'],
  follows: ['armhole-whole', 'facings', 'lining-alike'],
  apply: (garment, params) => {
    const up = Number(params['amount']);
    const armholes = armholesOf(garment);
    const necklines = necklinesOf(garment);
    const chains = paired(chainsOf(garment)).filter(({ chain }) => chain[0]?.piece.role !== 'yoke');
    const swung = inTurn(beginWork(garment), chains, (work, pair) => {
      const panels = swungPair(pair, -up);
      if (!panels.ok) return panels;
      return inTurn(work, panels.value, (now, one) => swungPiece(now, one, { armholes, necklines }, up));
    });
    if (!swung.ok) return swung;
    const yoked = inTurn(
      swung.value,
      armholes.filter((armhole) => underYoke(garment, armhole)),
      (work, armhole) => {
        const above = raisedUnderYoke(armhole, up);
        if (!above.ok) return above;
        const raised = raisedArmhole(armhole, above.value.top, above.value.turn, up);
        if (!raised.ok) return raised;
        return good(
          redrawn(work, armhole.piece.id, { ...above.value.drawn, ...raised.value }, (before, after) =>
            notchesAlong(before, after, armhole.edges),
          ),
        );
      },
    );
    if (!yoked.ok) return yoked;
    const shells = necklines.filter(({ piece }) => yoked.value.worked.has(piece.id));
    const traced = inTurn(yoked.value, shells, (work, { piece }) => traceFacings(work, piece.id));
    if (!traced.ok) return traced;
    const followed = follow(traced.value);
    if (!followed.ok) return followed;
    const now = followed.value;
    return finishWork(now, {
      held: chains
        .flatMap(({ chain }) => chain)
        .filter(({ lining }) => !lining)
        .flatMap(({ piece, edge }) => heldLengths(now, piece.id, [edge])),
      changes: [...armholeChanges(now, armholes), ...headEase(now)],
    });
  },
};
