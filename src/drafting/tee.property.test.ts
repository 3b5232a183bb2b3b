import { tee, teeMen } from './tee.ts';
import { describeDraftingAnybody } from './testing/house-harness.ts';

describeDraftingAnybody(tee, [...tee.chart, ...teeMen.chart]);
