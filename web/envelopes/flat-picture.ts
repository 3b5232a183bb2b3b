import {
  arrowHead,
  type Drawing,
  drawingOf,
  filledMark,
  groupMark,
  type Mark,
  pathMark,
  stroke,
  textMark,
} from '../../src/draw/index.ts';
import {
  cubic,
  intersectPaths,
  line,
  nearestOnPath,
  offsetPath,
  type Path,
  type Point,
  subtract,
} from '../../src/geometry/index.ts';
import {
  type Envelope,
  type FinishedOf,
  type FlatPieceKind,
  flatMeasureGuide,
  type OnPiece,
} from '../../src/pattern/index.ts';
import { envelopePageWords, fill } from '../../src/words/index.ts';
import { finishedName } from './row-words.ts';

const words = envelopePageWords.flat;

/**
 * Generic pieces as the trade draws blocks, in shares of their breadth and height (centre 0, side 1; top 0, hem 1):
 * where the outline goes, corner by corner, `c` before a curve's two handles and end.
 */
type Corner = OnPiece | readonly ['c', OnPiece, OnPiece, OnPiece];

interface Block {
  readonly breadth: number;
  readonly height: number;
  readonly outline: readonly Corner[];
  /** Darts and other marks inside, so that the piece is known for what it is. */
  readonly inner: readonly (readonly OnPiece[])[];
  /** Whether its centre lies to a fold or to a seam, and so carries no allowance there. */
  readonly fold: boolean;
}

const blocks: Readonly<Record<FlatPieceKind, Block>> = {
  'bodice-front': {
    breadth: 260,
    height: 620,
    fold: true,
    outline: [
      [0, 0.13],
      ['c', [0.16, 0.13], [0.28, 0.09], [0.3, 0]],
      [0.8, 0.07],
      ['c', [0.74, 0.2], [0.76, 0.3], [1, 0.36]],
      [0.97, 0.42],
      [0.55, 0.42],
      [0.97, 0.47],
      ['c', [0.94, 0.6], [0.92, 0.64], [0.93, 0.68]],
      ['c', [0.95, 0.78], [1, 0.86], [1, 1]],
      [0, 1],
    ],
    inner: [],
  },
  'bodice-back': {
    breadth: 250,
    height: 620,
    fold: true,
    outline: [
      [0, 0.035],
      ['c', [0.16, 0.035], [0.26, 0.02], [0.29, 0]],
      [0.84, 0.07],
      ['c', [0.78, 0.2], [0.8, 0.3], [1, 0.36]],
      ['c', [0.95, 0.55], [0.92, 0.62], [0.93, 0.68]],
      ['c', [0.95, 0.78], [1, 0.86], [1, 1]],
      [0, 1],
    ],
    inner: [
      [
        [0.45, 0.52],
        [0.41, 0.68],
        [0.45, 0.86],
        [0.49, 0.68],
        [0.45, 0.52],
      ],
    ],
  },
  'skirt-front': {
    breadth: 270,
    height: 600,
    fold: true,
    outline: [
      [0, 0.02],
      ['c', [0.3, 0.02], [0.6, 0.012], [0.84, 0]],
      ['c', [0.94, 0.12], [1, 0.2], [1, 0.32]],
      [1, 1],
      [0, 1],
    ],
    inner: [
      [
        [0.4, 0.018],
        [0.44, 0.17],
        [0.48, 0.015],
      ],
    ],
  },
  'skirt-back': {
    breadth: 270,
    height: 600,
    fold: false,
    outline: [
      [0, 0.035],
      ['c', [0.3, 0.03], [0.6, 0.015], [0.82, 0]],
      ['c', [0.94, 0.12], [1, 0.2], [1, 0.32]],
      [1, 1],
      [0, 1],
    ],
    inner: [
      [
        [0.38, 0.03],
        [0.43, 0.24],
        [0.48, 0.025],
      ],
    ],
  },
  'leg-front': {
    breadth: 300,
    height: 1040,
    fold: false,
    outline: [
      [0.2, 0],
      [0.92, 0],
      ['c', [0.98, 0.1], [1, 0.18], [1, 0.26]],
      ['c', [0.98, 0.5], [0.92, 0.6], [0.9, 0.66]],
      [0.86, 1],
      [0.2, 1],
      ['c', [0.18, 0.7], [0.14, 0.45], [0, 0.28]],
      ['c', [0.14, 0.27], [0.2, 0.2], [0.2, 0]],
    ],
    inner: [],
  },
  'leg-back': {
    breadth: 340,
    height: 1040,
    fold: false,
    outline: [
      [0.34, 0],
      [0.9, 0.02],
      ['c', [0.97, 0.1], [1, 0.18], [1, 0.26]],
      ['c', [0.98, 0.5], [0.92, 0.6], [0.9, 0.66]],
      [0.86, 1],
      [0.22, 1],
      ['c', [0.2, 0.7], [0.16, 0.45], [0, 0.29]],
      ['c', [0.16, 0.28], [0.26, 0.22], [0.34, 0]],
    ],
    inner: [
      [
        [0.56, 0.008],
        [0.6, 0.13],
        [0.64, 0.011],
      ],
    ],
  },
  sleeve: {
    breadth: 330,
    height: 600,
    fold: false,
    outline: [
      [0, 0.28],
      ['c', [0.14, 0.26], [0.26, 0.01], [0.5, 0]],
      ['c', [0.74, 0.01], [0.86, 0.22], [1, 0.28]],
      [0.84, 1],
      [0.16, 1],
    ],
    inner: [],
  },
};

