import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  applyToPath,
  applyToPoint,
  distance,
  insideOutline,
  line,
  mirrorX,
  nearestOnPath,
  type Outline,
  outlineArea,
  type Point,
  pathLength,
  pathPointAtLength,
  reflection,
  rotation,
  selfIntersections,
  tolerance,
} from '../geometry/index.ts';
import { cutLine, dartOf, outlineOf, type Piece, transformPiece } from './index.ts';
import { plainFront } from './testing/bodice.ts';

const fresh = Number(process.env['EASEWRIGHT_SEED'] ?? Date.now() % 2 ** 31);
console.log(`cut line: fresh seed ${fresh}`);
const runs = [{ seed: 20261 }, { seed: fresh }];

/** The plain front with its side leaning by `lean` mm over its length, its hem rising by `rise` at the side, and a dart of some depth. */
const shaped = ({ lean, rise, intake, allowance, hem }: Shape): Piece => {
  const top = { x: 240, y: 220 };
  const foot = { x: 240 + lean, y: 600 - rise };
  const along = (share: number): Point => ({
    x: top.x + (foot.x - top.x) * share,
    y: top.y + (foot.y - top.y) * share,
  });
  const size = distance(top, foot);
  const middle = 70 / size;
  const legs = [along(middle - intake / 2 / size), along(middle + intake / 2 / size)] as const;
  const centre = along(middle);
  const square = { x: -(foot.y - top.y) / size, y: (foot.x - top.x) / size };
  const point = { x: centre.x + square.x * 120, y: centre.y + square.y * 120 };
  const hemCurve = [line(foot, { x: 0, y: 600 })];
  return {
    ...plainFront,
    runs: plainFront.runs.map((run, index) => {
      if (index === 3) return { ...run, path: [line(top, legs[0])] };
      if (index === 4) return { ...run, path: [line(legs[0], legs[1])] };
      if (index === 5) return { ...run, path: [line(legs[1], foot)] };
      return index === 6 ? { ...run, path: hemCurve } : run;
    }),
    edges: plainFront.edges.map((edge) =>
      edge.id === 'side' ? { ...edge, allowance } : edge.id === 'hem' ? { ...edge, allowance: hem } : edge,
    ),
    darts: plainFront.darts.map((dart) => ({ ...dart, point })),
  };
};

interface Shape {
  readonly lean: number;
  readonly rise: number;
  readonly intake: number;
  readonly allowance: number;
  readonly hem: number;
}

const shapes = fc.record({
  lean: fc.double({ min: -40, max: 60, noNaN: true }),
  rise: fc.double({ min: 0, max: 12, noNaN: true }),
  intake: fc.double({ min: 5, max: 60, noNaN: true }),
  allowance: fc.double({ min: 6, max: 20, noNaN: true }),
  hem: fc.double({ min: 10, max: 50, noNaN: true }),
});

/** One validator for every cut line: closed, simple, round the seam line, an allowance away in the middle of every edge. */
const complaints = (piece: Piece): readonly string[] => {
  const cut: Outline = cutLine(piece);
  const found: string[] = [];
  if (selfIntersections(cut).length > 0) found.push('crosses itself');
  if (outlineArea(cut) <= outlineArea(outlineOf(piece))) found.push('not larger than the seam line');
  for (const run of piece.runs) {
    if (run.kind === 'mouth') continue;
    const allowance = piece.edges.find((edge) => edge.id === run.edge)?.allowance ?? 0;
    const middle = pathPointAtLength(run.path, pathLength(run.path) / 2);
    const away = nearestOnPath(cut, middle).distance;
    if (Math.abs(away - allowance) > tolerance.offset + 1e-6)
      found.push(`${run.edge} is ${away} away, not ${allowance}`);
    if (allowance > 0 && !insideOutline(cut, middle)) found.push(`${run.edge} lies outside`);
  }
  return found;
};

describe('the cut line', () => {
  it('keeps every allowance on pieces of many shapes, turned and mirrored', () => {
    for (const seed of runs) {
      fc.assert(
        fc.property(shapes, fc.double({ min: -3, max: 3, noNaN: true }), fc.boolean(), (shape, angle, mirror) => {
          const turned = transformPiece(shaped(shape), rotation(angle, { x: 20, y: 40 }));
          expect(complaints(mirror ? transformPiece(turned, mirrorX(7)) : turned)).toEqual([]);
        }),
        { ...seed, numRuns: 120 },
      );
    }
  });

  it('caps a dart so that, stitched and pressed, its cloth ends on the cut line it lies under', () => {
    for (const seed of runs) {
      fc.assert(
        fc.property(shapes, (shape) => {
          const piece = shaped(shape);
          const cut = cutLine(piece);
          const dart = dartOf(piece, 'bust');
          const [before, after] = dart.legs;
          const bearing = (to: Point) => Math.atan2(to.y - dart.point.y, to.x - dart.point.x);
          const fold = (bearing(before) + bearing(after)) / 2;
          // The half next to the leg it is pressed on to: reflected in that leg it must lie on the cut line again.
          for (const share of [0.25, 0.5, 0.75]) {
            const angle = bearing(after) + (fold - bearing(after)) * share;
            const ray = [
              line(dart.point, { x: dart.point.x + 400 * Math.cos(angle), y: dart.point.y + 400 * Math.sin(angle) }),
            ];
            const cap = pointOnRay(cut, ray);
            const pressed = applyToPoint(reflection(dart.point, bearing(after)), cap);
            expect(nearestOnPath(cut, pressed).distance).toBeLessThan(tolerance.offset);
            // And the other half, folded back over the dart's fold, lies on the first.
            const other = applyToPoint(reflection(dart.point, fold), cap);
            expect(nearestOnPath(cut, other).distance).toBeLessThan(tolerance.offset);
          }
        }),
        { ...seed, numRuns: 60 },
      );
    }
  });

  it('mirrors the side beside a hem, so that the turned-up allowance lies on the piece', () => {
    for (const seed of runs) {
      fc.assert(
        fc.property(shapes, (shape) => {
          const piece = shaped(shape);
          const cut = cutLine(piece);
          const hem = piece.runs[6]?.path;
          const foot = hem?.[0]?.from as Point;
          const end = hem?.[0]?.to as Point;
          const turned = applyToPath(reflection(foot, Math.atan2(end.y - foot.y, end.x - foot.x)), cut);
          // Turned up, the hem's corner at the side must not stick out beyond the side's own cut line.
          const corner = cut.reduce(
            (best, segment) => (segment.to.x + segment.to.y > best.x + best.y ? segment.to : best),
            foot,
          );
          const up = applyToPoint(reflection(foot, Math.atan2(end.y - foot.y, end.x - foot.x)), corner);
          expect(turned.length).toBe(cut.length);
          expect(nearestOnPath(cut, up).distance).toBeLessThan(tolerance.holds);
        }),
        { ...seed, numRuns: 60 },
      );
    }
  });
});

/** Where a ray from a dart's point leaves the cut outline. */
const pointOnRay = (cut: Outline, ray: Outline): Point => {
  let low = 0;
  let high = pathLength(ray);
  for (let step = 0; step < 60; step += 1) {
    const middle = (low + high) / 2;
    if (insideOutline(cut, pathPointAtLength(ray, middle))) low = middle;
    else high = middle;
  }
  return pathPointAtLength(ray, low);
};
