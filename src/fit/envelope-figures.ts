import type { MeasureId } from '../body/index.ts';
import { chartBodies, type Envelope, type FinishedOf, finishedOf, isSleeveless } from '../pattern/index.ts';
import type { GirthFigure, LengthZone, PatternFigures, SizeFigures, UnknownFigure } from './figures.ts';
import type { Kind } from './usual-ease.ts';

/** A finished measurement fit judges by, the body measure it goes round, and the kinds of garment that want it. */
interface JudgedFigure {
  readonly of: FinishedOf;
  readonly measure: MeasureId;
  readonly around: GirthFigure['around'];
  /** Where it is missing it is asked for; elsewhere it is judged only if it is printed. */
  readonly wantedFor: readonly Kind[];
}

const upper: readonly Kind[] = ['top', 'dress', 'jacket', 'coat'];
const lower: readonly Kind[] = ['trousers', 'skirt'];

const judged: readonly JudgedFigure[] = [
  { of: 'bust', measure: 'bustGirth', around: 'body', wantedFor: upper },
  { of: 'waist', measure: 'waistGirth', around: 'body', wantedFor: [...upper, ...lower] },
  { of: 'hip', measure: 'hipGirth', around: 'body', wantedFor: [...upper, ...lower] },
  { of: 'across-back', measure: 'acrossBack', around: 'body', wantedFor: [] },
  { of: 'upper-arm', measure: 'upperArmGirth', around: 'limb', wantedFor: upper },
  { of: 'thigh', measure: 'thighGirth', around: 'limb', wantedFor: ['trousers'] },
  { of: 'knee', measure: 'kneeGirth', around: 'limb', wantedFor: [] },
];

/** The finished measurements a kind of garment is judged by, in the order they are told. */
export const levelsKnownBy = (kind: Kind): readonly FinishedOf[] =>
  judged.filter(({ wantedFor }) => wantedFor.includes(kind)).map(({ of }) => of);

/**
 * What there is to lengthen where nobody has seen the pieces: the usual construction, a front and a back of two halves
 * each and a pair of sleeves, or two fronts and two backs of trousers.
 */
const usualLengths = (kind: Kind, sleeveless: boolean): readonly LengthZone[] =>
  upper.includes(kind)
    ? [
        { where: 'above-waist', measure: 'backWaistLength', count: 4, room: null },
        ...(sleeveless ? [] : [{ where: 'sleeve', measure: 'armLength', count: 2, room: null } as const]),
      ]
    : kind === 'trousers'
      ? [
          { where: 'rise', measure: 'bodyRise', count: 4, room: null },
          { where: 'leg', measure: 'insideLeg', count: 4, room: null },
        ]
      : [];

/** Bust girth − upper bust girth the trade commonly drafts for, mm; supposed of a woven that does not state its own. */
const commonCup = 50;

const cupOf = (envelope: Envelope): Pick<PatternFigures, 'draftedCup' | 'cupSupposed'> => {
  if (envelope.draftedCup !== null) return { draftedCup: envelope.draftedCup, cupSupposed: false };
  const supposed = envelope.for === 'women' && upper.includes(envelope.kind) && envelope.cloth.structure === 'woven';
  return { draftedCup: supposed ? commonCup : null, cupSupposed: supposed };
};

/** What a view is judged by: of one without sleeves nothing round the arm. */
const judgedOf = (envelope: Envelope, view: string | null): readonly JudgedFigure[] => {
  const sleeveless = isSleeveless(envelope, view);
  return judged.filter(({ measure }) => !(sleeveless && measure === 'upperArmGirth'));
};

const girthsOf = (envelope: Envelope, view: string | null, size: string): readonly GirthFigure[] =>
  judgedOf(envelope, view).flatMap(({ of, measure, around }) => {
    const figure = finishedOf(envelope, size, view, of);
    return figure === null ? [] : [{ level: of, measure, around, finished: figure.mm, from: figure.from }];
  });

const unknownOf = (envelope: Envelope, view: string | null, sizes: readonly SizeFigures[]): readonly UnknownFigure[] =>
  judgedOf(envelope, view)
    .filter(({ wantedFor }) => wantedFor.includes(envelope.kind))
    .flatMap(({ of, measure }) => {
      const lacking = sizes.filter(({ girths }) => !girths.some(({ level }) => level === of));
      return lacking.length === 0 ? [] : [{ level: of, measure, flat: of, sizes: lacking.map(({ size }) => size) }];
    });

/**
 * What fit needs of a pattern known by its envelope alone, in one view (null: what is printed for all of them): the
 * body chart, finished measurements printed or measured flat, and of what nobody has seen what is usual for its kind.
 */
export const envelopeFigures = (envelope: Envelope, view: string | null): PatternFigures => {
  const shaped = envelope.for === 'women' && upper.includes(envelope.kind);
  const sizes = chartBodies(envelope).map(
    ({ id, body }): SizeFigures => ({
      size: id,
      body,
      girths: girthsOf(envelope, view, id),
      bustDart: shaped ? 'unseen' : null,
      lengths: usualLengths(envelope.kind, isSleeveless(envelope, view)),
    }),
  );
  return {
    name: envelope.name,
    for: envelope.for,
    kind: envelope.kind,
    cloth: envelope.cloth,
    knownBy: 'envelope',
    ...cupOf(envelope),
    draftedStature: envelope.draftedStature,
    sizes,
    unknown: unknownOf(envelope, view, sizes),
    envelope: { printed: envelope, view },
  };
};
