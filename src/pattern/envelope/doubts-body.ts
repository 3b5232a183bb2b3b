import { describeMeasure, type MeasureId, type Range } from '../../body/index.ts';
import { millimetresPer } from '../../units/index.ts';
import { bodyWords } from '../../words/index.ts';
import { doubtId, type EnvelopeDoubt } from './doubt.ts';
import { figureMm } from './figures.ts';
import type { BodyRow, Envelope, Figure } from './types.ts';
import { growthOf } from './uneven.ts';

const inch = millimetresPer.in / millimetresPer.cm;

/** Between these a body of the kind the pattern is for is likely; a girth of a child stays well under a large adult's. */
const likely = (measure: MeasureId, envelope: Envelope): Range => {
  const { usual, possible, group } = describeMeasure(measure);
  if (envelope.for !== 'child') return usual;
  return [possible.child[0], group === 'body' ? Math.min(possible.child[1], childShare * usual[1]) : possible.child[1]];
};
const childShare = 0.75;

const within = (mm: number, [low, high]: Range): boolean => mm >= low && mm <= high;

/** Whether figures are unlikely as they stand and likely once read in the other unit; and as what they then read. */
export const otherUnit = (mm: number, range: Range): number | null => {
  if (within(mm, range)) return null;
  return [mm * inch, mm / inch].find((turned) => within(turned, range)) ?? null;
};

const name = (measure: MeasureId): string => bodyWords.measures[measure].name.toLowerCase();

const doubt = (
  code: string,
  row: BodyRow,
  index: number,
  size: number | null,
  envelope: Envelope,
  figures: readonly Figure[],
  values: EnvelopeDoubt['values'] = {},
): EnvelopeDoubt => {
  const sizeName = size === null ? null : (envelope.sizes[size] ?? null);
  return {
    id: doubtId(code, `body.${row.measure}`, sizeName, figures),
    code,
    where: { chart: 'body', row: index, size },
    values: { row: name(row.measure), ...(sizeName === null ? {} : { size: sizeName }), ...values },
  };
};

interface Turned {
  readonly mm: number;
  readonly to: number | null;
}

/** In the wrong unit a figure is some 2.5 times off the next one that is not doubted; a very large size is near it. */
const farFromBeside = (turned: readonly (Turned | null)[], size: number): boolean => {
  const beside = turned
    .flatMap((one, at) => (one && one.to === null ? [{ mm: one.mm, by: Math.abs(at - size) }] : []))
    .toSorted((a, b) => a.by - b.by)[0];
  const mm = turned[size]?.mm;
  return beside === undefined || mm === undefined || Math.max(mm / beside.mm, beside.mm / mm) > farOff;
};
const farOff = 1.6;

const unitDoubts = (row: BodyRow, index: number, envelope: Envelope): readonly EnvelopeDoubt[] => {
  const range = likely(row.measure, envelope);
  const turned = row.figures.map((figure): Turned | null => {
    const mm = figureMm(figure);
    return mm === null ? null : { mm, to: otherUnit(mm, range) };
  });
  const known = turned.filter((one) => one !== null);
  const [first] = known;
  if (first?.to && known.every(({ to }) => to !== null)) {
    const values = { figure: { mm: first.mm }, turned: { mm: first.to } };
    return [doubt('envelope.doubt-unit-row', row, index, null, envelope, row.figures, values)];
  }
  return turned.flatMap((one, size) => {
    const figure = row.figures[size] ?? null;
    if (one?.to && farFromBeside(turned, size)) {
      const values = { figure: { mm: one.mm }, turned: { mm: one.to } };
      return [doubt('envelope.doubt-unit', row, index, size, envelope, [figure], values)];
    }
    return [];
  });
};

/** Sizes whose figure nobody has, unless the other unit explains it. */
const impossible = (row: BodyRow, index: number, envelope: Envelope): readonly EnvelopeDoubt[] => {
  const { possible } = describeMeasure(row.measure);
  const range = envelope.for === 'child' ? possible.child : possible.adult;
  const unit = likely(row.measure, envelope);
  return row.figures.flatMap((figure, size) => {
    const mm = figureMm(figure);
    if (mm === null || within(mm, range) || otherUnit(mm, unit) !== null) return [];
    const values = { figure: { mm }, low: { mm: range[0] }, high: { mm: range[1] } };
    return [doubt('envelope.doubt-impossible', row, index, size, envelope, [figure], values)];
  });
};

const growth = (row: BodyRow, index: number, envelope: Envelope): readonly EnvelopeDoubt[] =>
  growthOf(row.figures, envelope.sizes, true).map((odd) => {
    const figure = row.figures[odd.at] ?? null;
    if (odd.is === 'falls') {
      const values = { before: envelope.sizes[odd.before] ?? '' };
      const figures = [row.figures[odd.before] ?? null, figure];
      return doubt('envelope.doubt-falls', row, index, odd.at, envelope, figures, values);
    }
    const values = { figure: { mm: figureMm(figure) ?? 0 }, likely: { mm: odd.likely } };
    return doubt('envelope.doubt-uneven', row, index, odd.at, envelope, [figure], values);
  });

