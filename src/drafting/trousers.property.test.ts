import { describeDraftingAnybody } from './testing/house-harness.ts';
import { trousers, trousersMen } from './trousers.ts';

describeDraftingAnybody(trousers, [...trousers.chart, ...trousersMen.chart]);
