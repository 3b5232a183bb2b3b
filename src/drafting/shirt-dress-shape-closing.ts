import { endTangent, pathStart, startTangent, turnBetween } from '../geometry/index.ts';
import { pieceOf } from '../pattern/index.ts';
import type { ShapeCheck } from './shape-check.ts';
import { inDegrees, runOf } from './shape-garment.ts';
import { inflections } from './shape-measures.ts';
import { check, sources, square } from './shape-rules.ts';

import { buttonsOf, lengthOf, seamsAcross, spacings, standHem } from './shirt-dress-measures.ts';

const { block, fitting, sewing } = sources;

/** Collar stand, button stand and their buttons. */
export const closingShape: readonly ShapeCheck[] = [
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
];

export const turnedCollarShape: readonly ShapeCheck[] = [
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
