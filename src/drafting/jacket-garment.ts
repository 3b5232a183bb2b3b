import type { Measures } from '../body/index.ts';
import { type Garment, validatePiece } from '../pattern/index.ts';
import { bad, good, type Result } from '../units/index.ts';
import type { Drafted } from './define.ts';
import { topCollarPiece, underCollarPiece } from './jacket-collar.ts';
import { backFacingPiece, frontFacingPiece } from './jacket-facings.ts';
import { type JacketDraft, settleJacket } from './jacket-fit.ts';
import { liningBack, liningFront } from './jacket-lining.ts';
import { liningSideBack, liningSideFront } from './jacket-lining-sides.ts';
import { liningSleeve, liningUnderSleeve } from './jacket-lining-sleeve.ts';
import { backPanel, frontPanel } from './jacket-panels.ts';
import { type JacketView, planJacket } from './jacket-plan.ts';
import { pocketPiece } from './jacket-pocket.ts';
import { jacketGirths, jacketSeams } from './jacket-seams.ts';
import { sideBackPanel, sideFrontPanel } from './jacket-side-panels.ts';
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
    pocketPiece(draft),
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
 * `drafting.bust-points-too-far-apart`, `drafting.cap-cannot-fit`, `drafting.arm-too-short`,
 * `drafting.measures-contradict`, and those of the ease
 * asked for.
 */
export const draftJacket = (body: Measures, view: JacketView, ease: EaseByLevel): Result<Drafted> => {
  const plan = planJacket(body, view, ease);
  if (!plan.ok) return plan;
  const draft = settleJacket(plan.value);
  if (!draft.ok) return draft;
  const garment = assemble(draft.value);
  // Measures of no one body, a wide bust over a narrow back with a short arm, can leave a panel whose armhole meets its seam.
  const unsound = garment.pieces.some((piece) => validatePiece(piece).length > 0);
  return unsound ? bad('drafting.measures-contradict') : good({ garment, ease: draft.value.plan.ease });
};
