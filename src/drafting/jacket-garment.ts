import type { Measures } from '../body/index.ts';
import type { Garment } from '../pattern/index.ts';
import { good, type Result } from '../units/index.ts';
import type { Drafted } from './define.ts';
import { topCollarPiece, underCollarPiece } from './jacket-collar.ts';
import { backFacingPiece, frontFacingPiece } from './jacket-facings.ts';
import { type JacketDraft, settleJacket } from './jacket-fit.ts';
import { liningBack, liningFront, liningSideBack, liningSideFront } from './jacket-lining.ts';
import { liningSleeve, liningUnderSleeve } from './jacket-lining-sleeve.ts';
import { backPanel, frontPanel, sideBackPanel, sideFrontPanel } from './jacket-panels.ts';
import { type JacketView, planJacket } from './jacket-plan.ts';
import { jacketGirths, jacketSeams } from './jacket-seams.ts';
import { topSleevePiece, underSleevePiece } from './jacket-sleeve-pieces.ts';
import type { EaseByLevel } from './types.ts';

const assemble = (draft: JacketDraft): Garment => ({
  pieces: [
    frontPanel(draft),
    sideFrontPanel(draft),
    sideBackPanel(draft),
    backPanel(draft),
    topSleevePiece(draft),
    underSleevePiece(draft),
    ...(draft.plan.view === 'collar' ? [topCollarPiece(draft), underCollarPiece(draft)] : []),
    frontFacingPiece(draft),
    backFacingPiece(draft),
    liningFront(draft),
    liningSideFront(draft),
    liningSideBack(draft),
    liningBack(draft),
    liningSleeve(draft),
    liningUnderSleeve(draft),
  ],
  seams: jacketSeams(draft.plan.view),
  girths: jacketGirths,
});

/**
 * Drafts the jacket for one body. See `draftJacketBody`, `frontPrincess`, `backPrincess` and `draftTwoPieceSleeve` for
 * the construction, step by step. Problems: `body.impossible`, `drafting.no-measure`, `drafting.levels-too-close`,
 * `drafting.bust-points-too-far-apart`, `drafting.cap-cannot-fit`, `drafting.arm-too-short`, and those of the ease
 * asked for.
 */
export const draftJacket = (body: Measures, view: JacketView, ease: EaseByLevel): Result<Drafted> => {
  const plan = planJacket(body, view, ease);
  if (!plan.ok) return plan;
  const draft = settleJacket(plan.value);
  return draft.ok ? good({ garment: assemble(draft.value), ease: draft.value.plan.ease }) : draft;
};
