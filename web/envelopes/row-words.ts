import type { ClothRow, Envelope, FinishedOf, FinishedRow } from '../../src/pattern/index.ts';
import { formatLength } from '../../src/units/index.ts';
import { envelopePageWords, fill } from '../../src/words/index.ts';
import { locale } from '../app/settings.tsx';
import { unitOf } from './figures.ts';

const words = envelopePageWords;

export const finishedName = (of: FinishedOf): string => words.finishedNames[of];

/** A view as she would say it: `View B`, or all of them. */
export const viewName = (envelope: Envelope, view: string | null): string =>
  view === null ? words.views.all : (envelope.views.find((one) => one.id === view)?.name ?? view);

export const sayFinishedRow = (envelope: Envelope, row: Pick<FinishedRow, 'of' | 'label' | 'view'>): string => {
  const what = row.of === 'other' ? fill(words.chart.printed, { label: row.label }, 'cm') : finishedName(row.of);
  return envelope.views.length === 0
    ? what
    : fill(words.chart.finishedRow, { what, view: viewName(envelope, row.view) }, 'cm');
};

/** The width of a cloth as the envelope prints it. */
export const widthAsPrinted = (envelope: Envelope, width: number): string =>
  formatLength(width, unitOf(envelope), { purpose: 'amount', locale });

export const sayClothRow = (envelope: Envelope, row: Pick<ClothRow, 'view' | 'layer' | 'width'>): string =>
  fill(
    words.chart.clothRow,
    {
      view: viewName(envelope, row.view),
      layer: words.chart.layersShort[row.layer],
      width: widthAsPrinted(envelope, row.width),
    },
    'cm',
  );
