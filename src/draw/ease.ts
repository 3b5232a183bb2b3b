import { type EaseCell, type Fit, verdictAsShown } from '../fit/index.ts';
import type { Path } from '../geometry/index.ts';
import { formatLength, lengthAsShown, type Unit } from '../units/index.ts';
import { drawWords, fill, fitWords } from '../words/index.ts';
import {
  circle,
  drawingOf,
  estimatedTextWidth,
  filledMark,
  groupMark,
  pathMark,
  rectangle,
  stroke,
  textMark,
} from './marks.ts';
import { sayId } from './say.ts';
import type { Drawing, GroupMark, Mark } from './types.ts';

export interface EaseOptions {
  readonly unit: Unit;
  readonly locale?: string;
  /** The size looked at; the recommended starting size when left out. */
  readonly size?: string;
  /** For a phone's table: lower and in fewer words, only the size looked at named. */
  readonly narrow?: boolean;
}

/** How the note is set, in ems of its words. */
interface Setting {
  /** The rule's length, the height of one level, and the bar's middle below its top. */
  readonly width: number;
  readonly row: number;
  readonly barAt: number;
  /** Whether the other sizes and the usual bar are named. */
  readonly allNamed: boolean;
}

const broadSetting: Setting = { width: 35.6, row: 7.8, barAt: 4, allNamed: true };
const narrowSetting: Setting = { width: 21, row: 3.7, barAt: 2.1, allNamed: false };

/**
 * Where the rule begins and ends, mm of ease, and the em that goes with it. A place along the rule is its ease at full
 * scale, with no ease at 0, so that the table's own rule reads off ease.
 */
interface Rule {
  readonly low: number;
  readonly high: number;
  readonly size: number;
  readonly setting: Setting;
}

/**
 * Ease at each level as a picture: a bar from least usual to most, and on the same rule a dot for each size. The size looked at
 * has a filled dot and its name in bold, and is joined to the bar by a line where it lies outside.
 */
export const drawEase = (fit: Fit, options: EaseOptions): Drawing => {
  const { unit, locale = 'en' } = options;
  const chosen = options.size ?? fit.ways[fit.recommended]?.startingSize ?? fit.sizes[0]?.size ?? '';
  const levels = levelsOf(fit);
  const cells = fit.sizes.flatMap((one) => one.cells);
  const setting = options.narrow ? narrowSetting : broadSetting;
  const rule = ruleFor(cells, fit, chosen, setting);
  const { size } = rule;
  const row = setting.row * size;
  const groups = levels.map((level, index) =>
    levelGroup(
      cells.filter((cell) => cell.level === level),
      chosen,
      rule,
      index * row,
      unit,
      locale,
    ),
  );
  const label = fill(drawWords.easeLabel, { levels: groups.map((group) => group.label).join(' ') }, unit, locale);
  const bottom = levels.length * row;
  // Broken where words stand: from just above each bar to just below it.
  const ticks = levels.map((_, index) => {
    const y = index * row + setting.barAt * size;
    return stroke({ x: 0, y: y - size * 1.1 }, { x: 0, y: y + size * 0.9 });
  });
  const zero: readonly Mark[] = [
    pathMark('marks', 'dimension', ...ticks),
    textMark('words', 'mark', { x: 0, y: bottom + size * 0.6 }, drawWords.noEase, size * 0.9, { anchor: 'middle' }),
    pathMark('marks', 'dimension', stroke({ x: 0, y: bottom - size * 0.9 }, { x: 0, y: bottom - size * 0.3 })),
  ];
  return drawingOf(label, [...zero, ...groups], size);
};

const levelsOf = (fit: Fit): readonly string[] => [
  ...new Set(fit.sizes.flatMap((one) => one.cells.map((cell) => cell.level))),
];

/** Sizes far from any that could be worn would only squeeze the rest: they run off the rule. No ease is always on it. */
const ruleFor = (cells: readonly EaseCell[], fit: Fit, chosen: string, setting: Setting): Rule => {
  const index = fit.sizes.findIndex((one) => one.size === chosen);
  const near = fit.sizes.slice(Math.max(0, index - 2), index + 3).flatMap((one) => one.cells);
  const eases = [...near.map((cell) => cell.ease), ...cells.flatMap((cell) => [cell.low, cell.high]), 0];
  const [low, high] = [Math.min(...eases) - 8, Math.max(...eases) + 8];
  return { low, high, size: (high - low) / setting.width, setting };
};

