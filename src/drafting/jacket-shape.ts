import { distance, maximumTurn, nearestPlace, pathEnd, pathStart } from '../geometry/index.ts';
import type { JacketView } from './jacket-plan.ts';
import {
  armholeChord,
  armholeOf,
  capHeightOf,
  differenceOf,
  hollowOf,
  lengthOf,
  narrowestLining,
  standOf,
  takenInAtWaist,
  widthOf,
} from './jacket-shape-measures.ts';
import type { ShapeCheck } from './shape-check.ts';
import { cornerBetween, edgeBend, inDegrees, landmarkIn, meanOf, runOf } from './shape-garment.ts';
import { apart, bulges, inflections, leastRadius, slopeOf } from './shape-measures.ts';
import { check, smooth, sources, square } from './shape-rules.ts';

const { block, truing, sleeve, fitting, tailoring, sewing } = sources;

const slopeOfShoulder = (garment: Parameters<ShapeCheck['value']>[0], piece: 'front' | 'back'): number => {
  const run = runOf(garment, piece, 'shoulder');
  return inDegrees(slopeOf(pathStart(run), pathEnd(run)));
};

const panels = ['front', 'side-front', 'side-back', 'back'] as const;

/** Panels: how they are shaped over the body and run into one another. */
const bodyShape: readonly ShapeCheck[] = [
  check(
    'shoulder-slope',
    'Mean slope of front and back shoulder, over a thin pad',
    block,
    'degrees',
    [8, 27],
    (garment) => meanOf(slopeOfShoulder(garment, 'front'), slopeOfShoulder(garment, 'back')),
  ),
  check(
    'front-shoulder-steeper',
    'The front shoulder slopes more than the back, which leaves room for the blade',
    block,
    'degrees',
    [2, 12],
    (garment) => slopeOfShoulder(garment, 'front') - slopeOfShoulder(garment, 'back'),
  ),
  check(
    'princess-over-bust',
    'The front seam passes close outside the bust point',
    block,
    'mm',
    [0, 20],
    (garment) => nearestPlace(runOf(garment, 'front', 'princess'), landmarkIn(garment, 'front', 'bust-point')).distance,
  ),
  check(
    'bust-ease',
    'The side front is eased over the bust by no more than cloth takes without a pucker',
    tailoring,
    'mm',
    [0.5, 5],
    (garment) => differenceOf(garment, 'princess-front'),
  ),
  check('bust-round', 'The side front is rounded over the bust, not pointed', tailoring, 'mm', [50, 1500], (garment) =>
    leastRadius(runOf(garment, 'side-front', 'princess')),
  ),
  check(
    'princess-bends-front',
    'The centre front’s seam bends no more often than the body does: bust, waist, hip',
    truing,
    'count',
    [0, 3],
    (garment) => edgeBend(garment, 'front', 'princess'),
  ),
  check(
    'princess-bends-side-front',
    'The side front’s seam is hollow above the bust, round over it, hollow at the waist, round at the hip',
    truing,
    'count',
    [0, 3],
    (garment) => edgeBend(garment, 'side-front', 'princess'),
  ),
  check(
    'princess-bends-back',
    'The back’s seam is round over the blade, hollow at the waist, round at the hip',
    truing,
    'count',
    [0, 2],
    (garment) => edgeBend(garment, 'back', 'princess'),
  ),
  check(
    'princess-smooth',
    'No kink in any of the four edges of the princess seams',
    truing,
    'degrees',
    [0, 0.5],
    (garment) =>
      Math.max(...panels.map((piece) => inDegrees(Math.abs(maximumTurn(runOf(garment, piece, 'princess')).angle)))),
  ),
  check('front-takes-in', 'What the front princess seam takes in at the waist', block, 'mm', [-12, 48], (garment) =>
    takenInAtWaist(garment, 'front', 'side-front'),
  ),
  check('back-takes-in', 'What the back princess seam takes in at the waist', block, 'mm', [-12, 52], (garment) =>
    takenInAtWaist(garment, 'back', 'side-back'),
  ),
  check(
    'panels-shared-front',
    'Width of the side front over that of the centre front, at the bust',
    tailoring,
    'share',
    [0.65, 2.2],
    (garment) => widthOf(garment, 'side-front', 'bust') / widthOf(garment, 'front', 'bust'),
  ),
  check(
    'panels-shared-back',
    'Width of the side back over that of the centre back, at the waist',
    tailoring,
    'share',
    [0.5, 2.2],
    (garment) => widthOf(garment, 'side-back', 'waist') / widthOf(garment, 'back', 'waist'),
  ),
  check(
    'bust-shared',
    'The side seam hangs at the side: the front has a little more of the bust',
    block,
    'mm',
    [-4, 14],
    (garment) =>
      widthOf(garment, 'front', 'bust') +
      widthOf(garment, 'side-front', 'bust') -
      widthOf(garment, 'side-back', 'bust') -
      widthOf(garment, 'back', 'bust'),
  ),
  smooth(
    'shoulder-over-princess-front',
    'The shoulder is one line across the front princess seam',
    'princess-front',
    0,
  ),
  smooth('shoulder-over-princess-back', 'The shoulder is one line across the back princess seam', 'princess-back', 0),
  smooth('hem-over-princess-front', 'The hem runs on across the front princess seam', 'princess-front', 1),
  smooth('hem-over-princess-back', 'The hem runs on across the back princess seam', 'princess-back', 1),
  smooth('hem-over-side', 'The hem runs on across the side seam', 'side', 1),
  smooth('neck-over-shoulder', 'Front and back neckline run into one another over the shoulder', 'shoulder', 0),
  smooth('armhole-over-shoulder', 'Front and back armhole run into one another over the shoulder', 'shoulder-side', 1),
  smooth('armhole-under-arm', 'Front and back armhole run into one another under the arm', 'side', 0),
  square('hem-square-front', 'front', 'hem', 'front-edge'),
  square('edge-square-neck', 'front', 'front-edge', 'neck-stand'),
  square('hem-square-back', 'back', 'hem', 'centre-back'),
  square('neck-square-back', 'back', 'centre-back', 'neck'),
  square('armhole-square-front', 'side-front', 'shoulder', 'armhole'),
  square('armhole-square-back', 'side-back', 'shoulder', 'armhole'),
  check(
    'neck-on-stand',
    'The neckline runs on along the stand without a corner at the centre',
    truing,
    'degrees',
    [179.5, 180.5],
    (garment) => cornerBetween(garment, 'front', 'neck-stand', 'neck'),
  ),
  check(
    'neck-bends',
    'No stray bend in either neckline',
    block,
    'count',
    [0, 0],
    (garment) => edgeBend(garment, 'front', 'neck') + edgeBend(garment, 'back', 'neck'),
  ),
  check(
    'neck-bend-even',
    'The back neckline turns up to the shoulder without a hook',
    block,
    'mm',
    [10, 120],
    (garment) => leastRadius(runOf(garment, 'back', 'neck')),
  ),
  check(
    'length',
    'From the hip level to the hem',
    tailoring,
    'mm',
    [35, 60],
    (garment) => pathEnd(runOf(garment, 'side-front', 'side')).y - landmarkIn(garment, 'side-front', 'hip-side').y,
  ),
  check(
    'overlap',
    'The stand is as wide beyond the centre as a button is, no more',
    sewing,
    'mm',
    [18, 26],
    (garment) => lengthOf(garment, 'front', 'neck-stand'),
  ),
];

