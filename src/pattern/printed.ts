import { pathToSvg } from '../geometry/index.ts';
import { cutLine } from './cut-line.ts';
import { dartOf } from './dart.ts';
import { notchPlace } from './edge.ts';
import { levelWidth } from './level.ts';
import { edgeLength, edgeRuns, onFold, outlineOf } from './piece.ts';
import type { Garment, Piece } from './types.ts';
import { walkSeam } from './walk.ts';

/** Printed coordinates keep a hundredth of a micrometre, so that whoever recomputes from them loses nothing that matters. */
const decimals = 5;

/** A piece as the command line prints it: paths absolute `M L C Z`, one `M` a run where a dart interrupts an edge. */
export const printedPiece = (piece: Piece) => ({
  id: piece.id,
  name: piece.name,
  role: piece.role,
  count: piece.cut.filter((order) => order.layer === 'shell').reduce((sum, order) => sum + order.count, 0),
  mirrored: piece.cut.some((order) => order.mirrored),
  onFold: onFold(piece),
  cutFrom: piece.cut,
  outline: pathToSvg(outlineOf(piece), decimals),
  cut: pathToSvg(cutLine(piece), decimals),
  edges: piece.edges.map((edge) => ({
    id: edge.id,
    path: edgeRuns(piece, edge.id)
      .map((run) => pathToSvg(run, decimals))
      .join(' '),
    allowance: edge.allowance,
    finish: edge.finish,
    length: edgeLength(piece, edge.id),
  })),
  darts: piece.darts.map((dart) => {
    const { point, legs, intake, angle } = dartOf(piece, dart.id);
    return { id: dart.id, point, legs, intake, angle: (angle * 180) / Math.PI, pressed: dart.pressed };
  }),
  notches: piece.notches.map((notch) => ({
    id: notch.id,
    edge: notch.edge,
    at: notch.at,
    point: notchPlace(piece, notch).point,
    strokes: notch.strokes,
  })),
  levels: piece.levels.map((level) => ({ ...level, width: levelWidth(piece, level.id) })),
  landmarks: piece.landmarks,
  lines: piece.lines.map((line) => ({ id: line.id, kind: line.kind, path: pathToSvg(line.path, decimals) })),
  grain: piece.grain,
});

/** The seams as the command line prints them, with lengths in mm and difference = lengthA − lengthB. */
export const printedSeams = (garment: Garment) =>
  garment.seams.map((seam) => {
    const { lengthA, lengthB, difference, meets } = walkSeam(garment, seam);
    return {
      id: seam.id,
      a: seam.a,
      b: seam.b,
      lengthA,
      lengthB,
      easeMin: seam.easeMin,
      easeMax: seam.easeMax,
      difference,
      meets,
      how: seam.how,
      notches: seam.notches,
    };
  });
