import type { MeasureId } from '../body/index.ts';
import { chartOf, type Growth } from './chart.ts';
import type { ChartSize } from './types.ts';

/** Bust girths of the sizes, mm: 40 apart where a finger's breadth of ease would be noticed, wider as the body grows. */
const busts = [800, 840, 880, 920, 960, 1000, 1050, 1100, 1160, 1220] as const;

/** The bust the middle column of every rule is written for, mm. */
const middleBust = 920;

/**
 * Our own chart. One stature: sizes are girths, and lengths are altered to the person. So lengths along
 * the body grow only by what passing over a fuller body costs; girths grow in proportion, each by its own
 * share of the bust's growth. Shares follow proportional grading as taught in manuals of pattern grading
 * (per 40 of bust: waist 40, hip 37, across back and front 10, neck 5, shoulder 3, upper arm 14, armhole depth 3).
 * The middle size is a woman of 1680 with a cup of 50 (bust less upper bust), which is the same in every size.
 */
const growths: Readonly<Record<MeasureId, Growth>> = {
  stature: [1680, 0],
  bustGirth: [920, 1],
  upperBustGirth: [870, 1],
  underBustGirth: [780, 0.96],
  waistGirth: [740, 1.02],
  abdomenGirth: [870, 1],
  hipGirth: [988, 0.92],
  waistToHip: [203, 0.02],
  neckBaseGirth: [366, 0.12],
  shoulderLength: [128, 0.075],
  shoulderDrop: [45, 0.02],
  acrossBack: [354, 0.24],
  acrossFront: [328, 0.25],
  armholeDepth: [188, 0.075],
  backWaistLength: [403, 0.04],
  frontWaistLength: [434, 0.1],
  bustDepth: [258, 0.16],
  bustSpan: [184, 0.2],
  upperArmGirth: [282, 0.34],
  elbowGirth: [258, 0.25],
  armLength: [585, 0.02],
  wristGirth: [156, 0.07],
  bodyRise: [268, 0.06],
  crotchLength: [705, 0.32],
  crotchLengthFront: [335, 0.13],
  crotchLengthBack: [370, 0.19],
  insideLeg: [785, 0],
  thighGirth: [580, 0.46],
  kneeGirth: [366, 0.2],
  calfGirth: [362, 0.2],
  ankleGirth: [232, 0.08],
  napeHeight: [1440, 0.01],
  waistHeight: [1045, 0],
  kneeHeight: [462, 0],
  headGirth: [560, 0.02],
  handGirth: [217, 0.06],
  heelGirth: [316, 0.08],
  shoulderGirth: [1010, 0.62],
  chestBreadth: [266, 0.24],
  chestDepth: [236, 0.34],
  waistBreadth: [256, 0.31],
  waistDepth: [186, 0.36],
  hipBreadth: [344, 0.27],
  hipDepth: [226, 0.3],
};

/** The women’s sizes, smallest first. */
export const womenChart: readonly ChartSize[] = chartOf(busts, middleBust, growths);
