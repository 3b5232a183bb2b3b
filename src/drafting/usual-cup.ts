import type { Measures } from '../body/index.ts';
import { cupShares } from './chart.ts';
import { settle } from './solve.ts';

/** Bust girth − upper bust girth for which blocks are drafted, mm. */
export const usualCup = 50;

/** By how much a bust may be smaller or larger than the usual cup's and the front alone take the difference, mm in all; what is beyond is shared all round. */
const frontAlone = { smaller: -30, larger: 75 } as const;

interface OverBust {
  readonly bustGirth: number;
  readonly upperBustGirth: number;
  readonly frontWaistLength: number;
  readonly bustDepth: number;
  readonly bustSpan: number;
  readonly acrossFront: number;
}

const beyondUsual = (bust: number, upperBust: number): number =>
  settle(bust - upperBust - usualCup, frontAlone.smaller, frontAlone.larger);

/** What of a body's bust each front alone takes beyond the usual cup, mm; none where bust or upper bust is not known. */
export const moreInFront = ({ bustGirth, upperBustGirth }: Measures): number =>
  bustGirth === undefined || upperBustGirth === undefined ? 0 : beyondUsual(bustGirth, upperBustGirth) / 2;

/**
 * A body as it would be with the usual cup, by which back, shoulders, armholes and sleeve are drafted, and what its
 * own bust is larger than that (mm in all, negative where smaller), which the front alone takes: as with the alteration of a
 * full bust, which leaves all else as it was (manuals of fitting).
 */
export const withUsualCup = <Body extends OverBust>(body: Body): { readonly usual: Body; readonly more: number } => {
  const more = beyondUsual(body.bustGirth, body.upperBustGirth);
  const less = (measure: 'frontWaistLength' | 'bustDepth' | 'bustSpan' | 'acrossFront'): number =>
    body[measure] - cupShares[measure] * more;
  return {
    usual: {
      ...body,
      bustGirth: body.bustGirth - more,
      frontWaistLength: less('frontWaistLength'),
      bustDepth: less('bustDepth'),
      bustSpan: less('bustSpan'),
      acrossFront: less('acrossFront'),
    },
    more,
  };
};
