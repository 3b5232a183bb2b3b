import { blouse } from './blouse.ts';
import { describeDraftingAnybody } from './testing/house-harness.ts';

describeDraftingAnybody(blouse, blouse.chart);
