import { translation } from '../geometry/index.ts';
import type { Garment } from '../pattern/index.ts';
import type { Unit } from '../units/index.ts';
import { drawWords, fill } from '../words/index.ts';
import { drawGarmentPieces, usualAspect } from './garment.ts';
import { drawingOf, groupMark, pathMark, rectangle, textMark } from './marks.ts';
import { moveMarks } from './move.ts';
import type { Drawing, Mark } from './types.ts';

export interface ContactEntry {
  readonly id: string;
  readonly label: string;
  /** Null where there is none to show; the label then says why. */
  readonly garment: Garment | null;
}

export interface ContactSheetOptions {
  readonly unit: Unit;
  readonly locale?: string;
  readonly columns?: number;
}

/** Between garments, and the em of their labels, mm at the garments' own size. */
const cell = { gap: 120, text: 52 };

/** Many garments small, all to one scale, each with its label: for looking over drafts of many bodies. */
export const drawContactSheet = (entries: readonly ContactEntry[], options: ContactSheetOptions): Drawing => {
  const columns = options.columns ?? Math.max(1, Math.ceil(Math.sqrt(entries.length)));
  const drawn = entries.map((entry) =>
    entry.garment
      ? drawGarmentPieces(entry.garment, {
          unit: options.unit,
          layers: ['cut', 'seam', 'marks'],
          aspect: usualAspect,
        })
      : null,
  );
  const width = Math.max(1, ...drawn.map((one) => (one ? one.bounds.maxX - one.bounds.minX : 0)));
  const height = Math.max(1, ...drawn.map((one) => (one ? one.bounds.maxY - one.bounds.minY : 0)));
  const marks = entries.map((entry, index): Mark => {
    const x = (index % columns) * (width + cell.gap);
    const y = Math.floor(index / columns) * (height + cell.text * 2 + cell.gap);
    const picture = drawn[index];
    const inside = picture
      ? moveMarks(
          picture.marks,
          translation({ x: x - picture.bounds.minX, y: y + cell.text * 1.6 - picture.bounds.minY }),
        )
      : [];
    return groupMark(entry.id, entry.label, [
      pathMark(
        'words',
        'faint',
        rectangle(x - cell.gap / 4, y - cell.gap / 4, width + cell.gap / 2, height + cell.text * 1.6 + cell.gap / 2),
      ),
      textMark('words', 'mark', { x, y: y + cell.text }, entry.label, cell.text, { weight: 'bold' }),
      ...inside,
    ]);
  });
  return drawingOf(
    fill(drawWords.contactSheetLabel, { count: entries.length }, options.unit, options.locale),
    marks,
    cell.gap / 2,
  );
};
