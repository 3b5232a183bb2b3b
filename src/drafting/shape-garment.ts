import {
  applyToPath,
  distance,
  endTangent,
  type Path,
  type Point,
  pathEnd,
  pathStart,
  startTangent,
  turnBetween,
} from '../geometry/index.ts';
import {
  closing,
  dartOf,
  edgeLength,
  edgeRuns,
  type Garment,
  landmarkOf,
  type Piece,
  pieceOf,
  walkSeam,
} from '../pattern/index.ts';
import { bulges, inflections, insideCorner, slopeOf } from './shape-measures.ts';

/** What shape checks measure on a drafted garment, by piece and edge id. Degrees and mm. */

export const inDegrees = (radians: number): number => (radians * 180) / Math.PI;

export const landmarkIn = (garment: Garment, piece: string, id: string): Point => {
  const at = landmarkOf(pieceOf(garment, piece), id);
  if (!at) throw new Error(`${piece} has no ${id}`);
  return at;
};

/** Length of an edge, by piece and edge id, darts closed. */
export const lengthIn = (garment: Garment, piece: string, edge: string): number =>
  edgeLength(pieceOf(garment, piece), edge);

/** How far along its edge a notch lies, from the edge's start, mm. */
export const notchIn = (garment: Garment, piece: string, id: string): number => {
  const found = pieceOf(garment, piece).notches.find((notch) => notch.id === id);
  if (!found) throw new Error(`${piece} has no notch ${id}`);
  return found.at * lengthIn(garment, piece, found.edge);
};

/** The first run of an edge; the whole edge where no dart interrupts it. */
export const runOf = (garment: Garment, piece: string, edge: string, which = 0): Path => {
  const run = edgeRuns(pieceOf(garment, piece), edge).at(which);
  if (!run) throw new Error(`${piece} has no ${edge}`);
  return run;
};

/** Inside angle in degrees where one edge runs into the next. */
export const cornerBetween = (garment: Garment, piece: string, before: string, after: string): number =>
  inDegrees(insideCorner(endTangent(runOf(garment, piece, before, -1)), startTangent(runOf(garment, piece, after))));

/** How many degrees a line turns where it crosses the end of a seam. */
export const turnAcross = (garment: Garment, seamId: string, end: 0 | 1): number => {
  const seam = garment.seams.find(({ id }) => id === seamId);
  if (!seam) throw new Error(`No seam ${seamId}`);
  return Math.abs(inDegrees(walkSeam(garment, seam).ends[end].turn));
};

export const shoulderSlope = (garment: Garment, piece: 'front' | 'back'): number =>
  inDegrees(slopeOf(landmarkIn(garment, piece, 'neck-point'), landmarkIn(garment, piece, 'shoulder-point')));

/** How far the armhole is hollowed below the straight from its across line to the underarm, as a share of that straight. */
export const hollow = (garment: Garment, piece: 'front' | 'back'): number => {
  const lower = runOf(garment, piece, 'armhole').slice(1);
  return bulges(lower).right / distance(pathStart(lower), pathEnd(lower));
};

export const armholeHeight = (garment: Garment, piece: 'front' | 'back'): number =>
  landmarkIn(garment, piece, 'underarm').y - landmarkIn(garment, piece, 'shoulder-point').y;

export const capHeight = (garment: Garment): number =>
  landmarkIn(garment, 'sleeve', 'underarm-front').y - landmarkIn(garment, 'sleeve', 'cap-top').y;

export const meanOf = (a: number, b: number): number => (a + b) / 2;

export const edgeBend = (garment: Garment, piece: string, edge: string): number =>
  inflections(runOf(garment, piece, edge));

/** Both legs of a dart, longer less shorter. */
export const legsApart = (piece: Piece, dart: string): number => {
  const [a, b] = dartOf(piece, dart).legLengths;
  return Math.abs(a - b);
};

/** How far the sewn edge turns where a dart was stitched, degrees. */
export const turnAtDart = (garment: Garment, piece: string, edge: string, dart: string): number => {
  const closed = applyToPath(closing(dartOf(pieceOf(garment, piece), dart), 0), runOf(garment, piece, edge, 0));
  return Math.abs(inDegrees(turnBetween(endTangent(closed), startTangent(runOf(garment, piece, edge, 1)))));
};

export const capHollow = (garment: Garment, edge: 'cap-front' | 'cap-back'): number =>
  bulges(runOf(garment, 'sleeve', edge)).right;

export const headEase = (garment: Garment): number =>
  edgeLength(pieceOf(garment, 'sleeve'), 'cap-front') +
  edgeLength(pieceOf(garment, 'sleeve'), 'cap-back') -
  edgeLength(pieceOf(garment, 'front'), 'armhole') -
  edgeLength(pieceOf(garment, 'back'), 'armhole');
