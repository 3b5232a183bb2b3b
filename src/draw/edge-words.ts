import { add, lerp, normalize, type Path, type Point, pathEnd, pathStart, scale, subtract } from '../geometry/index.ts';
import { edgeRuns, notchPlace, type Piece } from '../pattern/index.ts';
import { drawWords } from '../words/index.ts';
import { type TextWidth, textMark } from './marks.ts';
import { bracketOf } from './piece-marks.ts';
import type { RoomForWords } from './room-for-words.ts';
import { sayEdge } from './say-edge.ts';
import type { TextMark } from './types.ts';

export interface EdgeWordsOptions {
  readonly size: number;
  readonly textWidth: TextWidth;
}

/** Centres are found by name: every other edge is known by its shape. */
const isCentre = (id: string): boolean => id === 'centre-front' || id === 'centre-back';

/** How far along a straight edge its words may stand; the middle first. */
const shares = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8];

/** Words along the inside of a fold or a centre seam, and at the end of the zip. */
export const edgeWords = (piece: Piece, room: RoomForWords, options: EdgeWordsOptions): readonly TextMark[] => [
  ...zipWords(piece, room, options),
  ...piece.edges.flatMap((edge) => {
    const onFold = edge.finish === 'fold';
    if (!onFold && !isCentre(edge.id)) return [];
    const texts = isCentre(edge.id)
      ? [onFold ? `${sayEdge(edge.id)}, ${lowerFirst(drawWords.onFold)}` : sayEdge(edge.id)]
      : [];
    if (onFold) texts.push(drawWords.onFold);
    return edgeRuns(piece, edge.id).flatMap((run) => alongEdge(run, texts, onFold, room, options));
  }),
];

const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/** The first of the texts that finds room beside the edge; on a fold within its bracket, or else just inside that. */
const alongEdge = (
  run: Path,
  texts: readonly string[],
  onFold: boolean,
  room: RoomForWords,
  { size, textWidth }: EdgeWordsOptions,
): readonly TextMark[] => {
  const [from, to, bracket] = bracketOf(run);
  const inward = normalize(bracket);
  const depth = Math.hypot(bracket.x, bracket.y);
  const angle = uprightAngle(subtract(pathEnd(run), pathStart(run)));
  const upright = Math.abs(Math.cos(angle)) < 0.5;
  const depths = onFold ? [depth / 2, depth + size, depth + size * 1.5] : [size, size * 1.3, size * 1.7, size * 2.2];
  for (const text of texts) {
    const width = textWidth(text, size, 'regular');
    const [w, h] = upright ? [size, width] : [width, size];
    for (const deep of depths) {
      for (const share of shares) {
        const centre = add(lerp(from, to, share), scale(inward, deep));
        if (!room.isFree(centre, w, h)) continue;
        room.take(centre, w, h);
        return [centred(centre, angle, text, size)];
      }
    }
  }
  return [];
};

/** Beside the notch where a zip ends, inside the piece. */
const zipWords = (piece: Piece, room: RoomForWords, { size, textWidth }: EdgeWordsOptions): readonly TextMark[] =>
  piece.notches
    .filter(({ id }) => id === 'zip-end')
    .flatMap((notch) => {
      const { point, outward } = notchPlace(piece, notch);
      const width = textWidth(drawWords.zipEnd, size, 'regular');
      const places = [0, -1, 1, -2, 2].flatMap((down) =>
        [1, 1.6, 2.4].map((away) => ({
          x: point.x - outward.x * (width / 2 + away * size),
          y: point.y - outward.y * size * away + down * size,
        })),
      );
      const centre = places.find((place) => room.isFree(place, width, size));
      if (!centre) return [];
      room.take(centre, width, size);
      return [centred(centre, 0, drawWords.zipEnd, size)];
    });

/** Words centred on a point: the baseline lies a little below the middle of the letters. */
const centred = (centre: Point, angle: number, text: string, size: number): TextMark =>
  textMark(
    'words',
    'mark',
    { x: centre.x - Math.sin(angle) * size * 0.25, y: centre.y + Math.cos(angle) * size * 0.25 },
    text,
    size,
    { anchor: 'middle', angle },
  );

/** The angle of a direction, turned so that words can be read: from the left, or upwards. */
const uprightAngle = ({ x, y }: Point): number => {
  const angle = Math.atan2(y, x);
  if (angle >= Math.PI / 2 - 1e-6) return angle - Math.PI;
  return angle < -Math.PI / 2 - 1e-6 ? angle + Math.PI : angle;
};
