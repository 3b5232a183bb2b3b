import { sweatshirt, sweatshirtMen } from './sweatshirt.ts';
import { describeDraftingAnybody } from './testing/house-harness.ts';

describeDraftingAnybody(sweatshirt, [...sweatshirt.chart, ...sweatshirtMen.chart]);