const isCurve = (corner: Corner): corner is readonly ['c', OnPiece, OnPiece, OnPiece] => corner[0] === 'c';

/** Marks of one piece set down with its top left corner at `at`. */
const on = (block: Block, at: Point) => {
  const place = ([across, down]: OnPiece): Point => ({
    x: at.x + across * block.breadth,
    y: at.y + down * block.height,
  });
  const outline: Path = block.outline.map((corner, index) => {
    const next = block.outline[(index + 1) % block.outline.length] as Corner;
    const from = place(isCurve(corner) ? corner[3] : corner);
    return isCurve(next) ? cubic(from, place(next[1]), place(next[2]), place(next[3])) : line(from, place(next));
  });
  return { place, outline: fromMidway(outline.filter(({ from, to }) => from.x !== to.x || from.y !== to.y)) };
};

/** The same outline begun in the middle of a straight edge, so that every corner lies within the run. */
const fromMidway = (outline: Path): Path => {
  const start = outline.findLastIndex((segment) => segment.kind === 'line');
  const edge = outline[start];
  if (!edge) return outline;
  const middle = { x: (edge.from.x + edge.to.x) / 2, y: (edge.from.y + edge.to.y) / 2 };
  return [line(middle, edge.to), ...outline.slice(start + 1), ...outline.slice(0, start), line(edge.from, middle)];
};

/** The allowance of the drawing, mm: wide enough to be seen beside the tape. */
const allowance = 22;

/** Where the tissue is cut: outside the seam by its allowance, but not beyond a fold. */
const cutAround = (seam: Path, fold: number | null): Path => {
  const cut = offsetPath(seam, allowance);
  if (fold === null) return cut;
  const within = ({ x, y }: Point): Point => ({ x: Math.max(x, fold), y });
  return cut.map((segment) =>
    segment.kind === 'line'
      ? line(within(segment.from), within(segment.to))
      : cubic(within(segment.from), within(segment.control1), within(segment.control2), within(segment.to)),
  );
};

const polyline = (points: readonly Point[]): Path =>
  points.slice(1).map((point, index) => line(points[index] as Point, point));

const apart = 210;

/** An em of the words, mm of the pieces: on a phone the table is small, and the words are not. */
const emOn = (narrow: boolean): number => (narrow ? 38 : 22);

/** Beyond any block, mm: where a line across one begins and ends. */
const beyond = 2000;

/** The nearest place on the seam: where a tape that is laid along an edge begins or ends. */
const onSeam = (outline: Path, at: Point): Point => nearestOnPath(outline, at).point;

/**
 * A tape straight across or straight down goes from edge to edge of the piece there. One along an edge, where the piece
 * slopes away from a straight line, goes from the nearest place on the seam to the nearest.
 */
const edgeToEdge = (outline: Path, from: Point, to: Point): readonly [Point, Point] => {
  const snapped = [onSeam(outline, from), onSeam(outline, to)] as const;
  const level = from.y === to.y;
  if (!level && from.x !== to.x) return snapped;
  // A hair inside, for a centre line is itself an edge, and so is a hem.
  const inside = 1;
  const across = level
    ? [line({ x: from.x - beyond, y: from.y - inside }, { x: from.x + beyond, y: from.y - inside })]
    : [line({ x: from.x + inside, y: from.y - beyond }, { x: from.x + inside, y: from.y + beyond })];
  const met = intersectPaths(across, outline).map(({ point }) => (level ? point.x : point.y));
  const [first, last] = [Math.min(...met), Math.max(...met)];
  const wanted = level ? Math.abs(to.x - from.x) : Math.abs(to.y - from.y);
  if (met.length < 2 || last - first < wanted / 2) return snapped;
  return level
    ? [
        { x: first, y: from.y },
        { x: last, y: from.y },
      ]
    : [
        { x: from.x, y: first },
        { x: from.x, y: last },
      ];
};

