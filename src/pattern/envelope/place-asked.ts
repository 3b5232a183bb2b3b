import type { MeasureId } from '../../body/index.ts';
import { bad, good, type Result } from '../../units/index.ts';
import type { ChartRead } from './chart.ts';
import { inOrder } from './gather.ts';
import { crossing, growsWithBody } from './rising.ts';
import { envelopeHolds } from './schema.ts';
import type { BodyRow, ClothRow, Envelope, FinishedOf, FinishedRow } from './types.ts';

/** What an unrecognised row is, as she answers: a measure, a finished measurement, cloth, or nothing to keep. */
export type AskedAnswer =
  | { readonly as: 'body'; readonly measure: MeasureId }
  | { readonly as: 'finished'; readonly of: FinishedOf }
  | { readonly as: 'cloth'; readonly layer: ClothRow['layer']; readonly width: number; readonly nap: ClothRow['nap'] }
  | { readonly as: 'left-out' };

/**
 * A chart with one of its asked rows put where she says it belongs. Refused: no such row, an answer of another kind
 * of chart, a row that is there already with other figures, figures that fall from size to size.
 */
export const placeAsked = (read: ChartRead, row: number, answer: AskedAnswer): Result<ChartRead> => {
  const asked = read.asked[row];
  if (!asked) return bad('envelope.answer-place');
  const rest = { ...read, asked: read.asked.filter((one) => one !== asked) };
  if (answer.as === 'left-out') return good(rest);
  if (answer.as !== read.kind) return bad('envelope.answer-kind');
  const { label, view, figures } = asked;
  const rises = answer.as === 'body' || (answer.as === 'finished' && growsWithBody(answer.of));
  const crossed = rises ? crossing(label, figures, read.sizes) : null;
  if (crossed) return { ok: false, problem: crossed };
  switch (answer.as) {
    case 'body': {
      if (read.body.some((one) => one.measure === answer.measure)) return bad('envelope.row-twice', { row: label });
      return good({ ...rest, body: inOrder.body([...read.body, { measure: answer.measure, figures }]) });
    }
    case 'finished': {
      const finished: FinishedRow = { of: answer.of, label, view, figures };
      if (read.finished.some((one) => sameFinished(one, finished))) return bad('envelope.row-twice', { row: label });
      return good({ ...rest, finished: inOrder.finished([...read.finished, finished]) });
    }
    case 'cloth': {
      const cloth: ClothRow = { view, layer: answer.layer, width: answer.width, nap: answer.nap, figures };
      if (read.clothNeeded.some((one) => sameCloth(one, cloth))) return bad('envelope.row-twice', { row: label });
      return good({ ...rest, clothNeeded: inOrder.cloth([...read.clothNeeded, cloth]) });
    }
  }
};

const sameBody = (a: BodyRow, b: BodyRow): boolean => a.measure === b.measure;
const sameFinished = (a: FinishedRow, b: FinishedRow): boolean =>
  a.view === b.view && a.of === b.of && (a.of !== 'other' || a.label === b.label);
const sameCloth = (a: ClothRow, b: ClothRow): boolean =>
  a.view === b.view && a.layer === b.layer && a.width === b.width && a.nap === b.nap;

/** Rows read take the place of those of the same; the others stay. */
const replaced = <Row>(
  rows: readonly Row[],
  read: readonly Row[],
  same: (a: Row, b: Row) => boolean,
): readonly Row[] => [...rows.filter((row) => !read.some((one) => same(row, one))), ...read];

/**
 * An envelope with a chart put in: rows of the same measure, view and width are replaced, others stay; views it names
 * are added. Its sizes must be the envelope's, unless nothing stands under those yet. Rows still asked about are kept
 * as other finished measurements under their printed words, or are left out of the body chart and the cloth.
 * Refused besides: more than an envelope holds (`envelope.chart-too-much`).
 */
export const withChart = (envelope: Envelope, read: ChartRead): Result<Envelope> => {
  const empty =
    envelope.body.length + envelope.finished.length + envelope.clothNeeded.length + envelope.flat.length === 0;
  const same =
    envelope.sizes.length === read.sizes.length && envelope.sizes.every((size, at) => size === read.sizes[at]);
  if (!same && !empty) {
    return bad('envelope.sizes-differ', { found: read.sizes.join(', '), sizes: envelope.sizes.join(', ') });
  }
  const views = read.views.filter((view) => !envelope.views.some(({ id }) => id === view.id));
  const others =
    read.kind === 'finished'
      ? read.asked.map(({ label, view, figures }): FinishedRow => ({ of: 'other', label, view, figures }))
      : [];
  const sizes = new Set(read.sizes);
  const filled: Envelope = {
    ...envelope,
    sizes: read.sizes,
    printedIn: empty ? read.printedIn : envelope.printedIn,
    views: [...envelope.views, ...views],
    body: inOrder.body(replaced(envelope.body, read.body, sameBody)),
    finished: inOrder.finished(replaced(envelope.finished, [...read.finished, ...others], sameFinished)),
    clothNeeded: inOrder.cloth(replaced(envelope.clothNeeded, read.clothNeeded, sameCloth)),
    owned: {
      ...envelope.owned,
      cut: envelope.owned.cut.filter((size) => sizes.has(size)),
      traced: envelope.owned.traced.filter((size) => sizes.has(size)),
    },
  };
  return holds(filled) ? good(filled) : bad('envelope.chart-too-much', envelopeHolds);
};

/** Whether it is no more than the door lets in: a chart that could not be stored is not put in. */
const holds = ({ sizes, views, finished, clothNeeded }: Envelope): boolean =>
  sizes.length <= envelopeHolds.sizes &&
  views.length <= envelopeHolds.views &&
  Math.max(finished.length, clothNeeded.length) <= envelopeHolds.rows;

/** A view some row of a chart is of. */
const isNamed = (read: ChartRead, id: string): boolean =>
  [...read.finished, ...read.clothNeeded].some(({ view }) => view === id);

/**
 * Of a chart in which an asked row has been placed, the row itself: what was put in before it may have been corrected
 * since, and is not put in again.
 */
export const newlyPlaced = (before: ChartRead, after: ChartRead): ChartRead => {
  const added = <Row>(rows: readonly Row[], had: readonly Row[]): readonly Row[] =>
    rows.filter((row) => !had.includes(row));
  const placed: ChartRead = {
    ...after,
    body: added(after.body, before.body),
    finished: added(after.finished, before.finished),
    clothNeeded: added(after.clothNeeded, before.clothNeeded),
    asked: [],
  };
  return { ...placed, views: after.views.filter(({ id }) => isNamed(placed, id)) };
};
