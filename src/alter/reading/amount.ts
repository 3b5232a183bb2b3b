import type { Garment } from '../../pattern/index.ts';
import type { Alteration, Parameter, Params } from '../types.ts';
import type { Cause, Half, Impossible, PinShare, StartingAmount } from './types.ts';

/** What of a pinned fold is the amount on one piece. */
const shareOf: Readonly<Record<PinShare, number>> = { length: 1, each: 1, halved: 0.5 };

export interface Pin {
  readonly how: PinShare;
  readonly pinned: number;
}

const limitsOf = (alteration: Alteration | undefined, name: string): readonly [number, number] => {
  const parameter = alteration?.params[name];
  return parameter?.unit === 'mm' ? [parameter.min, parameter.max] : [-Infinity, Infinity];
};

/** How often the amount is put in where it is done on one half or on both. */
const times = (alteration: Alteration | undefined, side: Half): number => {
  const all = alteration?.inAll ?? 1;
  return side === 'both' || all === 1 ? all : all / 2;
};

/** The amount to start with: as pinned, else the lower end of what is usual, which is a guess. */
export const startingAmount = (
  cause: Cause,
  alteration: Alteration | undefined,
  side: Half,
  pin: Pin | null,
): StartingAmount => {
  const asked = cause.sign * (pin ? pin.pinned * shareOf[pin.how] : cause.guess);
  const [least, most] = limitsOf(alteration, cause.amount);
  const each = Math.min(Math.max(asked, least), most);
  return { each, asked, inAll: each * times(alteration, side), from: pin ?? 'guess' };
};

/** Why the cause's alteration cannot be a step for this garment; null where it can. */
export const impossibleFor = (
  cause: Cause,
  alteration: Alteration | undefined,
  side: Half,
  garment: Garment | null,
): Impossible | null => {
  if (cause.alteration === null) return { why: 'no-alteration' };
  if (alteration?.params[cause.amount]?.unit !== 'mm') return { why: 'not-in-catalogue' };
  if (!garment) return { why: 'no-pieces' };
  const problem = alteration.needs(garment);
  if (problem) return { why: 'garment', problem };
  for (const [name, value] of Object.entries(cause.fixed ?? {})) {
    const parameter = alteration.params[name];
    if (parameter?.unit === 'choice' && !parameter.choices.includes(value)) return { why: 'not-there' };
  }
  if (side !== 'both' && alteration.params['side'] === undefined) return { why: 'not-one-sided' };
  return null;
};

/** What a parameter the cause says nothing of is given: what changes nothing, or else is usual; undefined where the garment says. */
const unsaid = (parameter: Parameter): number | string | undefined => {
  if (parameter.unit === 'mm') return Math.min(Math.max(0, parameter.min), parameter.max);
  if (parameter.unit === 'choice') return parameter.usual;
  return parameter.unit === 'share' ? (parameter.usual[0] + parameter.usual[1]) / 2 : undefined;
};

/** Every parameter of a step. */
export const wholeParams = (cause: Cause, alteration: Alteration, side: Half, each: number): Params => {
  const said: Params = { ...cause.fixed, side, [cause.amount]: each };
  return Object.fromEntries(
    Object.entries(alteration.params).flatMap(([name, parameter]) => {
      const value = said[name] ?? unsaid(parameter);
      return value === undefined ? [] : [[name, value] as const];
    }),
  );
};
