import type { MeasureId } from '../body/index.ts';
import { chartOf, type Growth } from './chart.ts';
import type { ChartSize } from './types.ts';

/** Chest girths of the sizes, mm: 40 apart, wider as the body grows. */
const chests = [880, 920, 960, 1000, 1040, 1080, 1130, 1180, 1240, 1300] as const;

/** The chest the middle column is written for, mm. */
const middleChest = 1000;

/**
 * Our own men's chart; the bust girth of a man is his chest. Both columns are from the public survey's 2,857
 * men (NATICK/TR-15/007): each measure regressed on chest and stature, read at a stature of 1780 and a chest of
 * 1000, and the regression's growth for each mm of chest at that stature. So a size is a likely body, not a
 * scaled one: shoulders hardly grow with the chest, waists grow faster than it. One stature: sizes are
 * girths, and lengths are altered to the person; a length whose regression falls as the chest grows keeps still,
 * and the shoulder grows by 1 for 50 of chest, as grading has it. The survey is of soldiers: fit adults, few
 * over 50. A man's chest is fullest near the upper level, so it is 15 more than the upper chest, and no cup is drafted.
 */
const growths: Readonly<Record<MeasureId, Growth>> = {
  stature: [1780, 0],
  bustGirth: [1000, 1],
  upperBustGirth: [985, 1],
  underBustGirth: [936, 0.95],
  waistGirth: [848, 1.1],
  abdomenGirth: [901, 1.02],
  hipGirth: [982, 0.7],
  waistToHip: [214, 0],
  neckBaseGirth: [423, 0.21],
  shoulderLength: [151, 0.02],
  shoulderDrop: [62, 0],
  acrossBack: [415, 0.27],
  acrossFront: [390, 0.26],
  armholeDepth: [224, 0.084],
  backWaistLength: [442, 0.086],
  frontWaistLength: [465, 0.118],
  bustDepth: [261, 0.105],
  bustSpan: [200, 0.2],
  upperArmGirth: [313, 0.285],
  elbowGirth: [301, 0.18],
  armLength: [620, 0],
  wristGirth: [174, 0.053],
  bodyRise: [272, 0.018],
  crotchLength: [675, 0.357],
  crotchLengthFront: [286, 0.268],
  crotchLengthBack: [389, 0.089],
  insideLeg: [863, 0],
  thighGirth: [596, 0.526],
  kneeGirth: [364, 0.243],
  calfGirth: [380, 0.241],
  ankleGirth: [226, 0.088],
  napeHeight: [1536, 0.039],
  waistHeight: [1110, 0],
  kneeHeight: [496, 0],
  headGirth: [572, 0.065],
  handGirth: [243, 0.047],
  heelGirth: [343, 0.075],
  shoulderGirth: [1149, 0.577],
  chestBreadth: [282, 0.145],
  chestDepth: [237, 0.281],
  waistBreadth: [298, 0.327],
  waistDepth: [211, 0.328],
  hipBreadth: [336, 0.194],
  hipDepth: [232, 0.248],
};

/** The men's sizes, smallest first. */
export const menChart: readonly ChartSize[] = chartOf(chests, middleChest, growths);
