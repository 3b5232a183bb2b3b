import { pathLength, pathStart } from '../geometry/index.ts';
import type { ShapeCheck } from './shape-check.ts';
import { edgeBend, landmarkIn, runOf } from './shape-garment.ts';

import { check, smooth, sources, square } from './shape-rules.ts';
import { fullness, lengthOf, waistToHem } from './shirt-dress-measures.ts';

const { block, fitting, sewing } = sources;

/** Waistband and gathered skirt. */
export const skirtShape: readonly ShapeCheck[] = [
  check(
    'skirt-gathers',
    'The skirt is gathered well: 1.2 to twice its waistband',
    sewing,
    'share',
    [0.2, 1],
    (garment) => fullness(garment, ['skirt-*.waist', 'waist-*.bottom'])[1],
  ),
  check(
    'skirt-gathers-even',
    'Front and back of the skirt are gathered alike',
    sewing,
    'share',
    [0, 0.02],
    (garment) => {
      const [least, most] = fullness(garment, ['skirt-*.waist', 'waist-*.bottom']);
      return most - least;
    },
  ),
  check(
    'waist-shared',
    'The side seam hangs at the side below the bodice too: front and back share waistband and skirt',
    block,
    'mm',
    [-22, 22],
    (garment) => landmarkIn(garment, 'waist-front', 'waist-side').x - landmarkIn(garment, 'waist-back', 'waist-side').x,
  ),
  smooth('skirt-waist-over-side', 'The skirt’s waist runs on across the side seam', 'skirt-side-above', 0),
  check(
    'skirt-side-length',
    'The skirt’s side is as long as its centre',
    fitting,
    'mm',
    [-1, 3],
    (garment) =>
      ['side-above', 'pocket', 'side'].reduce((sum, edge) => sum + lengthOf(garment, 'skirt-front', edge), 0) -
      lengthOf(garment, 'skirt-front', 'stand'),
  ),
  smooth('hem-over-side', 'The skirt’s lower edge runs on across the side seam', 'skirt-side', 1),
];

export const pocketShape: readonly ShapeCheck[] = [
  check('pocket-mouth', 'A hand passes the pocket’s mouth', fitting, 'mm', [140, 175], (garment) =>
    lengthOf(garment, 'pocket', 'mouth'),
  ),
  check('pocket-bends', 'The pocket’s bag is round, without a stray bend', sewing, 'count', [0, 0], (garment) =>
    edgeBend(garment, 'pocket', 'bag'),
  ),
  check('pocket-hangs', 'The pocket’s bag ends above the skirt’s lower edge', sewing, 'mm', [20, 500], (garment) => {
    const low = Math.max(...runOf(garment, 'pocket', 'bag').map(({ to }) => to.y));
    return pathStart(runOf(garment, 'skirt-front', 'side')).y + pathLength(runOf(garment, 'skirt-front', 'side')) - low;
  }),
];

export const tierShape: readonly ShapeCheck[] = [
  square('skirt-square-side', 'skirt-front', 'side', 'tier'),
  square('skirt-square-front', 'skirt-front', 'tier', 'stand'),
  square('tier-square', 'tier-front', 'side', 'hem'),
  check(
    'tier-gathers',
    'The tier is gathered 1.4 to 1.6 times',
    sewing,
    'share',
    [0.4, 0.6],
    (garment) => fullness(garment, ['tier-*.top', 'skirt-*.tier'])[1],
  ),
  check(
    'tier-shorter',
    'The tier is shorter than what it hangs from',
    block,
    'share',
    [0.55, 1],
    (garment) => lengthOf(garment, 'tier-front', 'side') / lengthOf(garment, 'skirt-front', 'stand'),
  ),
  check(
    'hem-below-knee',
    'The hem lies below the knee, at the calf',
    fitting,
    'mm',
    [70, 260],
    (garment, body) => waistToHem(garment) - (body.waistHeight ?? 0) + (body.kneeHeight ?? 0),
  ),
];

export const kneeLengthShape: readonly ShapeCheck[] = [
  square('skirt-square-side', 'skirt-front', 'side', 'hem'),
  square('skirt-square-front', 'skirt-front', 'hem', 'stand'),
  check(
    'hem-at-knee',
    'The hem lies at the knee',
    fitting,
    'mm',
    [-40, 60],
    (garment, body) => waistToHem(garment) - (body.waistHeight ?? 0) + (body.kneeHeight ?? 0),
  ),
  check(
    'stride',
    'The hem is wide enough to be walked in',
    fitting,
    'mm',
    [1000, 4000],
    (garment) => 2 * (lengthOf(garment, 'skirt-front', 'hem') + lengthOf(garment, 'skirt-back', 'hem')),
  ),
];
