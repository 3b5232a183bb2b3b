import { pathBounds } from '../geometry/index.ts';
import { type Garment, levelWidth, pieceOf } from '../pattern/index.ts';
import { raglanChecks, raglanRule } from './raglan-shape.ts';
import type { ShapeCheck } from './shape-check.ts';
import { edgeBend, landmarkIn, lengthIn, runOf } from './shape-garment.ts';
import { check, sources, square } from './shape-rules.ts';
import { sweatBandChecks } from './sweatshirt-band-shape.ts';
import type { SweatshirtView } from './sweatshirt-plan.ts';

const { block, fitting, knit } = sources;

type Half = 'front' | 'back';

const neckDepth = (garment: Garment, piece: Half): number => {
  const { minY, maxY } = pathBounds(runOf(garment, piece, 'neck'));
  return maxY - minY;
};

const bustRound = (garment: Garment): number =>
  2 * (levelWidth(pieceOf(garment, 'front'), 'bust') + levelWidth(pieceOf(garment, 'back'), 'bust'));

/** How far the side strays at the waist from the straight between underarm and hip. */
const drawnIn = (garment: Garment, piece: Half): number => {
  const [underarm, waist, hip] = ['underarm', 'waist-side', 'hip-side'].map((id) => landmarkIn(garment, piece, id));
  if (!underarm || !waist || !hip) return Number.NaN;
  return underarm.x + ((hip.x - underarm.x) * (waist.y - underarm.y)) / (hip.y - underarm.y) - waist.x;
};

const bodyChecks: readonly ShapeCheck[] = [
  square('neck-square-front', 'front', 'centre-front', 'neck'),
  square('neck-square-back', 'back', 'centre-back', 'neck'),
  square('hem-square-front', 'front', 'hem', 'centre-front'),
  square('hem-square-back', 'back', 'hem', 'centre-back'),
  square('hem-square-side-front', 'front', 'side', 'hem'),
  square('hem-square-side-back', 'back', 'side', 'hem'),
  check(
    'neck-bends',
    'No stray bend in either neckline',
    block,
    'count',
    [0, 0],
    (garment) => edgeBend(garment, 'front', 'neck') + edgeBend(garment, 'back', 'neck'),
  ),
  check(
    'neck-deeper-in-front',
    'Depth of the front neck over that of the back, what is the body’s',
    block,
    'share',
    [2.5, 14],
    (garment) => neckDepth(garment, 'front') / neckDepth(garment, 'back'),
  ),
  check('side-bends', 'A side seam bends at most once the other way', block, 'count', [0, 1], (garment) =>
    Math.max(edgeBend(garment, 'front', 'side'), edgeBend(garment, 'back', 'side')),
  ),
  check('side-straight', 'The side hangs nearly straight from underarm to hip', knit, 'mm', [-16, 16], (garment) =>
    drawnIn(garment, 'front'),
  ),
  check('sides-alike', 'Front and back side seam are one curve', knit, 'mm', [0, 0.1], (garment) =>
    Math.abs(drawnIn(garment, 'front') - drawnIn(garment, 'back')),
  ),
  check(
    'as-wide',
    'Front and back are as wide at the bust',
    knit,
    'mm',
    [-0.1, 0.1],
    (garment) => levelWidth(pieceOf(garment, 'front'), 'bust') - levelWidth(pieceOf(garment, 'back'), 'bust'),
  ),
  check(
    'roomy',
    'Ease at the bust: roomy',
    fitting,
    'mm',
    [100, 140],
    (garment, body) => bustRound(garment) - (body.bustGirth ?? 0),
  ),
  check(
    'armhole-deeper',
    'The underarm below the arm crease, from the lowered edge of the back neck: deeper than a set-in tee’s, which hardly clears it',
    raglanRule,
    'mm',
    [0, 110],
    (garment, body) =>
      landmarkIn(garment, 'back', 'underarm').y - landmarkIn(garment, 'back', 'nape').y - (body.armholeDepth ?? 0),
  ),
  check(
    'arm-clears',
    'The sleeve at the upper arm less the arm',
    fitting,
    'mm',
    [60, 220],
    (garment, body) => levelWidth(pieceOf(garment, 'sleeve'), 'upper-arm') - (body.upperArmGirth ?? 0),
  ),
];

const pocketChecks: readonly ShapeCheck[] = [
  check(
    'pocket-opening',
    'The pocket’s opening less half the hand: it goes in flat',
    sources.sewing,
    'mm',
    [30, 60],
    (garment, body) => lengthIn(garment, 'pocket', 'opening') - (body.handGirth ?? 0) / 2,
  ),
  check(
    'pocket-inside',
    'The pocket’s side lies well inside the side seam',
    sources.sewing,
    'mm',
    [30, 260],
    (garment) => {
      const { maxX } = pathBounds(pieceOf(garment, 'pocket').runs.flatMap(({ path }) => path));
      return Math.min(landmarkIn(garment, 'front', 'hip-side').x, landmarkIn(garment, 'front', 'waist-side').x) - maxX;
    },
  ),
  check('pocket-below-bust', 'The pocket’s top lies below the bust', sources.sewing, 'mm', [20, 400], (garment) => {
    const place = pieceOf(garment, 'front').lines.find(({ id }) => id === 'pocket');
    return place ? pathBounds(place.path).minY - landmarkIn(garment, 'front', 'bust-point').y : Number.NaN;
  }),
];

/** What a cutter looks at before she would cut from the sweatshirt, by measuring the drafted pieces alone. */
export const sweatshirtShape = (view: SweatshirtView): readonly ShapeCheck[] => [
  ...raglanChecks,
  ...bodyChecks,
  ...sweatBandChecks(view),
  ...(view === 'pocket' ? pocketChecks : []),
];