const levelGroup = (
  cells: readonly EaseCell[],
  chosen: string,
  rule: Rule,
  top: number,
  unit: Unit,
  locale: string,
): GroupMark => {
  const { low, high, size, setting } = rule;
  const say = (mm: number) => formatLength(mm, unit, { purpose: 'amount', locale });
  const known = cells.find((cell) => cell.size === chosen) ?? null;
  // The usual is one range whatever the size: where the size looked at is not known it alone is taken from another.
  const own = known ?? (cells[0] as EaseCell);
  const y = top + setting.barAt * size;
  const half = size * 0.55;
  const shown = (mm: number) => lengthAsShown(mm, unit, { purpose: 'amount' });
  const verdict = fitWords.verdicts[verdictAsShown(own, shown)];
  const values = {
    level: sayId(own.level),
    size: chosen,
    ease: say(own.ease),
    verdict,
    low: say(own.low),
    high: say(own.high),
  };
  const said = fill(known ? drawWords.easeOfSize : drawWords.easeUnknown, values, unit, locale);
  const head: readonly Mark[] = [
    textMark('words', 'mark', { x: low, y: top + size }, values.level, size * 1.15, { weight: 'bold' }),
    textMark('words', 'mark', { x: high, y: top + size }, said, size, { anchor: 'end' }),
    ...(known?.bodyEstimated && setting.allNamed
      ? [
          textMark('words', 'body', { x: (low + high) / 2, y: top + size }, drawWords.bodyEstimated, size, {
            anchor: 'middle',
          }),
        ]
      : []),
  ];
  const bar = rectangle(own.low, y - half, own.high - own.low, half * 2);
  const out = !known || isWithin(own) ? null : own.ease < own.low ? own.low : own.high;
  const onRule = cells.filter((cell) => cell.ease >= low && cell.ease <= high);
  const usual = textMark(
    'words',
    'mark',
    { x: own.high, y: y - half - size * 0.5 },
    fitWords.verdicts.usual,
    size * 0.9,
    {
      anchor: 'end',
    },
  );
  return groupMark(
    `ease-${own.level}`,
    fill(known ? drawWords.easeLevelLabel : drawWords.easeLevelUnknown, values, unit, locale),
    [
      ...head,
      pathMark('marks', 'faint', stroke({ x: low, y }, { x: high, y })),
      filledMark('marks', 'paper', bar),
      pathMark('marks', 'mark', bar),
      ...(setting.allNamed ? [usual] : []),
      ...(out === null ? [] : [pathMark('marks', 'dimension', stroke({ x: out, y }, { x: own.ease, y }))]),
      ...dots(onRule, known, y, half),
      ...(setting.allNamed ? sizeNames(onRule, known, rule, y, say) : []),
    ],
  );
};

const isWithin = ({ ease, low, high }: EaseCell): boolean => ease >= low && ease <= high;

/** A dot for each size, firm for the one looked at where it is known; of sizes with the same ease the later stand below the earlier, so that each is seen. */
const dots = (cells: readonly EaseCell[], own: EaseCell | null, y: number, half: number): readonly Mark[] => {
  const firm = half * 0.8;
  const small = half * 0.42;
  const placed: { readonly x: number; readonly y: number; readonly radius: number }[] = [];
  return [...(own ? [own] : []), ...cells.filter((cell) => cell !== own)].flatMap((cell) => {
    if (!cells.includes(cell)) return [];
    const radius = cell === own ? firm : small;
    const free = [0, 1.6, -1.6, 3.2, -3.2].find((step) =>
      placed.every((one) => Math.hypot(one.x - cell.ease, one.y - (y + step * half)) >= one.radius + radius),
    );
    const at = { x: cell.ease, y: y + (free ?? 0) * half };
    placed.push({ ...at, radius });
    return dot(cell, cell === own, circle(at, radius));
  });
};

const dot = (cell: EaseCell, firm: boolean, ring: Path): readonly Mark[] =>
  // An estimated body gives no filled dot: its ease is not known, only likely.
  firm && !cell.bodyEstimated
    ? [filledMark('marks', 'cut', ring)]
    : [filledMark('marks', 'paper', ring), pathMark('marks', firm ? 'cut' : 'mark', ring)];

/** Baselines of the rows of names below the bar, ems: the second takes the names that find no room in the first. */
const nameRows = [2.1, 3.1];

/**
 * Names of sizes under their dots, those with nearly the same ease one below the other, left out where even that finds
 * no room; the one looked at always stands. Each has its ease with it where there is room left.
 */
const sizeNames = (
  cells: readonly EaseCell[],
  own: EaseCell | null,
  { low, high, size }: Rule,
  y: number,
  say: (mm: number) => string,
): readonly Mark[] => {
  interface Name {
    readonly cell: EaseCell;
    readonly row: number;
    readonly text: string;
  }
  const em = size * 0.9;
  const reach = ({ cell, text }: Name): readonly [number, number] => {
    const width = estimatedTextWidth(text, em, cell === own ? 'bold' : 'regular');
    return [cell.ease - width / 2, cell.ease + width / 2];
  };
  const clear = (name: Name, others: readonly Name[]): boolean => {
    const [from, to] = reach(name);
    return others.every((other) => {
      if (other.cell === name.cell || other.row !== name.row) return true;
      const [start, end] = reach(other);
      return to + em * 0.5 <= start || end + em * 0.5 <= from;
    });
  };
  let names: readonly Name[] = [];
  for (const cell of [...(own ? [own] : []), ...cells.filter((one) => one !== own)]) {
    if (cell.ease < low || cell.ease > high) continue;
    const tries = nameRows.map((_, row): Name => ({ cell, row, text: cell.size }));
    const found = tries.find((name) => clear(name, names));
    if (found) names = [...names, found];
  }
  for (const name of names) {
    const fuller = { ...name, text: `${name.cell.size}: ${say(name.cell.ease)}` };
    if (clear(fuller, names)) names = names.map((one) => (one === name ? fuller : one));
  }
  return names.map(({ cell, row, text }) =>
    textMark('words', 'mark', { x: cell.ease, y: y + size * (nameRows[row] as number) }, text, em, {
      anchor: 'middle',
      weight: cell === own ? 'bold' : 'regular',
    }),
  );
};
