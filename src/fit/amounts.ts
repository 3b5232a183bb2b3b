import type { MeasureId, Measures } from '../body/index.ts';
import { pathStart } from '../geometry/index.ts';
import { dartsOf, type Pattern, type Piece } from '../pattern/index.ts';
import { bustDart, widestDart } from './bust-dart.ts';
import type { SizeFigures } from './figures.ts';
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
  readonly likedEase: number;
  /** How wide a full bust makes the dart, mm, where that is wider than a dart should be sewn; else null. */
  readonly wideDart: number | null;
  readonly reasons: readonly Reason[];
}

/**
 * Bust alteration in all = bust girth + liked ease − finished bust of the starting size; none under 12.
 * Unless she is known to like another, the liked ease is the design's, but no more than what is usual: what
 * a full design gives beyond that swallows a fuller bust. It is put on per front half.
 * Null where the pattern has no level for the bust. Without a bust dart there is nothing to open.
 */
export const bustAmount = (
  pattern: Pattern,
  figures: SizeFigures,
  measures: Measures,
  liked: number | undefined,
  stretches: boolean,
): BustAmount | null => {
  const girth = figures.girths.find((one) => one.measure === 'bustGirth');
  const bust = measures.bustGirth;
  const usual = usualEase('bustGirth', pattern.kind);
  const size = pattern.sizes.find((one) => one.id === figures.size);
  if (!girth || bust === undefined || !usual || !size) return null;
  const chart = figures.body.bustGirth;
  const designed = chart === undefined ? usual.high : girth.finished - chart;
  const likedEase = liked ?? Math.min(designed, usual.high);
  const wanted = bust + likedEase - girth.finished;
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
  const front = size.garment.pieces.find((piece) => piece.role === 'front' && bustDart(piece) !== null);
  const dart = front ? bustDart(front) : null;
  if (!dart) return none({ code: 'fit.bust-no-dart', values: { wanted: { mm: wanted } } });
  // A front on the fold is one piece of two halves, a pair is two pieces: the bust has two halves either way.
  const count = 2;
  const name = wanted > 0 ? 'full-bust' : 'small-bust';
  // Whole millimetres, and a dart is not closed to its last one.
  const most = wanted > 0 ? mostPerFront[name] : Math.min(mostPerFront[name], Math.floor(dart.mostOut - 1));
  if (most * count < leastBustAlteration) {
    return none({ code: 'fit.bust-shallow-dart', values: { wanted: { mm: wanted }, most: { mm: dart.mostOut } } });
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
  };
  const intake = wanted > 0 ? dart.intakeWith(perPiece) : 0;
  const wideDart = intake > widestDart ? intake : null;
  return {
    alteration,
    wanted,
    likedEase,
    wideDart,
    reasons: [
      {
        code: wanted > 0 ? 'fit.bust-full' : 'fit.bust-small',
        values: {
          bust: { mm: bust },
          liked: { mm: likedEase },
          finished: { mm: girth.finished },
          perFront: { mm: Math.abs(perPiece) },
          count,
        },
      },
      ...(wideDart === null
        ? []
        : [{ code: 'fit.bust-dart-wide', values: { intake: { mm: wideDart }, widest: { mm: widestDart } } }]),
      ...(Math.abs(beyond) >= leastBustAlteration
        ? [
            {
              code: wanted > 0 ? 'fit.bust-beyond' : 'fit.bust-small-beyond',
              values: { most: { mm: most }, left: { mm: Math.abs(beyond) } },
            },
          ]
        : []),
    ],
  };
};

interface LengthZone {
  /** As the alteration names it. */
  readonly where: 'above-waist' | 'sleeve';
  readonly measure: MeasureId;
  readonly reason: string;
  readonly carries: (piece: Piece) => boolean;
}

/**
 * How far a piece can be shortened at its lengthening line before the lower part would lie over a corner or a dart
 * above it, mm. Of several lines the one the alteration uses: on a sleeve the lowest, above the waist the one next to it.
 */
const roomToShorten = (piece: Piece, zone: LengthZone): number => {
  const waist = piece.levels.find((level) => level.id === 'waist')?.from.y ?? Infinity;
  const below = zone.where === 'sleeve' ? Infinity : waist;
  const line = Math.max(
    ...piece.lines
      .filter(({ kind }) => kind === 'lengthen-or-shorten')
      .map(({ path }) => pathStart(path).y)
      .filter((y) => y < below),
  );
  if (!Number.isFinite(line)) return Infinity;
  const marks = [
    ...piece.runs.map((run) => pathStart(run.path).y),
    ...dartsOf(piece).flatMap(({ point, legs }) => [point.y, legs[0].y, legs[1].y]),
  ];
  return line - Math.max(...marks.filter((y) => y < line));
};

const trunk: readonly Piece['role'][] = ['front', 'back'];

/** Zones that a body measure decides by itself. Below the waist it is where she wants the hem to land, which no measure says. */
const zones: readonly LengthZone[] = [
  {
    where: 'above-waist',
    measure: 'backWaistLength',
    reason: 'fit.length-back-waist',
    carries: (piece) => trunk.includes(piece.role) && piece.levels.some((level) => level.id === 'waist'),
  },
  {
    // A sleeve that does not reach the elbow ends where it looks well, whatever the arm's length.
    where: 'sleeve',
    measure: 'armLength',
    reason: 'fit.length-sleeve',
    carries: (piece) => piece.role === 'sleeve' && piece.levels.some((level) => level.id === 'elbow'),
  },
];

/**
 * Lengths zone by zone against the body the size is drafted for. Only from measured lengths: an estimate is
 * no ground to cut a pattern.
 */
export const lengthAmounts = (
  pattern: Pattern,
  figures: SizeFigures,
  measures: Measures,
  estimated: ReadonlySet<MeasureId>,
): { readonly alterations: readonly SuggestedAlteration[]; readonly reasons: readonly Reason[] } => {
  const pieces = pattern.sizes.find((one) => one.id === figures.size)?.garment.pieces ?? [];
  const alterations: SuggestedAlteration[] = [];
  const reasons: Reason[] = [];
  const agreeing: MeasureId[] = [];
  for (const zone of zones) {
    const carriers = pieces.filter(zone.carries);
    const count = carriers.reduce(
      (sum, piece) => sum + (piece.cut.find((order) => order.layer === 'shell')?.count ?? 0),
      0,
    );
    const body = measures[zone.measure];
    const chart = figures.body[zone.measure];
    if (count === 0 || body === undefined || chart === undefined) continue;
    if (estimated.has(zone.measure)) {
      reasons.push({ code: 'fit.length-not-measured', values: { measure: zone.measure } });
      continue;
    }
    const wanted = markable(body - chart);
    const room = Math.floor(Math.min(...carriers.map((piece) => roomToShorten(piece, zone))) - 1);
    const amount = Math.max(-mostShorter, -room, Math.min(mostLonger, wanted));
    if (Math.abs(wanted) < leastLength) agreeing.push(zone.measure);
    if (Math.abs(amount) < leastLength) continue;
    alterations.push({
      id: `lengthen-${zone.where}`,
      alteration: 'lengthen-shorten',
      version: 1,
      on: true,
      params: { where: zone.where, amount },
      // Each piece is made longer by the whole amount; nothing is shared out.
      total: amount,
      perPiece: amount,
      count,
    });
    reasons.push({ code: zone.reason, values: { body: { mm: body }, chart: { mm: chart }, amount: { mm: amount } } });
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
