import type { ShapeCheck } from './shape-check.ts';
import { cornerBetween, turnAcross } from './shape-garment.ts';

/** Where rules of shape are from. */
export const sources = {
  block: 'block construction as taught in manuals of metric pattern cutting',
  truing: 'truing of joined edges, as taught in manuals of metric pattern cutting',
  sleeve: 'set-in sleeve construction as taught in manuals of metric pattern cutting',
  fitting: 'wearing ease as given in manuals of fitting',
  knit: 'blocks and bands for knits, as taught in manuals of cutting and sewing knitted cloth',
  trousers: 'trouser block construction as taught in manuals of metric pattern cutting',
  tailoring: 'jacket and collar construction as taught in manuals of tailoring',
  sewing: 'seams, plackets and closures as taught in manuals of dressmaking',
  children: 'children’s block construction as taught in manuals of metric pattern cutting for children',
} as const;

export const check = (
  id: string,
  about: string,
  source: string,
  unit: ShapeCheck['unit'],
  [low, high]: readonly [number, number],
  value: ShapeCheck['value'],
): ShapeCheck => ({ id, about, source, unit, low, high, value });

/** A square corner where one edge runs into the next, to half a degree. */
export const square = (id: string, piece: string, before: string, after: string): ShapeCheck =>
  check(id, `${piece}: ${before} and ${after} meet square`, sources.truing, 'degrees', [89.5, 90.5], (garment) =>
    cornerBetween(garment, piece, before, after),
  );

/** No turn where a line crosses the end of a seam, to two degrees unless the seam allows more. */
export const smooth = (id: string, about: string, seam: string, end: 0 | 1, most = 2): ShapeCheck =>
  check(id, about, sources.truing, 'degrees', [0, most], (garment) => turnAcross(garment, seam, end));
