import { pathEnd, pathStart } from '../geometry/index.ts';
import {
  armholeChord,
  armholeOf,
  capHeightOf,
  differenceOf,
  hollowOf,
  lengthOf,
  widthOf,
} from './jacket-shape-measures.ts';
import type { ShapeCheck } from './shape-check.ts';
import { cornerBetween, landmarkIn, meanOf, runOf } from './shape-garment.ts';
import { bulges, inflections, leastRadius } from './shape-measures.ts';
import { check, smooth, sources } from './shape-rules.ts';

const { block, truing, sleeve, fitting, tailoring } = sources;

/** Armhole and sleeve. */
export const jacketSleeveShape: readonly ShapeCheck[] = [
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
