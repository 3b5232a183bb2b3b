import {
  applyToPoint,
  compose,
  insideOutline,
  nearestPlace,
  type Point,
  rotation,
  type Transform,
  translation,
} from '../geometry/index.ts';
import { type CutPiece, cutNamed } from './cut.ts';

/**
 * The part of the cloth a point of the uncut piece lies in: a point on a cut, on the outline or in a dart's
 * wedge belongs to the nearest, the first where several are.
 */
export const partAt = (pieces: CutPiece, point: Point): number => {
  const inside = pieces.parts.findIndex((part) => part.wedge === null && insideOutline(part.outline, point));
  if (inside >= 0) return inside;
  const far = pieces.parts.map((part) => (part.wedge === null ? nearestPlace(part.outline, point).distance : Infinity));
  return far.indexOf(Math.min(...far));
};

/** The part on one hand of a cut, walked from its start to its end, as seen. */
export const partBeside = (pieces: CutPiece, cut: string, hand: 'right' | 'left'): number =>
  cutNamed(pieces, cut)[hand];

export const motionOf = (pieces: CutPiece, part: number): Transform => pieces.motions[part] as Transform;

const moved = (pieces: CutPiece, part: number, by: Transform): CutPiece => ({
  ...pieces,
  motions: pieces.motions.map((motion, index) => (index === part ? compose(motion, by) : motion)),
});

/**
 * Turns a part about a hinge, a point of the uncut piece that goes along with the part. Positive radians
 * turn clockwise as seen.
 */
export const swing = (pieces: CutPiece, part: number, hinge: Point, angle: number): CutPiece =>
  moved(pieces, part, rotation(angle, applyToPoint(motionOf(pieces, part), hinge)));

/** Slides a part by a vector, mm. */
export const slide = (pieces: CutPiece, part: number, by: Point): CutPiece => moved(pieces, part, translation(by));
