import { add, boundsMeet, type Path, type Point, pathLength, pathPointAtLength, scale } from '../geometry/index.ts';
import type { SeamWalk } from '../pattern/index.ts';
import { formatLength, type Unit } from '../units/index.ts';
import { drawWords, fill } from '../words/index.ts';
import { estimatedTextWidth, textBounds, textMark } from './marks.ts';
import { isWrittenAsNothing } from './say.ts';
import type { Walked } from './seam-edges.ts';
import type { PathMark, TextMark } from './types.ts';

/** Something to say of a place on an edge. */
interface Said {
  readonly edge: Walked;
  readonly at: number;
  readonly text: string;
  readonly ink: 'mark' | 'changed';
}

/** How far apart notches are that do not meet, and by how much one edge is longer, at its end. */
export const thingsToSay = (walk: SeamWalk, a: Walked, b: Walked, unit: Unit, locale: string): readonly Said[] => {
  const missed = walk.notches
    .filter(({ meets }) => !meets)
    .map(({ atA, apart }): Said => {
      const text = fill(drawWords.notchApart, { amount: fine(apart, unit, locale) }, unit, locale);
      return { edge: a, at: atA, text, ink: 'changed' };
    });
  const amount = walk.meets
    ? formatLength(Math.abs(walk.difference), unit, { purpose: 'amount', locale })
    : fine(walk.difference, unit, locale);
  if (isWrittenAsNothing(amount)) return missed;
  const edge = walk.difference > 0 ? a : b;
  const text = fill(drawWords.restLonger, { amount }, unit, locale);
  return [...missed, { edge, at: edge.length, text, ink: walk.meets ? 'mark' : 'changed' }];
};

/** How far from an edge words are tried, in ems, and where along themselves they touch it, nearest first. */
const offsets = [1, 1.6, 2.4, 3.4];
const anchors = ['end', 'middle', 'start'] as const;

/** Words on an edge's own side of the walk, as near to it as they cross no line. */
export const placeWords = (said: readonly Said[], lines: readonly PathMark[], size: number): readonly TextMark[] => {
  const points = lines.flatMap((mark) => mark.paths.flatMap((path) => pointsAlong(path, size / 4)));
  const placed: TextMark[] = [];
  for (const { edge, at, text, ink } of said) {
    const width = estimatedTextWidth(text, size, 'regular');
    const tries = offsets.flatMap((off) =>
      anchors.map((anchor) => {
        const { x, y } = add(edge.at(at), scale(edge.away(at), off * size));
        return textMark('words', ink, { x, y: y + size * 0.3 }, text, size, { anchor });
      }),
    );
    const free = (mark: TextMark) => {
      const box = textBounds(mark, width);
      return (
        !points.some(({ x, y }) => x > box.minX && x < box.maxX && y > box.minY && y < box.maxY) &&
        !placed.some((other) => boundsMeet(box, textBounds(other, estimatedTextWidth(other.text, size, 'regular'))))
      );
    };
    placed.push(tries.find(free) ?? (tries[tries.length - 1] as TextMark));
  }
  return placed;
};

const pointsAlong = (path: Path, every: number): readonly Point[] => {
  const length = pathLength(path);
  const count = Math.max(1, Math.ceil(length / every));
  return Array.from({ length: count + 1 }, (_, index) => pathPointAtLength(path, (length * index) / count));
};

const fine = (mm: number, unit: Unit, locale: string): string =>
  formatLength(Math.abs(mm), unit, { purpose: 'fine', locale });

/** How what one side has more is taken in, in words. */
const takenIn = {
  plain: drawWords.meetsEased,
  eased: drawWords.meetsEased,
  stretched: drawWords.meetsEased,
  gathered: drawWords.meetsGathered,
  pleated: drawWords.meetsPleated,
} as const;

/** `meets, with 1.8 cm eased in`, `does not meet: 4.0 mm too long`. */
export const sayWalk = (walk: SeamWalk, unit: Unit, locale = 'en'): string => {
  const say = (template: string, amount: string) => fill(template, { amount }, unit, locale);
  if (!walk.meets)
    return say(walk.excess > 0 ? drawWords.tooLong : drawWords.tooShort, fine(walk.excess, unit, locale));
  const amount = formatLength(Math.abs(walk.difference), unit, { purpose: 'amount', locale });
  if (walk.seam.how === 'plain' || isWrittenAsNothing(amount)) return drawWords.meets;
  if (walk.difference < 0) return say(drawWords.meetsStretched, amount);
  return say(takenIn[walk.seam.how], amount);
};
