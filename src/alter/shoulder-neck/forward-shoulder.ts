import {
  joinPaths,
  line,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  pathStart,
  samePoint,
  splitPathAtLengths,
  tolerance,
} from '../../geometry/index.ts';
import { edgeRuns, type Garment, type Piece, pieceOf, pointOnEdge } from '../../pattern/index.ts';
import { bad, good, type Result } from '../../units/index.ts';
import { capOf } from '../cap.ts';
import { held } from '../checks.ts';
import { easedField } from '../fields.ts';
import { follow, traceFacings } from '../follow.ts';
import { heldLengths } from '../held-edges.ts';
import { isFront, isLining, isSleeve, matesOf } from '../parts.ts';
import type { Drawn } from '../reshape.ts';
import { secant } from '../secant.ts';
import { type Alteration, type Held, sideParameter } from '../types.ts';
import { warped } from '../warp.ts';
import { beginWork, finishWork, redrawEdges, type Work } from '../work.ts';
import { headEase } from './account.ts';
import { upperReach } from './armhole-line.ts';
import { drawnAlong, lineOf } from './lines.ts';
import { armholeAt, inTurn, lastOf, paired, redrawn, swungHandle, swungPair } from './shoulders.ts';
import { dartsSwung, movedBy, type SwungPanel } from './swing.ts';
import { type Armhole, armholesOf, type Chain, chainsOf, needsArmhole } from './upper.ts';

const still: Point = { x: 0, y: 0 };

/** The line of an armhole whose upper end was moved, and its edges. */
const movedArmhole = (armhole: Armhole, before: Path, by: Point): { readonly line: Path; readonly drawn: Drawn } => {
  const { piece, edges, reversed } = armhole;
  // At rest at the shoulder: what the front's angle gains there the back's loses.
  const now = warped(before, easedField(0, upperReach(armhole, before), { by }, { by: still }));
  return { line: now, drawn: drawnAlong(piece, edges, reversed, now) };
};

/** A shoulder swung until its armhole is so many mm longer (negative: shorter). */
const swungBy = (
  work: Work,
  pair: { readonly chain: Chain; readonly shell: Chain | null },
  armholes: readonly Armhole[],
  longer: number,
): Result<Work> => {
  const last = lastOf(pair.chain);
  const armhole = armholeAt(armholes, last);
  if (!armhole) return bad('alter.no-armhole', {});
  const before = lineOf(armhole.piece, armhole.edges, armhole.reversed);
  if (!before.ok) return before;
  const was = pathLength(before.value);
  const at = (down: number): Path | null => {
    const swung = swungPair(pair, down);
    return swung.ok ? movedArmhole(armhole, before.value, movedBy(swung.value.at(-1) as SwungPanel)).line : null;
  };
  const off = (down: number): number => {
    const now = at(down);
    return now ? pathLength(now) - was - longer : Number.NaN;
  };
  const down = secant(off, -longer, -longer * 1.05, tolerance.walk);
  if (down === null) return bad('alter.shoulder-too-steep', { piece: last.piece.name });
  const swung = swungPair(pair, down);
  if (!swung.ok) return swung;
  return inTurn(work, swung.value, (now, one) => {
    const own = one.panel === last ? movedArmhole(armhole, before.value, movedBy(one)).drawn : {};
    return good(
      redrawn(now, one.panel.piece.id, { ...one.drawn, ...own }, (old, after) =>
        shoulderLine(old, dartsSwung(old, after, one), armhole, longer),
      ),
    );
  });
};

/**
 * On a yoke the shoulder is a line drawn across it, from the neck point to a notch in the armhole: its outer end comes
 * forward, to as far from the front as it was.
 */
const shoulderLine = (before: Piece, after: Piece, { edges, reversed }: Armhole, longer: number): Piece => {
  const at = before.landmarks.find(({ id }) => id === 'shoulder-point')?.at;
  if (before.role !== 'yoke' || !at) return after;
  const notch = before.notches.find(
    (one) => edges.includes(one.edge) && samePointNearly(pointOnEdge(before, one.edge, one.at), at),
  );
  if (!notch) return after;
  const was = pathLength(edgeRuns(before, notch.edge).flat());
  const from = (reversed ? 1 - notch.at : notch.at) * was;
  const share = Math.min(from / (was + longer), 1);
  const now = reversed ? 1 - share : share;
  const to = pointOnEdge(after, notch.edge, now);
  const drawnTo = (path: Path): Path => {
    if (samePointNearly(pathEnd(path), at)) return [line(pathStart(path), to)];
    return samePointNearly(pathStart(path), at) ? [line(to, pathEnd(path))] : path;
  };
  return {
    ...after,
    notches: after.notches.map((one) => (one.id === notch.id && one.edge === notch.edge ? { ...one, at: now } : one)),
    landmarks: after.landmarks.map((mark) => (mark.id === 'shoulder-point' ? { ...mark, at: to } : mark)),
    lines: after.lines.map((inner, i) => ({ ...inner, path: drawnTo(before.lines[i]?.path ?? inner.path) })),
  };
};

