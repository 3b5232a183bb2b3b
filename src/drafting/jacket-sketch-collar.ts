import {
  add,
  angleOf,
  applyToPath,
  cubic,
  directionAt,
  line,
  mirrorX,
  type Path,
  type Point,
  pathEnd,
  pathStart,
  reversePath,
  scale,
  subtract,
} from '../geometry/index.ts';
import type { Garment } from '../pattern/index.ts';
import { lengthOf } from './jacket-shape-measures.ts';
import { landmarkIn, runOf } from './shape-garment.ts';

/** How far a collar reaches in a sketch: along the shoulder, above the neck point, its end's spread from upright. */
const collarLies = { along: 44, above: 15, spread: 0.5, belowNape: 18, aboveNape: 24 } as const;

/** Half an outline and its mirror image, opened about the centre. */
export const bothHalves = (half: Path): Path => [...half, ...applyToPath(mirrorX(), reversePath(half))];

const alongShoulder = (shoulder: Path, mm: number): Point =>
  add(pathStart(shoulder), scale(directionAt(angleOf(subtract(pathEnd(shoulder), pathStart(shoulder)))), mm));

/** Where a worn collar turns beside the neck, and where its edge lies on the shoulder. */
const collarAtShoulder = (garment: Garment, piece: 'front' | 'back') => {
  const shoulder = runOf(garment, piece, 'shoulder');
  const neckPoint = pathStart(shoulder);
  const edge = alongShoulder(shoulder, collarLies.along);
  return {
    turn: { x: neckPoint.x + 2, y: neckPoint.y - collarLies.above },
    edge: { x: edge.x, y: edge.y + 3 },
  };
};

/** Half of the collar as it lies buttoned, and the inside of its stand seen behind. */
export const frontCollar = (garment: Garment): { readonly half: Path; readonly inside: Path } => {
  const centre = landmarkIn(garment, 'front', 'centre-neck');
  const { turn, edge } = collarAtShoulder(garment, 'front');
  const end = lengthOf(garment, 'collar', 'end');
  const point: Point = {
    x: centre.x + end * Math.sin(collarLies.spread),
    y: centre.y + end * Math.cos(collarLies.spread),
  };
  const roll: Path = [cubic(turn, { x: turn.x - 4, y: turn.y + 42 }, { x: 26, y: centre.y - 12 }, centre)];
  const half: Path = [
    line(centre, point),
    cubic(point, { x: point.x + 34, y: point.y - 16 }, { x: edge.x + 6, y: edge.y + 46 }, edge),
    cubic(edge, { x: edge.x - 12, y: edge.y - 18 }, { x: turn.x + 14, y: turn.y - 1 }, turn),
    ...roll,
  ];
  const high: Point = { x: 0, y: turn.y + 7 };
  const inside = bothHalves([
    cubic(high, { x: 0.5 * turn.x, y: high.y }, { x: turn.x - 12, y: turn.y + 1 }, turn),
    ...roll,
  ]);
  return { half, inside };
};

/** The collar from behind. */
export const backCollar = (garment: Garment): Path => {
  const nape = landmarkIn(garment, 'back', 'nape');
  const { turn, edge } = collarAtShoulder(garment, 'back');
  const high: Point = { x: 0, y: nape.y - collarLies.aboveNape };
  const low: Point = { x: 0, y: nape.y + collarLies.belowNape };
  return bothHalves([
    cubic(high, { x: 0.5 * turn.x, y: high.y }, { x: turn.x - 12, y: turn.y + 2 }, turn),
    cubic(turn, { x: turn.x + 14, y: turn.y - 1 }, { x: edge.x - 12, y: edge.y - 18 }, edge),
    cubic(edge, { x: 0.72 * edge.x, y: edge.y + 22 }, { x: 0.4 * edge.x, y: low.y }, low),
  ]);
};
