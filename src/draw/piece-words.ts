import {
  angleOf,
  distance,
  lerp,
  type Path,
  type Point,
  pathBounds,
  pathEnd,
  pathStart,
  subtract,
} from '../geometry/index.ts';
import { cutLine, outlineOf, type Piece } from '../pattern/index.ts';
import { drawWords } from '../words/index.ts';
import { edgeWords } from './edge-words.ts';
import { type TextWidth, textMark } from './marks.ts';
import { brokenTo, nameAbove } from './name-above.ts';
import { doubledAside, levelStretch } from './piece-marks.ts';
import { type RoomForWords, roomForWords } from './room-for-words.ts';
import { sayId } from './say.ts';
import type { PathMark, TextMark } from './types.ts';

/** A line of the label in the middle of a piece. */
export interface LabelLine {
  readonly text: string;
  readonly weight: 'regular' | 'bold';
}

export interface WordsOptions {
  readonly size: number;
  /** Where a piece has no room for what has to be on it, its label is set in smaller type, down to this. */
  readonly leastSize: number;
  /** How many lines of the label have to be on the piece: what it is, how many to cut, and its allowances. */
  readonly needed: number;
  readonly textWidth: TextWidth;
  /** Sorted by worth: where there is no room for all, the last are left out. */
  readonly label: readonly LabelLine[];
  /** Lines the label should not cross where that can be had, such as the borders of sheets. */
  readonly avoid: readonly Path[];
  /** A piece with no room for its name has it above it. */
  readonly outside: boolean;
}

/** Baseline to baseline, in ems. */
const leading = 1.3;

/**
 * All words on a piece: its label, and the names of fold, levels and lines where each finds room beside its line.
 * None lies over a line of the piece or over other words.
 */
export const pieceWords = (piece: Piece, drawn: readonly PathMark[], options: WordsOptions): readonly TextMark[] => {
  const lines = drawn.flatMap((mark) => mark.paths);
  const room = roomForWords(outlineOf(piece), lines, options.avoid);
  const label = placeLabel(room, options, piece);
  return [...label, ...edgeWords(piece, room, options), ...lineWords(piece, room, options)];
};

/** Each smaller size of type tried for a label, as a share of the one before. */
const smaller = 0.85;

/**
 * As many lines of the label as find room, broken to whichever width fits; clear of `avoid` if it can be. Level words
 * are read more easily, so a short level label comes before a long upright one; and smaller type comes before leaving
 * out what has to be there.
 */
const placeLabel = (room: RoomForWords, options: WordsOptions, piece: Piece): readonly TextMark[] => {
  const middle = lerp(piece.grain.from, piece.grain.to, 0.5);
  const all = options.label.length;
  const needed = Math.min(options.needed, all);
  const counts = (from: number, to: number) =>
    Array.from({ length: Math.max(from - to + 1, 0) }, (_, index) => from - index);
  const sizes = [options.size];
  for (let size = options.size * smaller; size >= options.leastSize; size *= smaller) sizes.push(size);
  const tries = [
    ...sizes.flatMap((size) => [
      ...counts(all, needed).map((count) => [count, 'level', size] as const),
      ...counts(all, needed).map((count) => [count, 'upright', size] as const),
    ]),
    ...counts(needed - 1, 1).flatMap((count) =>
      sizes.flatMap((size) => [[count, 'level', size] as const, [count, 'upright', size] as const]),
    ),
  ];
  for (const [count, stance, size] of tries) {
    const sized = { ...options, size };
    const wrapped = wrapLabel(options.label.slice(0, count), sized);
    for (const clearOf of ['everything', 'lines'] as const) {
      const places = wrapped.flatMap((lines, index) => {
        const width = Math.max(...lines.map((one) => options.textWidth(one.text, size, one.weight)));
        const height = ((lines.length - 1) * leading + 1) * size;
        const [across, down] = stance === 'level' ? [width, height] : [height, width];
        const centre = room.find(across, down, middle, clearOf);
        // Wider lines read better, but not at the far end of the piece.
        return centre ? [{ lines, width, height, centre, away: distance(centre, middle) + 3 * index * size }] : [];
      });
      const [best] = places.sort((one, other) => one.away - other.away);
      if (!best) continue;
      const angle = stance === 'level' ? 0 : -Math.PI / 2;
      return labelAt(best.lines, { centre: best.centre, angle }, best.width, best.height, size, room);
    }
  }
  return options.outside ? namedAbove(piece, options) : [];
};

/** A piece too small for words is named above its paper. */
const namedAbove = (piece: Piece, { label, size, textWidth }: WordsOptions): readonly TextMark[] => {
  const [name] = label;
  return name ? nameAbove(name.text, pathBounds(cutLine(piece)), size, name.weight, textWidth) : [];
};

