import type { ClothRow, FinishedOf } from './types.ts';

/** Every kind of finished measurement, in the order a chart shows them: round the garment first, then along it. */
export const finishedKinds = [
  'bust',
  'waist',
  'hip',
  'upper-arm',
  'thigh',
  'knee',
  'hem-width',
  'sleeve-hem',
  'back-length',
  'front-length',
  'side-length',
  'sleeve-length',
  'inside-leg',
  'shoulder',
  'across-back',
  'other',
] as const satisfies readonly FinishedOf[];

export const clothLayers = [
  'shell',
  'lining',
  'interfacing',
  'contrast',
] as const satisfies readonly ClothRow['layer'][];

export const clothNaps = ['without', 'either', 'with'] as const satisfies readonly ClothRow['nap'][];
