import { expect, test } from 'vitest';
import { polyline } from './paths.ts';
import { cubic } from './segments.ts';
import { pathFromSvg, pathToSvg } from './svg.ts';

const triangle = polyline(
  [
    { x: 0, y: 0 },
    { x: 100, y: 0 },
    { x: 0, y: 1 / 3 },
  ],
  true,
);
const bow = [cubic({ x: 0, y: 0 }, { x: 0, y: 10 }, { x: 20, y: 10 }, { x: 20, y: 0 })];

test('closed paths end in Z, open ones do not', () => {
  expect(pathToSvg(triangle, 2)).toBe('M 0 0 L 100 0 L 0 0.33 Z');
  expect(pathToSvg(bow)).toBe('M 0 0 C 0 10 20 10 20 0');
});

test('nothing is written as minus nothing', () => {
  expect(
    pathToSvg(
      polyline([
        { x: -0, y: 0 },
        { x: -0.0001, y: 5 },
      ]),
      2,
    ),
  ).toBe('M 0 0 L 0 5');
});

test('full precision comes back to the last bit', () => {
  expect(pathFromSvg(pathToSvg(triangle))).toEqual({ ok: true, value: triangle });
  expect(pathFromSvg(pathToSvg(bow))).toEqual({ ok: true, value: bow });
});

test('numbers may be written in any way SVG allows, and a command may be followed by several', () => {
  const read = pathFromSvg('M0,0L1e1-5 20,.5');
  expect(read.ok && pathToSvg(read.value)).toBe('M 0 0 L 10 -5 L 20 0.5');
});

test.each([
  ['', 'nothing', 1],
  ['M 0 0', 'nothing', 4],
  ['L 0 0', 'L', 1],
  ['M 0 0 Q 1 1 2 2', 'Q', 4],
  ['M 0 0 l 1 1', 'l', 4],
  ['M 0 0 L 1', 'nothing', 6],
  ['M 0 0 L 1 x', 'x', 6],
  ['M 0 0 L 1 1 Z M 5 5', 'M', 8],
  ['M 0 0 L 1e999 1', '1e999', 5],
])('%s is a problem that says where', (text, found, at) => {
  expect(pathFromSvg(text)).toEqual({ ok: false, problem: { code: 'geometry.svg-path', values: { found, at } } });
});
