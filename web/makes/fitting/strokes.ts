import type { Sign } from '../../../src/alter/index.ts';
import { type Mark, pathMark } from '../../../src/draw/index.ts';
import { add, line, type Path, type Point, rotate, smoothThrough } from '../../../src/geometry/index.ts';

/** How far strokes reach from the middle of a place, mm. */
const reach = 44;
/** How far apart lines of one sign lie, mm. */
const apart = 15;

const p = (x: number, y: number): Point => ({ x, y });

/** Angle of the lines, clockwise as seen; those that rise or fall do so outwards, so they are mirrored about the middle. */
const angleOf = (sign: Sign, outward: 1 | -1): number => {
  if (sign.direction === 'along') return Math.PI / 2;
  if (sign.direction === 'rising') return -outward * (Math.PI / 5);
  if (sign.direction === 'falling') return outward * (Math.PI / 5);
  return 0;
};

const turned = (paths: readonly (readonly Point[])[], angle: number, at: Point): readonly Path[] =>
  paths.map((points) => {
    const placed = points.map((point) => add(rotate(point, angle), at));
    return placed.length === 2 ? [line(placed[0] as Point, placed[1] as Point)] : smoothThrough(placed);
  });

/** Thin straight lines under strain; from a point they go out like rays. */
const taut = (sign: Sign): readonly (readonly Point[])[] => {
  if (sign.direction === 'to-point')
    return [0, 1, 2, 3, 4, 5, 6].map((ray) => {
      const along = rotate(p(1, 0), (ray * 2 * Math.PI) / 7 - Math.PI / 2);
      return [p(along.x * 12, along.y * 12), p(along.x * reach, along.y * reach)];
    });
  return [-1, 0, 1].map((row) => [p(-reach, row * apart), p(reach * (row === 0 ? 1 : 0.8), row * apart)]);
};

/** Soft folds: what is too long lies in waves. */
const slack = (): readonly (readonly Point[])[] =>
  [-1, 0, 1].map((row) => {
    const y = row * (apart + 3);
    return [p(-reach, y - 5), p(-reach / 2, y + 5), p(0, y + 7), p(reach / 2, y + 4), p(reach, y - 6)];
  });

const arrow = (from: Point, to: Point): readonly (readonly Point[])[] => {
  const back = Math.atan2(from.y - to.y, from.x - to.x);
  const head = (by: number): readonly Point[] => [to, add(to, rotate(p(16, 0), back + by))];
  return [[from, to], head(0.5), head(-0.5)];
};

const shapeOf = (sign: Sign): readonly (readonly Point[])[] => {
  switch (sign.kind) {
    case 'taut':
      return taut(sign);
    case 'slack':
      return slack();
    case 'gapes':
      return [
        [p(-reach, 0), p(0, -16), p(reach, 0)],
        [p(-reach, 0), p(0, 16), p(reach, 0)],
      ];
    case 'stands-off':
      return [
        [p(-reach, 8), p(0, -6), p(reach, 8)],
        [p(-reach, -8), p(0, -22), p(reach, -8)],
      ];
    case 'digs-in':
      return [
        [p(-reach, 0), p(0, 8), p(reach, 0)],
        ...[-24, -8, 8, 24].map((x): readonly Point[] => [p(x, -14), p(x, 2)]),
      ];
    case 'rides-up':
      return arrow(p(0, reach), p(0, -reach));
    case 'drops':
      return arrow(p(0, -reach), p(0, reach));
    // From the side she looks to the right, so forward is that way.
    case 'swings-forward':
      return arrow(p(-reach, 0), p(reach, 0));
    case 'swings-back':
      return arrow(p(reach, 0), p(-reach, 0));
  }
};

/** The strokes a fitter would draw for a sign. `outward` is 1 right of the middle of the drawing, −1 left of it. */
export const strokesOf = (sign: Sign, at: Point, outward: 1 | -1): Mark => {
  const lined = sign.kind === 'taut' || sign.kind === 'slack';
  const angle = lined ? angleOf(sign, outward) : 0;
  return pathMark('marks', sign.kind === 'taut' ? 'seam' : 'mark', ...turned(shapeOf(sign), angle, at));
};
