import { describe, expect, test } from 'vitest';
import { intersectPaths } from './intersect.ts';
import { pathEnd, pathStart, polyline } from './paths.ts';
import { cubic, line } from './segments.ts';
import { ownLoop, selfIntersections } from './self-intersect.ts';
import { applyToPath, translation } from './transforms.ts';
import { trimToMeet } from './trim.ts';
import { validateOutline } from './validate-outline.ts';

const loop = cubic({ x: 0, y: 0 }, { x: 150, y: 100 }, { x: -50, y: 100 }, { x: 100, y: 0 });
const wave = cubic({ x: 0, y: 0 }, { x: 50, y: 100 }, { x: 50, y: -100 }, { x: 100, y: 0 });
const square = polyline(
  [
    { x: 0, y: 0 },
    { x: 100, y: 0 },
    { x: 100, y: 100 },
    { x: 0, y: 100 },
  ],
  true,
);

describe('two paths', () => {
  test('two lines meet once, in order along the first', () => {
    const found = intersectPaths(
      square,
      polyline([
        { x: -10, y: 50 },
        { x: 110, y: 50 },
      ]),
    );
    expect(found.map(({ lengthA, lengthB }) => [lengthA, lengthB])).toEqual([
      [150, 110],
      [350, 10],
    ]);
  });

  test('a level line meets a wave three times, also at its ends', () => {
    const found = intersectPaths(
      [wave],
      polyline([
        { x: 0, y: 0 },
        { x: 100, y: 0 },
      ]),
    );
    expect(found.map(({ point }) => Math.round(point.x * 1e6) / 1e6)).toEqual([0, 50, 100]);
  });

  test('two curves can meet nine times', () => {
    const across = cubic({ x: 0, y: 55 }, { x: 330, y: 40 }, { x: -230, y: 60 }, { x: 100, y: 45 });
    const down = cubic({ x: 55, y: 0 }, { x: 40, y: 330 }, { x: 60, y: -230 }, { x: 45, y: 100 });
    expect(intersectPaths([across], [down])).toHaveLength(9);
  });

  test('a corner touched is one meeting, not two', () => {
    expect(
      intersectPaths(
        square,
        polyline([
          { x: 90, y: -10 },
          { x: 110, y: 10 },
        ]),
      ),
    ).toHaveLength(1);
  });

  test('a curve touched by a line is found', () => {
    const top = cubic({ x: 0, y: 0 }, { x: 0, y: -40 }, { x: 100, y: -40 }, { x: 100, y: 0 });
    const [touch] = intersectPaths(
      [top],
      polyline([
        { x: 0, y: -30 },
        { x: 100, y: -30 },
      ]),
    );
    expect(touch?.point.x).toBeCloseTo(50, 3);
  });

  test('of a shared stretch the ends are given, of a shared curve too', () => {
    const a = polyline([
      { x: 0, y: 0 },
      { x: 10, y: 0 },
    ]);
    expect(
      intersectPaths(
        a,
        polyline([
          { x: 4, y: 0 },
          { x: 20, y: 0 },
        ]),
      ).map(({ lengthA }) => lengthA),
    ).toEqual([4, 10]);
    expect(intersectPaths([wave], [wave]).map(({ point }) => point)).toEqual([wave.from, wave.to]);
  });

  test('paths apart do not meet', () => {
    expect(intersectPaths(square, applyToPath(translation({ x: 101, y: 0 }), square))).toEqual([]);
  });
});

