import { pathBounds, pathEnd } from '../geometry/index.ts';
import { dartOf, type Garment, hasEdge, levelWidth, pieceOf } from '../pattern/index.ts';
import type { ShapeCheck } from './shape-check.ts';
import { landmarkIn, lengthIn, meanOf, notchIn, runOf } from './shape-garment.ts';
import { apart } from './shape-measures.ts';
import { check, sources } from './shape-rules.ts';
import { dartIds, type Half } from './skirt-pieces.ts';
import type { SkirtView } from './skirt-plan.ts';

const { truing, fitting, sewing } = sources;

const halves: readonly Half[] = ['front', 'back'];

/** What the darts of a half take in together. */
export const intake = (garment: Garment, which: Half): number =>
  dartIds[which].reduce((sum, id) => sum + dartOf(pieceOf(garment, which), id).intake, 0);

const zipLength = (garment: Garment): number =>
  lengthIn(garment, 'back', 'centre-back') - notchIn(garment, 'back', 'zip-end');

const bandRound = (garment: Garment): number => levelWidth(pieceOf(garment, 'waistband'), 'waist');

/** How much longer the lining's waist is than the shell's, darts stitched. */
const tucked = (garment: Garment, which: Half): number =>
  lengthIn(garment, `lining-${which}`, 'waist') - lengthIn(garment, which, 'waist');

/** A whole side seam, in one edge or two. */
export const sideLength = (garment: Garment, piece: string): number =>
  lengthIn(garment, piece, 'side') +
  (hasEdge(pieceOf(garment, piece), 'side-upper') ? lengthIn(garment, piece, 'side-upper') : 0);

/** What a cutter looks at in the pockets of the view that has them. */
const pocketChecks: readonly ShapeCheck[] = [
  check(
    'pocket-copies-side',
    'The pocket bag’s side is the front’s own',
    sewing,
    'mm',
    [0, 0.1],
    (garment) => apart(runOf(garment, 'pocket', 'side'), runOf(garment, 'front', 'side-upper')).most,
  ),
  check(
    'pocket-mouth',
    'The mouth of the pocket is long enough for a hand that goes in aslant, and ends where an arm reaches',
    sewing,
    'mm',
    [125, 240],
    (garment) => lengthIn(garment, 'front', 'side-upper') - notchIn(garment, 'front', 'mouth'),
  ),
  check(
    'pocket-hangs',
    'The bag hangs from the waist, clear of the centre',
    sewing,
    'share',
    [0.3, 0.95],
    (garment) => lengthIn(garment, 'pocket', 'waist') / lengthIn(garment, 'front', 'waist'),
  ),
  check('pocket-deep', 'The bag reaches below its mouth', sewing, 'mm', [70, 140], (garment) => {
    const { maxY } = pathBounds(runOf(garment, 'pocket', 'bag'));
    return maxY - pathEnd(runOf(garment, 'pocket', 'side')).y;
  }),
];

/** What a cutter looks at in the skirt's closure, band, lining and pockets. */
export const skirtInsideChecks = (view: SkirtView): readonly ShapeCheck[] => [
  check(
    'band-ease',
    'The closed band less the waist',
    fitting,
    'mm',
    [10, 25],
    (garment, body) => bandRound(garment) - (body.waistGirth ?? 0),
  ),
  check(
    'zip-past-hip',
    'The zip ends at the hip or a little below it',
    sewing,
    'mm',
    [0, 25],
    (garment) =>
      landmarkIn(garment, 'back', 'waist-centre-back').y +
      zipLength(garment) -
      landmarkIn(garment, 'back', 'hip-side').y,
  ),
  check(
    'hips-pass',
    'The open waist, the zip counted twice, less the hip that goes through it',
    'every ring that must be passed: waist + twice the opening ≥ hip girth',
    'mm',
    [20, 900],
    (garment, body) => bandRound(garment) + 2 * zipLength(garment) - (body.hipGirth ?? 0),
  ),
  check('band-fits', 'The band is as long as the waist it is sewn to', truing, 'mm', [0, 0.2], (garment) =>
    Math.abs(bandRound(garment) - 2 * (lengthIn(garment, 'front', 'waist') + lengthIn(garment, 'back', 'waist'))),
  ),
  check(
    'underlap',
    'The band runs on under the other end far enough for hook or button',
    sewing,
    'mm',
    [20, 45],
    (garment) => lengthIn(garment, 'waistband', 'underlap'),
  ),
  check('lining-shorter', 'The lining is shorter than the skirt all round', sewing, 'mm', [18, 22], (garment) =>
    meanOf(
      sideLength(garment, 'front') - sideLength(garment, 'lining-front'),
      lengthIn(garment, 'back', 'centre-back') - lengthIn(garment, 'lining-back', 'centre-back'),
    ),
  ),
  check(
    'lining-tucks',
    'The lining has about as much in tucks as the skirt has in darts, and so gives when one sits',
    sewing,
    'share',
    [0.8, 1.2],
    (garment) =>
      (tucked(garment, 'front') + tucked(garment, 'back')) / (intake(garment, 'front') + intake(garment, 'back')),
  ),
  check('lining-as-wide', 'The lining is as wide as the skirt at the hip', sewing, 'mm', [-0.1, 0.1], (garment) =>
    halves.reduce(
      (sum, which) =>
        sum + levelWidth(pieceOf(garment, `lining-${which}`), 'hip') - levelWidth(pieceOf(garment, which), 'hip'),
      0,
    ),
  ),
  check(
    'lining-opens-further',
    'The lining is open a little further down than the zip',
    sewing,
    'mm',
    [10, 30],
    (garment) =>
      lengthIn(garment, 'lining-back', 'centre-back') -
      notchIn(garment, 'lining-back', 'opening-end') -
      zipLength(garment),
  ),
  ...(view === 'pockets' ? pocketChecks : []),
];
