import { jacket } from './jacket.ts';
import { describeDraftingAnybody } from './testing/house-harness.ts';

describeDraftingAnybody(jacket, jacket.chart);
