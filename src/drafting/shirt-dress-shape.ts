import {
  distance,
  endTangent,
  type Path,
  pathLength,
  pathStart,
  startTangent,
  turnBetween,
} from '../geometry/index.ts';
import { dartOf, edgeLength, type Garment, landmarkOf, levelWidth, pieceOf, walkSeam } from '../pattern/index.ts';
import type { ShapeCheck } from './shape-check.ts';
import {
  cornerBetween,
  edgeBend,
  inDegrees,
  landmarkIn,
  legsApart,
  meanOf,
  runOf,
  turnAcross,
  turnAtDart,
} from './shape-garment.ts';
import { asideOf, bulges, inflections, leastRadius } from './shape-measures.ts';
import { check, smooth, sources, square } from './shape-rules.ts';
import { shirtDressViews } from './shirt-dress-plan.ts';
import { gathers } from './shirt-dress-seams.ts';

const { block, truing, sleeve, fitting, sewing } = sources;

const lengthOf = (garment: Garment, piece: string, edge: string): number => edgeLength(pieceOf(garment, piece), edge);

const differenceOf = (garment: Garment, id: string): number => {
  const seam = garment.seams.find((one) => one.id === id);
  if (!seam) throw new Error(`No seam ${id}`);
  return walkSeam(garment, seam).difference;
};

/** The cap's three edges as one line, front underarm to back underarm. */
const capOf = (garment: Garment): Path =>
  ['cap-front', 'cap-yoke', 'cap-back'].flatMap((edge) => [...runOf(garment, 'sleeve', edge)]);

const armholeRound = (garment: Garment): number =>
  lengthOf(garment, 'front', 'armhole') + lengthOf(garment, 'yoke', 'armhole') + lengthOf(garment, 'back', 'armhole');

/** The least and greatest of what a gathered seam's two halves take up, as shares of the plain edge. */
const fullness = (
  garment: Garment,
  [gathered, plain]: readonly [string, string],
  pleated = 0,
): readonly [number, number] => {
  const of = (half: string): number => {
    const [piece, edge] = gathered.replace('*', half).split('.') as [string, string];
    const [onPiece, onEdge] = plain.replace('*', half).split('.') as [string, string];
    return (lengthOf(garment, piece, edge) - (half === 'back' ? pleated : 0)) / lengthOf(garment, onPiece, onEdge) - 1;
  };
  const both = [of('front'), of('back')];
  return [Math.min(...both), Math.max(...both)];
};

/** Heights of the marks of one sort on the button stand, top down. */
const buttonsOf = (garment: Garment): readonly number[] =>
  pieceOf(garment, 'button-stand')
    .lines.filter(({ id }) => id.startsWith('button-'))
    .map(({ path }) => pathStart(path).y + pathLength(path) / 2)
    .toSorted((a, b) => a - b);

const spacings = (garment: Garment): readonly number[] => {
  const heights = buttonsOf(garment).slice(1);
  return heights.slice(1).map((at, i) => at - (heights[i] ?? 0));
};

/** Heights on the button stand at which a seam runs across it. */
const seamsAcross = (garment: Garment): readonly number[] =>
  ['front', 'waist', 'skirt']
    .filter((edge) =>
      pieceOf(garment, 'button-stand').edges.some(({ id }) => id === (edge === 'skirt' ? 'tier' : edge)),
    )
    .map((edge) => runOf(garment, 'button-stand', edge).at(-1)?.to.y ?? 0);

const standHem = (garment: Garment): number => pathStart(runOf(garment, 'button-stand', 'hem')).y;

/** The sides of the skirt at centre front, waist to hem, and half the waistband: from the waist to the hem. */
const waistToHem = (garment: Garment): number =>
  standHem(garment) -
  meanOf(
    pathStart(runOf(garment, 'button-stand', 'waist')).y,
    runOf(garment, 'button-stand', 'waist').at(-1)?.to.y ?? 0,
  );

