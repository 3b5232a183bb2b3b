import { line, type Point, pathEnd, pathLength, pathPointAtLength, pathStart } from '../geometry/index.ts';
import type { CutOrder, Edge, Piece } from '../pattern/index.ts';
import { raincoatWords } from '../words/index.ts';
import { allowances, closeRuns, edge, edgeRun, landmark, lining, shell, straightRun } from './pieces.ts';
import type { RaincoatHood } from './raincoat-hood.ts';

/** The hem along the opening of an unlined hood is turned this deep: elastic of 8 runs in it with room. */
const openingHem = 20;

/** Of the opening, from the neck up: where the elastic begins and ends. The chin and the visor lie plain. */
export const elasticFrom = 0.14;
export const elasticTo = 0.72;

/** The hood's layers: with a lining both its pieces are cut of it too, and sewn to it along the opening. */
const cutFor = (count: number, mirrored: boolean, isLined: boolean): readonly CutOrder[] =>
  isLined ? [shell(count, mirrored), lining(count, mirrored)] : [shell(count, mirrored)];

const openingEdge = (isLined: boolean): Edge =>
  isLined ? edge('opening', 'seam', allowances.neck) : edge('opening', 'hem', openingHem);

/** Distance of the seam's notch from the visor: over the crown. */
const crownAlong = ({ top }: RaincoatHood): number => pathLength([top[0] as (typeof top)[number]]);

/** A side of the hood, cut as a mirrored pair; seen from outside, the face to the left. */
export const hoodSide = (hood: RaincoatHood, isLined: boolean): Piece => {
  const { opening, top, neckBack, neckFront, crown } = hood;
  const grainX = 0.45 * pathEnd(top).x;
  const neckY = pathEnd(neckBack).y;
  return {
    id: 'hood-side',
    name: raincoatWords.pieces['hood-side'],
    role: 'hood',
    cut: cutFor(2, true, isLined),
    runs: closeRuns([
      edgeRun('opening', [opening]),
      edgeRun('top', top),
      edgeRun('neck-back', neckBack),
      edgeRun('neck-front', neckFront),
    ]),
    edges: [
      openingEdge(isLined),
      edge('top', 'seam', allowances.neck),
      edge('neck-back', 'seam', allowances.neck),
      edge('neck-front', 'seam', allowances.neck),
    ],
    darts: [],
    notches: [
      { id: 'elastic-start', edge: 'opening', at: elasticFrom, strokes: 1 },
      { id: 'elastic-end', edge: 'opening', at: elasticTo, strokes: 1 },
      { id: 'crown', edge: 'top', at: crownAlong(hood) / pathLength(top), strokes: 1 },
      { id: 'head-back', edge: 'top', at: pathLength(top.slice(0, 2)) / pathLength(top), strokes: 2 },
      { id: 'shoulder', edge: 'neck-back', at: 1, strokes: 1 },
      { id: 'neck-back', edge: 'neck-back', at: 0.5, strokes: 1 },
      { id: 'neck-front', edge: 'neck-front', at: 0.5, strokes: 1 },
    ],
    grain: { from: { x: grainX, y: crown.y + 25 }, to: { x: grainX, y: neckY - 20 } },
    levels: [],
    landmarks: [
      landmark('centre-neck', opening.from),
      landmark('visor', opening.to),
      landmark('crown', crown),
      landmark('hood-back', (top[1] as (typeof top)[number]).to),
      landmark('nape', pathStart(neckBack)),
      landmark('neck-point', pathEnd(neckBack)),
    ],
    lines: [],
  };
};

/** The strip between the sides, cut once on the fold. */
export const hoodCentre = (hood: RaincoatHood, isLined: boolean): Piece => {
  const { opening, top, neck } = hood.strip;
  const peak = opening.from;
  const foot = neck.to;
  const seam = pathLength([top]);
  const along = crownAlong(hood) / pathLength(hood.top);
  const at = (share: number): Point => pathPointAtLength([top], share * seam);
  return {
    id: 'hood-centre',
    name: raincoatWords.pieces['hood-centre'],
    role: 'hood',
    cut: cutFor(1, false, isLined),
    runs: closeRuns([
      edgeRun('opening', [opening]),
      edgeRun('top', [top]),
      edgeRun('neck', [neck]),
      straightRun('centre', foot, peak),
    ]),
    edges: [
      openingEdge(isLined),
      edge('top', 'seam', allowances.neck),
      edge('neck', 'seam', allowances.neck),
      edge('centre', 'fold', 0),
    ],
    darts: [],
    notches: [
      { id: 'crown', edge: 'top', at: along, strokes: 1 },
      { id: 'head-back', edge: 'top', at: pathLength(hood.top.slice(0, 2)) / pathLength(hood.top), strokes: 2 },
    ],
    grain: { from: { x: 0.62 * neck.from.x, y: 20 }, to: { x: 0.62 * neck.from.x, y: foot.y - 20 } },
    levels: [],
    landmarks: [landmark('visor-centre', peak), landmark('nape', foot), landmark('visor', opening.to)],
    lines: [{ id: 'crown', kind: 'placement', path: [line({ x: 0, y: at(along).y }, at(along))] }],
  };
};
