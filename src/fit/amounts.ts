import type { MeasureId, Measures } from '../body/index.ts';
import { type BustDart, intakeWith, mostOut, widestDart } from './bust-dart.ts';
import { isUsual, usualOf } from './ease-cells.ts';
import type { LengthZone, PatternFigures, SizeFigures } from './figures.ts';
import { usualBustDart } from './generic.ts';
import type { Reason } from './starting-size.ts';
import { usualEase } from './usual-ease.ts';

/** A suggested step, usable in an alteration list as it stands; amounts also in all and per piece, which the trade mixes up. */
export interface SuggestedAlteration {
  readonly id: string;
  readonly alteration: string;
  readonly version: number;
  readonly on: boolean;
  readonly params: Readonly<Record<string, number | string | boolean>>;
  /** In all, mm, signed. */
  readonly total: number;
  /** On each piece cut, mm, signed. */
  readonly perPiece: number;
  /** How many pieces share the total. */
  readonly count: number;
  /** Whether that many were counted on the pieces, or supposed after the kind's usual construction. */
  readonly counted: 'pieces' | 'usual';
}

/** A bust alteration under this in all is not worth its work. */
export const leastBustAlteration = 12;

/** Spare ease is worn more readily than missing ease: a small bust is altered for from twice as much. */
const leastSmallBust = 25;

/** The most one step of each bust alteration takes on a front half, mm: beyond it a side dart alone no longer shapes it. */
const mostPerFront = { 'full-bust': 60, 'small-bust': 40 } as const;

/** As far as one step shortens or lengthens, mm. */
const mostShorter = 120;
const mostLonger = 150;

/** A length under this is within what a hem or the wearer's posture does. */
export const leastLength = 10;

/** An amount a person can mark: whole millimetres. */
const markable = (mm: number): number => Math.round(mm) + 0;

export interface BustAmount {
  readonly alteration: SuggestedAlteration | null;
  /** Bust + liked ease − finished bust, mm in all, before rounding. */
  readonly wanted: number;
  /** Null where the finished bust is unknown: the ease then stays as designed, whatever it is. */
  readonly likedEase: number | null;
  /** How wide a full bust makes the dart, mm, where that is wider than a dart should be sewn; else null. */
  readonly wideDart: number | null;
  readonly reasons: readonly Reason[];
}

/** What the bust and its ease are set against: what the size measures finished, or else the body it is drafted for. */
const bustNeed = (pattern: PatternFigures, size: SizeFigures, bust: number, liked: number | undefined) => {
  const finished = size.girths.find((one) => one.measure === 'bustGirth')?.finished;
  const chart = size.body.bustGirth;
  const usual = usualEase('bustGirth', pattern.kind);
  if (usual === null) return null;
  if (finished === undefined) {
    const seen = pattern.knownBy === 'pieces' || chart === undefined;
    return seen ? null : { likedEase: null, against: chart, wanted: bust - chart };
  }
  const designed = chart === undefined ? usual.high : finished - chart;
  const likedEase = liked ?? Math.min(designed, usual.high);
  return { likedEase, against: finished, wanted: bust + likedEase - finished };
};

/** The ease at the bust and what is usual there, where it lies within that; null where it does not, or is not known. */
const withinUsual = (
  pattern: PatternFigures,
  size: SizeFigures,
  bust: number,
): NonNullable<Reason['values']> | null => {
  const girth = size.girths.find((one) => one.measure === 'bustGirth');
  const range = usualEase('bustGirth', pattern.kind);
  if (!girth || range === null) return null;
  const usual = usualOf(pattern, girth.level, range);
  const ease = girth.finished - bust;
  return isUsual(ease, usual) ? { ease: { mm: ease }, low: { mm: usual.low }, high: { mm: usual.high } } : null;
};

/** Most one step takes out on a front half, mm: whole, and a dart is not closed to its last one. */
const mostOn = (dart: BustDart | null, name: keyof typeof mostPerFront): number =>
  name === 'full-bust' || dart === null
    ? mostPerFront[name]
    : Math.min(mostPerFront[name], Math.floor(mostOut(dart) - 1));

/** The dart there is to close: the front's own, or where nobody has seen it the one such a front usually has. */
const dartToClose = (
  dart: BustDart | 'unseen',
  { envelope }: PatternFigures,
  size: string,
  name: keyof typeof mostPerFront,
): BustDart | null => {
  if (dart !== 'unseen') return dart;
  return name === 'small-bust' && envelope ? usualBustDart(envelope.printed, envelope.view, size) : null;
};

/**
 * Bust alteration in all = bust girth + liked ease − finished bust of the starting size; none under 12, and none
 * where the ease is within what is usual already, unless she is known to like another.
 * Unless she is known to like another, the liked ease is the design's, but no more than what is usual: what
 * a full design gives beyond that swallows a fuller bust. It is put on per front half. Where an envelope does not
 * give the finished bust: bust girth − the chart's, the ease left as designed.
 * Null where the pattern has no level for the bust. Without a bust dart there is nothing to open; where nobody has
 * seen the pieces, that is said, and the rest follows the usual construction.
 */
