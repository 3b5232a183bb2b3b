/**
 * The measures of a body, named after ISO 8559-1 where it has a term. All are millimetres.
 * `shoulderDrop` is the shoulder's slope: how far the shoulder point lies below the neck point.
 */
export const measureIds = [
  'stature',
  'bustGirth',
  'upperBustGirth',
  'underBustGirth',
  'waistGirth',
  'abdomenGirth',
  'hipGirth',
  'waistToHip',
  'neckBaseGirth',
  'shoulderLength',
  'shoulderDrop',
  'acrossBack',
  'acrossFront',
  'armholeDepth',
  'backWaistLength',
  'frontWaistLength',
  'bustDepth',
  'bustSpan',
  'upperArmGirth',
  'elbowGirth',
  'armLength',
  'wristGirth',
  'bodyRise',
  'crotchLength',
  'crotchLengthFront',
  'crotchLengthBack',
  'insideLeg',
  'thighGirth',
  'kneeGirth',
  'calfGirth',
  'ankleGirth',
  'napeHeight',
  'waistHeight',
  'kneeHeight',
  'headGirth',
  'handGirth',
  'heelGirth',
  'shoulderGirth',
  'chestBreadth',
  'chestDepth',
  'waistBreadth',
  'waistDepth',
  'hipBreadth',
  'hipDepth',
] as const;

export type MeasureId = (typeof measureIds)[number];

/** What is known of a body, millimetres. */
export type Measures = { readonly [K in MeasureId]?: number };
