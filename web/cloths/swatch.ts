import type { Cloth } from '../../src/cloth/index.ts';
import type { Drawing } from '../../src/draw/index.ts';
import {
  arrowHead,
  drawingOf,
  filledMark,
  type Mark,
  pathMark,
  rectangle,
  stroke,
  textMark,
} from '../../src/draw/index.ts';

export interface SwatchWords {
  readonly label: string;
  readonly width: string;
  readonly length: string;
  readonly grain: string;
}

/** What is shown of a cloth whose length is not known yet: as much as lies on a table. */
const shownLength = 1200;

/** A cloth as it lies flat, its length across the table: selvages along it, its own colour, its width and length. */
export const drawSwatch = (cloth: Cloth, words: SwatchWords): Drawing => {
  const length = cloth.length ?? shownLength;
  const sheet = rectangle(0, 0, length, cloth.width);
  const em = Math.max(length, cloth.width) / 30;
  const gap = em * 1.6;
  const middle = cloth.width / 2;
  const ends = cloth.oneWay ? [] : [arrowHead({ x: length * 0.3, y: middle }, { x: -1, y: 0 }, em)];
  const marks: readonly Mark[] = [
    { ...filledMark('cloth', 'cloth', sheet), colour: cloth.colour },
    pathMark('cloth', 'cloth', sheet),
    pathMark('cloth', 'selvage', stroke({ x: 0, y: 0 }, { x: length, y: 0 })),
    pathMark('cloth', 'selvage', stroke({ x: 0, y: cloth.width }, { x: length, y: cloth.width })),
    filledMark('words', 'paper', rectangle(length / 2 - em * 8.5, middle - em * 3, em * 17, em * 4.6)),
    pathMark('marks', 'grain', stroke({ x: length * 0.3, y: middle }, { x: length * 0.7, y: middle })),
    filledMark('marks', 'grain', arrowHead({ x: length * 0.7, y: middle }, { x: 1, y: 0 }, em), ...ends),
    textMark('words', 'mark', { x: length / 2, y: middle - em * 0.9 }, words.grain, em, { anchor: 'middle' }),
    pathMark('marks', 'dimension', stroke({ x: 0, y: -gap }, { x: length, y: -gap })),
    pathMark(
      'marks',
      'dimension',
      stroke({ x: 0, y: -gap * 1.3 }, { x: 0, y: -gap * 0.7 }),
      stroke({ x: length, y: -gap * 1.3 }, { x: length, y: -gap * 0.7 }),
    ),
    textMark('words', 'mark', { x: length / 2, y: -gap * 1.35 }, words.length, em, { anchor: 'middle' }),
    pathMark('marks', 'dimension', stroke({ x: -gap, y: 0 }, { x: -gap, y: cloth.width })),
    pathMark(
      'marks',
      'dimension',
      stroke({ x: -gap * 1.3, y: 0 }, { x: -gap * 0.7, y: 0 }),
      stroke({ x: -gap * 1.3, y: cloth.width }, { x: -gap * 0.7, y: cloth.width }),
    ),
    textMark('words', 'mark', { x: -gap * 1.35, y: middle }, words.width, em, {
      anchor: 'middle',
      angle: -Math.PI / 2,
    }),
  ];
  return drawingOf(words.label, marks, em);
};
