import {
  applyToPath,
  distance,
  endTangent,
  pathBounds,
  startTangent,
  subtract,
  turnBetween,
} from '../geometry/index.ts';
import { closing, dartOf, edgeRuns, type Garment, levelWidth, pieceOf } from '../pattern/index.ts';
import type { ShapeCheck } from './shape-check.ts';
import { edgeBend, inDegrees, landmarkIn, legsApart, lengthIn, meanOf } from './shape-garment.ts';
import { asideOf, inflections } from './shape-measures.ts';
import { check, smooth, sources, square } from './shape-rules.ts';
import { intake, sideLength, skirtInsideChecks } from './skirt-inside-shape.ts';
import { dartIds, type Half } from './skirt-pieces.ts';
import type { SkirtView } from './skirt-plan.ts';

const { block, truing, fitting } = sources;

const halves: readonly Half[] = ['front', 'back'];

const darts = (garment: Garment, which: Half) => dartIds[which].map((id) => dartOf(pieceOf(garment, which), id));

const everyDart = (garment: Garment) => halves.flatMap((which) => darts(garment, which));

/** How far the waist turns where a dart of it is stitched, degrees: the worst. */
const worstTurn = (garment: Garment, which: Half): number => {
  const runs = edgeRuns(pieceOf(garment, which), 'waist');
  return Math.max(
    ...darts(garment, which).map((dart, i) => {
      const [before, after] = [runs[i], runs[i + 1]];
      if (!before || !after) return Number.NaN;
      const closed = applyToPath(closing(dart, 0), before);
      return Math.abs(inDegrees(turnBetween(endTangent(closed), startTangent(after))));
    }),
  );
};

/** Angle of a dart's middle to the grain, degrees. */
const lean = (dart: ReturnType<typeof dartOf>): number => {
  const mouth = { x: meanOf(dart.legs[0].x, dart.legs[1].x), y: meanOf(dart.legs[0].y, dart.legs[1].y) };
  const axis = subtract(dart.point, mouth);
  return Math.abs(inDegrees(Math.atan2(axis.x, axis.y)));
};

const shortOfHip = (garment: Garment, which: Half): number =>
  landmarkIn(garment, which, 'hip-side').y - Math.max(...darts(garment, which).map(({ point }) => point.y));

const sweep = (garment: Garment): number => 2 * (lengthIn(garment, 'front', 'hem') + lengthIn(garment, 'back', 'hem'));

const hipRound = (garment: Garment): number =>
  2 * (levelWidth(pieceOf(garment, 'front'), 'hip') + levelWidth(pieceOf(garment, 'back'), 'hip'));

const sideIntake = (garment: Garment, which: Half): number =>
  landmarkIn(garment, which, 'hip-side').x - landmarkIn(garment, which, 'waist-side').x;

/** The edge a side seam begins as at the waist. */
const topSide = (view: SkirtView): 'side' | 'side-upper' => (view === 'pockets' ? 'side-upper' : 'side');

