import type { MeasureId } from './types.ts';

/** What makes measures of one child large or small together: flesh, trunk, arms, legs, head, or the frame of the shoulders. */
export type ChildFactor = 'flesh' | 'trunk' | 'arm' | 'leg' | 'head' | 'frame';

/** How children of one stature differ in a measure. */
export interface ChildSpread {
  /** Standard deviation over the chart's value. */
  readonly varies: number;
  readonly factor: ChildFactor;
  /** Correlation with the factor; the rest the measure strays by itself. */
  readonly share: number;
}

const spread = (factor: ChildFactor, varies: number, share: number): ChildSpread => ({ varies, factor, share });

/**
 * Spread of every measure round the chart. Reasoned: of the head, from WHO Child Growth Standards (standard deviation
 * 14 to 15 of 503 at five years); of girths, lengths and breadths, such shares of themselves as the public survey of
 * adults shows at one stature (girths 0.06 to 0.1 of themselves, lengths 0.03 to 0.04), girths less, because
 * children are seldom as stout as adults. Girths go together, as do the lengths of one limb.
 */
export const childSpread: Readonly<Record<MeasureId, ChildSpread>> = {
  stature: spread('leg', 0, 0),
  bustGirth: spread('flesh', 0.055, 0.92),
  upperBustGirth: spread('flesh', 0.053, 0.93),
  underBustGirth: spread('flesh', 0.055, 0.92),
  waistGirth: spread('flesh', 0.072, 0.9),
  abdomenGirth: spread('flesh', 0.07, 0.92),
  hipGirth: spread('flesh', 0.06, 0.9),
  waistToHip: spread('trunk', 0.06, 0.5),
  neckBaseGirth: spread('flesh', 0.045, 0.7),
  shoulderLength: spread('frame', 0.05, 0.8),
  shoulderDrop: spread('frame', 0.15, 0),
  acrossBack: spread('frame', 0.05, 0.75),
  acrossFront: spread('frame', 0.055, 0.7),
  armholeDepth: spread('trunk', 0.045, 0.6),
  backWaistLength: spread('trunk', 0.04, 0.85),
  frontWaistLength: spread('trunk', 0.045, 0.8),
  bustDepth: spread('trunk', 0.05, 0.7),
  bustSpan: spread('flesh', 0.07, 0.7),
  upperArmGirth: spread('flesh', 0.08, 0.85),
  elbowGirth: spread('flesh', 0.06, 0.8),
  armLength: spread('arm', 0.035, 0.9),
  wristGirth: spread('flesh', 0.045, 0.7),
  bodyRise: spread('trunk', 0.04, 0.5),
  crotchLength: spread('flesh', 0.05, 0.6),
  crotchLengthFront: spread('flesh', 0.06, 0.5),
  crotchLengthBack: spread('flesh', 0.06, 0.5),
  insideLeg: spread('leg', 0.03, 0.9),
  thighGirth: spread('flesh', 0.08, 0.88),
  kneeGirth: spread('flesh', 0.055, 0.8),
  calfGirth: spread('flesh', 0.06, 0.8),
  ankleGirth: spread('flesh', 0.05, 0.65),
  napeHeight: spread('leg', 0.008, 0.3),
  waistHeight: spread('leg', 0.017, 0.9),
  kneeHeight: spread('leg', 0.03, 0.85),
  headGirth: spread('head', 0.028, 0.9),
  handGirth: spread('arm', 0.045, 0.5),
  heelGirth: spread('leg', 0.045, 0.4),
  shoulderGirth: spread('flesh', 0.05, 0.85),
  chestBreadth: spread('flesh', 0.055, 0.8),
  chestDepth: spread('flesh', 0.065, 0.8),
  waistBreadth: spread('flesh', 0.065, 0.8),
  waistDepth: spread('flesh', 0.085, 0.8),
  hipBreadth: spread('flesh', 0.06, 0.8),
  hipDepth: spread('flesh', 0.07, 0.8),
};
