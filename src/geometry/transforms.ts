import type { Path, Point, Segment, Transform } from './types.ts';

export const identity: Transform = { a: 1, b: 0, c: 0, d: 1, e: 0, f: 0 };

export const translation = (by: Point): Transform => checked({ a: 1, b: 0, c: 0, d: 1, e: by.x, f: by.y });

/** Turns about a point; positive radians turn clockwise as seen. */
export const rotation = (angle: number, about: Point = { x: 0, y: 0 }): Transform => {
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  return checked({
    a: cos,
    b: sin,
    c: -sin,
    d: cos,
    e: about.x - cos * about.x + sin * about.y,
    f: about.y - sin * about.x - cos * about.y,
  });
};

/** Mirrors left to right at the upright line x = atX. A clockwise outline comes out anticlockwise: reverse it. */
export const mirrorX = (atX = 0): Transform => checked({ a: -1, b: 0, c: 0, d: 1, e: 2 * atX, f: 0 });

/** Mirrors in the straight line through a point at an angle, as `angleOf` measures it. */
export const reflection = (through: Point, angle: number): Transform => {
  const cos = Math.cos(2 * angle);
  const sin = Math.sin(2 * angle);
  return checked({
    a: cos,
    b: sin,
    c: sin,
    d: -cos,
    e: through.x - cos * through.x - sin * through.y,
    f: through.y - sin * through.x + cos * through.y,
  });
};

/** Scales about a point, by different factors across and down where two are given. */
export const scaling = (x: number, y = x, about: Point = { x: 0, y: 0 }): Transform =>
  checked({ a: x, b: 0, c: 0, d: y, e: about.x * (1 - x), f: about.y * (1 - y) });

/** One transform that does all of those given, the first one first. */
export const compose = (...transforms: readonly Transform[]): Transform =>
  transforms.reduce(
    (first, then) => ({
      a: then.a * first.a + then.c * first.b,
      b: then.b * first.a + then.d * first.b,
      c: then.a * first.c + then.c * first.d,
      d: then.b * first.c + then.d * first.d,
      e: then.a * first.e + then.c * first.f + then.e,
      f: then.b * first.e + then.d * first.f + then.f,
    }),
    identity,
  );

/** The transform that undoes this one. Throws when it flattens the plane and so cannot be undone. */
export const invert = (t: Transform): Transform => {
  const size = t.a * t.d - t.b * t.c;
  if (size === 0) throw new RangeError(`Cannot be undone: ${JSON.stringify(t)}`);
  return checked({
    a: t.d / size,
    b: -t.b / size,
    c: -t.c / size,
    d: t.a / size,
    e: (t.c * t.f - t.d * t.e) / size,
    f: (t.b * t.e - t.a * t.f) / size,
  });
};

/** Whether it turns clockwise outlines into anticlockwise ones. */
export const mirrors = (t: Transform): boolean => t.a * t.d - t.b * t.c < 0;

export const applyToPoint = (t: Transform, p: Point): Point => ({
  x: t.a * p.x + t.c * p.y + t.e,
  y: t.b * p.x + t.d * p.y + t.f,
});

/** A direction or difference of points: everything but the shift. */
export const applyToVector = (t: Transform, v: Point): Point => ({
  x: t.a * v.x + t.c * v.y,
  y: t.b * v.x + t.d * v.y,
});

export const applyToSegment = (t: Transform, segment: Segment): Segment =>
  segment.kind === 'line'
    ? { kind: 'line', from: applyToPoint(t, segment.from), to: applyToPoint(t, segment.to) }
    : {
        kind: 'cubic',
        from: applyToPoint(t, segment.from),
        control1: applyToPoint(t, segment.control1),
        control2: applyToPoint(t, segment.control2),
        to: applyToPoint(t, segment.to),
      };

/** Every point moved; the direction of travel stays, so a mirrored outline has to be reversed by the caller. */
export const applyToPath = (t: Transform, path: Path): Path => path.map((segment) => applyToSegment(t, segment));

function checked(t: Transform): Transform {
  if (![t.a, t.b, t.c, t.d, t.e, t.f].every(Number.isFinite))
    throw new RangeError(`Not a transform: ${JSON.stringify(t)}`);
  return t;
}
