import type { Bounds } from '../geometry/index.ts';
import { estimatedTextWidth, type TextWidth, textMark } from './marks.ts';
import type { TextMark } from './types.ts';

/** Baseline to baseline of a name in several lines, in ems. */
const leading = 1.1;

/** Words broken between them into lines at most `width` wide, where they allow it: a long word stays whole. */
export const brokenTo = (
  width: number,
  text: string,
  size: number,
  weight: 'regular' | 'bold',
  textWidth: TextWidth = estimatedTextWidth,
): readonly string[] => {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    const joined = last === undefined ? word : `${last} ${word}`;
    if (last !== undefined && textWidth(joined, size, weight) > width) lines.push(word);
    else lines[Math.max(0, lines.length - 1)] = joined;
  }
  return lines;
};

/** The name of a paper over its upper edge, in as many lines as keep it from standing over its neighbours. */
export const nameAbove = (
  name: string,
  box: Bounds,
  size: number,
  weight: 'regular' | 'bold' = 'bold',
  textWidth: TextWidth = estimatedTextWidth,
): readonly TextMark[] => {
  const lines = brokenTo(box.maxX - box.minX, name, size, weight, textWidth);
  const x = (box.minX + box.maxX) / 2;
  return lines.map((text, index) => {
    const y = box.minY - size * (0.4 + leading * (lines.length - 1 - index));
    return textMark('words', 'mark', { x, y }, text, size, { anchor: 'middle', weight });
  });
};
