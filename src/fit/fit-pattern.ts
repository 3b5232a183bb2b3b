import { completeMeasures, describeMeasure, impossibleMeasures, type MeasureId, type Measures } from '../body/index.ts';
import type { Cloth } from '../cloth/index.ts';
import type { Pattern } from '../pattern/index.ts';
import { bad, good, type Result } from '../units/index.ts';
import { bustAmount } from './amounts.ts';
import { type EaseCell, type EaseQuestion, easeCells, stretchCountedOn } from './ease-cells.ts';
import { type PatternFigures, patternFigures, type UnknownFigure } from './figures.ts';
import { nearestSize, type Reason, type SizeChoice, type SizeScale, sizeScale, upForStretch } from './starting-size.ts';
import { type EaseWord, easeWord } from './usual-ease.ts';
import { type Way, wayFrom } from './ways.ts';

export interface FitQuestion {
  readonly measures: Measures;
  /** The pattern itself, or its figures, as an envelope gives them. */
  readonly pattern: Pattern | PatternFigures;
  readonly cloth?: Cloth;
  /** Ease this wearer is known to like, mm by level id; outranks every starting belief. */
  readonly liked?: Readonly<Record<string, number>>;
  /** A size she chose herself, instead of the one that would be recommended. */
  readonly size?: string;
  /** The pattern's figures, if they have been computed before. */
  readonly figures?: PatternFigures;
}

export interface Fit {
  /** Which of the ways is recommended. */
  readonly recommended: number;
  readonly ways: readonly Way[];
  /** Ease of every size at every level, unaltered. */
  readonly sizes: readonly {
    readonly size: string;
    readonly cells: readonly EaseCell[];
    /** How it sits, by its ease at the bust; null for what has no bust level or is a knit. */
    readonly word: EaseWord | null;
  }[];
  /** By what the starting size was chosen, and where between the sizes the body lies. */
  readonly scale: SizeScale & { readonly position: number; readonly close: boolean };
  /** The body all this was computed for. */
  readonly body: Measures;
  /** Measures that were not known and are estimates in it. */
  readonly estimated: readonly MeasureId[];
  /** Levels it could not be judged at, and what to measure flat on the tissue to have them. */
  readonly unknown: readonly UnknownFigure[];
}

/** Measures the answer leans on: what the levels go round, what chooses the size, what decides lengths. */
const leanedOn = (figures: PatternFigures): readonly MeasureId[] => [
  ...new Set<MeasureId>([
    ...(figures.sizes[0]?.girths.map((girth) => girth.measure) ?? []),
    'bustGirth',
    'upperBustGirth',
    'backWaistLength',
    'armLength',
  ]),
];

/** Without one of these nothing can be said about a garment for that part of the body. */
const atLeastOneOf = (pattern: PatternFigures): readonly MeasureId[] =>
  pattern.for === 'child'
    ? ['stature']
    : pattern.kind === 'trousers' || pattern.kind === 'skirt'
      ? ['hipGirth', 'waistGirth']
      : ['bustGirth', 'upperBustGirth'];

/** Known measures, and the rest estimated from the survey of the sex the pattern is drafted for; a child's are never estimated. */
const bodyFor = (
  known: Measures,
  pattern: PatternFigures,
): { readonly measures: Measures; readonly estimated: readonly MeasureId[] } =>
  pattern.for === 'child'
    ? { measures: known, estimated: [] }
    : completeMeasures(known, pattern.for === 'men' ? 'men' : 'women');

