import { levelWidth, notchPlace, pieceOf } from '../pattern/index.ts';
import type { ShapeCheck } from './shape-check.ts';
import { cornerBetween, edgeBend, inDegrees, landmarkIn, runOf } from './shape-garment.ts';
import { bulges, leastRadius, slopeOf } from './shape-measures.ts';
import { check, smooth, sources, square } from './shape-rules.ts';
import {
  both,
  crotch,
  fork,
  type Half,
  hem,
  hemOffCrease,
  leans,
  length,
  limb,
  offCrease,
  partOf,
  rise,
  seamTurnOf,
} from './trouser-shape-measures.ts';

const { trousers, truing, fitting } = sources;

/** Ease a kind of garment is cut with, least and most that any surveyed body should need, mm. */
export interface LegEase {
  readonly crotch: readonly [number, number];
  readonly rise: readonly [number, number];
  readonly thigh: readonly [number, number];
  /** How far the hem may turn across a seam, degrees: little where legs are straight. */
  readonly hemTurn: number;
  /** Legs that end above the knee have no knee to look at. */
  readonly toKnee?: boolean;
}

/** Checks of what only a leg that reaches the knee has. */
const atTheKnee = new Set([
  'inside-leg-stretched',
  'inside-leg-below-knee',
  'crease-at-knee',
  'crease-at-hem',
  'hem-square-to-crease',
  'back-wider-at-knee',
  'narrows',
]);

/** What a cutter looks at on legs of any trousers, by measuring the drafted pieces alone. */
export const legShape = (ease: LegEase): readonly ShapeCheck[] =>
  wholeLegShape(ease).filter(({ id }) => ease.toKnee !== false || !atTheKnee.has(id));

