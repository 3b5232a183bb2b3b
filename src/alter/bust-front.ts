import {
  add,
  applyToPoint,
  distance,
  dot,
  length,
  lerp,
  normalize,
  type Point,
  perpendicular,
  scale,
  subtract,
  tolerance,
  turnBetween,
} from '../geometry/index.ts';
import { dartOf, type Level, levelWidth, type Piece, pointOnEdge } from '../pattern/index.ts';
import { bad, good, type Problem, type Result } from '../units/index.ts';
import { type DartedFront, dartedFront, reached } from './anatomy.ts';
import { held, heldEdges, torn } from './checks.ts';
import { cut } from './cut.ts';
import { smoothHinge } from './hinge.ts';
import { type Joined, join } from './join.ts';
import { motionOf, partAt, partBeside, slide, swing } from './move.ts';
import { redraw } from './redraw.ts';
import type { Tape } from './tape.ts';
import type { Change, Held } from './types.ts';

/** A front given more or less room for the bust. */
export interface BustFront {
  readonly before: Piece;
  readonly joined: Joined;
  readonly after: Piece;
  readonly held: readonly Held[];
  readonly changes: readonly Change[];
  readonly warnings: readonly Problem[];
  /** The edge at the centre, where along it from its start it was cut, mm, and how far it dropped. */
  readonly centre: { readonly edge: string; readonly along: number; readonly drop: number };
}

/** How far a side dart ends from the bust point: 20 to 40 mm, up to 50 for a full bust (trade, Alterations). */
const pointBack = { least: 20, most: 50 } as const;

/** Above this intake, mm, a dart is better split in two (trade, Alterations). */
const widestIntake = 65;

/** θ and v of the trade's closed formulas, from H outside and above the bust point by dh and dv. */
const swingFor = (dh: number, dv: number, a: number): { readonly angle: number; readonly drop: number } | null => {
  const share = (a - dh) / Math.hypot(dh, dv);
  if (Math.abs(share) > 1) return null;
  const angle = Math.atan2(dh, dv) + Math.asin(share);
  return { angle, drop: dh * Math.sin(angle) - dv * (1 - Math.cos(angle)) };
};

/** The hinge: the lower third of the armhole, measured along it from the underarm. */
const hingeAt = (front: DartedFront): number => (front.sideStartsAbove ? 2 / 3 : 1 / 3);

/**
 * Where the bust point comes to lie with `a` mm more room, and where it goes for each millimetre of a: out by it, and down
 * by dv/da = (dh cos θ − dv sin θ) dθ/da with dθ/da = 1 / √(dh² + dv² − (a − dh)²). Null where no turn brings it there.
 */
export const movedBustPoint = (
  piece: Piece,
  a: number,
): { readonly at: Point; readonly perMillimetre: Point } | null => {
  const anatomy = dartedFront(piece);
  if (!anatomy.ok) return null;
  const { bustPoint, outward, armhole } = anatomy.value;
  const hinge = pointOnEdge(piece, armhole, hingeAt(anatomy.value));
  const dh = outward * (hinge.x - bustPoint.x);
  const dv = bustPoint.y - hinge.y;
  const turned = dv > 0 ? swingFor(dh, dv, a) : null;
  const rest = Math.sqrt(Math.max(dh * dh + dv * dv - (a - dh) ** 2, 0));
  if (!turned || rest <= tolerance.same) return null;
  const down = (dh * Math.cos(turned.angle) - dv * Math.sin(turned.angle)) / rest;
  return {
    at: { x: bustPoint.x + outward * a, y: bustPoint.y + turned.drop },
    perMillimetre: { x: outward, y: down },
  };
};

/**
 * A dart's point on the line halfway between its legs' ends, so that the legs are equal, `back` mm from the
 * point it aims at (or as near to that as the line comes).
 */
export const pointBetween = (aim: Point, legs: readonly [Point, Point], back: number): Point => {
  const middle = lerp(legs[0], legs[1], 1 / 2);
  const across = subtract(legs[1], legs[0]);
  if (length(across) <= tolerance.same) return add(aim, scale(normalize(subtract(middle, aim)), back));
  const normal = perpendicular(normalize(across));
  const towardsAim = dot(subtract(aim, middle), normal) < 0 ? scale(normal, -1) : normal;
  const out = dot(subtract(aim, middle), towardsAim);
  const aside = Math.abs(dot(subtract(aim, middle), normalize(across)));
  return add(middle, scale(towardsAim, out - Math.sqrt(Math.max(back * back - aside * aside, 0))));
};