const sizeReasons = (scale: SizeScale, choice: SizeChoice, figures: PatternFigures): readonly Reason[] => {
  const name = (index: number): string => figures.sizes[index]?.size ?? '';
  const chart = scale.chart[choice.index] ?? 0;
  const bust = figures.sizes[choice.index]?.body.bustGirth;
  const values = {
    size: name(choice.index),
    body: { mm: scale.body },
    chart: { mm: chart },
    ...(scale.by === 'upper-bust' && bust !== undefined ? { bust: { mm: bust }, cup: { mm: bust - chart } } : {}),
  };
  const reasons: Reason[] = [{ code: `fit.size-by-${scale.by}`, values }];
  if (scale.by === 'upper-bust' && figures.cupSupposed && bust !== undefined) {
    reasons.push({ code: 'fit.cup-supposed', values: { cup: { mm: bust - chart } } });
  }
  if (choice.outside > 0)
    reasons.push({ code: 'fit.size-outside-chart', values: { ...values, by: { mm: choice.outside } } });
  if (choice.close && choice.next !== null) {
    reasons.push({ code: 'fit.size-close-call', values: { size: name(choice.index), next: name(choice.next) } });
  }
  return reasons;
};

const estimateReasons = (estimated: readonly MeasureId[], figures: PatternFigures, body: Measures): readonly Reason[] =>
  leanedOn(figures)
    .filter((id) => estimated.includes(id))
    .map((id) => ({
      code: 'fit.estimated',
      values: { measure: id, length: { mm: body[id] ?? 0 } },
    }));

/**
 * Where two sizes are a close call, the larger of them if from the smaller the full bust would open the dart wider
 * than one is sewn; else the nearest. Only ever up, and the dart only grows with the bust: a larger body still never
 * gets a smaller size.
 */
const upForDart = (question: EaseQuestion, choice: SizeChoice, liked: number | undefined): number => {
  const { figures, measures } = question;
  const here = figures.sizes[choice.index];
  if (!choice.close || choice.next === null || choice.next < choice.index || !here) return choice.index;
  const bust = bustAmount(figures, here, measures, liked, false);
  return bust !== null && bust.wideDart !== null ? choice.next : choice.index;
};

/** Said before all else: a pattern drafted for a knit cut in cloth that does not give, or the reverse. */
const clothReasons = (pattern: PatternFigures, cloth: Cloth | undefined): readonly Reason[] => {
  if (!cloth) return [];
  const needed = pattern.cloth.stretch;
  const values = {
    pattern: pattern.name,
    cloth: cloth.name,
    needed: percent(needed),
    has: percent(cloth.stretchAcross),
  };
  if (pattern.cloth.structure === 'knit' && cloth.structure === 'woven') return [{ code: 'fit.wants-knit', values }];
  if (pattern.cloth.structure === 'woven' && cloth.structure === 'knit') return [{ code: 'fit.wants-woven', values }];
  return cloth.stretchAcross < needed ? [{ code: 'fit.stretch-too-little', values }] : [];
};

/** True of a reason that warns of the cloth itself, whatever the size. */
export const isClothCaution = (reason: Reason): boolean =>
  ['fit.wants-knit', 'fit.wants-woven', 'fit.stretch-too-little'].includes(reason.code);

const percent = (fraction: number): number => Math.round(fraction * 1000) / 10;

/** The other way worth seeing: the size the full bust alone would say, or else the next nearest. */
const otherWay = (
  question: EaseQuestion,
  chosen: number,
  choice: SizeChoice,
  liked: number | undefined,
): Way | null => {
  const { figures: pattern, measures } = question;
  const figures = pattern.sizes;
  const charts = figures.map((size) => size.body.bustGirth);
  const bust = measures.bustGirth;
  const stretches = stretchCountedOn(pattern, question.cloth) !== null;
  if (!stretches && bust !== undefined && pattern.draftedCup !== null && charts.every((one) => one !== undefined)) {
    const byBust = nearestSize(charts, bust).index;
    const upper = (charts[byBust] ?? 0) - pattern.draftedCup;
    const by = upper - (measures.upperBustGirth ?? upper);
    if (byBust !== chosen) {
      return wayFrom(question, byBust, liked, [
        { code: 'fit.size-by-full-bust', values: { size: figures[byBust]?.size ?? '', bust: { mm: bust } } },
        {
          code: by > 0 ? 'fit.shoulders-too-wide' : 'fit.shoulders-too-narrow',
          values: { by: { mm: Math.abs(by) } },
        },
      ]);
    }
  }
  // Knits gone up for stretch have the size below them as their neighbour; else the one nearest after the chosen.
  const next = chosen === choice.index ? choice.next : chosen - 1;
  const size = next === null ? undefined : figures[next];
  if (next === null || !size) return null;
  const code = next > chosen ? 'fit.size-next-larger' : 'fit.size-next-smaller';
  return wayFrom(question, next, liked, [{ code, values: { size: size.size } }]);
};