const samePointNearly = (p: Point, q: Point): boolean =>
  samePoint(p, q) || Math.hypot(p.x - q.x, p.y - q.y) <= tolerance.holds;

/** Whether an edge of a cap is sewn to the front. */
const sewnToFront = (garment: Garment, piece: Piece, edge: string): boolean =>
  matesOf(garment, piece.id, edge).some((mate) => isFront(mate.piece));

/** The place of a sleeve's cap that meets the shoulder moved towards the front: what the front half loses the next edge gains. */
const capForward = (work: Work, piece: Piece, by: number): Result<Work> => {
  const cap = capOf(work.garment, piece);
  if (!cap) return good(work);
  const front = cap.edges.map((edge) => sewnToFront(work.garment, piece, edge));
  const joint = front.findIndex((is, i) => i > 0 && is !== front[i - 1]);
  if (joint < 1) return good(work);
  const lengths = cap.edges.map((edge) => work.tape.edge(piece, edge));
  const ends = lengths.slice(0, -1).map((_, i) => lengths.slice(0, i + 1).reduce((sum, one) => sum + one, 0));
  const forward = front[joint] ? by : -by;
  const whole = joinPaths(...cap.edges.map((edge) => edgeRuns(piece, edge)[0] as Path));
  const paths = splitPathAtLengths(
    whole,
    ends.map((end, i) => (i === joint - 1 ? end + forward : end)),
  );
  if (paths.length !== cap.edges.length) return bad('alter.edge-used-up', { piece: piece.name, by: { mm: by } });
  const drawn = Object.fromEntries(cap.edges.map((edge, i) => [edge, [paths[i] as Path]]));
  return good(redrawEdges(work, piece.id, drawn, false));
};

/** The armholes of the whole garment, shell or lining, are as long together as they were. */
const totalHeld = (work: Work, armholes: readonly Armhole[]): Held => {
  const total = (garment: Garment): number =>
    armholes
      .filter(({ piece }) => !isLining(piece))
      .flatMap(({ piece, edges }) => edges.map((edge) => work.tape.edge(pieceOf(garment, piece.id), edge)))
      .reduce((sum, one) => sum + one, 0);
  return held('armhole-total', total(work.garment) - total(work.before));
};

/**
 * Shoulder seams further forward by `amount` at the shoulder point (negative: further back).
 *
 *      *----.___        front: the seam swings about the neck point until
 *       \\       `*      its armhole is shorter by the amount;
 *        `--.__  | amount
 *              `-*      back: until its armhole is longer by as much
 *
 * So both armholes together, the shoulder and the neckline keep their lengths, and what the front's corners lose in
 * angle the back's gain: lines run over the shoulder as before. The place of the cap that meets the shoulder moves forward
 * by the amount too. On a yoke its front seam swings, and the shoulder line drawn across it.
 * Problems: `alter.shoulder-too-steep`, `alter.edge-used-up`. Source: the forward shoulder of fitting manuals.
 */
export const forwardShoulder: Alteration = {
  id: 'forward-shoulder',
  version: 1,
  family: 'shoulder-neck',
  params: { amount: { unit: 'mm', min: -20, max: 30, usual: [5, 15] }, side: sideParameter },
  amount: 'amount',
  inAll: 2,
  needs: needsArmhole,
  handle: (garment, params) => swungHandle(garment, Number(params['amount'] ?? 0), 1),
  reverse: (params) => ({ alteration: 'forward-shoulder', params: { ...params, amount: -Number(params['amount']) } }),
  holds: ['neck', 'shoulder', 'armhole-total', 'seam-walks'],
  follows: ['cap-notch', 'facings', 'lining-alike'],
  apply: (garment, params) => {
    const forward = Number(params['amount']);
    const armholes = armholesOf(garment);
    const chains = paired(chainsOf(garment));
    const swung = inTurn(beginWork(garment), chains, (work, pair) =>
      swungBy(work, pair, armholes, pair.chain[0]?.side === 'front' ? -forward : forward),
    );
    if (!swung.ok) return swung;
    const sleeves = garment.pieces.filter((piece) => isSleeve(piece) && piece.role === 'sleeve');
    const capped = inTurn(swung.value, sleeves, (work, piece) => capForward(work, piece, forward));
    if (!capped.ok) return capped;
    const shells = chains.filter(({ shell, chain }) => !shell && chain[0]);
    const traced = inTurn(capped.value, shells, (work, { chain }) =>
      traceFacings(work, (chain[0] as Chain[number]).piece.id),
    );
    if (!traced.ok) return traced;
    const followed = follow(traced.value);
    if (!followed.ok) return followed;
    const now = followed.value;
    const panels = chains.flatMap(({ chain }) => chain).filter(({ lining }) => !lining);
    return finishWork(now, {
      held: [...panels.flatMap(({ piece, edge }) => heldLengths(now, piece.id, [edge])), totalHeld(now, armholes)],
      changes: headEase(now),
    });
  },
};
