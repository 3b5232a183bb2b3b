import type { EaseCell, Fit } from '../fit/index.ts';
import { formatLength, type Unit } from '../units/index.ts';
import { drawWords, fill } from '../words/index.ts';
import { circle, drawingOf, filledMark, groupMark, pathMark, rectangle, stroke, textMark } from './marks.ts';
import { sayId } from './say.ts';
import type { Drawing, GroupMark, Mark } from './types.ts';

export interface EaseOptions {
  readonly unit: Unit;
  readonly locale?: string;
  /** The size looked at; the recommended starting size when left out. */
  readonly size?: string;
}

/** The drawing's own measures, mm: a note on the table, not the cloth's scale. */
const width = 320;
const size = 9;
const row = 64;

/**
 * Ease at each level as a picture: a bar from least usual to most, and on the same rule a dot for each size. The size looked at
 * has a filled dot and its name in bold, and is joined to the bar by a line where it lies outside.
 */
export const drawEase = (fit: Fit, options: EaseOptions): Drawing => {
  const { unit, locale = 'en' } = options;
  const chosen = options.size ?? fit.ways[fit.recommended]?.startingSize ?? fit.sizes[0]?.size ?? '';
  const levels = levelsOf(fit);
  const cells = fit.sizes.flatMap((one) => one.cells);
  const scale = scaleFor(cells, fit, chosen);
  const groups = levels.map((level, index) =>
    levelGroup(
      cells.filter((cell) => cell.level === level),
      chosen,
      scale,
      index * row,
      unit,
      locale,
    ),
  );
  const label = fill(drawWords.easeLabel, { levels: groups.map((group) => group.label).join(' ') }, unit, locale);
  const bottom = levels.length * row;
  const none = scale(0);
  const zero: readonly Mark[] =
    none >= 0 && none <= width
      ? [
          pathMark('marks', 'dimension', stroke({ x: none, y: size * 0.5 }, { x: none, y: bottom - row * 0.15 })),
          textMark('words', 'mark', { x: none, y: bottom + size * 0.6 }, drawWords.noEase, size * 0.9, {
            anchor: 'middle',
          }),
        ]
      : [];
  return drawingOf(label, [...zero, ...groups], size);
};

const levelsOf = (fit: Fit): readonly string[] => [
  ...new Set(fit.sizes.flatMap((one) => one.cells.map((cell) => cell.level))),
];

/** Ease to a place along the rule. Sizes far from any that could be worn would only squeeze the rest: they run off the rule. */
const scaleFor = (cells: readonly EaseCell[], fit: Fit, chosen: string): ((ease: number) => number) => {
  const index = fit.sizes.findIndex((one) => one.size === chosen);
  const near = fit.sizes.slice(Math.max(0, index - 2), index + 3).flatMap((one) => one.cells);
  const eases = [...near.map((cell) => cell.ease), ...cells.flatMap((cell) => [cell.low, cell.high]), 0];
  const [low, high] = [Math.min(...eases) - 8, Math.max(...eases) + 8];
  return (ease) => ((ease - low) / (high - low)) * width;
};

const levelGroup = (
  cells: readonly EaseCell[],
  chosen: string,
  scale: (ease: number) => number,
  top: number,
  unit: Unit,
  locale: string,
): GroupMark => {
  const say = (mm: number) => formatLength(mm, unit, { purpose: 'amount', locale });
  const own = cells.find((cell) => cell.size === chosen) ?? (cells[0] as EaseCell);
  const y = top + row * 0.55;
  const half = size * 0.55;
  const verdict = drawWords.verdict[own.verdict];
  const values = {
    level: sayId(own.level),
    size: own.size,
    ease: say(own.ease),
    verdict,
    low: say(own.low),
    high: say(own.high),
  };
  const said = fill(drawWords.easeOfSize, values, unit, locale);
  const head: readonly Mark[] = [
    textMark('words', 'mark', { x: 0, y: top + size }, values.level, size * 1.15, { weight: 'bold' }),
    textMark('words', 'mark', { x: width, y: top + size }, said, size, { anchor: 'end' }),
    ...(own.bodyEstimated
      ? [
          textMark('words', 'body', { x: width / 2, y: top + size }, drawWords.bodyEstimated, size, {
            anchor: 'middle',
          }),
        ]
      : []),
  ];
  const bar = rectangle(scale(own.low), y - half, scale(own.high) - scale(own.low), half * 2);
  const out = own.ease < own.low ? own.low : own.ease > own.high ? own.high : null;
  const onRule = cells.filter((cell) => scale(cell.ease) >= 0 && scale(cell.ease) <= width);
  return groupMark(`ease-${own.level}`, fill(drawWords.easeLevelLabel, values, unit, locale), [
    ...head,
    pathMark('marks', 'faint', stroke({ x: 0, y }, { x: width, y })),
    filledMark('marks', 'paper', bar),
    pathMark('marks', 'mark', bar),
    ...(out === null ? [] : [pathMark('marks', 'dimension', stroke({ x: scale(out), y }, { x: scale(own.ease), y }))]),
    ...onRule.flatMap((cell) => dot(cell, cell === own, scale(cell.ease), y, half)),
    ...sizeNames(onRule, own, scale, y),
  ]);
};

const dot = (cell: EaseCell, firm: boolean, x: number, y: number, half: number): readonly Mark[] => {
  const ring = circle({ x, y }, firm ? half * 0.8 : half * 0.42);
  // An estimated body gives no filled dot: its ease is not known, only likely.
  return firm && !cell.bodyEstimated
    ? [filledMark('marks', 'cut', ring)]
    : [filledMark('marks', 'paper', ring), pathMark('marks', firm ? 'cut' : 'mark', ring)];
};

/** Names under the dots, left out where they would run into one another; the one looked at always stands. */
const sizeNames = (
  cells: readonly EaseCell[],
  own: EaseCell,
  scale: (ease: number) => number,
  y: number,
): readonly Mark[] => {
  const taken: number[] = [];
  return [own, ...cells.filter((cell) => cell !== own)].flatMap((cell) => {
    const x = scale(cell.ease);
    if (x < 0 || x > width || taken.some((other) => Math.abs(other - x) < size * 1.6)) return [];
    taken.push(x);
    const weight = cell === own ? 'bold' : 'regular';
    return [textMark('words', 'mark', { x, y: y + size * 1.9 }, cell.size, size * 0.9, { anchor: 'middle', weight })];
  });
};