/**
 * How a pattern will fit: ease at every level of every size, a recommended starting size with its
 * alterations and reasons, and one other way. Works from whatever measures are known and says which are
 * estimated.
 *
 * Problems: an impossible measure (`body.impossible`); none of the measures the garment hangs on
 * (`fit.measure-missing`); a size that is not in the chart (`fit.size-unknown`); a pattern without sizes or
 * whose chart lacks what sizes are chosen by (`fit.chart-incomplete`).
 */
export const fitPattern = (asked: FitQuestion): Result<Fit> => {
  const { cloth, measures: known } = asked;
  const pattern = asked.figures ?? ('format' in asked.pattern ? patternFigures(asked.pattern) : asked.pattern);
  const { sizes } = pattern;
  const impossible = impossibleMeasures(known, pattern.for === 'child' ? 'child' : 'adult')[0];
  if (impossible) return { ok: false, problem: impossible };
  const needed = atLeastOneOf(pattern);
  if (!needed.some((id) => known[id] !== undefined)) {
    return bad('fit.measure-missing', {
      measures: needed.map((id) => describeMeasure(id).name.toLowerCase()).join(' / '),
    });
  }
  const { measures, estimated } = bodyFor(known, pattern);
  const question: EaseQuestion = { figures: pattern, measures, estimated: new Set(estimated), cloth };
  const bustLevel = sizes[0]?.girths.find((girth) => girth.measure === 'bustGirth')?.level;
  const liked = bustLevel === undefined ? undefined : asked.liked?.[bustLevel];
  const scale = sizeScale(question, liked);
  if (sizes.length === 0 || scale === null) return bad('fit.chart-incomplete', { pattern: pattern.name });

  const choice = nearestSize(scale.chart, scale.body);
  const stretches = stretchCountedOn(pattern, cloth) !== null;
  const settled = stretches ? upForStretch(question, choice.index) : upForDart(question, choice, liked);
  const own = asked.size === undefined ? settled : sizes.findIndex((size) => size.size === asked.size);
  if (own < 0) {
    return bad('fit.size-unknown', {
      size: asked.size ?? '',
      pattern: pattern.name,
      sizes: sizes.map((size) => size.size).join(', '),
    });
  }
  const ofCloth = clothReasons(pattern, cloth);
  const because: Reason[] = [
    ...ofCloth,
    ...(own === settled
      ? sizeReasons(scale, choice, pattern)
      : [{ code: 'fit.size-chosen', values: { size: asked.size ?? '' } }]),
  ];
  if (own === settled && settled !== choice.index) {
    const up = { size: sizes[settled]?.size ?? '', from: sizes[choice.index]?.size ?? '' };
    because.push({ code: stretches ? 'fit.size-up-for-stretch' : 'fit.size-up-for-dart', values: up });
  }
  const first = wayFrom(question, own, liked, [...because, ...estimateReasons(estimated, pattern, measures)]);
  const second =
    own === settled
      ? otherWay(question, own, choice, liked)
      : wayFrom(question, settled, liked, sizeReasons(scale, choice, pattern));
  const others = second ? [{ ...second, reasons: [...ofCloth, ...second.reasons] }] : [];
  return good({
    recommended: 0,
    ways: [first, ...others],
    sizes: sizes.map((size) => {
      const cells = easeCells(question, size);
      const bust = cells.find((cell) => cell.measure === 'bustGirth');
      return { size: size.size, cells, word: bust && !stretches ? easeWord(bust.ease) : null };
    }),
    scale: { ...scale, position: choice.position, close: choice.close },
    body: measures,
    estimated,
    unknown: pattern.unknown,
  });
};
