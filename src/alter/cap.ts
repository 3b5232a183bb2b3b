import type { Seam, SeamSide } from '../pattern/index.ts';
import { good, type Result } from '../units/index.ts';
import type { Work } from './work.ts';

/**
 * Fits a sleeve's cap to an armhole that no longer lies within the ease of their seam. Not fitted yet: the seam is
 * then found not to walk, and the alteration refused with the largest amount that keeps within the ease.
 */
export const fitCap = (work: Work, _seam: Seam, _armhole: SeamSide, _cap: SeamSide): Result<Work> => good(work);
