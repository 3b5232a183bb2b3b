import type { MeasureId, Measures } from '../../body/index.ts';
import { usualEase } from '../../fit/index.ts';
import type { Garment, Pattern } from '../../pattern/index.ts';
import type { Alteration } from '../types.ts';
import { impossibleFor, type Pin, startingAmount, wholeParams } from './amount.ts';
import { fittingCauses } from './causes.ts';
import type { Cause, Evidence, Half, MeasureSays, Reading, Sign, Suggestion, Unread } from './types.ts';
import { isKnownKind, zoneIsOn } from './zones.ts';

type Kind = Pattern['kind'];

/** What is known beside the signs. */
export interface FittingContext {
  /** Kind of garment, as a pattern names it. */
  readonly kind: string;
  /** Its pieces, which decide what can be done on them; null where it is known by its envelope only. */
  readonly garment: Garment | null;
  readonly catalogue: readonly Alteration[];
  /** Body and finished girths, mm; ease is told where both are known. */
  readonly measures?: Measures;
  readonly finished?: Measures;
}

/** Where nobody looked how the lines run, they may run as the rule says or not: half of it counts. */
const undirected = 0.5;

/** How much finished measures weigh beside what is seen: less than the sign a cause is known by, so that they alone decide nothing. */
const measureWeight = 2;

const weightOf = (evidence: Evidence, sign: Sign): number => {
  if (evidence.zone !== sign.zone || evidence.kind !== sign.kind) return 0;
  if (evidence.posture && !evidence.posture.includes(sign.posture)) return 0;
  if (!evidence.along) return evidence.weight;
  if (sign.direction === null) return evidence.weight * undirected;
  return evidence.along.includes(sign.direction) ? evidence.weight : 0;
};

interface Found {
  readonly sign: number;
  readonly half: Half;
  readonly weight: number;
  readonly pin: Pin | null;
}

/** The strongest row of a cause's evidence that a sign meets. */
const foundFor = (cause: Cause, sign: Sign, place: number): Found | null => {
  let strongest: Evidence | null = null;
  let weight = 0;
  for (const evidence of cause.evidence) {
    const now = weightOf(evidence, sign);
    if (Math.abs(now) <= Math.abs(weight)) continue;
    strongest = evidence;
    weight = now;
  }
  if (!strongest) return null;
  const pin =
    strongest.pin && weight > 0 && sign.pinned !== null && sign.pinned > 0
      ? { how: strongest.pin, pinned: sign.pinned }
      : null;
  return { sign: place, half: sign.half, weight, pin };
};

const easeAt = (id: MeasureId, { measures, finished }: FittingContext): number | null => {
  const [body, garment] = [measures?.[id], finished?.[id]];
  return body === undefined || garment === undefined ? null : garment - body;
};

const measureSays = (cause: Cause, kind: Kind, context: FittingContext): MeasureSays | null => {
  if (!cause.measure) return null;
  const { id, when } = cause.measure;
  const ease = easeAt(id, context);
  const usual = usualEase(id, kind);
  if (ease === null || !usual) return null;
  const tight = ease < usual.least;
  const roomy = ease > usual.high;
  const comfortable = ease >= usual.low;
  const says =
    when === 'tight'
      ? tight
        ? 'for'
        : comfortable
          ? 'against'
          : 'neither'
      : roomy
        ? 'for'
        : tight
          ? 'against'
          : 'neither';
  return { measure: id, ease, says };
};

const measureScore = (says: MeasureSays | null): number =>
  says?.says === 'for' ? measureWeight : says?.says === 'against' ? -measureWeight / 2 : 0;

/** The largest pin of a half, on the strongest evidence it stands at. */
const pinOn = (found: readonly Found[], half: 'right' | 'left'): Found | null =>
  found
    .filter((one) => one.pin !== null && (one.half === 'both' || one.half === half))
    .toSorted((a, b) => b.weight - a.weight || (b.pin?.pinned ?? 0) - (a.pin?.pinned ?? 0))[0] ?? null;

