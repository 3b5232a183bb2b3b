import type { MeasureId } from '../../body/index.ts';
import { bad, good, type Result } from '../../units/index.ts';
import { bodyWords } from '../../words/index.ts';
import { envelopeSchema } from './schema.ts';
import type { Envelope, Figure } from './types.ts';

const formatOf = (json: unknown): string | null => {
  const format = typeof json === 'object' && json !== null ? (json as { format?: unknown }).format : undefined;
  return typeof format === 'string' ? format.slice(0, 80) : null;
};

/** The first of `names` that stands twice, by how a reader would compare them. */
const twice = (names: readonly string[]): string | null => {
  const seen = new Set<string>();
  for (const name of names) {
    const key = name.trim().toLowerCase();
    if (seen.has(key)) return name;
    seen.add(key);
  }
  return null;
};

interface Row {
  readonly chart: 'body' | 'finished' | 'cloth';
  readonly row: number;
  readonly view: string | null;
  readonly figures: readonly Figure[];
}

const rowsOf = (envelope: Envelope): readonly Row[] => [
  ...envelope.body.map((row, index): Row => ({ chart: 'body', row: index + 1, view: null, figures: row.figures })),
  ...envelope.finished.map(({ view, figures }, index): Row => ({ chart: 'finished', row: index + 1, view, figures })),
  ...envelope.clothNeeded.map(({ view, figures }, index): Row => ({ chart: 'cloth', row: index + 1, view, figures })),
];

const checkRow = ({ chart, row, figures }: Row, sizes: readonly string[]): Result<null> => {
  if (figures.length !== sizes.length) {
    return bad('envelope.figures-count', { chart, row, found: figures.length, sizes: sizes.length });
  }
  const reversed = figures.findIndex((figure) => Array.isArray(figure) && figure[0] > figure[1]);
  return reversed < 0 ? good(null) : bad('envelope.range-reversed', { chart, row, size: sizes[reversed] ?? '' });
};

/** Whatever names a view or a size must name one there is. */
const checkNames = (envelope: Envelope): Result<null> => {
  const views = new Set(envelope.views.map(({ id }) => id));
  const named = [
    ...rowsOf(envelope).map(({ view }) => view),
    ...envelope.notions.map(({ view }) => view),
    ...envelope.flat.map(({ view }) => view),
  ];
  const missing = named.find((view) => view !== null && !views.has(view));
  if (missing) return bad('envelope.view-missing', { view: missing });
  const sizes = new Set(envelope.sizes);
  const size = [...envelope.flat.map((flat) => flat.size), ...envelope.owned.cut, ...envelope.owned.traced].find(
    (one) => !sizes.has(one),
  );
  return size === undefined ? good(null) : bad('envelope.size-missing', { size, sizes: envelope.sizes.join(', ') });
};

const nameOf = (measure: string): string => bodyWords.measures[measure as MeasureId].name.toLowerCase();

const checkEnvelope = (envelope: Envelope): Result<Envelope> => {
  const size = twice(envelope.sizes);
  if (size !== null) return bad('envelope.size-twice', { size });
  const view = twice(envelope.views.map(({ id }) => id));
  if (view !== null) return bad('envelope.view-twice', { view });
  const measure = twice(envelope.body.map((row) => row.measure));
  if (measure !== null) return bad('envelope.measure-twice', { measure: nameOf(measure) });
  for (const row of rowsOf(envelope)) {
    const checked = checkRow(row, envelope.sizes);
    if (!checked.ok) return checked;
  }
  if (envelope.cloth.weight[0] > envelope.cloth.weight[1]) return bad('envelope.weight-reversed');
  const named = checkNames(envelope);
  return named.ok ? good(envelope) : named;
};

/**
 * Brings an envelope's document in through its one schema, then checks what its entries say of each other: one
 * figure for each size in every row, sizes and views named once, views and sizes that are referred to exist.
 * What could be printed but hardly is (a chart that grows unevenly) is no matter of the door: see `envelopeDoubts`.
 */
export const readEnvelope = (json: unknown): Result<Envelope> => {
  const format = formatOf(json);
  if (format === null) return bad('envelope.not-an-envelope');
  if (format !== 'easewright-envelope/1') return bad('envelope.unknown-version', { format });
  const parsed = envelopeSchema.safeParse(json);
  if (parsed.success) return checkEnvelope(parsed.data);
  const issue = parsed.error.issues[0];
  return bad('envelope.field', {
    where: issue?.path.map(String).join(' › ') || 'the whole document',
    what: issue?.message ?? '',
  });
};

/** The readable JSON of an envelope, as docs/envelopes.md describes it. */
export const writeEnvelope = (envelope: Envelope): unknown => JSON.parse(JSON.stringify(envelope));

export interface BlankEnvelope {
  readonly name: string;
  readonly for?: Envelope['for'];
  readonly kind?: Envelope['kind'];
  readonly printedIn?: Envelope['printedIn'];
  readonly sizes?: readonly string[];
}

/** An envelope with nothing entered but its name: what a new one begins as. Woven, for women, a top, unless said. */
export const blankEnvelope = (given: BlankEnvelope): Envelope => ({
  format: 'easewright-envelope/1',
  name: given.name,
  house: '',
  number: '',
  about: '',
  for: given.for ?? 'women',
  kind: given.kind ?? 'top',
  printedIn: given.printedIn ?? 'cm',
  sizes: given.sizes ?? ['1'],
  views: [],
  body: [],
  finished: [],
  clothNeeded: [],
  notions: [],
  allowance: null,
  draftedCup: null,
  draftedStature: null,
  cloth: { structure: 'woven', weight: [0, 3000], stretch: 0, cloths: [] },
  advice: '',
  flat: [],
  kept: [],
  owned: {
    form: 'paper',
    where: '',
    cut: [],
    traced: [],
    copyAt: '',
    link: '',
    price: '',
    drafting: '',
    instructions: '',
  },
  photographs: [],
});
