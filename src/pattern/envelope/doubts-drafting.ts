import { describeMeasure } from '../../body/index.ts';
import type { ProblemValue } from '../../units/index.ts';
import { doubtId, type EnvelopeDoubt } from './doubt.ts';
import type { Envelope } from './types.ts';

/** Seam allowances are printed between these, mm: 3 for a bound or overlocked edge, 25 for seams to be let out. */
const usualAllowance = [3, 30] as const;

/** Bust less upper bust patterns are drafted for, mm; multi-cup patterns go to about 125. */
const largestCup = 150;

const doubt = (
  code: string,
  row: string,
  figure: number,
  values: Readonly<Record<string, ProblemValue>>,
): EnvelopeDoubt => ({
  id: doubtId(code, `drafting.${row}`, null, [figure]),
  code,
  where: { chart: 'drafting', row: null, size: null },
  values,
});

/** Doubts about what the pattern says of its drafting: allowance, cup, stature. */
export const draftingDoubts = ({
  allowance,
  draftedCup,
  draftedStature,
  ...envelope
}: Envelope): readonly EnvelopeDoubt[] => {
  const { usual, possible } = describeMeasure('stature');
  const [low, high] = envelope.for === 'child' ? possible.child : usual;
  const oddAllowance =
    allowance !== null && allowance > 0 && (allowance < usualAllowance[0] || allowance > usualAllowance[1]);
  return [
    ...(oddAllowance
      ? [doubt('envelope.doubt-allowance', 'allowance', allowance, { allowance: { mm: allowance } })]
      : []),
    ...(draftedCup !== null && draftedCup > largestCup
      ? [doubt('envelope.doubt-drafted-cup', 'cup', draftedCup, { cup: { mm: draftedCup } })]
      : []),
    ...(draftedStature !== null && (draftedStature < low || draftedStature > high)
      ? [
          doubt('envelope.doubt-drafted-stature', 'stature', draftedStature, {
            stature: { mm: draftedStature, purpose: 'stature' },
            low: { mm: low, purpose: 'stature' },
            high: { mm: high, purpose: 'stature' },
          }),
        ]
      : []),
  ];
};