/** On which half of the body, and with which pin: apart where the two halves were pinned differently. */
const sidesOf = (
  cause: Cause,
  found: readonly Found[],
): readonly { readonly side: Half; readonly pin: Pin | null }[] => {
  const on = (half: 'right' | 'left') => found.some((one) => one.half === 'both' || one.half === half);
  const [right, left] = [pinOn(found, 'right')?.pin ?? null, pinOn(found, 'left')?.pin ?? null];
  if (!on('left')) return [{ side: 'right', pin: right }];
  if (!on('right')) return [{ side: 'left', pin: left }];
  if (cause.oneSided) return [];
  const same = right?.pinned === left?.pinned && right?.how === left?.how;
  return same
    ? [{ side: 'both', pin: right }]
    : [
        { side: 'right', pin: right ?? left },
        { side: 'left', pin: left ?? right },
      ];
};

const suggestionsFor = (
  cause: Cause,
  signs: readonly Sign[],
  readable: readonly number[],
  kind: Kind,
  context: FittingContext,
): readonly Suggestion[] => {
  const found = readable.flatMap((place) => foundFor(cause, signs[place] as Sign, place) ?? []);
  const supporting = found.filter(({ weight }) => weight > 0);
  if (supporting.length === 0) return [];
  const opposing = found.filter(({ weight }) => weight < 0);
  const says = measureSays(cause, kind, context);
  const score = found.reduce((sum, { weight }) => sum + weight, 0) + measureScore(says);
  const alteration = context.catalogue.find(({ id }) => id === cause.alteration);
  return sidesOf(cause, supporting).map(({ side, pin }): Suggestion => {
    const impossible = impossibleFor(cause, alteration, side, context.garment);
    const amount = startingAmount(cause, alteration, side, pin);
    return {
      cause: cause.id,
      alteration: cause.alteration,
      params: alteration && !impossible ? wholeParams(cause, alteration, side, amount.each) : null,
      side,
      amount,
      score,
      supporting: supporting.map(({ sign, weight }) => ({ sign, weight })),
      opposing: opposing.map(({ sign, weight }) => ({ sign, weight })),
      measure: says,
      ruleOut: (cause.ruleOut ?? []).flatMap((id) => {
        const other = fittingCauses.find((one) => one.id === id);
        return other ? [{ cause: id, measure: measureSays(other, kind, context) }] : [];
      }),
      impossible,
    };
  });
};

/**
 * What is seen on a toile or a make, read as a fitter reads it: every cause the signs speak for, the likelier first, each
 * with its alteration, a starting amount (mm) and what to rule out before. Evidence adds up, so that a cause which
 * explains two signs stands before two causes of one each; signs that contradict a cause, and finished measures that do,
 * lower it. A sign that leads to nothing is told with the reason. Amounts are those on one piece and in all on the garment.
 */
export const readFitting = (signs: readonly Sign[], context: FittingContext): Reading => {
  const { kind, garment } = context;
  if (!isKnownKind(kind)) {
    return { suggestions: [], unread: signs.map((_, sign) => ({ sign, why: 'unknown-garment' as const })) };
  }
  const places = signs.map((_, place) => place);
  const readable = places.filter((place) => zoneIsOn((signs[place] as Sign).zone, kind, garment));
  const suggestions = fittingCauses
    .flatMap((cause) => suggestionsFor(cause, signs, readable, kind, context))
    .toSorted((a, b) => b.score - a.score);
  const answered = new Set(suggestions.flatMap(({ supporting }) => supporting.map(({ sign }) => sign)));
  const unread = places.flatMap((sign): { readonly sign: number; readonly why: Unread }[] => {
    if (!readable.includes(sign)) return [{ sign, why: 'not-on-garment' }];
    return answered.has(sign) ? [] : [{ sign, why: 'no-rule' }];
  });
  return { suggestions, unread };
};
