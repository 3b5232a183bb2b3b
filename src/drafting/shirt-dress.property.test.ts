import { shirtDress } from './shirt-dress.ts';
import { describeDraftingAnybody } from './testing/house-harness.ts';

describeDraftingAnybody(shirtDress, shirtDress.chart);
