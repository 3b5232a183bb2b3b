import { type Garment, pieceOf, type Seam, walkSeam } from '../../pattern/index.ts';
import { bad, type Problem } from '../../units/index.ts';
import type { Alteration } from '../types.ts';
import { beginWork, finishWork, restructure } from '../work.ts';
import { seamNamed } from './seam-ends.ts';
import { turnedSeam } from './turned.ts';

/** Shares of the shorter side: beyond them woven cloth puckers when eased, or ripples when stretched (trade). */
const mostEased = 0.04;
const mostStretched = 0.03;
/** Under a fifth more than it is sewn to, gathers look like a mistake; beyond three times they are too thick to sew flat. */
const leastGathered = 0.2;
const mostGathered = 2;

type How = 'plain' | 'eased' | 'gathered' | 'stretched';

/**
 * The seam sewn in that way. Side a is what is eased, gathered or stretched, so where b is the longer (when stretching, the
 * shorter) the two change places.
 */
const sewn = (seam: Seam, difference: number, how: How, amount: number): Seam => {
  if (how === 'plain') return { ...seam, how, easeMin: 0, easeMax: 0 };
  const other = how === 'stretched' ? difference > 0 : difference < 0;
  const limits = how === 'stretched' ? { easeMin: -amount, easeMax: 0 } : { easeMin: 0, easeMax: amount };
  return { ...(other ? turnedSeam(seam) : seam), how, ...limits };
};

const warningsOf = (garment: Garment, seam: Seam): readonly Problem[] => {
  const { lengthA, lengthB, difference } = walkSeam(garment, seam);
  const share = Math.abs(difference) / Math.min(lengthA, lengthB);
  const values = { piece: pieceOf(garment, seam.a.piece).name, share: `${Math.round(share * 1000) / 10} %` };
  const warn = (code: string) => [bad(code, values).problem];
  if (seam.how === 'eased' && share > mostEased) return warn('alter.ease-puckers');
  if (seam.how === 'stretched' && share > mostStretched) return warn('alter.stretch-ripples');
  if (seam.how === 'gathered' && share < leastGathered) return warn('alter.hardly-gathered');
  if (seam.how === 'gathered' && share > mostGathered) return warn('alter.gathers-thick');
  return [];
};

/**
 * Changes how a seam is sewn, so that what one side has more is taken in on purpose: plain (none), eased or gathered on to
 * the shorter, or the shorter stretched on to the longer; up to `amount` of difference. No line is moved.
 */
export const sewSeam: Alteration = {
  id: 'sew-seam',
  version: 1,
  family: 'seams',
  params: {
    seam: { unit: 'named', of: 'seam' },
    how: { unit: 'choice', choices: ['eased', 'gathered', 'stretched', 'plain'], usual: 'eased' },
    amount: { unit: 'mm', min: 0, max: 1000, usual: [5, 20] },
  },
  amount: 'amount',
  inAll: 1,
  needs: (garment) => (garment.seams.length === 0 ? bad('alter.no-seam', {}).problem : null),
  // Those with no ease of their own first: what is eased or gathered already has been thought of.
  options: (garment, parameter) =>
    parameter === 'seam'
      ? garment.seams.toSorted((a, b) => Number(a.how !== 'plain') - Number(b.how !== 'plain')).map(({ id }) => id)
      : [],
  holds: ['seam-walks'],
  follows: ['sewing'],
  apply: (garment, params) => {
    const seam = seamNamed(garment, params['seam']);
    if (!seam) return bad('alter.no-seam', {});
    const now = sewn(seam, walkSeam(garment, seam).difference, params['how'] as How, Number(params['amount']));
    const work = restructure(beginWork(garment), (given) => ({
      ...given,
      seams: given.seams.map((one) => (one === seam ? now : one)),
    }));
    const walk = walkSeam(garment, now);
    const was = walkSeam(garment, seam);
    // No piece changes, so the finish has nothing to walk: the seam itself is judged here.
    if (!walk.meets && Math.abs(walk.excess) > Math.abs(was.excess)) {
      return bad('alter.seam-does-not-walk', { what: 'seam-walks', where: seam.id, by: { mm: Math.abs(walk.excess) } });
    }
    return finishWork(work, {
      held: [{ what: 'seam-walks', seam: seam.id, by: walk.meets ? walk.excess : 0, ok: true }],
      warnings: warningsOf(garment, now),
    });
  },
};
