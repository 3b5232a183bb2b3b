import { millimetresPer } from '../../units/index.ts';
import type { EnvelopeDoubt } from './doubt.ts';
import type { Envelope, Figure } from './types.ts';
import type { UnitSystem } from './unit-words.ts';

const inch = millimetresPer.in / millimetresPer.cm;

/** The unit a doubted row, or one figure of it, would be in after all; null where the doubt is about something else. */
export const unitAfterAll = ({ code, values, where }: EnvelopeDoubt): UnitSystem | null => {
  if (code !== 'envelope.doubt-unit-row' && code !== 'envelope.doubt-unit') return null;
  const [figure, turned] = [values?.figure, values?.turned];
  if (
    (where.chart !== 'body' && where.chart !== 'finished') ||
    typeof figure !== 'object' ||
    typeof turned !== 'object'
  )
    return null;
  return turned.mm > figure.mm ? 'inches' : 'cm';
};

/** Lengths are kept to a thousandth of a millimetre: a figure turned is the figure as it would have been typed. */
const times = (figure: Figure, by: number): Figure => {
  const turn = (mm: number): number => Math.round(mm * by * 1000) / 1000;
  return figure === null ? null : typeof figure === 'number' ? turn(figure) : [turn(figure[0]), turn(figure[1])];
};

/**
 * The envelope with the doubted figures read in the other unit: of a doubt about a row all of its figures, else the one
 * that is doubted. A doubt that is not about the unit changes nothing.
 */
export const turnUnit = (envelope: Envelope, doubt: EnvelopeDoubt): Envelope => {
  const unit = unitAfterAll(doubt);
  if (unit === null) return envelope;
  const { row, size } = doubt.where;
  const by = unit === 'inches' ? inch : 1 / inch;
  const turned = <Row extends { readonly figures: readonly Figure[] }>(rows: readonly Row[]): readonly Row[] =>
    rows.map((one, index) =>
      index === row
        ? {
            ...one,
            figures: one.figures.map((figure, at) => (size === null || at === size ? times(figure, by) : figure)),
          }
        : one,
    );
  return doubt.where.chart === 'body'
    ? { ...envelope, body: turned(envelope.body) }
    : { ...envelope, finished: turned(envelope.finished) };
};
