import type { MeasureId } from '../../body/index.ts';
import type { FinishedOf } from './types.ts';

/** The body measure a finished girth goes round. */
export const bodyUnder: { readonly [K in FinishedOf]?: MeasureId } = {
  bust: 'bustGirth',
  waist: 'waistGirth',
  hip: 'hipGirth',
  'upper-arm': 'upperArmGirth',
  thigh: 'thighGirth',
  knee: 'kneeGirth',
};