/** A bust level this near the bust point at the centre, mm, goes over it; one further up crosses the wedge where it is narrower. */
const overBust = 25;

/** Levels over the bust point and below it: what grows by all of a. */
const levelsBelow = (piece: Piece, bustPoint: Point): readonly Level[] =>
  piece.levels.filter(({ id, from }) => from.y >= bustPoint.y - (id === 'bust' ? overBust : tolerance.walk));

/**
 * A level as a tape lies over the bust: square from the centre to the bust point, and on along the side part, which has
 * turned, to where the level was carried on the side seam. The bend lies above or below the new bust point where the
 * line is as long as asked: in the bust point itself when the level went through it.
 */
const bentOver = (after: Piece, carried: Level, bustPoint: Point, width: number): Level => {
  const beyond = width - Math.abs(bustPoint.x - carried.from.x);
  const across = carried.to.x - bustPoint.x;
  const drop = Math.sqrt(Math.max(beyond * beyond - across * across, 0));
  const level = carried.from.y;
  const [low, high] = [carried.to.y + drop, carried.to.y - drop];
  const over: Point = { x: bustPoint.x, y: Math.abs(low - level) < Math.abs(high - level) ? low : high };
  const towardsCentre: Point = { x: carried.from.x < bustPoint.x ? -1 : 1, y: 0 };
  const from = reached(after, over, towardsCentre)?.point ?? carried.from;
  return { ...carried, from, over };
};

/** Levels over and below the bust point, each as wide as it was and `a` more. */
const heldWidths = (before: Piece, after: Piece, levels: readonly Level[], a: number): readonly Held[] =>
  levels.map(({ id }) =>
    held('width-grows', levelWidth(after, id) - levelWidth(before, id) - a, { piece: after.id, level: id }),
  );

/**
 * A front with a side dart given a mm more room for the bust (less where a is negative), as the trade's manuals
 * cut it: from the bust point BP to a hinge H on the armhole at its lower third, along both legs of the
 * dart extended to BP, square across to the centre, and down along the grain to the hem. The side part
 * above the dart turns about H until BP has moved out by a (and so down by v); the side part below it slides by
 * the same (a, v); the centre below BP drops by v; the centre above stays. θ = atan2(dh, dv) +
 * asin((a − dh) / √(dh² + dv²)), v = dh sin θ − dv (1 − cos θ).
 *
 * Problems: those of `dartedFront` and `cut`; `alter.hinge-too-near` where no turn about H moves BP that far;
 * `alter.dart-used-up` where taking out more than the dart holds; `alter.no-centre`, `alter.tears`.
 */
