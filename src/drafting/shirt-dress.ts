import type { Measures } from '../body/index.ts';
import { pathLength } from '../geometry/index.ts';
import type { Garment, Piece } from '../pattern/index.ts';
import { good, type Result } from '../units/index.ts';
import { shirtDressWords } from '../words/index.ts';
import { buttonHeights, draftButtonStand } from './button-stand.ts';
import { womenChart } from './chart-women.ts';
import { type Drafted, defineHousePattern } from './define.ts';
import { sidePocket, splitSide } from './pocket-on-side.ts';
import { standShape } from './shirt-collar.ts';
import { fallPiece, standPiece } from './shirt-collar-pieces.ts';
import { lengthenBodiceAt, shirtBack, shirtFront, shirtNotch, shirtYoke } from './shirt-dress-body-pieces.ts';
import { type ShirtDressDraft, settleShirtDress } from './shirt-dress-fit.ts';
import {
  shirtDress as fixed,
  planShirtDress,
  pocketMouth,
  type ShirtDressView,
  shirtDressViews,
} from './shirt-dress-plan.ts';
import { shirtDressGirths, shirtDressSeams } from './shirt-dress-seams.ts';
import { shirtDressShape } from './shirt-dress-shape.ts';
import { shirtDressSketch } from './shirt-dress-sketch.ts';
import { draftSkirt } from './shirt-dress-skirt.ts';
import { skirtPiece, tierPiece, waistPiece } from './shirt-dress-skirt-pieces.ts';
import { cuffPiece, shirtSleevePiece, slitBinding } from './shirt-sleeve-pieces.ts';
import type { EaseByLevel, HousePattern } from './types.ts';

const names: Readonly<Record<string, string>> = shirtDressWords.pieces;

/** Buttons below the bust's: about 85 apart in the middle size. */
const below = { tier: 9, knee: 7 } as const;

const standPieceOf = (draft: ShirtDressDraft): Piece => {
  const { plan, bodice } = draft;
  const [covered, kept] = draft.neck;
  const bust = bodice.front.bustSide.y;
  const waistTop = plan.bodiceLevel;
  const skirtTop = waistTop + fixed.waistband;
  const tierTop = skirtTop + plan.skirt.length;
  const hem = tierTop + plan.tier;
  return draftButtonStand({
    neck: covered,
    joined: [
      { id: 'front', length: waistTop - kept.from.y },
      { id: 'waist', length: fixed.waistband },
      { id: 'skirt', length: plan.skirt.length },
      ...(plan.view.tier ? [{ id: 'tier', length: plan.tier }] : []),
    ],
    buttons: buttonHeights({
      collar: covered.from.y - standShape.height / 2,
      bust,
      hem,
      clear: [waistTop, skirtTop, ...(plan.view.tier ? [tierTop] : [])],
      below: plan.view.tier ? below.tier : below.knee,
    }),
    levels: [
      { id: 'bust', y: bust },
      { id: 'waist', y: waistTop + fixed.waistband / 2 },
      { id: 'hip', y: skirtTop + plan.skirt.hip },
    ],
    lengthen: [
      { id: 'above-waist', y: lengthenBodiceAt(draft) },
      { id: 'below-hip', y: skirtTop + (plan.skirt.hip + plan.skirt.length) / 2 },
      ...(plan.view.tier ? [{ id: 'tier', y: tierTop + plan.tier / 2 }] : []),
    ],
  });
};

const assemble = (draft: ShirtDressDraft): Garment => {
  const { plan, cut, sleeve } = draft;
  const { view } = plan;
  const skirt = draftSkirt(plan, draft.bodice);
  const cuff = { length: plan.sleeve.cuff, lap: fixed.cuffLap, depth: fixed.cuff, slit: fixed.slit };
  const armhole = {
    front: pathLength(cut.front.armhole),
    back: pathLength(cut.back.armhole),
    notchFront: shirtNotch(cut.front.armhole),
    notchBack: shirtNotch(cut.back.armhole),
    easeBelow: 2.5,
  };
  const long = view.sleeve === 'long';
  const pieces = [
    shirtFront(draft),
    shirtBack(draft),
    shirtYoke(draft),
    shirtSleevePiece(sleeve, armhole, plan.sleeve.elbow, long ? cuff : null),
    ...(long ? [cuffPiece(cuff), slitBinding(cuff)] : []),
    standPiece(draft.stand),
    ...(draft.fall ? [fallPiece(draft.fall)] : []),
    waistPiece('front', skirt.front),
    waistPiece('back', skirt.back),
    skirtPiece('front', skirt.front, plan),
    skirtPiece('back', skirt.back, plan),
    sidePocket(splitSide(skirt.front.side, pocketMouth)[1]),
    ...(view.tier ? [tierPiece('front', skirt.front, plan.tier), tierPiece('back', skirt.back, plan.tier)] : []),
    standPieceOf(draft),
  ].map((piece) => ({ ...piece, name: names[piece.id] ?? piece.name }));
  return { pieces, seams: shirtDressSeams(pieces, view), girths: shirtDressGirths };
};

/**
 * Drafts the shirt dress for one body. See `planShirtDress`, `cutYoke`, `draftShirtSleeve`, `draftStand` and
 * `draftSkirt` for the construction, step by step.
 * Problems: `body.impossible`, `drafting.no-measure`, `drafting.levels-too-close`,
 * `drafting.bust-points-too-far-apart`, `drafting.bodice-cannot-fit`, `drafting.cap-cannot-fit`,
 * `drafting.arm-too-short`, `drafting.measures-contradict`, and those of the ease asked for.
 */
const draftShirtDress = (body: Measures, view: string, ease: EaseByLevel): Result<Drafted> => {
  const plan = planShirtDress(body, shirtDressViews[view] as ShirtDressView, ease);
  if (!plan.ok) return plan;
  const draft = settleShirtDress(plan.value);
  return draft.ok ? good({ garment: assemble(draft.value), ease: draft.value.plan.ease }) : draft;
};

export const shirtDress: HousePattern = defineHousePattern({
  id: 'shirt-dress',
  words: shirtDressWords,
  for: 'women',
  kind: 'dress',
  estimatedAfter: 'women',
  chart: womenChart,
  cups: [20, 50, 80, 110],
  draftedStature: 1680,
  cloth: () => ({
    structure: 'woven',
    weight: [90, 170],
    stretch: 0,
    cloths: ['poplin', 'chambray', 'lawn', 'shirting', 'fine linen', 'light denim'],
  }),
  notions: (view) => [
    { what: 'button', size: 11, count: view === 'tiered' ? below.tier + 5 : below.knee + 3 },
    { what: 'interfacing' },
  ],
  draft: draftShirtDress,
  shape: shirtDressShape,
  sketch: shirtDressSketch,
});
