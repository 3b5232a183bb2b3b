import { nearestOnPath, type Path, type Point, pathBounds, pathLength } from '../geometry/index.ts';
import { estimatedTextWidth, pathMark, stroke, textMark } from './marks.ts';
import { type RoomForWords, roomForWords } from './room-for-words.ts';
import type { Mark, TextMark } from './types.ts';

/** Baseline to baseline, in ems. */
const leading = 1.3;

/**
 * What there is to say of a piece, the name first: on its paper; else beside it on free cloth, with a line to it; else
 * as much of it as finds room on the paper, at last the name alone, broken and as small as `least`; else the name
 * alone beside it. A name that finds no room anywhere is left to the reader of the piece's label.
 */
export const placeWords = (
  outline: Path,
  lines: readonly Path[],
  texts: readonly string[],
  size: number,
  cloth: RoomForWords,
  least: number = size * smaller,
): readonly Mark[] => {
  const room = roomForWords(outline, lines);
  const [name = ''] = texts;
  const whole = block(texts, size);
  const inside = room.find(whole.width, whole.height);
  if (inside) return wordsAt(texts, name, inside, size, true);
  const { minX, maxX, minY, maxY } = pathBounds(outline);
  const middle = { x: (minX + maxX) / 2, y: (minY + maxY) / 2 };
  const besideIt = (shown: readonly string[]): readonly Mark[] | null => {
    const words = block(shown, size);
    const beside = cloth.find(words.width, words.height, middle);
    const leader = beside && leaderTo(outline, beside, words);
    if (!beside || !leader || pathLength(leader) > longestLeader * size) return null;
    cloth.take(beside, words.width, words.height);
    return [pathMark('words', 'dimension', leader), ...wordsAt(shown, name, beside, size, true)];
  };
  const told = besideIt(texts) ?? besideIt([name, ...texts.slice(1).flatMap(halves)]);
  if (told) return told;
  const tries: { readonly shown: readonly string[]; readonly em: number }[] = [
    ...texts.slice(1).map((_, index) => ({ shown: texts.slice(0, texts.length - index - 1), em: size })),
    { shown: name.split(' '), em: size },
    { shown: [name], em: least },
    { shown: name.split(' '), em: least },
  ];
  for (const { shown, em } of tries) {
    const { width, height } = block(shown, em);
    const level = room.find(width, height);
    const centre = level ?? room.find(height, width);
    if (centre) return wordsAt(shown, name, centre, em, level !== null);
  }
  return besideIt([name]) ?? [];
};

/** How much smaller than the rest a name may be written so that it finds room on its piece. */
const smaller = 0.7;

/** Words farther from their piece than this, in ems, would not be read as being about it. */
const longestLeader = 6;

/** A line broken at the space nearest to its middle. */
const halves = (text: string): readonly string[] => {
  const spaces = [...text].flatMap((letter, index) => (letter === ' ' ? [index] : []));
  if (text.length < 16 || spaces.length === 0) return [text];
  const off = (index: number) => Math.abs(index - text.length / 2);
  const at = spaces.reduce((best, one) => (off(one) < off(best) ? one : best));
  return [text.slice(0, at), text.slice(at + 1)];
};

interface Block {
  readonly width: number;
  readonly height: number;
}

const block = (texts: readonly string[], em: number): Block => ({
  width: Math.max(...texts.map((text, index) => estimatedTextWidth(text, em, index === 0 ? 'bold' : 'regular'))),
  height: em * (1 + leading * (texts.length - 1)),
});

/** From the middle of the side of the words that faces the piece to the nearest place of its edge. */
const leaderTo = (outline: Path, centre: Point, { width, height }: Block): Path => {
  const sides = [
    { x: centre.x - width / 2, y: centre.y },
    { x: centre.x + width / 2, y: centre.y },
    { x: centre.x, y: centre.y - height / 2 },
    { x: centre.x, y: centre.y + height / 2 },
  ].map((from) => ({ from, ...nearestOnPath(outline, from) }));
  const { from, point } = sides.reduce((best, one) => (one.distance < best.distance ? one : best));
  return stroke(from, point);
};

/** Lines of words centred on a point, level or running upwards; the name bold. */
const wordsAt = (
  texts: readonly string[],
  name: string,
  centre: Point,
  em: number,
  level: boolean,
): readonly TextMark[] => {
  const { height } = block(texts, em);
  return texts.map((text, index) => {
    const down = -height / 2 + em * (0.75 + leading * index);
    const at = level ? { x: centre.x, y: centre.y + down } : { x: centre.x + down, y: centre.y };
    const weight = index === 0 || name.includes(text) ? 'bold' : 'regular';
    return textMark('words', 'mark', at, text, em, { anchor: 'middle', angle: level ? 0 : -Math.PI / 2, weight });
  });
};
