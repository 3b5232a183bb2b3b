import type { Girth, Seam } from '../pattern/index.ts';
import { longer, plain, roundBody, roundLimb, side } from './seams.ts';
import { backStretch } from './trouser-fit.ts';

/** Seams that join legs, whatever is above them; with the knee's notches where they reach it. The upper side may stay open for what closes it. */
export const legSeams = (knee: boolean): readonly Seam[] => [
  plain('side-upper', side('front', 'side-upper'), side('back', 'side-upper'), [
    ['hip', 'hip'],
    ['opening-end', 'opening-end'],
  ]),
  plain('side', side('front', 'side'), side('back', 'side'), knee ? [['knee-side', 'knee-side']] : []),
  longer(
    'stretched',
    'inside-leg',
    side('back', 'inside-leg', true),
    side('front', 'inside-leg', true),
    [-backStretch - 1, 0],
    knee ? [['knee-inside', 'knee-inside']] : [],
  ),
  plain('crotch-front', side('front', 'crotch'), side('front', 'crotch'), [['crotch-front', 'crotch-front']]),
  plain('crotch-back', side('back', 'crotch'), side('back', 'crotch'), [['crotch-back', 'crotch-back']]),
];

/** Girths of legs, whatever is above them. */
export const legGirths = (knee: boolean): readonly Girth[] => [
  roundBody('hip', 'hipGirth', ['front', 'back']),
  roundLimb('thigh', 'thighGirth', ['front', 'back']),
  ...(knee ? [roundLimb('knee', 'kneeGirth', ['front', 'back'])] : []),
];