/** Of two girths of one body the first is the larger; in men's charts the waist may pass the hip. */
const larger = (envelope: Envelope): readonly (readonly [MeasureId, MeasureId])[] => [
  ['bustGirth', 'upperBustGirth'],
  ['bustGirth', 'underBustGirth'],
  ...(envelope.for === 'women' ? [['hipGirth', 'waistGirth'] as const] : []),
  ['hipGirth', 'thighGirth'],
  ['thighGirth', 'kneeGirth'],
  ['stature', 'insideLeg'],
];

const outOfOrder = (envelope: Envelope, doubted: Doubted): readonly EnvelopeDoubt[] =>
  larger(envelope).flatMap(([large, small]) => {
    const index = envelope.body.findIndex(({ measure }) => measure === large);
    const [row, other] = [envelope.body[index], envelope.body.find(({ measure }) => measure === small)];
    if (!row || !other) return [];
    const size = row.figures.findIndex((figure, at) => {
      const [one, two] = [figureMm(figure), figureMm(other.figures[at] ?? null)];
      return one !== null && two !== null && one < two && !doubted(large, at) && !doubted(small, at);
    });
    if (size < 0) return [];
    const figures = [row.figures[size] ?? null, other.figures[size] ?? null];
    const values = {
      other: name(small),
      figure: { mm: figureMm(figures[0] ?? null) ?? 0 },
      under: { mm: figureMm(figures[1] ?? null) ?? 0 },
    };
    return [doubt('envelope.doubt-order', row, index, size, envelope, figures, values)];
  });

/** Both figures of a cup are printed to the nearest quarter inch or half centimetre, mm. */
const cupRounding = 13;

/** The size in which bust less upper bust lies farthest from the cup the pattern says it is drafted for. */
const cup = (envelope: Envelope, doubted: Doubted): readonly EnvelopeDoubt[] => {
  const index = envelope.body.findIndex(({ measure }) => measure === 'bustGirth');
  const [bust, upper] = [envelope.body[index], envelope.body.find(({ measure }) => measure === 'upperBustGirth')];
  const drafted = envelope.draftedCup;
  if (!bust || !upper || drafted === null) return [];
  const cups = bust.figures.flatMap((figure, size) => {
    const [one, two] = [figureMm(figure), figureMm(upper.figures[size] ?? null)];
    const asked = doubted('bustGirth', size) || doubted('upperBustGirth', size);
    return one === null || two === null || asked ? [] : [{ size, cup: one - two }];
  });
  const [worst] = cups.toSorted((a, b) => Math.abs(b.cup - drafted) - Math.abs(a.cup - drafted));
  if (!worst || Math.abs(worst.cup - drafted) <= cupRounding) return [];
  const figures = [bust.figures[worst.size] ?? null, upper.figures[worst.size] ?? null, drafted];
  const values = { cup: { mm: worst.cup }, drafted: { mm: drafted } };
  return [doubt('envelope.doubt-cup', bust, index, worst.size, envelope, figures, values)];
};

/** A single figure in the wrong unit makes its row fall or jump as well: it is asked about once. */
const rowDoubts = (row: BodyRow, index: number, envelope: Envelope): readonly EnvelopeDoubt[] => {
  const found = [...unitDoubts(row, index, envelope), ...impossible(row, index, envelope)];
  return found.some(({ where }) => where.size !== null) ? found : [...found, ...growth(row, index, envelope)];
};

/** Whether a figure of the body chart is doubted for itself: what follows from it is not asked about as well. */
export type Doubted = (measure: MeasureId, size: number) => boolean;

const allRows = (envelope: Envelope): readonly EnvelopeDoubt[] =>
  envelope.body.flatMap((row, index) => rowDoubts(row, index, envelope));

const inRows =
  (doubts: readonly EnvelopeDoubt[], envelope: Envelope): Doubted =>
  (measure, size) =>
    doubts.some(
      ({ where }) =>
        envelope.body[where.row ?? -1]?.measure === measure && (where.size === null || where.size === size),
    );

export const doubtedBody = (envelope: Envelope): Doubted => inRows(allRows(envelope), envelope);

/** Doubts about the body chart, and about the cup it is drafted for. */
export const bodyDoubts = (envelope: Envelope): readonly EnvelopeDoubt[] => {
  const doubts = allRows(envelope);
  const doubted = inRows(doubts, envelope);
  return [...doubts, ...outOfOrder(envelope, doubted), ...cup(envelope, doubted)];
};
