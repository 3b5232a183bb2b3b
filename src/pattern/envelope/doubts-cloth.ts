import { tolerance } from '../../geometry/index.ts';
import { millimetresPer, type ProblemValue } from '../../units/index.ts';
import { chartWords } from '../../words/index.ts';
import { doubtId, type EnvelopeDoubt } from './doubt.ts';
import { figureMm } from './figures.ts';
import { fallsAt } from './rising.ts';
import type { ClothRow, Envelope, Figure } from './types.ts';

const inch = millimetresPer.in / millimetresPer.cm;
const cloth = (mm: number): ProblemValue => ({ mm, purpose: 'cloth' });

const doubt = (
  code: string,
  row: ClothRow,
  index: number,
  size: number | null,
  envelope: Envelope,
  figures: readonly Figure[],
  values: EnvelopeDoubt['values'] = {},
): EnvelopeDoubt => {
  const sizeName = size === null ? null : (envelope.sizes[size] ?? null);
  const view = envelope.views.find(({ id }) => id === row.view)?.name ?? chartWords.everyView;
  return {
    id: doubtId(code, `cloth.${row.view ?? ''}.${row.layer}.${Math.round(row.width)}.${row.nap}`, sizeName, figures),
    code,
    where: { chart: 'cloth', row: index, size },
    values: { width: { mm: row.width }, view, ...(sizeName === null ? {} : { size: sizeName }), ...values },
  };
};

const sameUse = (a: ClothRow, b: ClothRow): boolean => a.view === b.view && a.layer === b.layer;

/** The first size in which `row` needs less than `other` although it should need as much or more. */
const lessThan = (row: ClothRow, other: ClothRow): number =>
  row.figures.findIndex((figure, size) => {
    const [mm, than] = [figureMm(figure), figureMm(other.figures[size] ?? null)];
    return mm !== null && than !== null && mm < than - tolerance.same;
  });

const compare = (
  code: string,
  row: ClothRow,
  index: number,
  other: ClothRow,
  envelope: Envelope,
): readonly EnvelopeDoubt[] => {
  const size = lessThan(row, other);
  if (size < 0) return [];
  const figures = [row.figures[size] ?? null, other.figures[size] ?? null];
  const [figure, than] = figures.map((one) => cloth(figureMm(one) ?? 0));
  const values = { figure: figure ?? 0, than: than ?? 0, other: { mm: other.width } };
  return [doubt(code, row, index, size, envelope, figures, values)];
};

/** Dress cloth and interfacing are woven at least this wide, mm; lace and braid apart. */
const narrowest = 500;
const usualWidths = [850, 1700] as const;

const widthDoubt = (row: ClothRow, index: number, envelope: Envelope): readonly EnvelopeDoubt[] => {
  if (row.layer === 'interfacing') return [];
  const turned =
    row.width < narrowest ? row.width * inch : row.width > 2 * usualWidths[1] * 0.9 ? row.width / inch : null;
  if (turned === null || turned < usualWidths[0] || turned > usualWidths[1]) return [];
  return [doubt('envelope.doubt-width-unit', row, index, null, envelope, [row.width], { turned: { mm: turned } })];
};

const falls = (row: ClothRow, index: number, envelope: Envelope): readonly EnvelopeDoubt[] => {
  const found = fallsAt(row.figures, envelope.sizes);
  if (!found) return [];
  const figures = [row.figures[found.before] ?? null, row.figures[found.at] ?? null];
  return [
    doubt('envelope.doubt-cloth-falls', row, index, found.at, envelope, figures, {
      before: envelope.sizes[found.before] ?? '',
    }),
  ];
};

/** Doubts about the cloth needed: less of it for a larger size, in narrower cloth, or laid all one way. */
export const clothDoubts = (envelope: Envelope): readonly EnvelopeDoubt[] =>
  envelope.clothNeeded.flatMap((row, index) => {
    const others = envelope.clothNeeded.filter((other) => other !== row && sameUse(other, row));
    const wider = others
      .filter((other) => other.nap === row.nap && other.width > row.width)
      .toSorted((a, b) => a.width - b.width)
      .slice(0, 1);
    const turnable =
      row.nap === 'with' ? others.filter(({ nap, width }) => nap === 'without' && width === row.width) : [];
    return [
      ...widthDoubt(row, index, envelope),
      ...falls(row, index, envelope),
      ...wider.flatMap((other) => compare('envelope.doubt-cloth-narrow', row, index, other, envelope)),
      ...turnable.flatMap((other) => compare('envelope.doubt-cloth-nap', row, index, other, envelope)),
    ];
  });
