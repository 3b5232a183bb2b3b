import type { MeasureId, Measures } from '../../src/body/index.ts';
import type { Drawing, Mark } from '../../src/draw/index.ts';
import { drawingOf, filledMark, pathMark, textMark } from '../../src/draw/index.ts';
import { applyToPath, line, mirrorX, type Path, type Point, translation } from '../../src/geometry/index.ts';
import { figureOf, halfOutline, reach } from './body-outline.ts';
import { type Side, tapeOf } from './tape.ts';

const p = (x: number, y: number): Point => ({ x, y });

/** Free room between the hands of the front and of the back view, mm. */
const between = 90;

export interface FigureWords {
  readonly label: string;
  readonly front: string;
  readonly back: string;
  /** What stands at the tape: the measure's name and length. */
  readonly tape: string;
}

/**
 * A figure drawn from measures, front and back, in the blue of the body; the tape of one measure laid on it.
 * `measures` must be whole (see completeMeasures). Throws on a lack.
 */
export const drawFigure = (measures: Measures, focused: MeasureId | null, words: FigureWords): Drawing => {
  const f = figureOf(measures);
  const apart = 2 * reach(f) + between;
  const right = halfOutline(f);
  const left = right.map((path) => applyToPath(mirrorX(0), path));
  const both = [...right, ...left];
  const moved = (path: Path, side: Side): Path =>
    side === 'front' ? path : applyToPath(translation(p(apart, 0)), path);
  const size = f.floor / 42;
  const marks: Mark[] = [
    pathMark('body', 'body', ...both),
    pathMark('body', 'body', ...both.map((path) => moved(path, 'back'))),
    textMark('words', 'mark', p(0, f.floor + size * 2), words.front, size, { anchor: 'middle' }),
    textMark('words', 'mark', p(apart, f.floor + size * 2), words.back, size, { anchor: 'middle' }),
  ];
  const tape = focused ? tapeOf(f, focused) : undefined;
  if (tape) {
    const path = moved(tape.path, tape.side);
    const start = path[0]?.from;
    const end = path.at(-1)?.to;
    marks.push({ kind: 'path', layer: 'marks', ink: 'cut', paths: [path] });
    for (const at of [start, end]) {
      if (at)
        marks.push(
          filledMark('marks', 'mark', [
            line(p(at.x - 5, at.y - 5), p(at.x + 5, at.y - 5)),
            line(p(at.x + 5, at.y - 5), p(at.x + 5, at.y + 5)),
            line(p(at.x + 5, at.y + 5), p(at.x - 5, at.y + 5)),
            line(p(at.x - 5, at.y + 5), p(at.x - 5, at.y - 5)),
          ]),
        );
    }
  }
  if (words.tape)
    marks.push(
      textMark('words', 'mark', p(apart / 2, -size * 2), words.tape, size * 1.15, { anchor: 'middle', weight: 'bold' }),
    );
  return drawingOf(words.label, marks, 40);
};
