import { describeMeasure, type Range } from '../../body/index.ts';
import { millimetresPer } from '../../units/index.ts';
import { bodyUnder } from './bodies-of.ts';
import { doubtId, type EnvelopeDoubt } from './doubt.ts';
import { type Doubted, doubtedBody } from './doubts-body.ts';
import { figureMm, finishedOf } from './figures.ts';
import { growsWithBody } from './rising.ts';
import type { Envelope, Figure, FinishedRow } from './types.ts';
import { growthOf } from './uneven.ts';

const inch = millimetresPer.in / millimetresPer.cm;

const doubt = (
  code: string,
  row: FinishedRow,
  index: number,
  size: number | null,
  envelope: Envelope,
  figures: readonly Figure[],
  values: EnvelopeDoubt['values'] = {},
): EnvelopeDoubt => {
  const sizeName = size === null ? null : (envelope.sizes[size] ?? null);
  const place = `finished.${row.of === 'other' ? row.label : row.of}.${row.view ?? ''}`;
  return {
    id: doubtId(code, place, sizeName, figures),
    code,
    where: { chart: 'finished', row: index, size },
    values: { row: row.label, ...(sizeName === null ? {} : { size: sizeName }), ...values },
  };
};

const bodyFigures = (row: FinishedRow, envelope: Envelope): readonly Figure[] | null =>
  envelope.body.find(({ measure }) => measure === bodyUnder[row.of])?.figures ?? null;

/** Of the body it goes round a finished girth is hardly less than this, or more than that, share. */
const shares: Range = [0.7, 2];

/** Whole rows that are about 2.54 times the body they go round, or the body about 2.54 times them. */
const unitDoubt = (row: FinishedRow, index: number, envelope: Envelope, doubted: Doubted): readonly EnvelopeDoubt[] => {
  const body = bodyFigures(row, envelope);
  const measure = bodyUnder[row.of];
  if (!measure) return [];
  const { usual } = describeMeasure(measure);
  const turned = row.figures.flatMap((figure, size) => {
    const mm = figureMm(figure);
    if (mm === null) return [];
    // A body that is doubted itself proves nothing about what goes round it.
    const under = doubted(measure, size) ? null : figureMm(body?.[size] ?? null);
    const range: Range =
      under === null ? [usual[0] * shares[0], usual[1] * shares[1]] : [under * shares[0], under * shares[1]];
    if (mm >= range[0] && mm <= range[1]) return [{ mm, to: null }];
    const close: Range = under === null ? usual : [under * 0.9, under * 1.5];
    return [{ mm, to: [mm * inch, mm / inch].find((to) => to >= close[0] && to <= close[1]) ?? null }];
  });
  const [first] = turned;
  if (!first?.to || !turned.every(({ to }) => to !== null)) return [];
  const values = { figure: { mm: first.mm }, turned: { mm: first.to } };
  return [doubt('envelope.doubt-unit-row', row, index, null, envelope, row.figures, values)];
};

/**
 * The least a finished girth can be round a body: in woven cloth the body itself; in a knit what its stretch carries,
 * body / (1 + 0.3 s), extended by a quarter at most and not at all under a fifth of stretch (trade: ease in knits).
 */
const leastRound = (body: number, { structure, stretch }: Envelope['cloth']): number =>
  structure === 'woven' || stretch < 0.2 ? body : body / (1 + Math.min(0.3 * stretch, 0.25));

/** Body and finished girth are each printed to the nearest quarter inch or half centimetre, mm. */
const printed = 3;

const underBody = (row: FinishedRow, index: number, envelope: Envelope, doubted: Doubted): readonly EnvelopeDoubt[] => {
  const body = bodyFigures(row, envelope);
  if (!body) return [];
  return row.figures.flatMap((figure, size) => {
    const [mm, under] = [figureMm(figure), figureMm(body[size] ?? null)];
    const measure = bodyUnder[row.of];
    if (mm === null || under === null || (measure && doubted(measure, size))) return [];
    const least = leastRound(under, envelope.cloth);
    if (mm >= least - printed) return [];
    const code = least === under ? 'envelope.doubt-under-body' : 'envelope.doubt-under-stretch';
    const values = { figure: { mm }, body: { mm: under }, least: { mm: least } };
    return [doubt(code, row, index, size, envelope, [figure, body[size] ?? null], values)];
  });
};

const growth = (row: FinishedRow, index: number, envelope: Envelope): readonly EnvelopeDoubt[] => {
  if (row.of === 'other') return [];
  return growthOf(row.figures, envelope.sizes, growsWithBody(row.of)).map((odd) => {
    const figure = row.figures[odd.at] ?? null;
    if (odd.is === 'falls') {
      const values = { before: envelope.sizes[odd.before] ?? '' };
      return doubt(
        'envelope.doubt-falls',
        row,
        index,
        odd.at,
        envelope,
        [row.figures[odd.before] ?? null, figure],
        values,
      );
    }
    const values = { figure: { mm: figureMm(figure) ?? 0 }, likely: { mm: odd.likely } };
    return doubt('envelope.doubt-uneven', row, index, odd.at, envelope, [figure], values);
  });
};

/** A garment narrower at the hip than at the waist, in the same view. */
const hipUnderWaist = (row: FinishedRow, index: number, envelope: Envelope): readonly EnvelopeDoubt[] => {
  if (row.of !== 'hip') return [];
  const size = row.figures.findIndex((figure, at) => {
    const [hip, waist] = [figureMm(figure), finishedOf(envelope, envelope.sizes[at] ?? '', row.view, 'waist')];
    return hip !== null && waist !== null && hip < waist.mm;
  });
  if (size < 0) return [];
  const figure = row.figures[size] ?? null;
  const waist = finishedOf(envelope, envelope.sizes[size] ?? '', row.view, 'waist')?.mm ?? 0;
  const values = { figure: { mm: figureMm(figure) ?? 0 }, waist: { mm: waist } };
  return [doubt('envelope.doubt-hip-under-waist', row, index, size, envelope, [figure, waist], values)];
};

/** Doubts about the finished measurements. A row in the wrong unit is asked about once, and as nothing else. */
export const finishedDoubts = (envelope: Envelope): readonly EnvelopeDoubt[] => {
  const doubted = doubtedBody(envelope);
  return envelope.finished.flatMap((row, index) => {
    const unit = unitDoubt(row, index, envelope, doubted);
    if (unit.length > 0) return unit;
    const own = [...growth(row, index, envelope), ...hipUnderWaist(row, index, envelope)];
    const under = underBody(row, index, envelope, doubted);
    return [...under, ...own.filter(({ where }) => !under.some((one) => one.where.size === where.size))];
  });
};
