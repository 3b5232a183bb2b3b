import { completeMeasures, type Measures } from '../body/index.ts';
import { type HousePattern, housePatterns } from '../drafting/index.ts';
import type { Envelope, Garment } from '../pattern/index.ts';
import { type BustDart, bustDartOf } from './bust-dart.ts';
import { envelopeFigures } from './envelope-figures.ts';
import type { PatternFigures, SizeFigures } from './figures.ts';

/** A house pattern's garment that stands for a bought one nobody has seen the pieces of. */
export interface Generic {
  readonly house: HousePattern;
  readonly draftedFor: 'chart-body' | 'own-size';
  readonly garment: Garment;
}

const ofTrunk: readonly Envelope['kind'][] = ['top', 'dress', 'jacket', 'coat'];

/**
 * How well a house pattern stands for the bought one: its kind first, then its cloth. Null: not at all. A child's body
 * is drafted for by a child's pattern only, and the trunk differs between women and men; trousers less.
 */
const likeness = (house: HousePattern, envelope: Envelope): number | null => {
  const sameKind = house.kind === envelope.kind;
  const trunk = ofTrunk.includes(envelope.kind);
  if (!sameKind && !(ofTrunk.includes(house.kind) && trunk)) return null;
  const child = house.for === 'child' || envelope.for === 'child';
  if (house.for !== envelope.for && (trunk || child)) return null;
  const structure = envelope.cloth.structure === 'knit' ? 'knit' : 'woven';
  const shaped = house.cups.length > 0;
  return (
    (house.for === envelope.for ? 8 : 0) +
    (sameKind ? 4 : 0) +
    (shaped === (structure === 'woven' && envelope.for === 'women') ? 2 : 0)
  );
};

/** House patterns that can stand for the bought one, the likest first. */
const standIns = (envelope: Envelope): readonly HousePattern[] =>
  housePatterns
    .flatMap((house) => {
      const like = likeness(house, envelope);
      return like === null ? [] : [{ house, like }];
    })
    .toSorted((a, b) => b.like - a.like)
    .map(({ house }) => house);

/** The chart's body with the upper bust its drafted cup makes, and what the chart leaves out estimated as everywhere. */
const wholeBody = (house: HousePattern, figures: PatternFigures, size: SizeFigures): Measures => {
  const { bustGirth, upperBustGirth } = size.body;
  const cup = figures.draftedCup;
  const known: Measures =
    upperBustGirth === undefined && bustGirth !== undefined && cup !== null
      ? { ...size.body, upperBustGirth: bustGirth - cup }
      : size.body;
  return house.estimatedAfter === 'children' ? known : completeMeasures(known, house.estimatedAfter).measures;
};

/** The bought size's own finished girths where the house draft can give them, so that the drawing is as wide. */
const easeLike = (house: HousePattern, body: Measures, size: SizeFigures): Readonly<Record<string, number>> => {
  const own = house.ease(body);
  if (!own.ok) return {};
  return Object.fromEntries(
    size.girths.flatMap(({ level, measure, finished }) => {
      const round = body[measure];
      return level in own.value && round !== undefined ? [[level, finished - round] as const] : [];
    }),
  );
};

/** The size of the house's own chart nearest to the bought size, by the first girth both charts have. */
const nearestOwn = (house: HousePattern, size: SizeFigures): Generic | null => {
  const by = (['bustGirth', 'hipGirth', 'waistGirth', 'stature'] as const).find(
    (measure) => size.body[measure] !== undefined && house.chart.every(({ body }) => body[measure] !== undefined),
  );
  const off = (body: Measures): number => (by ? Math.abs((body[by] ?? 0) - (size.body[by] ?? 0)) : 0);
  const [first, ...others] = house.chart;
  if (!first) return null;
  const own = others.reduce((best, one) => (off(one.body) < off(best.body) ? one : best), first);
  const garment = house.draft(own.body);
  return garment.ok ? { house, draftedFor: 'own-size', garment: garment.value } : null;
};

/**
 * A house pattern standing for a size of an envelope, drafted for the chart's own body: with the printed finished
 * girths as its ease if its draft can have them, else with its design's own, else, where the body cannot be drafted
 * for, in its own nearest size. Null where none of these can be drafted.
 */
export const genericGarment = (
  house: HousePattern,
  envelope: Envelope,
  view: string | null,
  size: string,
): Generic | null => {
  const figures = envelopeFigures(envelope, view);
  const own = figures.sizes.find((one) => one.size === size);
  if (!own) return null;
  const body = wholeBody(house, figures, own);
  for (const ease of [easeLike(house, body, own), {}]) {
    const garment = house.draft(body, { ease });
    if (garment.ok) return { house, draftedFor: 'chart-body', garment: garment.value };
  }
  return nearestOwn(house, own);
};

/** The generic garments for a size of an envelope, the likest first, each drafted only when it is asked for. */
export function* genericGarments(envelope: Envelope, view: string | null, size: string): Generator<Generic> {
  for (const house of standIns(envelope)) {
    const generic = genericGarment(house, envelope, view, size);
    if (generic) yield generic;
  }
}

/**
 * The side dart a front of the kind usually has in this size, where nobody has seen the bought one: the likest generic
 * garment's that has one. Null where none has.
 */
export const usualBustDart = (envelope: Envelope, view: string | null, size: string): BustDart | null => {
  for (const { garment } of genericGarments(envelope, view, size)) {
    const dart = bustDartOf(garment);
    if (dart) return dart;
  }
  return null;
};