const wholeLegShape = (ease: LegEase): readonly ShapeCheck[] => [
  smooth('crotch-runs-on', 'The crotch curve runs on from front to back across the inside leg', 'inside-leg', 0),
  check('crotch-curves', 'No crotch curve bends the other way', trousers, 'count', [0, 0], (garment) =>
    both((half) => edgeBend(garment, half, 'crotch')),
  ),
  check(
    'crotch-open',
    'Radius of the tightest bend of either crotch: no corner to strain or to clip',
    trousers,
    'mm',
    [14, 200],
    (garment) => -both((half) => -leastRadius(runOf(garment, half, 'crotch'))),
  ),
  check(
    'crotch-hollow',
    'The back crotch is hollowed below the straight from crotch point to waist by this share of that straight',
    trousers,
    'share',
    [0.045, 0.3],
    (garment) =>
      bulges(runOf(garment, 'back', 'crotch')).left / length(garment, 'back', 'crotch') +
      bulges(runOf(garment, 'back', 'crotch')).right / length(garment, 'back', 'crotch'),
  ),
  check(
    'back-fork-larger',
    'The back fork over the front',
    trousers,
    'share',
    [1.5, 3.2],
    (garment) => fork(garment, 'back') / fork(garment, 'front'),
  ),
  check(
    'forks',
    'Both forks over the hip girth: what the body is deep',
    trousers,
    'share',
    [0.09, 0.275],
    (garment, body) => (fork(garment, 'front') + fork(garment, 'back')) / (body.hipGirth ?? Number.NaN),
  ),
  check('seat-slants', 'The seat seam slants, from hip to waist', trousers, 'degrees', [3, 24], (garment) =>
    leans(garment, 'back'),
  ),
  check('front-upright', 'The centre front stands nearly upright', trousers, 'degrees', [-14, 5], (garment) =>
    leans(garment, 'front'),
  ),
  check(
    'seat-slants-more',
    'The seat slants more than the centre front',
    trousers,
    'degrees',
    [1, 30],
    (garment) => leans(garment, 'back') - leans(garment, 'front'),
  ),
  check(
    'back-raised',
    'The back waist is raised at its centre above the front’s: sitting takes it',
    trousers,
    'mm',
    [-20, 130],
    (garment) => landmarkIn(garment, 'front', 'centre-waist').y - landmarkIn(garment, 'back', 'centre-waist').y,
  ),
  check(
    'back-crotch-lower',
    'The back crotch point lies lower, so that the inside legs walk',
    trousers,
    'mm',
    [4, 55],
    (garment) => landmarkIn(garment, 'back', 'crotch-point').y - landmarkIn(garment, 'front', 'crotch-point').y,
  ),
  check(
    'crotch-ease',
    'Both crotch seams less the body’s crotch length',
    fitting,
    'mm',
    ease.crotch,
    (garment, body) => crotch(garment) - (body.crotchLength ?? Number.NaN),
  ),
  check(
    'rise-ease',
    'Waist to crotch at the side less the body rise',
    fitting,
    'mm',
    ease.rise,
    (garment, body) => rise(garment) - (body.bodyRise ?? Number.NaN),
  ),
  check(
    'thigh-ease',
    'Thigh below the crotch less the body’s',
    fitting,
    'mm',
    ease.thigh,
    (garment, body) => limb(garment, 'thigh') - (body.thighGirth ?? Number.NaN),
  ),
  check(
    'inside-leg-stretched',
    'Above the knee the back inside leg is shorter, stretched on to the front',
    trousers,
    'mm',
    [3, 10],
    (garment) =>
      partOf(garment, 'front', 'inside-leg', 'knee-inside', true) -
      partOf(garment, 'back', 'inside-leg', 'knee-inside', true),
  ),
  check('inside-leg-below-knee', 'Below the knee both inside legs are equal', truing, 'mm', [0, 0.1], (garment) =>
    Math.abs(
      partOf(garment, 'front', 'inside-leg', 'knee-inside', false) -
        partOf(garment, 'back', 'inside-leg', 'knee-inside', false),
    ),
  ),
  check(
    'sides-equal',
    'Front and back side seam are equal',
    truing,
    'mm',
    [0, 0.1],
    (garment) => Math.abs(seamTurnOf(garment, 'side-upper')) + Math.abs(seamTurnOf(garment, 'side')),
  ),
  check('crease-at-knee', 'The grain halves the knee', trousers, 'mm', [0, 0.1], (garment) =>
    both((half) => offCrease(garment, half, 'knee-inside', 'knee-side')),
  ),
  check('crease-at-hem', 'The grain halves the hem', trousers, 'mm', [0, 0.1], (garment) =>
    both((half) => hemOffCrease(garment, half)),
  ),
  check('hem-square-to-crease', 'The hem lies square to the crease', trousers, 'degrees', [0, 0.5], (garment) =>
    both((half) => {
      const [line] = runOf(garment, half, 'hem');
      return line ? Math.abs(inDegrees(slopeOf(line.to, line.from))) : Number.NaN;
    }),
  ),
  smooth('hem-over-side', 'The hem runs on across the side seam', 'side', 1, ease.hemTurn),
  smooth('hem-over-inside-leg', 'The hem runs on across the inside leg', 'inside-leg', 1, ease.hemTurn),
  smooth('waist-over-side', 'The waist runs on across the side seam', 'side-upper', 0),
  square('waist-square-front', 'front', 'crotch', 'waist'),
  square('waist-square-back', 'back', 'crotch', 'waist'),
  check('waist-curves', 'A waist seam bends no more than once the other way', truing, 'count', [0, 1], (garment) =>
    both((half) => edgeBend(garment, half, 'waist')),
  ),
  check(
    'side-curves',
    'The side below the hip’s notch changes its bend once, over the thigh',
    trousers,
    'count',
    [0, 1],
    (garment) => both((half) => edgeBend(garment, half, 'side')),
  ),
  check('inside-leg-curves', 'No inside leg changes its bend', trousers, 'count', [0, 1], (garment) =>
    both((half) => edgeBend(garment, half, 'inside-leg')),
  ),
  check(
    'back-wider-at-hip',
    'The back is wider than the front at the hip',
    trousers,
    'mm',
    [6, 60],
    (garment) => levelWidth(pieceOf(garment, 'back'), 'hip') - levelWidth(pieceOf(garment, 'front'), 'hip'),
  ),
  check(
    'back-wider-at-knee',
    'The back is wider than the front at the knee',
    trousers,
    'mm',
    [16, 60],
    (garment) => levelWidth(pieceOf(garment, 'back'), 'knee') - levelWidth(pieceOf(garment, 'front'), 'knee'),
  ),
  check(
    'narrows',
    'The knee over the thigh: the leg narrows to it',
    trousers,
    'share',
    [0.5, 0.95],
    (garment) => limb(garment, 'knee') / limb(garment, 'thigh'),
  ),
  check(
    'foot-passes',
    'The hem less the heel, which goes through it',
    'every ring that must be passed: hem ≥ heel girth + 10',
    'mm',
    [10, 700],
    (garment, body) => hem(garment) - (body.heelGirth ?? Number.NaN),
  ),
  check('hip-line-level', 'The hip’s notches meet where the hip line does', truing, 'mm', [0, 0.1], (garment) => {
    const off = (half: Half): number => {
      const piece = pieceOf(garment, half);
      const hip = piece.notches.find(({ id }) => id === 'hip');
      if (!hip) return Number.NaN;
      const at = notchPlace(piece, hip).point;
      const mark = landmarkIn(garment, half, 'hip-side');
      return Math.hypot(at.x - mark.x, at.y - mark.y);
    };
    return both(off);
  }),
  check(
    'corner-at-crotch',
    'The back’s corner at the crotch point: neither a spike nor blunt',
    trousers,
    'degrees',
    [55, 92],
    (garment) => cornerBetween(garment, 'back', 'inside-leg', 'crotch'),
  ),
];
