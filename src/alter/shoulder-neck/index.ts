import type { Alteration } from '../types.ts';
import { armholeDepth } from './armhole-depth.ts';
import { armholeGape } from './armhole-gape.ts';
import { forwardShoulder } from './forward-shoulder.ts';
import { neckGape } from './neck-gape.ts';
import { necklineDepth } from './neckline-depth.ts';
import { necklineWidth } from './neckline-width.ts';
import { shoulderSlope } from './shoulder-slope.ts';
import { shoulderWidth } from './shoulder-width.ts';

export const shoulderNeckAlterations: readonly Alteration[] = [
  shoulderWidth,
  shoulderSlope,
  forwardShoulder,
  necklineDepth,
  necklineWidth,
  neckGape,
  armholeDepth,
  armholeGape,
];
