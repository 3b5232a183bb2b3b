import { pathPointAtLength } from '../geometry/index.ts';
import { edgeLength, type Garment, pieceOf } from '../pattern/index.ts';
import type { ShapeCheck } from './shape-check.ts';
import { cornerBetween, edgeBend, landmarkIn, notchIn, runOf } from './shape-garment.ts';
import { leastRadius } from './shape-measures.ts';
import { check, smooth, sources, square } from './shape-rules.ts';

const { block, children } = sources;

const side = (garment: Garment, id: string) => landmarkIn(garment, 'hood-side', id);

export const raincoatHoodShape: readonly ShapeCheck[] = [
  smooth('visor-over-seam', 'The opening runs on across the hood’s seam at the visor', 'hood-top', 0),
  smooth('nape-over-seam', 'The neck edge runs on across the hood’s seam at the nape', 'hood-top', 1),
  square('visor-square', 'hood-centre', 'centre', 'opening'),
  square('nape-square', 'hood-centre', 'neck', 'centre'),
  check(
    'hood-corner',
    'Inside angle of the hood at the front neck: nearly square, so that the opening rises from the zip',
    children,
    'degrees',
    [70, 105],
    (garment) => cornerBetween(garment, 'hood-side', 'neck-front', 'opening'),
  ),
  check(
    'visor-forward',
    'How far the visor stands before the front neck: rain drips before the face',
    children,
    'mm',
    [20, 75],
    (garment) => side(garment, 'centre-neck').x - side(garment, 'visor').x,
  ),
  check(
    'hood-height',
    'Neck point to crown over the height of the head above the nape: the head nods without the coat rising',
    children,
    'share',
    [1.15, 1.6],
    (garment, body) =>
      (side(garment, 'neck-point').y - side(garment, 'crown').y) / ((body.stature ?? 0) - (body.napeHeight ?? 0)),
  ),
  check(
    'hood-turns',
    'Neck point over the crown to the strip’s middle, less the head’s height and half its breadth: with more, the hood falls over the eyes and stays behind when the head turns',
    children,
    'mm',
    [20, 75],
    (garment, body) => {
      const over = pathPointAtLength(runOf(garment, 'hood-centre', 'top'), notchIn(garment, 'hood-centre', 'crown')).x;
      const height = side(garment, 'neck-point').y - side(garment, 'crown').y;
      return height + over - ((body.stature ?? 0) - (body.napeHeight ?? 0)) - 0.135 * (body.headGirth ?? 0);
    },
  ),
  check(
    'hood-depth',
    'Visor to the back of the hood over the girth of the head: the head’s length and room for a hat',
    children,
    'share',
    [0.38, 0.55],
    (garment, body) => (side(garment, 'hood-back').x - side(garment, 'visor').x) / (body.headGirth ?? 0),
  ),
  check(
    'strip-breadth',
    'The strip’s breadth at the visor over the girth of the head: nearly the head’s breadth, which is 0.27',
    children,
    'share',
    [0.19, 0.26],
    (garment, body) => (2 * landmarkIn(garment, 'hood-centre', 'visor').x) / (body.headGirth ?? 0),
  ),
  check(
    'face-free',
    'The opening all round, less the girth of the head: pulled on and off over a hat with the zip closed',
    children,
    'mm',
    [60, 380],
    (garment, body) =>
      2 *
        (edgeLength(pieceOf(garment, 'hood-side'), 'opening') +
          edgeLength(pieceOf(garment, 'hood-centre'), 'opening')) -
      (body.headGirth ?? 0),
  ),
  check(
    'hood-overhangs',
    'How far the back of the head lies behind the nape: no more than a hood can round without a dart',
    children,
    'mm',
    [12, 75],
    (garment) => side(garment, 'hood-back').x - side(garment, 'nape').x,
  ),
  check('hood-bends', 'The seam over the crown is one round without a wave', block, 'count', [0, 1], (garment) =>
    edgeBend(garment, 'hood-side', 'top'),
  ),
  check('opening-bends', 'The opening is one shallow curve', block, 'count', [0, 0], (garment) =>
    edgeBend(garment, 'hood-side', 'opening'),
  ),
  check(
    'opening-hems',
    'The radius of the opening’s tightest bend: shallow enough to be hemmed without a pleat',
    children,
    'mm',
    [250, 5000],
    (garment) => leastRadius(runOf(garment, 'hood-side', 'opening')),
  ),
  check(
    'hood-neck-bends',
    'The hood’s neck edge is one arch over the shoulder',
    block,
    'count',
    [0, 0],
    (garment) => edgeBend(garment, 'hood-side', 'neck-back') + edgeBend(garment, 'hood-side', 'neck-front'),
  ),
];
