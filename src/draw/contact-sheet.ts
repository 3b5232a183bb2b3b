import { type Bounds, compose, scaling, translation } from '../geometry/index.ts';
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

/** The scale garments are shown at: lines keep the weight of their ink, and so can be judged. */
const shownAt = 0.2;

/** Between garments, and the em of their labels, mm. */
const cell = { gap: 24, text: 10.4 };

/** Many garments at a fifth of their size, each with its label: for looking over drafts of many bodies. */
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
  const shown = (pick: (bounds: Bounds) => number): number =>
    Math.max(1, ...drawn.map((one) => (one ? pick(one.bounds) * shownAt : 0)));
  const width = shown(({ minX, maxX }) => maxX - minX);
  const height = shown(({ minY, maxY }) => maxY - minY);
  const marks = entries.map((entry, index): Mark => {
    const x = (index % columns) * (width + cell.gap);
    const y = Math.floor(index / columns) * (height + cell.text * 2 + cell.gap);
    const picture = drawn[index];
    const inside = picture
      ? moveMarks(
          picture.marks,
          compose(
            scaling(shownAt),
            translation({
              x: x - picture.bounds.minX * shownAt,
              y: y + cell.text * 1.6 - picture.bounds.minY * shownAt,
            }),
          ),
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
