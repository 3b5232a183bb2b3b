import { distance, pathEnd } from '../geometry/index.ts';
import { differenceOf, lengthOf, narrowestLining, standOf } from './jacket-shape-measures.ts';
import type { ShapeCheck } from './shape-check.ts';
import { edgeBend, landmarkIn, runOf } from './shape-garment.ts';
import { apart } from './shape-measures.ts';
import { check, smooth, sources, square } from './shape-rules.ts';

const { block, tailoring, sewing } = sources;

/** Facings and lining. */
export const jacketInsideShape: readonly ShapeCheck[] = [
  smooth('facing-over-shoulder', 'Front and back facing run into one another over the shoulder', 'facing-shoulder', 1),
  smooth('lining-under-arm', 'The lining’s armhole runs on under the arm', 'lining-side', 0),
  check(
    'facing-covers-buttons',
    'The front facing covers buttons and buttonholes: its width at the hem',
    sewing,
    'mm',
    [52, 90],
    (garment) => lengthOf(garment, 'front-facing', 'hem'),
  ),
  check(
    'lining-strip',
    'The front’s lining is wide enough between facing and seam to be sewn',
    sewing,
    'mm',
    [14, 120],
    narrowestLining,
  ),
  check('back-facing-even', 'The back facing’s width: widest over narrowest', block, 'share', [1, 2.4], (garment) => {
    const band = apart(runOf(garment, 'back-facing', 'outer'), runOf(garment, 'back', 'neck'));
    return band.most / band.least;
  }),
  check('lining-pleat', 'The back lining has a pleat at the centre, each half', tailoring, 'mm', [10, 25], (garment) =>
    differenceOf(garment, 'lining-facing-back'),
  ),
  check(
    'lining-shorter',
    'The lining’s hem lies above the jacket’s',
    tailoring,
    'mm',
    [15, 30],
    (garment) =>
      pathEnd(runOf(garment, 'side-front', 'side')).y - pathEnd(runOf(garment, 'lining-side-front', 'side')).y,
  ),
  check(
    'lining-underarm-higher',
    'The lining goes over the armhole’s seam under the arm: so much higher',
    tailoring,
    'mm',
    [7, 20],
    (garment) =>
      distance(landmarkIn(garment, 'side-front', 'underarm'), landmarkIn(garment, 'lining-side-front', 'underarm')),
  ),
];

/** The collar, where there is one. */
export const jacketCollarShape: readonly ShapeCheck[] = [
  check(
    'collar-turn',
    'The top collar is larger than the under collar by the turn of the cloth, along its edge',
    tailoring,
    'mm',
    [2, 5],
    (garment) => differenceOf(garment, 'collar-outer'),
  ),
  check(
    'collar-edge-longer',
    'The collar’s edge over its neck edge: long enough to lie round the shoulders, short enough to stand',
    tailoring,
    'share',
    [1.02, 1.25],
    (garment) =>
      lengthOf(garment, 'under-collar', 'outer') /
      (lengthOf(garment, 'under-collar', 'neck-front') + lengthOf(garment, 'under-collar', 'neck-back')),
  ),
  check('collar-bends', 'The collar’s edge is one bow', tailoring, 'count', [0, 0], (garment) =>
    edgeBend(garment, 'collar', 'outer'),
  ),
  square('collar-square-edge', 'collar', 'centre-back', 'outer'),
  square('collar-square-neck', 'collar', 'neck-back', 'centre-back'),
  square('under-collar-square-edge', 'under-collar', 'centre-back', 'outer'),
  check(
    'collar-covers-seam',
    'The fall is deeper than the stand, so that it covers the neck seam',
    tailoring,
    'mm',
    [8, 30],
    (garment) => lengthOf(garment, 'under-collar', 'centre-back') - 2 * standOf(garment),
  ),
];
