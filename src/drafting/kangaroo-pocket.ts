import { add, type Path, type Point, polyline } from '../geometry/index.ts';
import type { InnerLine, Piece } from '../pattern/index.ts';
import { closeRuns, edge, shell, straightRun } from './pieces.ts';

/** A patch pocket across the front with a slanted opening at either side, mm. */
export interface KangarooFrame {
  /** Girth of the hand that goes in. */
  readonly hand: number;
  /** Half of it may be as wide as this at the bottom. */
  readonly room: number;
  /** Height of the bottom edge on the front. */
  readonly bottom: number;
}

const allowances = { turned: 10, opening: 20 } as const;

/** A hand goes flat through an opening of half its girth and this, mm. */
const handRoom = 42;

/** Half the width at the bottom, over the hand's girth; the top is so much of it. Below the opening the side is upright, mm. */
const shape = { width: 0.72, top: 0.6, upright: 60 } as const;

/** The corners of half the pocket, its centre at x = 0 and its top at y = 0. */
const corners = ({ hand, room }: KangarooFrame) => {
  const width = Math.min(shape.width * hand, room);
  const top = shape.top * width;
  const opening = hand / 2 + handRoom;
  const drop = Math.sqrt(opening ** 2 - (width - top) ** 2);
  const height = drop + shape.upright;
  const at = (x: number, y: number): Point => ({ x, y });
  return {
    height,
    centreTop: at(0, 0),
    top: at(top, 0),
    corner: at(width, drop),
    foot: at(width, height),
    centreFoot: at(0, height),
  };
};

/**
 * Half of the pocket, on the fold at the centre front: its top, foot and short sides turned under and topstitched to
 * the front, its slanted openings hemmed first. Construction as taught in manuals of dressmaking.
 */
export const kangarooPocket = (frame: KangarooFrame): Piece => {
  const { centreTop, top, corner, foot, centreFoot, height } = corners(frame);
  return {
    id: 'pocket',
    name: 'Pocket',
    role: 'pocket',
    cut: [shell(1, false)],
    runs: closeRuns([
      straightRun('top', centreTop, top),
      straightRun('opening', top, corner),
      straightRun('side', corner, foot),
      straightRun('foot', foot, centreFoot),
      straightRun('centre-front', centreFoot, centreTop),
    ]),
    edges: [
      edge('top', 'seam', allowances.turned),
      edge('opening', 'seam', allowances.opening),
      edge('side', 'seam', allowances.turned),
      edge('foot', 'seam', allowances.turned),
      edge('centre-front', 'fold', 0),
    ],
    darts: [],
    notches: [],
    grain: { from: { x: 0.3 * top.x, y: 0.2 * height }, to: { x: 0.3 * top.x, y: 0.85 * height } },
    levels: [],
    landmarks: [],
    lines: [],
  };
};

/** Where the pocket lies on the front, from its top at the centre round to its foot there. */
export const kangarooPlace = (frame: KangarooFrame): Path => {
  const { centreTop, top, corner, foot, centreFoot, height } = corners(frame);
  const down: Point = { x: 0, y: frame.bottom - height };
  return polyline([centreTop, top, corner, foot, centreFoot].map((point) => add(point, down)));
};

export const kangarooLines = (frame: KangarooFrame): readonly InnerLine[] => [
  { id: 'pocket', kind: 'placement', path: kangarooPlace(frame) },
];
