import type { MeasureId, Measures } from '../body/index.ts';
import type { Cloth } from '../cloth/index.ts';
import type { FigureFrom, PatternFigures, SizeFigures } from './figures.ts';
import { type EaseRange, knitEase, usualEase } from './usual-ease.ts';

export type Verdict = 'too-tight' | 'snug' | 'usual' | 'roomy';

/** Ease of one size at one level. All mm; ease = finished − body. */
export interface EaseCell {
  readonly size: string;
  readonly level: string;
  readonly measure: MeasureId;
  readonly around: 'body' | 'limb';
  readonly body: number;
  /** The body measure was not taken but estimated from the others. */
  readonly bodyEstimated: boolean;
  readonly finished: number;
  readonly finishedFrom: FigureFrom;
  readonly ease: number;
  /** Under this one cannot move in it, or the knit is strained. */
  readonly least: number;
  /** From and to of what is usual, the same for every size; `high` is never less than what the design itself gives. */
  readonly low: number;
  readonly high: number;
  /** Ease the size has on the body of its own chart: the design. Null where the chart does not say. */
  readonly designed: number | null;
  readonly verdict: Verdict;
}

/**
 * A size is roomy only beyond its own design: a style cut with room at the waist is not called loose for
 * being as designed. Half a usual step between sizes (40 of girth) and a little more is let pass.
 */
const beyondDesign = 25;

/** Crosswise stretch that may be counted on, or null for a woven: the cloth's in hand, else what the pattern asks for. */
export const stretchCountedOn = (pattern: PatternFigures, cloth: Cloth | undefined): number | null => {
  if (cloth) return cloth.structure === 'knit' ? cloth.stretchAcross : null;
  return pattern.cloth.structure === 'knit' ? pattern.cloth.stretch : null;
};

/** Nobody cuts or sews to this, mm: within it what is at a border of the usual is usual. */
const borderline = 0.5;

const verdictOf = (ease: number, least: number, low: number, high: number): Verdict =>
  ease < least ? 'too-tight' : ease < low - borderline ? 'snug' : ease <= high + borderline ? 'usual' : 'roomy';

/**
 * The verdict on the figures as a reader sees them, `shown` rounding as they are printed: what reads as usual is
 * called usual. Too tight stays too tight, whatever rounding makes of it.
 */
export const verdictAsShown = (cell: EaseCell, shown: (mm: number) => number): Verdict =>
  cell.verdict === 'too-tight'
    ? 'too-tight'
    : verdictOf(shown(cell.ease), shown(cell.least), shown(cell.low), shown(cell.high));

export interface EaseQuestion {
  readonly figures: PatternFigures;
  readonly measures: Measures;
  readonly estimated: ReadonlySet<MeasureId>;
  readonly cloth: Cloth | undefined;
}

/** The most ease any size has by design at a level: one design is one style, whatever the size. Minus infinity where no chart says. */
const mostDesigned = (figures: PatternFigures, level: string): number =>
  Math.max(
    ...figures.sizes.map((size) => {
      const girth = size.girths.find((one) => one.level === level);
      const body = girth ? size.body[girth.measure] : undefined;
      return girth && body !== undefined ? girth.finished - body : -Infinity;
    }),
  );

/** From and to of what is usual at a level of this pattern: the trade's range, up to what the design itself gives and a little. */
export const usualOf = (figures: PatternFigures, level: string, range: EaseRange): Pick<EaseRange, 'low' | 'high'> => ({
  low: range.low,
  high: Math.max(range.high, mostDesigned(figures, level) + beyondDesign),
});

/** Whether ease lies within what is usual: at its border it does. */
export const isUsual = (ease: number, { low, high }: Pick<EaseRange, 'low' | 'high'>): boolean =>
  ease >= low - borderline && ease <= high + borderline;

/** One cell: a body of `body` mm in `finished` mm of garment. Null where the trade knows no usual ease there. */
export const easeCell = (question: EaseQuestion, of: SizeFigures, level: string, added = 0): EaseCell | null => {
  const { figures } = question;
  const girth = of.girths.find((one) => one.level === level);
  if (!girth) return null;
  const body = question.measures[girth.measure];
  const usual = usualEase(girth.measure, figures.kind);
  if (body === undefined || usual === null) return null;
  const stretch = stretchCountedOn(figures, question.cloth);
  const range = stretch === null ? usual : knitEase(body, stretch);
  const chart = of.body[girth.measure];
  const designed = chart === undefined ? null : girth.finished - chart;
  const { high } = usualOf(figures, level, range);
  const finished = girth.finished + added;
  const ease = finished - body;
  return {
    size: of.size,
    level,
    measure: girth.measure,
    around: girth.around,
    body,
    bodyEstimated: question.estimated.has(girth.measure),
    finished,
    finishedFrom: girth.from,
    ease,
    least: range.least,
    low: range.low,
    high,
    designed,
    verdict: verdictOf(ease, range.least, range.low, high),
  };
};

/** Levels of the pattern in its own order. */
export const levelsOf = (figures: PatternFigures): readonly string[] => [
  ...new Set(figures.sizes.flatMap((size) => size.girths.map((girth) => girth.level))),
];

/** Every level of one size, `added` mm more at the levels an alteration widens. */
export const easeCells = (
  question: EaseQuestion,
  of: SizeFigures,
  added: (measure: MeasureId) => number = () => 0,
): readonly EaseCell[] =>
  of.girths.flatMap((girth) => {
    const cell = easeCell(question, of, girth.level, added(girth.measure));
    return cell ? [cell] : [];
  });
