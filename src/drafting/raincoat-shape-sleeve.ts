import { distance, pathEnd, pathStart } from '../geometry/index.ts';
import { edgeLength, edgeOf, type Garment, levelWidth, pieceOf } from '../pattern/index.ts';
import type { ShapeCheck } from './shape-check.ts';
import {
  armholeHeight,
  capHeight,
  cornerBetween,
  edgeBend,
  headEase,
  landmarkIn,
  meanOf,
  runOf,
  turnAcross,
} from './shape-garment.ts';
import { check, smooth, sources } from './shape-rules.ts';

const { sleeve, fitting, children, truing } = sources;

const length = (garment: Garment, edge: string): number => edgeLength(pieceOf(garment, 'sleeve'), edge);

export const raincoatSleeveShape: readonly ShapeCheck[] = [
  check(
    'cap-height',
    'Cap height over the mean height of the armholes: low, so that arms are lifted without the coat',
    children,
    'share',
    [0.34, 0.56],
    (garment) => capHeight(garment) / meanOf(armholeHeight(garment, 'front'), armholeHeight(garment, 'back')),
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
    'cap-bends',
    'Each half of the cap changes from hollow to round once',
    sleeve,
    'count',
    [2, 2],
    (garment) => edgeBend(garment, 'sleeve', 'cap-front') + edgeBend(garment, 'sleeve', 'cap-back'),
  ),
  smooth('cap-under-arm', 'Both halves of the cap run into one another under the arm', 'underarm', 0),
  check(
    'cap-evenly-shared',
    'Front share of the sleeve at the underarm line',
    sleeve,
    'share',
    [0.46, 0.55],
    (garment) => {
      const top = landmarkIn(garment, 'sleeve', 'cap-top').x;
      const front = top - landmarkIn(garment, 'sleeve', 'underarm-front').x;
      return front / (front + landmarkIn(garment, 'sleeve', 'underarm-back').x - top);
    },
  ),
  check(
    'head-ease',
    'Sleeve-head ease, both armholes together: coated cloth takes none in',
    sleeve,
    'mm',
    [0, 8],
    headEase,
  ),
  check('underarm-seams', 'Both underarm seams of the sleeve are equal', sleeve, 'mm', [0, 0.1], (garment) =>
    Math.abs(length(garment, 'underarm-front') - length(garment, 'underarm-back')),
  ),
  check(
    'underarm-bends',
    'No stray bend in the underarm seam',
    sleeve,
    'count',
    [0, 0],
    (garment) => edgeBend(garment, 'sleeve', 'underarm-front') + edgeBend(garment, 'sleeve', 'underarm-back'),
  ),
  check('sleeve-hem-over-seam', 'The sleeve hem turns little across its seam', truing, 'degrees', [0, 10], (garment) =>
    turnAcross(garment, 'underarm', 1),
  ),
  check(
    'arm-ease',
    'Ease at the upper arm: a jumper’s sleeve goes in without being pushed',
    fitting,
    'mm',
    [90, 230],
    (garment, body) => levelWidth(pieceOf(garment, 'sleeve'), 'upper-arm') - (body.upperArmGirth ?? 0),
  ),
  check(
    'hand-passes',
    'The sleeve hem less the hand: in a mitten, and a small child is dressed by another’s hand',
    fitting,
    'mm',
    [40, 150],
    (garment, body) => length(garment, 'hem') - (body.handGirth ?? 0),
  ),
  check(
    'sleeve-reaches',
    'Neck point to hem over shoulder and sleeve, less the body’s to the wrist: covers it with the arm bent',
    children,
    'mm',
    [6, 30],
    (garment, body) => {
      const cap = landmarkIn(garment, 'sleeve', 'cap-top');
      const hem = landmarkIn(garment, 'sleeve', 'hem-centre');
      const shoulder = edgeLength(pieceOf(garment, 'back'), 'shoulder');
      return shoulder + distance(cap, hem) - (body.shoulderLength ?? 0) - (body.armLength ?? 0);
    },
  ),
  check(
    'hem-turns-back',
    'Depth of the sleeve’s hem: two sizes’ growth and a hem again',
    children,
    'mm',
    [65, 90],
    (garment) => edgeOf(pieceOf(garment, 'sleeve'), 'hem').allowance,
  ),
  check(
    'hem-lies-back',
    'How much the sleeve widens over the depth of its hem, both seams: turned back, it lies without a pleat',
    children,
    'mm',
    [0, 24],
    (garment) => {
      const seam = runOf(garment, 'sleeve', 'underarm-back')[0];
      const hem = runOf(garment, 'sleeve', 'hem');
      if (seam?.kind !== 'cubic') return Number.NaN;
      // The seam's slant at the hem, over the hem's depth.
      const slant = (seam.control2.x - seam.to.x) / (seam.to.y - seam.control2.y);
      const depth = edgeOf(pieceOf(garment, 'sleeve'), 'hem').allowance;
      return pathStart(hem).x > pathEnd(hem).x ? 2 * slant * depth : Number.NaN;
    },
  ),
];
