import type { MeasureId } from '../body/index.ts';
import { bustAmount, lengthAmounts, type SuggestedAlteration } from './amounts.ts';
import { type EaseCell, type EaseQuestion, easeCell, easeCells, stretchCountedOn } from './ease-cells.ts';
import type { SizeFigures } from './figures.ts';
import type { Reason } from './starting-size.ts';

/** A starting size with what must be altered in it: one way to a garment that fits. */
export interface Way {
  readonly startingSize: string;
  /** Sizes the front and the back are cut in. */
  readonly front: string;
  readonly back: string;
  /** Other sizes to run out to at a level, drawn smoothly into the starting size above it. */
  readonly blend: readonly { readonly level: string; readonly size: string }[];
  /** Ease after the alterations, before the blends. */
  readonly ease: readonly EaseCell[];
  readonly alterations: readonly SuggestedAlteration[];
  /** Work on the paper before cutting, in minutes: a starting belief, until her own log says better. */
  readonly minutes: number;
  readonly reasons: readonly Reason[];
}

/** Minutes of work on the paper, drawn, taped and walked again. Starting beliefs of ours. */
const minutesFor: Readonly<Record<string, number>> = {
  'full-bust': 45,
  'small-bust': 45,
  'lengthen-shorten': 15,
  'full-upper-arm': 40,
};
const minutesForBlend = 10;

/** A bust alteration spreads every width of the front below the bust as well, until it is taken out again there. */
const widenedWithBust: readonly MeasureId[] = ['bustGirth', 'waistGirth', 'abdomenGirth', 'hipGirth'];

/** Levels that can be drawn out to another size below the armhole. */
const blendable: readonly MeasureId[] = ['waistGirth', 'abdomenGirth', 'hipGirth'];

/**
 * The size to run out to at a level that is too tight or snug (the first larger size within usual) or
 * roomy (the first smaller one within usual); null where the starting size serves or none does better.
 */
const blendFor = (question: EaseQuestion, cell: EaseCell, start: number, added: number): string | null => {
  if (!blendable.includes(cell.measure) || cell.verdict === 'usual') return null;
  const larger = cell.verdict !== 'roomy';
  const { sizes } = question.figures;
  const candidates = larger ? sizes.slice(start + 1) : sizes.slice(0, start).toReversed();
  const fitting = candidates.find((size) => easeCell(question, size, cell.level, added)?.verdict === 'usual');
  if (fitting) return fitting.size;
  if (!larger) return null;
  return cell.verdict === 'too-tight' ? (candidates.at(-1)?.size ?? null) : null;
};

const valuesOf = (cell: EaseCell) => ({
  level: cell.level,
  ease: { mm: cell.ease },
  least: { mm: cell.least },
  low: { mm: cell.low },
});

/** Of pieces the first larger size whose sleeve is wide enough: finished measurements do not say whether the sleeve can be opened. */
const tightArm = (question: EaseQuestion, cell: EaseCell, index: number): Reason => {
  const wider = question.figures.sizes
    .slice(index + 1)
    .find((size) => (easeCell(question, size, cell.level)?.verdict ?? 'too-tight') !== 'too-tight');
  return wider
    ? { code: 'fit.arm-too-tight', values: { ...valuesOf(cell), size: wider.size } }
    : { code: 'fit.arm-too-tight-in-all', values: valuesOf(cell) };
};

const cellReason = (question: EaseQuestion, cell: EaseCell, index: number): Reason | null => {
  if (cell.verdict === 'too-tight') {
    return cell.measure === 'upperArmGirth'
      ? tightArm(question, cell, index)
      : { code: 'fit.level-too-tight', values: valuesOf(cell) };
  }
  return cell.verdict === 'snug' ? { code: 'fit.level-snug', values: valuesOf(cell) } : null;
};

/** Sleeves are a pair. */
const sleeves = 2;

/** The most a card widens a sleeve by, mm round the arm: beyond this even a high cap lies flat. */
export const mostRoundArm = 120;

/**
 * What widens a sleeve that is too tight to what is usual, where its card can show how: of an envelope's tissue. Whether
 * the pieces of a sleeve bear it only the alteration itself can tell, so for those a larger size is named instead.
 */
const armAmount = (
  question: EaseQuestion,
  figures: SizeFigures,
): { readonly alteration: SuggestedAlteration; readonly reason: Reason } | null => {
  if (question.figures.knownBy !== 'envelope' || stretchCountedOn(question.figures, question.cloth) !== null)
    return null;
  const cell = easeCells(question, figures).find(({ measure }) => measure === 'upperArmGirth');
  if (cell?.verdict !== 'too-tight') return null;
  const amount = Math.min(mostRoundArm, Math.ceil(cell.low - cell.ease));
  return {
    alteration: {
      id: 'full-upper-arm',
      alteration: 'full-upper-arm',
      version: 1,
      on: true,
      params: { amount },
      // Every sleeve takes all of it; nothing is shared out.
      total: amount,
      perPiece: amount,
      count: sleeves,
      counted: 'usual',
    },
    reason: { code: 'fit.arm-full', values: { ...valuesOf(cell), amount: { mm: amount } } },
  };
};

