import { line, type Path, type Point, polyline } from '../geometry/index.ts';
import type { InnerLine, Piece } from '../pattern/index.ts';
import { closeRuns, edge, shell, straightRun } from './pieces.ts';

/** A patch pocket with five corners, as it lies on its piece, mm: its inner upper corner and its size. */
export interface PatchFrame {
  readonly at: Point;
  readonly width: number;
  readonly height: number;
  /** How much lower the outer end of the mouth lies: a hand goes in aslant. */
  readonly slant: number;
  /** How much deeper the middle of the lower edge is. */
  readonly point: number;
}

/** Allowances of a patch, mm: turned in round, its mouth hemmed. */
const turned = { edge: 10, mouth: 25 } as const;

/** Its corners from the inner end of the mouth, clockwise as seen. */
export const patchCorners = ({ at, width, height, slant, point }: PatchFrame): readonly Point[] => [
  at,
  { x: at.x + width, y: at.y + slant },
  { x: at.x + width, y: at.y + height },
  { x: at.x + width / 2, y: at.y + height + point },
  { x: at.x, y: at.y + height },
];

const ids = ['mouth', 'outer', 'lower-outer', 'lower-inner', 'inner'] as const;

/** The pocket as a piece, a pair, its inner upper corner at the origin. */
export const patchPiece = (id: string, name: string, frame: PatchFrame): Piece => {
  const corners = patchCorners({ ...frame, at: { x: 0, y: 0 } });
  const corner = (i: number): Point => corners[i % corners.length] as Point;
  const middle = frame.width / 2;
  return {
    id,
    name,
    role: 'pocket',
    cut: [shell(2, true)],
    runs: closeRuns(ids.map((edgeId, i) => straightRun(edgeId, corner(i), corner(i + 1)))),
    edges: ids.map((edgeId) =>
      edgeId === 'mouth' ? edge(edgeId, 'hem', turned.mouth) : edge(edgeId, 'seam', turned.edge),
    ),
    darts: [],
    notches: [],
    grain: { from: { x: middle, y: frame.slant / 2 + 20 }, to: { x: middle, y: frame.height - 15 } },
    levels: [],
    landmarks: [],
    lines: [],
  };
};

/** Half a pocket that lies across a centre fold: from the fold outward. */
export const halfPatch = (id: string, name: string, { width, height, point }: PatchFrame): Piece => {
  const at = (x: number, y: number): Point => ({ x, y });
  const half = width / 2;
  return {
    id,
    name,
    role: 'pocket',
    cut: [shell(1, false)],
    runs: closeRuns([
      straightRun('mouth', at(0, 0), at(half, 0)),
      straightRun('outer', at(half, 0), at(half, height)),
      straightRun('lower', at(half, height), at(0, height + point)),
      straightRun('centre', at(0, height + point), at(0, 0)),
    ]),
    edges: [
      edge('mouth', 'hem', turned.mouth),
      edge('outer', 'seam', turned.edge),
      edge('lower', 'seam', turned.edge),
      edge('centre', 'fold', 0),
    ],
    darts: [],
    notches: [],
    grain: { from: at(half / 2, 20), to: at(half / 2, height - 10) },
    levels: [],
    landmarks: [],
    lines: [],
  };
};

/** Where a pocket is sewn, as lines on the piece it lies on. */
export const patchPlace = (id: string, path: Path): InnerLine => ({ id, kind: 'placement', path });

export const wholePatchPlace = (id: string, frame: PatchFrame): InnerLine =>
  patchPlace(id, polyline(patchCorners(frame), true));

/** On a piece that lies on the centre fold: half the pocket, open at the fold. */
export const halfPatchPlace = (id: string, { at, width, height, point }: PatchFrame): InnerLine => {
  const half = width / 2;
  return patchPlace(id, [
    line(at, { x: at.x + half, y: at.y }),
    line({ x: at.x + half, y: at.y }, { x: at.x + half, y: at.y + height }),
    line({ x: at.x + half, y: at.y + height }, { x: at.x, y: at.y + height + point }),
  ]);
};
