import { lerp, line, pathEnd, pathLength, pathStart, reversePath } from '../geometry/index.ts';
import type { Piece } from '../pattern/index.ts';
import { allowances, closeRuns, edge, edgeRun, interfacing, landmark, shell, straightRun } from './pieces.ts';
import { type FallDraft, type StandDraft, standButton } from './shirt-collar.ts';

const narrow = allowances.neck;

/** The collar stand, twice on the fold and once from interfacing, its grain round the neck's back. */
export const standPiece = (stand: StandDraft): Piece => {
  const { neckBack, neckFront, neckStand, end, topFront, top } = stand;
  const centre = pathEnd(top);
  const button = standButton(stand);
  const middle = 0.5 * pathLength([neckBack]);
  return {
    id: 'collar-stand',
    name: 'Collar stand',
    role: 'collar',
    cut: [shell(2, false), interfacing(1, false)],
    runs: closeRuns([
      edgeRun('top', reversePath(top)),
      edgeRun('top-front', reversePath([topFront])),
      edgeRun('end', reversePath(end)),
      edgeRun('neck-stand', reversePath([neckStand])),
      edgeRun('neck-front', reversePath([neckFront])),
      edgeRun('neck-back', reversePath([neckBack])),
      straightRun('centre-back', pathStart([neckBack]), centre),
    ]),
    edges: [
      edge('top', 'seam', narrow),
      edge('top-front', 'seam', narrow),
      edge('end', 'seam', narrow),
      edge('neck-stand', 'seam', narrow),
      edge('neck-front', 'seam', narrow),
      edge('neck-back', 'seam', narrow),
      edge('centre-back', 'fold', 0),
    ],
    darts: [],
    notches: [
      { id: 'collar-middle', edge: 'top', at: 0.5, strokes: 1 },
      { id: 'collar-end', edge: 'top', at: 1, strokes: 1 },
      { id: 'centre-front', edge: 'neck-stand', at: 0.5, strokes: 1 },
      { id: 'neck-front', edge: 'neck-front', at: 0.5, strokes: 1 },
      { id: 'shoulder', edge: 'neck-back', at: 0, strokes: 1 },
      { id: 'neck-back', edge: 'neck-back', at: 0.5, strokes: 1 },
    ],
    grain: { from: { x: middle, y: centre.y + 5 }, to: { x: middle, y: -5 } },
    levels: [],
    landmarks: [landmark('nape', { x: 0, y: 0 }), landmark('centre-front', lerp(neckStand.from, neckStand.to, 0.5))],
    lines: [
      {
        id: 'button',
        kind: 'placement',
        path: [line({ x: button.x - 7, y: button.y + 1 }, { x: button.x + 7, y: button.y - 1 })],
      },
    ],
  };
};

/** The collar that turns over the stand, twice on the fold and once from interfacing. */
export const fallPiece = ({ neck, front, outer }: FallDraft): Piece => {
  const centre = pathEnd([outer]);
  const middle = 0.3 * neck.to.x;
  return {
    id: 'collar',
    name: 'Collar',
    role: 'collar',
    cut: [shell(2, false), interfacing(1, false)],
    runs: closeRuns([
      edgeRun('outer', reversePath([outer])),
      edgeRun('front', reversePath([front])),
      edgeRun('neck', reversePath([neck])),
      straightRun('centre-back', neck.from, centre),
    ]),
    edges: [
      edge('outer', 'seam', narrow),
      edge('front', 'seam', narrow),
      edge('neck', 'seam', narrow),
      edge('centre-back', 'fold', 0),
    ],
    darts: [],
    notches: [{ id: 'collar-middle', edge: 'neck', at: 0.5, strokes: 1 }],
    grain: { from: { x: middle, y: centre.y + 8 }, to: { x: middle, y: neck.from.y - 8 } },
    levels: [],
    landmarks: [landmark('collar-point', front.to)],
    lines: [],
  };
};