describe('one path', () => {
  test('a simple outline has no crossings, though its neighbours touch', () => {
    expect(selfIntersections(square)).toEqual([]);
    expect(selfIntersections([wave])).toEqual([]);
    const lens = [
      cubic({ x: 0, y: 0 }, { x: 30, y: -20 }, { x: 70, y: -20 }, { x: 100, y: 0 }),
      cubic({ x: 100, y: 0 }, { x: 70, y: 20 }, { x: 30, y: 20 }, { x: 0, y: 0 }),
    ];
    expect(selfIntersections(lens)).toEqual([]);
  });

  test("a curve's own loop is reported once", () => {
    expect(ownLoop(loop)).not.toBeNull();
    expect(ownLoop(wave)).toBeNull();
    const found = selfIntersections([loop, line(loop.to, loop.from)]);
    expect(found).toHaveLength(1);
    expect(found[0]?.point.x).toBeCloseTo(50, 9);
    expect(found[0]?.lengthA).toBeLessThan(found[0]?.lengthB ?? 0);
  });

  test('a figure of eight crosses once; one that only touches itself at a corner is reported too', () => {
    const eight = polyline(
      [
        { x: 0, y: 0 },
        { x: 100, y: 100 },
        { x: 100, y: 0 },
        { x: 0, y: 100 },
      ],
      true,
    );
    expect(selfIntersections(eight).map(({ point }) => point)).toEqual([{ x: 50, y: 50 }]);
    const touching = polyline(
      [
        { x: 0, y: 0 },
        { x: 50, y: 50 },
        { x: 100, y: 0 },
        { x: 100, y: 100 },
        { x: 50, y: 50 },
        { x: 0, y: 100 },
      ],
      true,
    );
    expect(selfIntersections(touching)).toHaveLength(1);
  });

  test('a line that doubles back on itself is reported', () => {
    expect(
      selfIntersections(
        polyline([
          { x: 0, y: 0 },
          { x: 10, y: 0 },
          { x: 4, y: 0 },
          { x: 4, y: 9 },
        ]),
      ),
    ).not.toEqual([]);
  });
});

describe('trimming', () => {
  test('two paths are cut off where they cross, exactly', () => {
    const trimmed = trimToMeet(
      polyline([
        { x: 0, y: 0 },
        { x: 100, y: 0 },
      ]),
      polyline([
        { x: 90, y: -9 },
        { x: 90, y: 50 },
      ]),
    );
    expect(trimmed?.map(pathStart)).toEqual([
      { x: 0, y: 0 },
      { x: 90, y: 0 },
    ]);
    expect(trimmed && pathEnd(trimmed[0])).toEqual({ x: 90, y: 0 });
  });

  test('paths that do not meet are not trimmed', () => {
    expect(
      trimToMeet(
        polyline([
          { x: 0, y: 0 },
          { x: 9, y: 0 },
        ]),
        polyline([
          { x: 0, y: 1 },
          { x: 9, y: 1 },
        ]),
      ),
    ).toBeNull();
  });
});

describe('outlines', () => {
  const codes = (outline: Parameters<typeof validateOutline>[0]): string[] =>
    validateOutline(outline).map(({ code }) => code);

  test('a clockwise, closed, simple run is one', () => {
    expect(codes(square)).toEqual([]);
  });

  test('what keeps a run from being one is named', () => {
    const [top, side, ...rest] = square;
    if (!top || !side) throw new Error('A square has sides');
    expect(codes([])).toEqual(['geometry.outline-empty']);
    expect(codes([{ ...top, to: { x: Number.NaN, y: 0 } }])).toEqual(['geometry.outline-not-finite']);
    expect(codes(square.slice(0, 3))).toEqual(['geometry.outline-open']);
    expect(codes([top, { ...side, from: { x: 100, y: 0.5 } }, ...rest])).toEqual(['geometry.outline-broken']);
    expect(codes([top, { kind: 'line', from: top.to, to: top.to }, side, ...rest])).toEqual(['geometry.outline-speck']);
    expect(codes([...square].reverse().map(({ from, to }) => ({ kind: 'line', from: to, to: from })))).toEqual([
      'geometry.outline-anticlockwise',
    ]);
    const hourglass = polyline(
      [
        { x: 0, y: 0 },
        { x: 100, y: 0 },
        { x: 0, y: 90 },
        { x: 100, y: 90 },
      ],
      true,
    );
    expect(codes(hourglass)).toContain('geometry.outline-crosses-itself');
  });
});
