import type { FlatSketch } from '../drafting/index.ts';
import { type Bounds, translation } from '../geometry/index.ts';
import { drawFlatSketch } from './flat-sketch.ts';
import { drawingOf, estimatedTextWidth, filledMark, groupMark, rectangle, textMark } from './marks.ts';
import { moveMarks } from './move.ts';
import { brokenTo } from './name-above.ts';
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
/** Baseline to baseline of a name in two lines, in ems; and the width any name may take, in ems, before it is broken. */
const leading = 1.1;
const leastName = 5;

/** Flat sketches as papers lying side by side, each with its name; each can be pointed at by its id. */
export const drawCollection = (
  entries: readonly CollectionEntry[],
  { label, aspect, textSize, frontOnly = false }: CollectionOptions,
): Drawing => {
  const drawn = entries.map(({ name, sketch }) => drawFlatSketch(sketch, name, { pen: 'mark', frontOnly }));
  const width = (text: string) => estimatedTextWidth(text, textSize, 'bold');
  // A name in as many lines as its sketch is narrow, broken between its words.
  const named = entries.map(({ name }, index) => {
    const { minX, maxX } = (drawn[index] as Drawing).bounds;
    return brokenTo(Math.max(maxX - minX, leastName * textSize), name, textSize, 'bold');
  });
  const papers = drawn.map(
    ({ bounds: { minX, minY, maxX, maxY } }, index): Bounds => ({
      minX: minX - margin,
      // A paper is as wide as its name needs.
      maxX: Math.max(maxX, minX + Math.max(...(named[index] ?? []).map(width))) + margin,
      minY: minY - margin,
      maxY: maxY + margin + (0.5 + leading * (named[index] ?? []).length) * textSize,
    }),
  );
  const places = sideBySide(papers, aspect);
  const marks = entries.flatMap(({ id, name }, index): readonly Mark[] => {
    const [picture, paper, place] = [drawn[index], papers[index], places[index]];
    if (!picture || !paper || !place) return [];
    const words = (named[index] ?? []).map((text, line, all) => {
      const y = paper.maxY - Math.max(margin, 0.35 * textSize) - (all.length - 1 - line) * leading * textSize;
      return textMark('words', 'mark', { x: paper.minX + margin, y }, text, textSize, { weight: 'bold' });
    });
    const sheet = filledMark(
      'cut',
      'paper',
      rectangle(paper.minX, paper.minY, paper.maxX - paper.minX, paper.maxY - paper.minY),
    );
    return moveMarks([groupMark(id, name, [sheet, ...picture.marks.flatMap(ungrouped), ...words])], translation(place));
  });
  return drawingOf(label, marks, margin);
};

/** The marks of a group without the group: the paper is pointed at, not front and back apart. */
const ungrouped = (mark: Mark): readonly Mark[] => (mark.kind === 'group' ? mark.marks.flatMap(ungrouped) : [mark]);
