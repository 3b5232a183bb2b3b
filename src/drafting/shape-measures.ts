import {
  angleOf,
  cross,
  distance,
  normalize,
  type Path,
  type Point,
  pathEnd,
  pathStart,
  segmentCurvatureAt,
  segmentPointAt,
  subtract,
  turnBetween,
} from '../geometry/index.ts';

/** Measures of shape, for judging drafted pieces as a cutter's eye does. Angles in radians, lengths mm. */

/** How many places along a curve are looked at; a piece's curves are few and even, so this misses nothing. */
const looks = 48;

/** Curvature smaller than this counts as straight, 1/mm: a radius of 20 m. */
const straight = 5e-5;

/** How often the bend changes sign along a path. */
export const inflections = (path: Path): number => {
  let changes = 0;
  let last = 0;
  for (const segment of path) {
    for (let i = 0; i <= looks; i++) {
      const bend = segmentCurvatureAt(segment, i / looks);
      if (Math.abs(bend) <= straight) continue;
      if (last !== 0 && Math.sign(bend) !== last) changes++;
      last = Math.sign(bend);
    }
  }
  return changes;
};

/** The tightest bend's radius along a path, mm; infinite where it is straight. */
export const leastRadius = (path: Path): number => {
  const bends = path.flatMap((segment) =>
    Array.from({ length: looks + 1 }, (_, i) => Math.abs(segmentCurvatureAt(segment, i / looks))),
  );
  return 1 / Math.max(...bends);
};

/** Greatest distance of a path from the straight between its ends: to the left of travel, and to the right. */
export const bulges = (path: Path): { readonly left: number; readonly right: number } => {
  const from = pathStart(path);
  const chord = normalize(subtract(pathEnd(path), from));
  let left = 0;
  let right = 0;
  for (const segment of path) {
    for (let i = 0; i <= looks; i++) {
      const off = cross(chord, subtract(segmentPointAt(segment, i / looks), from));
      left = Math.max(left, -off);
      right = Math.max(right, off);
    }
  }
  return { left, right };
};

/** Angle inside the corner where one path arrives and another leaves, of an outline run clockwise as seen. */
export const insideCorner = (arriving: Point, leaving: Point): number => Math.PI - turnBetween(arriving, leaving);

/** How steeply the straight from a to b falls: 0 level, positive downward. */
export const slopeOf = (a: Point, b: Point): number => angleOf({ x: Math.abs(b.x - a.x), y: b.y - a.y });

/** Distance of a point from the straight through two others. */
export const asideOf = (point: Point, a: Point, b: Point): number =>
  Math.abs(cross(normalize(subtract(b, a)), subtract(point, a)));

/** Greatest and least distance of one path's places from another's nearest ones, looked at from the first. */
export const apart = (path: Path, other: Path): { readonly least: number; readonly most: number } => {
  const places = (of: Path): readonly Point[] =>
    of.flatMap((segment) => Array.from({ length: looks + 1 }, (_, i) => segmentPointAt(segment, i / looks)));
  const others = places(other);
  const distances = places(path).map((place) => Math.min(...others.map((near) => distance(place, near))));
  return { least: Math.min(...distances), most: Math.max(...distances) };
};
