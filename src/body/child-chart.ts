import { bad, good, type Result } from '../units/index.ts';
import type { MeasureId, Measures } from './types.ts';
import { measureIds } from './types.ts';

/** Statures at which the children's proportions are written down, mm: about two, four, seven, ten and twelve years of age. */
export const childStatures = [860, 1040, 1220, 1400, 1520] as const;

type Written = readonly [number, number, number, number, number];

/**
 * What a child of each of `childStatures` measures, mm; between them each measure grows evenly with stature.
 *
 * Where the numbers are from. Which stature goes with which age, and the head girth, from the WHO Child Growth
 * Standards (2006) and Reference (2007), girls and boys averaged: medians of stature 864 at two years, 1030 at four,
 * 1212 at seven, 1382 at ten; of head girth 478 at two, 497 at four, 503 at five, to which 10 are added for hair under
 * the tape. Past five the head grows by little more than 2 a year. All else are reasoned proportions, such as manuals of children's
 * block cutting teach, made to agree with one another:
 *
 * - A small child is trunk and head. The nape lies at 0.80 of the stature of a child of two and 0.845 of one of
 *   twelve; the crotch at 0.395 and 0.468; so legs grow faster than the trunk, and the trunk faster than the head.
 * - nape height − waist height is the back waist length less some 12 for the hollow it follows; body rise is waist
 *   height − inside leg and 12 for the seat spreading on a chair.
 * - The belly stands out until about four: the waist is hardly less than the chest at two (0.97), and 0.86 of it at
 *   twelve. The front is the longer by the belly, and by a beginning bust from about 1400 on.
 * - Girths grow by about 0.28 of chest for each mm of stature to four, 0.33 to seven, 0.44 to ten and 0.54 after.
 * - Girls and boys are one chart up to 1400; past it girls' hips and boys' chests begin to differ, and the chart
 *   stands between them.
 */
export const childProportions: Readonly<Record<MeasureId, Written>> = {
  stature: childStatures,
  bustGirth: [515, 565, 625, 705, 770],
  upperBustGirth: [507, 557, 616, 693, 752],
  underBustGirth: [500, 545, 598, 665, 712],
  waistGirth: [500, 540, 582, 630, 665],
  abdomenGirth: [514, 560, 610, 672, 722],
  hipGirth: [528, 592, 665, 755, 825],
  waistToHip: [102, 122, 144, 166, 181],
  neckBaseGirth: [255, 276, 299, 326, 346],
  shoulderLength: [71, 85, 99, 113, 122],
  shoulderDrop: [24, 29, 34, 39, 42],
  acrossBack: [212, 243, 276, 313, 340],
  acrossFront: [202, 231, 262, 296, 320],
  armholeDepth: [116, 134, 153, 173, 187],
  backWaistLength: [212, 246, 282, 321, 348],
  frontWaistLength: [220, 254, 290, 331, 361],
  bustDepth: [120, 138, 158, 181, 199],
  bustSpan: [104, 115, 128, 143, 155],
  upperArmGirth: [160, 176, 196, 220, 238],
  elbowGirth: [158, 174, 193, 215, 231],
  armLength: [287, 362, 437, 511, 559],
  wristGirth: [114, 122, 131, 142, 150],
  bodyRise: [162, 187, 209, 231, 246],
  crotchLength: [400, 450, 504, 567, 614],
  crotchLengthFront: [186, 208, 232, 261, 283],
  crotchLengthBack: [214, 242, 272, 306, 331],
  insideLeg: [340, 445, 548, 648, 712],
  thighGirth: [300, 337, 384, 440, 484],
  kneeGirth: [209, 236, 265, 297, 320],
  calfGirth: [200, 228, 258, 292, 317],
  ankleGirth: [145, 160, 177, 196, 209],
  napeHeight: [690, 850, 1012, 1175, 1283],
  waistHeight: [490, 620, 745, 867, 946],
  kneeHeight: [226, 283, 338, 391, 426],
  headGirth: [488, 507, 521, 535, 544],
  handGirth: [140, 157, 176, 197, 211],
  heelGirth: [190, 221, 252, 284, 306],
  shoulderGirth: [602, 668, 746, 840, 912],
  chestBreadth: [162, 179, 199, 224, 243],
  chestDepth: [124, 134, 146, 161, 174],
  waistBreadth: [160, 172, 184, 198, 208],
  waistDepth: [128, 137, 147, 158, 166],
  hipBreadth: [168, 191, 217, 247, 270],
  hipDepth: [126, 139, 154, 174, 190],
};

/** A size beyond either end of the chart its growth is still carried on; past that it says nothing, mm. */
const carriedOn = 60;

/** Between which statures a child's measures can be told, mm. */
export const childStatureRange = [childStatures[0] - carriedOn, childStatures[4] + carriedOn] as const;

const growing = (written: Written, stature: number): number => {
  const after = childStatures.findIndex((knot) => stature <= knot);
  const piece = after < 0 ? 3 : Math.max(after - 1, 0);
  const [from = 0, to = 0] = [childStatures[piece], childStatures[piece + 1]];
  const [low = 0, high = 0] = [written[piece], written[piece + 1]];
  return low + ((high - low) * (stature - from)) / (to - from);
};

/**
 * What a child of this stature is likely to measure, mm: the children's proportions, interpolated, and carried on for a
 * size beyond their ends. Problem `body.not-a-childs-stature` outside `childStatureRange`.
 */
export const childMeasures = (stature: number): Result<Readonly<Record<MeasureId, number>>> => {
  const [low, high] = childStatureRange;
  if (!(stature >= low && stature <= high)) {
    return bad('body.not-a-childs-stature', {
      stature: Number.isFinite(stature) ? { mm: stature } : String(stature),
      low: { mm: low },
      high: { mm: high },
    });
  }
  const entries = measureIds.map((id) => [id, growing(childProportions[id], stature)] as const);
  return good(Object.fromEntries(entries) as Required<Measures>);
};
