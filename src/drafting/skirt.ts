import type { Measures } from '../body/index.ts';
import type { Garment } from '../pattern/index.ts';
import { good, type Result } from '../units/index.ts';
import { skirtWords } from '../words/index.ts';
import { womenChart } from './chart-women.ts';
import { type Drafted, defineHousePattern } from './define.ts';
import { liningPiece } from './skirt-lining.ts';
import { draftSkirt, type SkirtDraft } from './skirt-panel.ts';
import { skirtAllowances, skirtBand, skirtPiece, skirtPocket } from './skirt-pieces.ts';
import { planSkirt, type SkirtView } from './skirt-plan.ts';
import { skirtGirths, skirtSeams } from './skirt-seams.ts';
import { skirtShape } from './skirt-shape.ts';
import { skirtSketch } from './skirt-sketch.ts';
import type { EaseByLevel, HousePattern } from './types.ts';

const assemble = (draft: SkirtDraft): Garment => ({
  pieces: [
    skirtPiece(draft, 'front'),
    skirtPiece(draft, 'back'),
    liningPiece(draft, 'front'),
    liningPiece(draft, 'back'),
    skirtBand(draft),
    ...(draft.plan.pocketed ? [skirtPocket(draft)] : []),
  ],
  seams: skirtSeams(draft),
  girths: skirtGirths,
});

/**
 * Drafts the skirt for one body. See `draftSkirt` for the construction, step by step. Problems: `body.impossible`,
 * `drafting.no-measure`, `drafting.skirt-levels`, `drafting.waist-too-near-hip`, `drafting.measures-contradict`, and
 * those of the ease asked for.
 */
const draftOne = (body: Measures, view: SkirtView, ease: EaseByLevel): Result<Drafted> => {
  const plan = planSkirt(body, view, ease);
  if (!plan.ok) return plan;
  const draft = draftSkirt(plan.value);
  return draft.ok ? good({ garment: assemble(draft.value), ease: plan.value.ease }) : draft;
};

export const skirt: HousePattern = defineHousePattern({
  id: 'skirt',
  words: skirtWords,
  for: 'women',
  kind: 'skirt',
  estimatedAfter: 'women',
  chart: womenChart,
  draftedStature: 1680,
  cloth: () => ({
    structure: 'woven',
    weight: [150, 320],
    stretch: 0,
    cloths: ['wool flannel', 'gabardine', 'cotton twill', 'linen', 'corduroy'],
  }),
  notions: () => [
    { what: 'concealed-zip', along: [{ piece: 'back', edge: 'centre-back', times: 1, from: 'zip-end' }] },
    { what: 'hook-and-bar' },
    { what: 'interfacing' },
  ],
  draft: (body, view, ease) => draftOne(body, view as SkirtView, ease),
  shape: (view) => skirtShape(view as SkirtView),
  sketch: (garment) => skirtSketch(garment, 35, skirtAllowances.hem),
});
