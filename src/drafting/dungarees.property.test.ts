import { dungarees, dungareesMen } from './dungarees.ts';
import { describeDraftingAnybody } from './testing/house-harness.ts';

describeDraftingAnybody(dungarees, [...dungarees.chart, ...dungareesMen.chart]);