export const bustAmount = (
  pattern: PatternFigures,
  size: SizeFigures,
  measures: Measures,
  liked: number | undefined,
  stretches: boolean,
): BustAmount | null => {
  const bust = measures.bustGirth;
  const need = bust === undefined ? null : bustNeed(pattern, size, bust, liked);
  if (bust === undefined || need === null) return null;
  const { wanted, likedEase } = need;
  const none = (reason: Reason): BustAmount => ({
    alteration: null,
    wanted,
    likedEase,
    wideDart: null,
    reasons: [reason],
  });
  if (stretches) return none({ code: 'fit.bust-knit', values: { wanted: { mm: wanted } } });
  if (Math.abs(wanted) < leastBustAlteration) {
    return none({ code: 'fit.bust-none', values: { wanted: { mm: Math.abs(wanted) } } });
  }
  if (wanted < 0 && -wanted < leastSmallBust) {
    return none({ code: 'fit.bust-spare', values: { spare: { mm: -wanted }, least: { mm: leastSmallBust } } });
  }
  const within = liked === undefined ? withinUsual(pattern, size, bust) : null;
  if (within !== null) return none({ code: 'fit.bust-usual', values: within });
  const dart = size.bustDart;
  if (!dart) return none({ code: 'fit.bust-no-dart', values: { wanted: { mm: wanted } } });
  // A front on the fold is one piece of two halves, a pair is two pieces: the bust has two halves either way.
  const count = 2;
  const name = wanted > 0 ? 'full-bust' : 'small-bust';
  const closed = dartToClose(dart, pattern, size.size, name);
  const most = mostOn(closed, name);
  const unseen = dart === 'unseen' && closed !== null ? '-unseen' : '';
  if (most * count < leastBustAlteration) {
    const inDart = closed === null ? most : mostOut(closed);
    return none({ code: `fit.bust-shallow-dart${unseen}`, values: { wanted: { mm: wanted }, most: { mm: inDart } } });
  }
  const perPiece = Math.max(-most, Math.min(most, markable(wanted / count)));
  const beyond = wanted - perPiece * count;
  const alteration: SuggestedAlteration = {
    id: name,
    alteration: name,
    version: 1,
    on: true,
    params: { amount: Math.abs(perPiece) },
    total: perPiece * count,
    perPiece,
    count,
    counted: dart === 'unseen' ? 'usual' : 'pieces',
  };
  const intake = wanted > 0 && dart !== 'unseen' ? intakeWith(dart, perPiece) : 0;
  const wideDart = intake > widestDart ? intake : null;
  const code = wanted > 0 ? 'fit.bust-full' : 'fit.bust-small';
  return {
    alteration,
    wanted,
    likedEase,
    wideDart,
    reasons: [
      {
        code: likedEase === null ? `${code}-by-chart` : code,
        values: {
          bust: { mm: bust },
          liked: { mm: likedEase ?? 0 },
          finished: { mm: need.against },
          perFront: { mm: Math.abs(perPiece) },
          count,
        },
      },
      ...(dart === 'unseen' ? [{ code: 'fit.bust-dart-unseen' }] : []),
      ...(wideDart === null
        ? []
        : [{ code: 'fit.bust-dart-wide', values: { intake: { mm: wideDart }, widest: { mm: widestDart } } }]),
      ...(Math.abs(beyond) >= leastBustAlteration
        ? [
            {
              code: wanted > 0 ? 'fit.bust-beyond' : `fit.bust-small-beyond${unseen}`,
              values: { most: { mm: most }, left: { mm: Math.abs(beyond) } },
            },
          ]
        : []),
    ],
  };
};

const lengthReason: Readonly<Record<LengthZone['where'], string>> = {
  'above-waist': 'fit.length-back-waist',
  rise: 'fit.length-rise',
  leg: 'fit.length-leg',
  sleeve: 'fit.length-sleeve',
};

/**
 * Lengths zone by zone against the body the size is drafted for. Only from measured lengths: an estimate is
 * no ground to cut a pattern. Where an envelope's chart does not give the length, it is said how to find it.
 */
export const lengthAmounts = (
  pattern: PatternFigures,
  size: SizeFigures,
  measures: Measures,
  estimated: ReadonlySet<MeasureId>,
): { readonly alterations: readonly SuggestedAlteration[]; readonly reasons: readonly Reason[] } => {
  const counted = pattern.knownBy === 'pieces' ? 'pieces' : 'usual';
  const alterations: SuggestedAlteration[] = [];
  const reasons: Reason[] = [];
  const agreeing: MeasureId[] = [];
  for (const { where, measure, count, room } of size.lengths) {
    const body = measures[measure];
    const chart = size.body[measure];
    if (body === undefined) continue;
    if (chart === undefined) {
      if (counted === 'usual') reasons.push({ code: 'fit.length-not-on-chart', values: { measure } });
      continue;
    }
    if (estimated.has(measure)) {
      reasons.push({ code: 'fit.length-not-measured', values: { measure } });
      continue;
    }
    const wanted = markable(body - chart);
    const shortest = room === null ? mostShorter : Math.min(mostShorter, Math.floor(room - 1));
    const amount = Math.max(-shortest, Math.min(mostLonger, wanted));
    if (Math.abs(wanted) < leastLength) agreeing.push(measure);
    if (Math.abs(amount) < leastLength) continue;
    alterations.push({
      id: `lengthen-${where}`,
      alteration: 'lengthen-shorten',
      version: 1,
      on: true,
      params: { where, amount },
      // Each piece is made longer by the whole amount; nothing is shared out.
      total: amount,
      perPiece: amount,
      count,
      counted,
    });
    reasons.push({
      code: lengthReason[where],
      values: { body: { mm: body }, chart: { mm: chart }, amount: { mm: amount } },
    });
    if (Math.abs(wanted - amount) >= leastLength) {
      reasons.push({ code: 'fit.length-beyond', values: { amount: { mm: amount }, left: { mm: wanted - amount } } });
    }
  }
  const [one, other] = agreeing;
  if (one !== undefined && other !== undefined) {
    reasons.unshift({ code: 'fit.lengths-agree', values: { measure: one, other, within: { mm: leastLength } } });
  } else if (one !== undefined) {
    reasons.unshift({ code: 'fit.length-agrees', values: { measure: one, within: { mm: leastLength } } });
  }
  return { alterations, reasons };
};