/** What the size itself is too tight for, and the full bust mends below the bust: said, for the size alone would not do. */
const mendedReasons = (question: EaseQuestion, figures: SizeFigures, altered: readonly EaseCell[]): readonly Reason[] =>
  altered.flatMap((cell): Reason[] => {
    const before = easeCell(question, figures, cell.level);
    const byBust = widenedWithBust.includes(cell.measure) && cell.measure !== 'bustGirth';
    if (before?.verdict !== 'too-tight' || cell.verdict === 'too-tight' || !byBust) return [];
    return [{ code: 'fit.mended-by-bust', values: { ...valuesOf(before), after: { mm: cell.ease } } }];
  });

/** What cannot be judged in this size for want of a finished measurement, and what to measure flat to have it. */
const unknownReasons = ({ figures }: EaseQuestion, size: string): readonly Reason[] =>
  figures.unknown
    .filter(({ sizes }) => sizes.includes(size))
    .map(({ level, sizes }) => {
      const known = figures.sizes.filter((one) => !sizes.includes(one.size)).map((one) => one.size);
      return known.length === 0
        ? { code: 'fit.finished-unknown', values: { level, size } }
        : { code: 'fit.finished-known-elsewhere', values: { level, size, known: known.join(', ') } };
    });

/** What was counted on unseen pieces, of the kind in hand. */
const usualConstruction = ({ figures }: EaseQuestion, { lengths }: SizeFigures): Reason => {
  if (figures.kind === 'trousers') return { code: 'fit.usual-construction-trousers' };
  const sleeves = lengths.some(({ where }) => where === 'sleeve');
  return { code: sleeves ? 'fit.usual-construction' : 'fit.usual-construction-sleeveless' };
};

/** What it takes to make the size at `index` fit, and how it then sits. `because` are the reasons for the size itself. */
export const wayFrom = (
  question: EaseQuestion,
  index: number,
  likedBustEase: number | undefined,
  because: readonly Reason[],
): Way => {
  const pattern = question.figures;
  const figures = pattern.sizes[index] as SizeFigures;
  const { measures, estimated } = question;
  const sizes = pattern.sizes.map((one) => one.size);
  const stretches = stretchCountedOn(pattern, question.cloth) !== null;
  const bust = bustAmount(pattern, figures, measures, likedBustEase, stretches);
  const lengths = lengthAmounts(pattern, figures, measures, estimated);
  const arm = armAmount(question, figures);
  const alterations = [
    ...(bust?.alteration ? [bust.alteration] : []),
    ...lengths.alterations,
    ...(arm ? [arm.alteration] : []),
  ];
  const added = (measure: MeasureId): number => {
    if (measure === 'upperArmGirth') return arm?.alteration.total ?? 0;
    const reached =
      widenedWithBust.includes(measure) &&
      !figures.girths.some((girth) => girth.measure === measure && girth.apartFromFront);
    return bust?.alteration && reached ? bust.alteration.total : 0;
  };
  const ease = easeCells(question, figures, added);
  const blend = ease.flatMap((cell) => {
    const size = blendFor(question, cell, index, added(cell.measure));
    return size === null ? [] : [{ level: cell.level, size }];
  });
  // Nobody can print the sizes of an envelope; a card shows how they are drawn into one another on the tissue.
  const byCard = pattern.knownBy === 'envelope' ? '-by-card' : '';
  const minutes = alterations.reduce(
    (sum, one) => sum + (minutesFor[one.alteration] ?? 0),
    blend.length * minutesForBlend,
  );
  return {
    startingSize: figures.size,
    front: figures.size,
    back: figures.size,
    blend,
    ease,
    alterations,
    minutes,
    reasons: [
      ...because,
      ...(bust?.reasons ?? []),
      ...lengths.reasons,
      ...(arm ? [arm.reason] : []),
      ...mendedReasons(question, figures, ease),
      ...ease.flatMap((cell) => cellReason(question, cell, index) ?? []),
      ...blend.map(
        ({ level, size }): Reason => ({
          code: `fit.blend-${sizes.indexOf(size) > index ? 'out' : 'in'}${byCard}`,
          values: { level, size },
        }),
      ),
      ...unknownReasons(question, figures.size),
      ...(alterations.some(({ counted }) => counted === 'usual') ? [usualConstruction(question, figures)] : []),
    ],
  };
};
