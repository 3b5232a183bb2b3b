import { describe, expect, test } from 'vitest';
import { nearerThan, overlapDeeperThan } from './overlap.ts';
import { movePolygon, type Polygon, turnPolygon } from './polygon.ts';

const rectangle = (x: number, y: number, width: number, height: number): Polygon => [
  { x, y },
  { x: x + width, y },
  { x: x + width, y: y + height },
  { x, y: y + height },
];

describe('overlap of two polygons', () => {
  const square = rectangle(0, 0, 100, 100);

  test.each([
    ['apart', rectangle(200, 0, 50, 50), false],
    ['sharing an edge', rectangle(100, 0, 50, 50), false],
    ['sharing a corner', rectangle(100, 100, 50, 50), false],
    ['touching along part of an edge', rectangle(100, -20, 50, 300), false],
    ['overlapping by less than allowed', rectangle(99.995, 0, 50, 50), false],
    ['overlapping by a little more', rectangle(99.97, 0, 50, 50), true],
    ['one inside the other', rectangle(40, 40, 10, 10), true],
    ['the same twice', rectangle(0, 0, 100, 100), true],
    ['crossing like a plus, no corner inside', rectangle(-50, 40, 200, 20), true],
    ['sharing all corners of one side and lying over it', rectangle(0, 0, 50, 100), true],
  ])('%s', (_name, other, expected) => {
    for (const rotation of [0, 90, 31]) {
      for (const mirrored of [false, true]) {
        const lay = (p: Polygon) => movePolygon(turnPolygon(p, { rotation, mirrored }), 17, -230);
        expect(overlapDeeperThan(lay(square), lay(other), 0.01)).toBe(expected);
        expect(overlapDeeperThan(lay(other), lay(square), 0.01)).toBe(expected);
      }
    }
  });

  test('a piece in the hollow of another does not overlap it', () => {
    const hollow = [
      { x: 0, y: 0 },
      { x: 100, y: 0 },
      { x: 100, y: 100 },
      { x: 70, y: 100 },
      { x: 70, y: 30 },
      { x: 30, y: 30 },
      { x: 30, y: 100 },
      { x: 0, y: 100 },
    ];
    expect(overlapDeeperThan(hollow, rectangle(30, 30, 40, 70), 0.01)).toBe(false);
    expect(overlapDeeperThan(hollow, rectangle(30, 29.9, 40, 70), 0.01)).toBe(true);
    expect(overlapDeeperThan(hollow, rectangle(20, 40, 60, 10), 0.01)).toBe(true);
  });

  test('nearness is the least distance between borders', () => {
    expect(nearerThan(square, rectangle(103, 0, 10, 10), 3.001)).toBe(true);
    expect(nearerThan(square, rectangle(103, 0, 10, 10), 2.999)).toBe(false);
    expect(nearerThan(square, rectangle(103, 104, 10, 10), 5.001)).toBe(true);
    expect(nearerThan(square, rectangle(103, 104, 10, 10), 4.999)).toBe(false);
  });
});
