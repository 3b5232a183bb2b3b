import { pathLength } from '../geometry/index.ts';
import { levelWidth, pieceOf } from '../pattern/index.ts';
import type { ShapeCheck } from './shape-check.ts';
import { cornerBetween, landmarkIn, runOf, turnAcross } from './shape-garment.ts';
import { bulges, inflections } from './shape-measures.ts';
import { check, smooth, sources } from './shape-rules.ts';

import { armholeRound, capOf, differenceOf, lengthOf } from './shirt-dress-measures.ts';

const { truing, sleeve, fitting, sewing } = sources;

/** Cap and sleeve. */
export const sleeveShape: readonly ShapeCheck[] = [
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
    'A shirt’s cap is between a sixth and a good quarter of its armhole high: it lets the arm be raised',
    sleeve,
    'share',
    [0.16, 0.285],
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
];

export const longSleeveShape: readonly ShapeCheck[] = [
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

export const shortSleeveShape: readonly ShapeCheck[] = [
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