/** Armhole and sleeve. */
const sleeveShape: readonly ShapeCheck[] = [
  check(
    'armhole-runs-on',
    'The armhole is one curve where the sleeve’s seam meets it',
    truing,
    'degrees',
    [179, 181],
    (garment) => cornerBetween(garment, 'side-front', 'armhole', 'armhole-under'),
  ),
  check('armhole-bends', 'At most one change of bend in an armhole', block, 'count', [0, 1], (garment) =>
    Math.max(...(['side-front', 'side-back'] as const).map((piece) => inflections(armholeOf(garment, piece)))),
  ),
  check(
    'armhole-bend-even',
    'No bend of either armhole is tighter than its seam allowance is wide',
    block,
    'mm',
    [16, 400],
    (garment) => Math.min(leastRadius(armholeOf(garment, 'side-front')), leastRadius(armholeOf(garment, 'side-back'))),
  ),
  check(
    'front-armhole-hollower',
    'The front armhole is hollowed deeper than the back',
    block,
    'share',
    [0.005, 0.25],
    (garment) => hollowOf(garment, 'side-front') - hollowOf(garment, 'side-back'),
  ),
  check(
    'armhole-round',
    'Armhole girth over bust girth: deeper than a blouse’s',
    block,
    'share',
    [0.42, 0.62],
    (garment, body) =>
      (lengthOf(garment, 'side-front', 'armhole') +
        lengthOf(garment, 'side-front', 'armhole-under') +
        lengthOf(garment, 'side-back', 'armhole') +
        lengthOf(garment, 'side-back', 'armhole-under')) /
      (body.bustGirth ?? 0),
  ),
  check(
    'head-ease',
    'Sleeve-head ease for soft wool, front and back together',
    sleeve,
    'mm',
    [30, 50],
    (garment) => differenceOf(garment, 'armhole-front') + differenceOf(garment, 'armhole-back'),
  ),
  check(
    'cap-height',
    'Cap height over the mean chord of the armholes',
    sleeve,
    'share',
    [0.62, 0.95],
    (garment) => capHeightOf(garment) / meanOf(armholeChord(garment, 'side-front'), armholeChord(garment, 'side-back')),
  ),
  check(
    'cap-top-smooth',
    'Both halves of the cap are one curve at the top',
    sleeve,
    'degrees',
    [179.5, 180.5],
    (garment) => cornerBetween(garment, 'sleeve', 'cap-front', 'cap-back'),
  ),
  check(
    'under-cap-even',
    'No bend of the under sleeve’s cap is tighter than its seam allowance is wide',
    sleeve,
    'mm',
    [16, 400],
    (garment) =>
      Math.min(
        ...['under-sleeve', 'lining-under-sleeve'].flatMap((piece) =>
          ['cap-front', 'cap-back'].map((edge) => leastRadius(runOf(garment, piece, edge))),
        ),
      ),
  ),
  check(
    'under-cap-smooth',
    'Both halves of the under sleeve’s cap are one curve at the underarm',
    sleeve,
    'degrees',
    [179.5, 180.5],
    (garment) => cornerBetween(garment, 'under-sleeve', 'cap-front', 'cap-back'),
  ),
  check(
    'pitch',
    'The back seam of the sleeve starts higher than the front one, as tailors pitch it',
    tailoring,
    'mm',
    [4, 70],
    (garment) => landmarkIn(garment, 'sleeve', 'pitch-front').y - landmarkIn(garment, 'sleeve', 'pitch-back').y,
  ),
  check(
    'under-sleeve-narrower',
    'Width of the under sleeve over that of the top one, at the upper arm',
    tailoring,
    'share',
    [0.5, 0.85],
    (garment) => widthOf(garment, 'under-sleeve', 'upper-arm') / widthOf(garment, 'sleeve', 'upper-arm'),
  ),
  check(
    'top-stretched',
    'The top sleeve is stretched on to the under one in front, over the bend',
    tailoring,
    'mm',
    [-6, -1],
    (garment) => differenceOf(garment, 'sleeve-front'),
  ),
  check('top-eased', 'The top sleeve is eased on to the under one behind', tailoring, 'mm', [0.5, 5], (garment) =>
    differenceOf(garment, 'sleeve-back'),
  ),
  smooth('cap-over-front-seam', 'The cap runs on across the front sleeve seam', 'sleeve-front', 0),
  smooth('cap-over-back-seam', 'The cap runs on across the back sleeve seam', 'sleeve-back', 0),
  smooth('hem-over-front-seam', 'The sleeve hem turns little across the front seam', 'sleeve-front', 1, 6),
  smooth('hem-over-back-seam', 'The sleeve hem turns little across the back seam', 'sleeve-back', 1, 6),
  check(
    'forearm-bend',
    'The front seam of the sleeve is hollowed at the elbow',
    tailoring,
    'mm',
    [6, 26],
    (garment) => bulges(runOf(garment, 'sleeve', 'front-seam')).right,
  ),
  check(
    'hem-passes-hand',
    'The sleeve hem less the girth of the hand',
    fitting,
    'mm',
    [28, 170],
    (garment, body) =>
      lengthOf(garment, 'sleeve', 'hem') + lengthOf(garment, 'under-sleeve', 'hem') - (body.handGirth ?? 0),
  ),
  check(
    'elbow-bends',
    'The sleeve leaves the bent elbow room over a blouse',
    fitting,
    'mm',
    [60, 190],
    (garment, body) =>
      widthOf(garment, 'sleeve', 'elbow') + widthOf(garment, 'under-sleeve', 'elbow') - (body.elbowGirth ?? 0),
  ),
  check(
    'sleeve-length',
    'From cap top to hem, less the arm: to the wrist and a little over it',
    tailoring,
    'mm',
    [2, 25],
    (garment, body) => {
      const hem = runOf(garment, 'sleeve', 'hem');
      return (
        meanOf(pathStart(hem).y, pathEnd(hem).y) - landmarkIn(garment, 'sleeve', 'cap-top').y - (body.armLength ?? 0)
      );
    },
  ),
];

/** Facings and lining. */
const insideShape: readonly ShapeCheck[] = [
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

const collarShape: readonly ShapeCheck[] = [
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

/**
 * What a cutter looks at before she would cut from the jacket in a view, by measuring the drafted pieces alone.
 */
export const jacketShape = (view: JacketView): readonly ShapeCheck[] => [
  ...bodyShape,
  ...sleeveShape,
  ...insideShape,
  ...(view === 'collar' ? collarShape : []),
];