const labelAt = (
  lines: readonly LabelLine[],
  { centre, angle }: { readonly centre: Point; readonly angle: number },
  width: number,
  height: number,
  size: number,
  room: RoomForWords,
): TextMark[] => {
  const level = angle === 0;
  room.take(centre, level ? width : height, level ? height : width);
  return lines.map((one, index) => {
    // From the rectangle's middle to this line's baseline.
    const down = -height / 2 + (0.75 + index * leading) * size;
    const at = level
      ? { x: centre.x - width / 2, y: centre.y + down }
      : { x: centre.x + down, y: centre.y + width / 2 };
    return textMark('words', 'mark', at, one.text, size, { angle, weight: one.weight });
  });
};

/** Column widths tried for a label, in ems, widest first: a narrow piece takes more and shorter lines. */
const columnWidths = [28, 20, 13, 8];
/** Widths of the run of words tried where lines one under another find no room: a band is long and low. */
const runWidths = [80, 45, 30];

const wrapLabel = (label: readonly LabelLine[], options: WordsOptions): readonly (readonly LabelLine[])[] => {
  const [name, ...rest] = label as [LabelLine, ...LabelLine[]];
  const run: LabelLine = { text: rest.map((one) => one.text).join(' · '), weight: 'regular' };
  return [
    ...columnWidths.map((ems) => label.flatMap((one) => wrapLine(one, ems * options.size, options))),
    ...(rest.length < 2 ? [] : runWidths.map((ems) => [name, ...wrapLine(run, ems * options.size, options)])),
  ];
};

/** One line broken between words so that each part is at most `width` wide, where its words allow. */
const wrapLine = ({ text, weight }: LabelLine, width: number, { size, textWidth }: WordsOptions): LabelLine[] =>
  brokenTo(width, text, size, weight, textWidth).map((part) => ({ text: part, weight }));

/** Names of levels and inner lines, close above their own line, wherever along it there is room. */
const lineWords = (piece: Piece, room: RoomForWords, options: WordsOptions): TextMark[] => {
  const named: readonly { text: string; from: Point; to: Point; aside: number }[] = [
    ...piece.levels.map((level) => {
      const [from, to] = levelStretch(level);
      return { text: sayId(level.id), from, to, aside: 0 };
    }),
    ...piece.lines.map((inner) => ({
      text: lineName(inner),
      ...ends(inner.path),
      aside: inner.kind === 'lengthen-or-shorten' ? doubledAside : 0,
    })),
  ];
  return named.flatMap(({ text, from, to, aside }) => {
    const width = options.textWidth(text, options.size, 'regular');
    const angle = uprightAngle(subtract(to, from));
    const upright = Math.abs(Math.cos(angle)) < 0.5;
    const [w, h] = upright ? [options.size, width] : [width, options.size];
    if (distance(from, to) < width) return [];
    const above = { x: Math.sin(angle), y: -Math.cos(angle) };
    const places = [1, -1].flatMap((side) =>
      [0.86, 0.14, 0.75, 0.25, 0.65, 0.35, 0.5].flatMap((share) =>
        [1.1, 1.6, 2.1].map((away) => {
          const on = lerp(from, to, share);
          const off = side * (away * options.size + aside);
          return { x: on.x + above.x * off, y: on.y + above.y * off };
        }),
      ),
    );
    const centre =
      places.find((place) => room.isFree(place, w, h, 'everything')) ??
      places.find((place) => room.isFree(place, w, h));
    if (centre) {
      room.take(centre, w, h);
      return [wordsAt(centre, angle, text, options.size)];
    }
    return [];
  });
};

/** A placement says of what, for a piece may have several: `pocket-flap` is “Pocket flap”, `button-3` “Button 3”. */
const lineName = ({ id, kind }: Piece['lines'][number]): string =>
  kind === 'lengthen-or-shorten'
    ? drawWords.lengthenOrShorten
    : kind === 'fold'
      ? drawWords.foldHere
      : kind === 'placement'
        ? sayId(id)
        : '';

const ends = (path: Path) => ({ from: pathStart(path), to: pathEnd(path) });

/** Words centred on a point: the baseline lies a little below the middle of the letters. */
const wordsAt = (centre: Point, angle: number, text: string, size: number): TextMark =>
  textMark(
    'words',
    'mark',
    { x: centre.x - Math.sin(angle) * size * 0.25, y: centre.y + Math.cos(angle) * size * 0.25 },
    text,
    size,
    { anchor: 'middle', angle },
  );

/** A direction's angle, turned about where words would stand on their heads; straight up and down read upwards. */
const uprightAngle = (direction: Point): number => {
  const angle = angleOf(direction);
  if (angle >= Math.PI / 2 - 1e-6) return angle - Math.PI;
  if (angle < -Math.PI / 2 - 1e-6) return angle + Math.PI;
  return angle;
};
