import type { UsualShrinkage } from '../../src/cloth/index.ts';
import { formatPercent } from '../../src/units/index.ts';
import { locale } from '../app/settings.tsx';

/** The ends of a usual shrinkage as they are said: `2 %`, `5 %`. */
export const shares = ({ from, to }: UsualShrinkage): { readonly from: string; readonly to: string } => ({
  from: formatPercent(from, locale),
  to: formatPercent(to, locale),
});
