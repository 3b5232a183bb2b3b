import { jacketWords } from '../words/index.ts';
import { womenChart } from './chart-women.ts';
import { defineHousePattern } from './define.ts';
import { draftJacket } from './jacket-garment.ts';
import { buttonCount } from './jacket-panels.ts';
import type { JacketView } from './jacket-plan.ts';
import { jacketShape } from './jacket-shape.ts';
import { jacketSketch } from './jacket-sketch.ts';
import type { HousePattern } from './types.ts';

/** A lined jacket with seams over the bust, a sleeve in two parts and facings, with a collar or without one. */
export const jacket: HousePattern = defineHousePattern({
  id: 'jacket',
  words: jacketWords,
  for: 'women',
  kind: 'jacket',
  estimatedAfter: 'women',
  chart: womenChart,
  cups: [20, 50, 80, 110],
  draftedStature: 1680,
  cloth: () => ({
    structure: 'woven',
    weight: [200, 380],
    stretch: 0,
    cloths: ['wool flannel', 'wool crepe', 'tweed', 'bouclé', 'soft worsted', 'wool and linen'],
  }),
  notions: (view) => [
    { what: 'button', count: buttonCount[view as JacketView], size: 22 },
    { what: 'shoulder-pad', count: 2 },
    { what: 'interfacing' },
    {
      what: 'stay-tape',
      size: 10,
      plus: 40,
      along: [
        { piece: 'front', edge: 'front-edge', times: 2 },
        { piece: 'front', edge: 'neck', times: 2 },
        { piece: 'back', edge: 'neck', times: 2 },
        { piece: 'front', edge: 'shoulder', times: 2 },
        { piece: 'side-front', edge: 'shoulder', times: 2 },
      ],
    },
  ],
  draft: (body, view, ease) => draftJacket(body, view as JacketView, ease),
  shape: (view) => jacketShape(view as JacketView),
  sketch: (garment, view) => jacketSketch(garment, view as JacketView),
});
