import { mostRoundArm } from '../../fit/index.ts';
import type { AlterationStep } from '../../pattern/index.ts';
import { bad, good, type Result } from '../../units/index.ts';
import { fullUpperArm } from '../sleeve/full-upper-arm.ts';
import type { Alteration, AmountParameter } from '../types.ts';

/** What an alteration says of how much. Throws for one that has no amount in millimetres. */
export const amountOf = ({ id, params }: Alteration): AmountParameter => {
  const amount = params.amount;
  if (amount?.unit !== 'mm') throw new Error(`${id} has no amount`);
  return amount;
};

/**
 * Round each arm. A card only widens, and is written as far as the fit advises one: beyond what a sleeve of ours bears it
 * keeps its words and is not drawn.
 */
export const upperArmAmount: AmountParameter = { ...amountOf(fullUpperArm), min: 1, max: mostRoundArm };

/** The amount a step asks for, mm. Problems `alter.not-an-amount`, `alter.out-of-range`. */
export const askedAmount = ({ params: { amount } }: AlterationStep, { min, max }: AmountParameter): Result<number> => {
  if (typeof amount !== 'number' || !Number.isFinite(amount))
    return bad('alter.not-an-amount', { parameter: 'amount' });
  if (amount >= min && amount <= max) return good(amount);
  return bad('alter.out-of-range', { amount: { mm: amount }, least: { mm: min }, most: { mm: max } });
};