/** What a cutter looks at before she would cut from the skirt, by measuring the drafted pieces alone. */
export const skirtShape = (view: SkirtView): readonly ShapeCheck[] => [
  square('waist-square-front', 'front', 'centre-front', 'waist'),
  square('waist-square-back', 'back', 'centre-back', 'waist'),
  square('waist-square-side-front', 'front', 'waist', topSide(view)),
  square('waist-square-side-back', 'back', 'waist', topSide(view)),
  smooth('waist-over-side', 'The waist runs on across the side seam', topSide(view), 0),
  smooth('hem-over-side', 'The hem runs on across the side seam', 'side', 1),
  square('hem-square-front', 'front', 'hem', 'centre-front'),
  square('hem-square-back', 'back', 'hem', 'centre-back'),
  square('hem-square-side-front', 'front', 'side', 'hem'),
  square('hem-square-side-back', 'back', 'side', 'hem'),
  smooth('lining-hem-over-side', 'The lining’s hem runs on across its side seam', 'lining-side', 1),
  check('dart-legs', 'Legs of every dart are equal', block, 'mm', [0, 0.1], (garment) =>
    Math.max(...halves.flatMap((which) => dartIds[which].map((id) => legsApart(pieceOf(garment, which), id)))),
  ),
  check(
    'waist-smooth-at-dart-front',
    'The front waist is smooth where its dart is stitched',
    truing,
    'degrees',
    [0, 1],
    (garment) => worstTurn(garment, 'front'),
  ),
  check(
    'waist-smooth-at-dart-back',
    'The back waist is smooth where its darts are stitched',
    truing,
    'degrees',
    [0, 1],
    (garment) => worstTurn(garment, 'back'),
  ),
  check('waist-bends', 'No stray bend in the sewn waist between its darts', block, 'count', [0, 0], (garment) =>
    halves.reduce(
      (sum, which) => sum + edgeRuns(pieceOf(garment, which), 'waist').reduce((all, run) => all + inflections(run), 0),
      0,
    ),
  ),
  check('dart-intake', 'No dart takes in less than can be stitched', block, 'mm', [4, 45], (garment) =>
    Math.min(...everyDart(garment).map((dart) => dart.intake)),
  ),
  check('dart-not-a-gore', 'No dart takes in more than it can let go smoothly', block, 'mm', [4, 45], (garment) =>
    Math.max(...everyDart(garment).map((dart) => dart.intake)),
  ),
  check(
    'dart-slim',
    'The widest dart over its length: it lets the cloth go without a pouch',
    block,
    'share',
    [0.03, 0.42],
    (garment) => Math.max(...everyDart(garment).map((dart) => dart.intake / dart.legLengths[0])),
  ),
  check(
    'darts-upright',
    'The darts hang along the grain, leaning at most a little outward',
    block,
    'degrees',
    [0, 14],
    (garment) => Math.max(...everyDart(garment).map(lean)),
  ),
  check(
    'front-dart-shorter',
    'The front dart ends higher than the back’s: the belly is above the seat',
    block,
    'mm',
    [15, 80],
    (garment) => shortOfHip(garment, 'front') - shortOfHip(garment, 'back'),
  ),
  check(
    'darts-end-above-hip',
    'The longest dart ends above the hip level, where the seat is fullest',
    block,
    'mm',
    [25, 100],
    (garment) => shortOfHip(garment, 'back'),
  ),
  check(
    'back-takes-more',
    'The back’s darts take in more than the front’s: the seat stands out more than the belly',
    block,
    'share',
    [1.2, 4],
    (garment) => intake(garment, 'back') / intake(garment, 'front'),
  ),
  check(
    'back-dips',
    'The waist dips at the centre back for the hollow above the seat',
    block,
    'mm',
    [5, 10],
    (garment) =>
      landmarkIn(garment, 'back', 'waist-centre-back').y - landmarkIn(garment, 'front', 'waist-centre-front').y,
  ),
  check(
    'side-rises',
    'The waist rises at the side, for the way over the hip is longer',
    block,
    'mm',
    [8, 32],
    (garment) => landmarkIn(garment, 'front', 'waist-centre-front').y - landmarkIn(garment, 'front', 'waist-side').y,
  ),
  check('side-bends', 'The side seam rounds the hip without a wave', block, 'count', [0, 0], (garment) =>
    Math.max(edgeBend(garment, 'front', topSide(view)), edgeBend(garment, 'back', topSide(view))),
  ),
  check('sides-alike', 'Front and back side seam are one curve', truing, 'mm', [0, 0.1], (garment) =>
    Math.abs(sideIntake(garment, 'front') - sideIntake(garment, 'back')),
  ),
  check(
    'side-shaped',
    'What the side seam takes in from hip to waist, of a quarter: more sits on a ledge over the hip',
    block,
    'mm',
    [10, 68],
    (garment) => sideIntake(garment, 'front'),
  ),
  check(
    'back-wider',
    'The back is as wide as the front at the hip or a little wider',
    block,
    'mm',
    [0, 12],
    (garment) => levelWidth(pieceOf(garment, 'back'), 'hip') - levelWidth(pieceOf(garment, 'front'), 'hip'),
  ),
  check(
    'hip-ease',
    'The skirt at the hip less the hip: seldom more, where belly or waist need it',
    fitting,
    'mm',
    [50, 300],
    (garment, body) => hipRound(garment) - (body.hipGirth ?? 0),
  ),
  check(
    'hem-sweep',
    'The hem over the skirt at the hip: an A-line',
    block,
    'share',
    view === 'midi' ? [1.15, 1.65] : [1.08, 1.4],
    (garment) => sweep(garment) / hipRound(garment),
  ),
  check('hem-steps', 'The hem is wide enough to step in', fitting, 'mm', [950, 2400], sweep),
  check(
    'hem-level',
    'Side seam and centre front hang as long, but for the way over the hip',
    truing,
    'mm',
    [-8, 20],
    (garment) => sideLength(garment, 'front') - lengthIn(garment, 'front', 'centre-front'),
  ),
  check(
    'length',
    'Waist to hem over waist to knee',
    block,
    'share',
    view === 'midi' ? [1.3, 1.65] : [1.02, 1.1],
    (garment, body) => lengthIn(garment, 'front', 'centre-front') / ((body.waistHeight ?? 0) - (body.kneeHeight ?? 0)),
  ),
  check('dart-inside', 'The outer back dart stands clear of the side seam', block, 'mm', [20, 140], (garment) => {
    const outer = dartOf(pieceOf(garment, 'back'), 'waist-outer');
    return distance(outer.legs[1], landmarkIn(garment, 'back', 'waist-side'));
  }),
  check('darts-apart', 'The back darts do not run together', block, 'mm', [20, 140], (garment) => {
    const [inner, outer] = darts(garment, 'back');
    return inner && outer ? outer.point.x - inner.point.x : Number.NaN;
  }),
  check('dart-middle', 'The front dart’s middle is square to the waist', block, 'mm', [0, 3], (garment) => {
    const [dart] = darts(garment, 'front');
    if (!dart) return Number.NaN;
    const mouth = { x: meanOf(dart.legs[0].x, dart.legs[1].x), y: meanOf(dart.legs[0].y, dart.legs[1].y) };
    const square = subtract(dart.legs[1], dart.legs[0]);
    return asideOf(dart.point, mouth, { x: mouth.x - square.y, y: mouth.y + square.x });
  }),
  check('deep-enough', 'The skirt is longer than it is wide', block, 'share', [1.2, 5], (garment) => {
    const { minX, maxX, minY, maxY } = pathBounds(pieceOf(garment, 'front').runs.flatMap(({ path }) => path));
    return (maxY - minY) / (maxX - minX);
  }),
  ...skirtInsideChecks(view),
];
