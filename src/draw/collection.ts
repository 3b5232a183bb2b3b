import type { FlatSketch } from '../drafting/index.ts';
import { type Bounds, translation } from '../geometry/index.ts';
import { drawFlatSketch } from './flat-sketch.ts';
import { drawingOf, estimatedTextWidth, filledMark, groupMark, rectangle, textMark } from './marks.ts';
import { moveMarks } from './move.ts';
import { sideBySide } from './side-by-side.ts';
import type { Drawing, Mark } from './types.ts';

export interface CollectionEntry {
  readonly id: string;
  readonly name: string;
  readonly sketch: FlatSketch;
}

export interface CollectionOptions {
  readonly label: string;
  /** Width over height to come near to. */
  readonly aspect: number;
  /** Em of the names, mm on the sketches' own scale. */
  readonly textSize: number;
  /** The fronts alone, for a small table. */
  readonly frontOnly?: boolean;
}

/** Round each sketch on its paper, mm. */
const margin = 8;

/** Flat sketches as papers lying side by side, each with its name; each can be pointed at by its id. */
export const drawCollection = (
  entries: readonly CollectionEntry[],
  { label, aspect, textSize, frontOnly = false }: CollectionOptions,
): Drawing => {
  const drawn = entries.map(({ name, sketch }) => drawFlatSketch(sketch, name, { pen: 'mark', frontOnly }));
  const papers = drawn.map(
    ({ bounds: { minX, minY, maxX, maxY } }, index): Bounds => ({
      minX: minX - margin,
      // A paper is as wide as its name needs.
      maxX: Math.max(maxX + margin, minX + margin + estimatedTextWidth(entries[index]?.name ?? '', textSize, 'bold')),
      minY: minY - margin,
      maxY: maxY + margin + 1.6 * textSize,
    }),
  );
  const places = sideBySide(papers, aspect);
  const marks = entries.flatMap(({ id, name }, index): readonly Mark[] => {
    const [picture, paper, place] = [drawn[index], papers[index], places[index]];
    if (!picture || !paper || !place) return [];
    const named = textMark('words', 'mark', { x: paper.minX + margin, y: paper.maxY - margin }, name, textSize, {
      weight: 'bold',
    });
    const sheet = filledMark(
      'cut',
      'paper',
      rectangle(paper.minX, paper.minY, paper.maxX - paper.minX, paper.maxY - paper.minY),
    );
    return moveMarks([groupMark(id, name, [sheet, ...picture.marks.flatMap(ungrouped), named])], translation(place));
  });
  return drawingOf(label, marks, margin);
};

/** The marks of a group without the group: the paper is pointed at, not front and back apart. */
const ungrouped = (mark: Mark): readonly Mark[] => (mark.kind === 'group' ? mark.marks.flatMap(ungrouped) : [mark]);
