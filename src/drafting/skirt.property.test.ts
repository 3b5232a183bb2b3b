import { skirt } from './skirt.ts';
import { describeDraftingAnybody } from './testing/house-harness.ts';

describeDraftingAnybody(skirt, skirt.chart);