const shared: readonly ShapeCheck[] = [
  square('yoke-square-back', 'yoke', 'back', 'centre-back'),
  square('yoke-square-neck', 'yoke', 'centre-back', 'neck'),
  check('yoke-depth', 'The yoke ends over the shoulder blades', block, 'mm', [70, 135], (garment) =>
    lengthOf(garment, 'yoke', 'centre-back'),
  ),
  check(
    'shoulder-forward',
    'The front seam lies in front of the shoulder, where it is seen and not sat on by a strap',
    block,
    'mm',
    [15, 25],
    (garment) =>
      asideOf(
        pathStart(runOf(garment, 'yoke', 'front')),
        landmarkIn(garment, 'yoke', 'neck-point'),
        landmarkIn(garment, 'yoke', 'shoulder-point'),
      ),
  ),
  check('shoulder-forward-even', 'The front seam is parallel to the shoulder', block, 'mm', [0, 0.1], (garment) => {
    const from = (at: 0 | 1) =>
      asideOf(
        at === 0 ? pathStart(runOf(garment, 'yoke', 'front')) : pathStart(runOf(garment, 'yoke', 'armhole')),
        landmarkIn(garment, 'yoke', 'neck-point'),
        landmarkIn(garment, 'yoke', 'shoulder-point'),
      );
    return Math.abs(from(0) - from(1));
  }),
  smooth('neck-over-yoke', 'The neckline runs on from front to yoke', 'yoke-front', 0),
  smooth('armhole-over-yoke-front', 'The armhole runs on from front to yoke', 'yoke-front', 1),
  smooth('armhole-over-yoke-back', 'The armhole runs on from yoke to back', 'yoke-back', 1),
  check(
    'blade-shaped',
    'The back falls away from the yoke at the armhole, for the shoulder blade',
    block,
    'degrees',
    [3, 12],
    (garment) => inDegrees(Math.abs(turnBetween({ x: 1, y: 0 }, endTangent(runOf(garment, 'back', 'yoke'))))),
  ),
  square('yoke-seam-square-at-fold', 'back', 'centre-back', 'yoke'),
  check('pleat-taken', 'The box pleat takes 30–40 at each side of its face', sewing, 'mm', [59, 81], (garment) =>
    differenceOf(garment, 'yoke-back'),
  ),
  check(
    'pleat-folds-meet',
    'The pleat’s face is as wide as both folds behind it, so that they meet and do not lap',
    sewing,
    'mm',
    [0, 0.1],
    (garment) => {
      const back = pieceOf(garment, 'back');
      const at = (id: string) => back.lines.find((line) => line.id === id)?.path[0]?.from.x ?? Number.NaN;
      return Math.abs(
        at('pleat-under') - at('pleat-face') - (at('pleat-face') - pathStart(runOf(garment, 'back', 'yoke')).x),
      );
    },
  ),
  smooth('armhole-under-arm', 'Front and back armhole run into one another under the arm', 'side', 0),
  check(
    'armhole-bend-even',
    'No bend of either armhole is as tight as its seam allowance is wide',
    block,
    'mm',
    [15, Number.POSITIVE_INFINITY],
    (garment) =>
      Math.min(leastRadius(runOf(garment, 'front', 'armhole')), leastRadius(runOf(garment, 'back', 'armhole'))),
  ),
  check('armhole-bends', 'At most one change of bend in an armhole', block, 'count', [0, 1], (garment) =>
    Math.max(edgeBend(garment, 'front', 'armhole'), edgeBend(garment, 'back', 'armhole')),
  ),
  check(
    'armhole-round',
    'Armhole girth over bust girth',
    block,
    'share',
    [0.4, 0.58],
    (garment, body) => armholeRound(garment) / (body.bustGirth ?? 0),
  ),
  check(
    'bust-shared',
    'The side seam hangs at the side: front and back share the bust',
    block,
    'mm',
    [-4, 14],
    (garment) =>
      levelWidth(pieceOf(garment, 'front'), 'bust') +
      levelWidth(pieceOf(garment, 'button-stand'), 'bust') -
      levelWidth(pieceOf(garment, 'back'), 'bust'),
  ),
  smooth('cap-under-arm', 'Both halves of the cap run into one another under the arm', 'underarm', 0),
  check(
    'wrist-over-seam',
    'The sleeve’s lower edge turns little across its seam',
    truing,
    'degrees',
    [0, 9],
    (garment) => turnAcross(garment, 'underarm', 1),
  ),
  check('cap-smooth', 'The cap’s three edges are one curve', sleeve, 'degrees', [0, 0.5], (garment) =>
    Math.max(
      Math.abs(180 - cornerBetween(garment, 'sleeve', 'cap-front', 'cap-yoke')),
      Math.abs(180 - cornerBetween(garment, 'sleeve', 'cap-yoke', 'cap-back')),
    ),
  ),
  check('cap-bends', 'Each half of the cap changes from hollow to round once', sleeve, 'count', [2, 2], (garment) =>
    inflections(capOf(garment)),
  ),
  check(
    'cap-low',
    'A shirt’s cap is between a sixth and a quarter of its armhole high: it lets the arm be raised',
    sleeve,
    'share',
    [0.16, 0.27],
    (garment) =>
      (landmarkIn(garment, 'sleeve', 'underarm-front').y - landmarkIn(garment, 'sleeve', 'cap-top').y) /
      armholeRound(garment),
  ),
  check('cap-front-hollower', 'The cap is hollower in front than behind', sleeve, 'mm', [0.2, 8], (garment) => {
    const cap = capOf(garment);
    const top = runOf(garment, 'sleeve', 'cap-front').length + 1;
    return bulges(cap.slice(0, top)).right - bulges(cap.slice(top)).right;
  }),
  check(
    'head-ease',
    'Sleeve-head ease for crisp cotton',
    sleeve,
    'mm',
    [0, 20],
    (garment) => pathLength(capOf(garment)) - armholeRound(garment),
  ),
  check('underarm-seams', 'Both underarm seams of the sleeve are equal', sleeve, 'mm', [0, 0.1], (garment) =>
    Math.abs(lengthOf(garment, 'sleeve', 'underarm-front') - lengthOf(garment, 'sleeve', 'underarm-back')),
  ),
  check('dart-legs', 'The legs of the bust dart are equal', block, 'mm', [0, 0.1], (garment) =>
    legsApart(pieceOf(garment, 'front'), 'bust'),
  ),
  check('dart-short', 'The bust dart ends short of the bust point', block, 'mm', [20, 40], (garment) =>
    distance(dartOf(pieceOf(garment, 'front'), 'bust').point, landmarkIn(garment, 'front', 'bust-point')),
  ),
  check('dart-aims', 'The middle of the bust dart aims at the bust point', block, 'mm', [0, 1], (garment) => {
    const { point, legs } = dartOf(pieceOf(garment, 'front'), 'bust');
    const mouth = { x: meanOf(legs[0].x, legs[1].x), y: meanOf(legs[0].y, legs[1].y) };
    return asideOf(landmarkIn(garment, 'front', 'bust-point'), point, mouth);
  }),
  check(
    'side-smooth-at-dart',
    'The side seam is smooth where the bust dart is stitched',
    truing,
    'degrees',
    [0, 2],
    (garment) => turnAtDart(garment, 'front', 'side', 'bust'),
  ),
  check(
    'dart-clear-of-waist',
    'Below the bust dart the side seam is long enough to be gathered beside it',
    block,
    'mm',
    [12, 200],
    (garment) => pathLength(runOf(garment, 'front', 'side', 1)),
  ),
  check(
    'collar-round',
    'The buttoned collar over the base of the neck',
    fitting,
    'share',
    [1, 1.2],
    (garment, body) =>
      (2 *
        (lengthOf(garment, 'collar-stand', 'neck-back') +
          lengthOf(garment, 'collar-stand', 'neck-front') +
          lengthOf(garment, 'collar-stand', 'neck-stand') / 2)) /
      (body.neckBaseGirth ?? 0),
  ),
  check(
    'stand-leans',
    'The collar stand curves up to the front and so leans to the neck',
    block,
    'degrees',
    [6, 24],
    (garment) =>
      inDegrees(
        Math.abs(
          turnBetween(
            startTangent(runOf(garment, 'collar-stand', 'neck-stand')),
            endTangent(runOf(garment, 'collar-stand', 'neck-back')),
          ),
        ),
      ),
  ),
  square('stand-square-back', 'collar-stand', 'neck-back', 'centre-back'),
  square('stand-square-front', 'collar-stand', 'end', 'neck-stand'),
  check('stand-bends', 'No stray bend in the stand’s neck edge', block, 'count', [0, 0], (garment) =>
    inflections([
      ...runOf(garment, 'collar-stand', 'neck-stand'),
      ...runOf(garment, 'collar-stand', 'neck-front'),
      ...runOf(garment, 'collar-stand', 'neck-back'),
    ]),
  ),
  check('button-at-bust', 'A button lies at the bust’s level, where a front gapes', sewing, 'mm', [0, 3], (garment) => {
    const bust = pieceOf(garment, 'button-stand').levels.find(({ id }) => id === 'bust')?.from.y ?? Number.NaN;
    return Math.min(...buttonsOf(garment).map((at) => Math.abs(at - bust)));
  }),
  check('buttons-apart', 'Buttons from the bust down are about 85 apart', sewing, 'mm', [60, 112], (garment) =>
    Math.max(...spacings(garment)),
  ),
  check(
    'buttons-even',
    'Buttons from the bust down are evenly spaced',
    sewing,
    'mm',
    [0, 0.5],
    (garment) => Math.max(...spacings(garment)) - Math.min(...spacings(garment)),
  ),
  check(
    'buttons-clear',
    'No buttonhole is worked where a seam makes the stand thick',
    sewing,
    'mm',
    [9, 60],
    (garment) =>
      Math.min(...buttonsOf(garment).flatMap((at) => seamsAcross(garment).map((seam) => Math.abs(seam - at)))),
  ),
  check(
    'buttons-end',
    'The last button leaves the hem free to be stepped in',
    sewing,
    'mm',
    [75, 210],
    (garment) => standHem(garment) - (buttonsOf(garment).at(-1) ?? 0),
  ),
  check(
    'stand-centred',
    'The button stand lies half on either side of the centre front',
    sewing,
    'mm',
    [0, 0.1],
    (garment) => {
      const neck = runOf(garment, 'button-stand', 'neck');
      return Math.abs(pathStart(neck).x + (neck.at(-1)?.to.x ?? 0));
    },
  ),
  check(
    'bodice-gathers',
    'The bodice is drawn in softly to its waistband',
    sewing,
    'share',
    [...gathers.bodice],
    (garment) => {
      const [least, most] = fullness(garment, ['*.waist', 'waist-*.top'], differenceOf(garment, 'yoke-back'));
      return least < gathers.bodice[0] ? least : most;
    },
  ),
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
    'sides-run-on',
    'The side seams of bodice, waistband and skirt meet: front and back share the waist in one way',
    truing,
    'mm',
    [0, 0.5],
    (garment) => {
      const share = (front: string, back: string) =>
        (landmarkOf(pieceOf(garment, front), 'waist-side')?.x ?? Number.NaN) -
        (landmarkOf(pieceOf(garment, back), 'waist-side')?.x ?? Number.NaN);
      return Math.abs(share('front', 'back') - share('waist-front', 'waist-back'));
    },
  ),
  smooth('hem-over-side', 'The skirt’s lower edge runs on across the side seam', 'skirt-side', 1),
];