/** The top edge of a skirt or of trousers, which every one of their blocks begins with: its waist is measured along it. */
const topOf = ({ outline }: Block): readonly [OnPiece, OnPiece] => {
  const [first, second] = outline;
  const end = (corner: Corner | undefined): OnPiece =>
    corner === undefined ? [0, 0] : isCurve(corner) ? corner[3] : corner;
  return [end(first), end(second)];
};

/**
 * The pieces to measure for a finished measurement, with the tape laid where it goes: in blue, for it stands for the
 * body, and named. Null where such a garment has no piece to measure it on.
 */
export const drawFlatGuide = (of: FinishedOf, kind: Envelope['kind'], narrow: boolean): Drawing | null => {
  const em = emOn(narrow);
  const guide = flatMeasureGuide(of, kind);
  if (guide.pieces.length === 0) return null;
  let left = 0;
  const marks = guide.pieces.map((piece): Mark => {
    const block = blocks[piece.piece];
    const { place, outline } = on(block, { x: left, y: 0 });
    const cut = cutAround(outline, block.fold ? left : null);
    left += block.breadth + apart;
    const atTop = piece.tape.every(([, down]) => down === 0);
    const [start, end] = atTop ? topOf(block) : piece.tape;
    const [from, to] = atTop ? [place(start), place(end)] : edgeToEdge(outline, place(start), place(end));
    const upright = Math.abs(to.y - from.y) > Math.abs(to.x - from.x);
    const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
    const count = fill(piece.times === 2 ? words.twice : words.once, {}, 'cm');
    return groupMark(`flat-${piece.piece}`, `${piece.name}, ${count}`, [
      filledMark('seam', 'paper', cut),
      pathMark('cut', 'cut', cut),
      pathMark('seam', 'seam', outline),
      ...block.inner.map((points) => pathMark('marks', 'mark', polyline(points.map(place)))),
      ...(block.fold ? [pathMark('marks', 'fold', stroke(place([0.025, 0.25]), place([0.025, 0.9])))] : []),
      pathMark('body', 'body', stroke(from, to)),
      filledMark('body', 'body', ...arrowHeads(from, to, em)),
      textMark(
        'words',
        'body',
        upright ? { x: middle.x + em * 0.5, y: middle.y } : { x: middle.x, y: middle.y - em * 0.5 },
        words.tape,
        em,
        { anchor: upright ? 'start' : 'middle' },
      ),
      ...leftOut(from, to, upright, block.fold && !upright, em),
      textMark(
        'words',
        'mark',
        { x: place([0.5, 0]).x, y: place([0, 1]).y + allowance + em * 1.6 },
        piece.name,
        em * 1.05,
        {
          anchor: 'middle',
          weight: 'bold',
        },
      ),
      textMark('words', 'mark', { x: place([0.5, 0]).x, y: place([0, 1]).y + allowance + em * 3 }, count, em, {
        anchor: 'middle',
      }),
    ]);
  });
  return drawingOf(fill(words.picture, { what: finishedName(of).toLowerCase() }, 'cm'), marks, em);
};

/** What lies beyond the tape's ends and is left out: the allowance, between two ticks; none at a fold. */
const leftOut = (from: Point, to: Point, upright: boolean, fold: boolean, em: number): readonly Mark[] => {
  const along = upright ? { x: 0, y: allowance } : { x: allowance, y: 0 };
  const ends = [...(fold ? [] : [{ at: from, out: { x: -along.x, y: -along.y } }]), { at: to, out: along }];
  const tick = (at: Point): Path =>
    upright
      ? stroke({ x: at.x - em * 0.35, y: at.y }, { x: at.x + em * 0.35, y: at.y })
      : stroke({ x: at.x, y: at.y - em * 0.35 }, { x: at.x, y: at.y + em * 0.35 });
  return [
    pathMark(
      'marks',
      'dimension',
      ...ends.flatMap(({ at, out }) => {
        const end = { x: at.x + out.x, y: at.y + out.y };
        return [stroke(at, end), tick(at), tick(end)];
      }),
    ),
    ...ends
      .slice(-1)
      .map(({ at, out }) =>
        textMark(
          'words',
          'mark',
          upright ? { x: at.x + em * 0.9, y: at.y + out.y * 0.8 } : { x: at.x + out.x + em * 0.4, y: at.y + em * 0.35 },
          words.leftOutHere,
          em * 0.9,
          { anchor: 'start' },
        ),
      ),
  ];
};

const arrowHeads = (from: Point, to: Point, em: number): readonly Path[] => [
  arrowHead(to, subtract(to, from), em * 0.7),
  arrowHead(from, subtract(from, to), em * 0.7),
];