export const bustFront = (piece: Piece, a: number, tape: Tape): Result<BustFront> => {
  const anatomy = dartedFront(piece);
  if (!anatomy.ok) return anatomy;
  const front = anatomy.value;
  const { bustPoint, dart, outward, sideStartsAbove } = front;
  const at = hingeAt(front);
  const hinge = pointOnEdge(piece, front.armhole, at);
  const dh = outward * (hinge.x - bustPoint.x);
  const dv = bustPoint.y - hinge.y;
  const turned = dv > 0 ? swingFor(dh, dv, a) : null;
  if (!turned) return bad(a < 0 ? 'alter.dart-used-up' : 'alter.hinge-too-near', { piece: piece.name });
  const { angle, drop } = turned;
  const upper: 0 | 1 = sideStartsAbove ? 0 : 1;
  const lower: 0 | 1 = upper === 0 ? 1 : 0;
  const opening = Math.abs(turnBetween(subtract(dart.legs[upper], bustPoint), subtract(dart.legs[lower], bustPoint)));
  // A dart is used up when its legs meet; a hair more would lay one over the other.
  if (opening + angle < -1e-9) return bad('alter.dart-used-up', { piece: piece.name });
  const centre = reached(piece, bustPoint, { x: -outward, y: 0 });
  const hem = reached(piece, bustPoint, { x: 0, y: 1 });
  if (!centre || !hem) return bad('alter.no-centre', { piece: piece.name });

  const bp = { node: 'bust-point' };
  const made = cut(piece, {
    nodes: { 'bust-point': bustPoint },
    cuts: [
      { id: 'hinge', from: bp, to: { edge: front.armhole, at } },
      { id: 'upper-leg', from: bp, to: { dart: dart.id, leg: upper } },
      { id: 'lower-leg', from: bp, to: { dart: dart.id, leg: lower } },
      { id: 'centre', from: bp, to: centre.end },
      { id: 'hem', from: bp, to: hem.end },
    ],
  });
  if (!made.ok) return made;
  const clockwise = outward === 1 ? 'right' : 'left';
  const sideAbove = partBeside(made.value, 'hinge', clockwise);
  const sideBelow = partBeside(made.value, 'lower-leg', clockwise);
  const centreBelow = partBeside(made.value, 'hem', clockwise);
  const moved: Point = { x: outward * a, y: drop };
  const swung = swing(made.value, sideAbove, hinge, -outward * angle);
  const slid = slide(slide(swung, sideBelow, moved), centreBelow, { x: 0, y: drop });
  const newBustPoint = add(bustPoint, moved);
  const place = (leg: 0 | 1): Point =>
    applyToPoint(motionOf(slid, leg === upper ? sideAbove : sideBelow), dart.legs[leg]);
  const drafted = distance(bustPoint, dart.point);
  const back = Math.min(Math.max(drafted, pointBack.least), pointBack.most);
  const below = levelsBelow(piece, bustPoint);
  const swungLevels = new Set(below.filter(({ to }) => partAt(slid, to) === sideAbove).map(({ id }) => id));
  const put = join(slid, {
    darts: { [dart.id]: pointBetween(newBustPoint, [place(0), place(1)], back) },
    landmarks: { 'bust-point': sideBelow },
    levels: Object.fromEntries(
      levelsBelow(piece, bustPoint).map(({ id }) => [id, { from: centreBelow, over: sideBelow }]),
    ),
  });

  const joined: Joined = {
    ...put,
    piece: {
      ...put.piece,
      levels: put.piece.levels.map((level) =>
        swungLevels.has(level.id) ? bentOver(put.piece, level, newBustPoint, levelWidth(piece, level.id) + a) : level,
      ),
    },
  };
  const atHinge = joined.formers.find(({ edge }) => edge === front.armhole);
  const smoothed = atHinge ? smoothHinge(joined.piece, atHinge, tolerance.kink) : { piece: joined.piece, strayed: 0 };
  const after = joined.formers
    .filter((former) => former !== atHinge)
    .reduce((trued, former) => redraw(trued, former).piece, smoothed.piece);
  const problem = torn(after);
  if (problem) return { ok: false, problem };

  const changed = new Set([hem.end.edge, centre.end.edge]);
  const kept = piece.edges.map(({ id }) => id).filter((id) => !changed.has(id));
  const dartNow = after.darts.some(({ id }) => id === dart.id) ? dartOf(after, dart.id) : null;
  const openNow = Math.abs(turnBetween(subtract(place(upper), newBustPoint), subtract(place(lower), newBustPoint)));
  return good({
    before: piece,
    joined,
    after,
    held: [
      ...heldEdges(tape, piece, after, kept),
      held('armhole-smooth', smoothed.strayed, { piece: piece.id, edge: front.armhole }, tolerance.kink),
      held('dart-legs', dartNow ? dartNow.legLengths[0] - dartNow.legLengths[1] : 0, { piece: piece.id }),
      // An angle is held to what it comes to at the end of the leg.
      held('dart-angle', (openNow - opening - angle) * distance(bustPoint, dart.legs[upper]), { piece: piece.id }),
      ...heldWidths(piece, after, below, a),
      held('centre-drop', tape.edge(after, centre.end.edge) - tape.edge(piece, centre.end.edge) - drop, {
        piece: piece.id,
        edge: centre.end.edge,
      }),
    ],
    changes: [
      ...[...changed].map((edge): Change => {
        const now = tape.edge(after, edge);
        return { what: 'edge-length', piece: piece.id, edge, by: now - tape.edge(piece, edge), now };
      }),
      ...(dartNow
        ? [{ what: 'dart-intake', piece: piece.id, by: dartNow.intake - dart.intake, now: dartNow.intake }]
        : [{ what: 'dart-gone', piece: piece.id, by: -dart.intake, now: 0 }]),
    ],
    warnings:
      dartNow && dartNow.intake > widestIntake
        ? [bad('alter.split-dart', { piece: piece.name, intake: { mm: dartNow.intake } }).problem]
        : [],
    centre: { edge: centre.end.edge, along: centre.end.at * tape.edge(piece, centre.end.edge), drop },
  });
};