const pocketChecks: readonly ShapeCheck[] = [
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

const tiered: readonly ShapeCheck[] = [
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

const kneeLength: readonly ShapeCheck[] = [
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

const longSleeve: readonly ShapeCheck[] = [
  check(
    'elbow-bends',
    'The sleeve leaves the bent elbow its least ease',
    fitting,
    'mm',
    [40, 190],
    (garment, body) => levelWidth(pieceOf(garment, 'sleeve'), 'elbow') - (body.elbowGirth ?? 0),
  ),
  check(
    'cuff-closes',
    'The buttoned cuff goes round the wrist with ease',
    fitting,
    'mm',
    [30, 70],
    (garment, body) => lengthOf(garment, 'cuff', 'wrist') - (body.wristGirth ?? 0),
  ),
  check(
    'cuff-passes-hand',
    'Unbuttoned, cuff and slit let the hand through',
    fitting,
    'mm',
    [30, 400],
    (garment, body) =>
      lengthOf(garment, 'cuff', 'wrist') + lengthOf(garment, 'slit-binding', 'slit') - (body.handGirth ?? 0),
  ),
  check('cuff-pleats', 'Two pleats take up the sleeve’s fullness at the cuff', sewing, 'mm', [38, 112], (garment) =>
    differenceOf(garment, 'cuff'),
  ),
  check(
    'slit-behind',
    'The slit lies at the little finger: a quarter of the wrist from the back seam',
    sleeve,
    'share',
    [0.2, 0.3],
    (garment) => pieceOf(garment, 'sleeve').notches.find(({ id }) => id === 'slit')?.at ?? Number.NaN,
  ),
];

const shortSleeve: readonly ShapeCheck[] = [
  check(
    'short-sleeve-falls',
    'Below the underarm a short sleeve has a hand’s breadth or so',
    sleeve,
    'mm',
    [45, 180],
    (garment) => lengthOf(garment, 'sleeve', 'underarm-front'),
  ),
  check(
    'short-hem-wide',
    'A short sleeve’s hem does not grip the arm',
    fitting,
    'mm',
    [60, 220],
    (garment, body) => lengthOf(garment, 'sleeve', 'hem') - (body.upperArmGirth ?? 0),
  ),
];

const turnedCollar: readonly ShapeCheck[] = [
  check(
    'collar-covers-stand',
    'The collar covers its stand and the seam below',
    block,
    'mm',
    [8, 18],
    (garment) => lengthOf(garment, 'collar', 'centre-back') - lengthOf(garment, 'collar-stand', 'centre-back'),
  ),
  square('collar-square-neck', 'collar', 'neck', 'centre-back'),
  square('collar-square-outer', 'collar', 'centre-back', 'outer'),
  check(
    'collar-spreads',
    'The collar’s outer edge is longer than its neck edge, to lie over the stand',
    block,
    'mm',
    [2, 40],
    (garment) => lengthOf(garment, 'collar', 'outer') - lengthOf(garment, 'collar', 'neck'),
  ),
];

/** What a cutter looks at before she would cut from a view of the shirt dress, by measuring the drafted pieces alone. */
export const shirtDressShape = (view: string): readonly ShapeCheck[] => {
  const made = shirtDressViews[view];
  if (!made) return shared;
  return [
    ...shared,
    ...pocketChecks,
    ...(made.tier ? tiered : kneeLength),
    ...(made.sleeve === 'long' ? longSleeve : shortSleeve),
    ...(made.collar ? turnedCollar : []),
  ];
};
