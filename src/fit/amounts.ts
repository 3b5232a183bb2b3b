import type { MeasureId, Measures } from '../body/index.ts';
import type { Pattern, Piece } from '../pattern/index.ts';
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

/** A length under this is within what a hem or the wearer's posture does. */
export const leastLength = 10;

/** An amount a person can mark: whole millimetres. */
const markable = (mm: number): number => Math.round(mm) + 0;

/** A front that a bust alteration can open: it knows its bust point and has a dart that may aim at it. */
const frontWithDart = (size: Pattern['sizes'][number]): Piece | undefined =>
  size.garment.pieces.find(
    (piece) =>
      piece.role === 'front' &&
      piece.landmarks.some((landmark) => landmark.id === 'bust-point') &&
      piece.darts.some((dart) => dart.aims === undefined || dart.aims === 'bust-point'),
  );

export interface BustAmount {
  readonly alteration: SuggestedAlteration | null;
  /** Bust + liked ease − finished bust, mm in all, before rounding. */
  readonly wanted: number;
  readonly likedEase: number;
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
  const none = (reason: Reason): BustAmount => ({ alteration: null, wanted, likedEase, reasons: [reason] });
  if (stretches) return none({ code: 'fit.bust-knit', values: { wanted: { mm: wanted } } });
  if (Math.abs(wanted) < leastBustAlteration || (wanted < 0 && -wanted < leastSmallBust)) {
    return none({ code: 'fit.bust-none', values: { wanted: { mm: wanted }, least: { mm: leastBustAlteration } } });
  }
  if (!frontWithDart(size)) return none({ code: 'fit.bust-no-dart', values: { wanted: { mm: wanted } } });
  // A front on the fold is one piece of two halves, a pair is two pieces: the bust has two halves either way.
  const count = 2;
  const name = wanted > 0 ? 'full-bust' : 'small-bust';
  const most = mostPerFront[name];
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
  return {
    alteration,
    wanted,
    likedEase,
    reasons: [
      {
        code: wanted > 0 ? 'fit.bust-full' : 'fit.bust-small',
        values: {
          bust: { mm: bust },
          liked: { mm: likedEase },
          finished: { mm: girth.finished },
          total: { mm: alteration.total },
          perFront: { mm: perPiece },
        },
      },
      ...(Math.abs(beyond) >= leastBustAlteration
        ? [{ code: 'fit.bust-beyond', values: { most: { mm: most }, left: { mm: beyond } } }]
        : []),
    ],
  };
};

interface LengthZone {
  readonly level: 'body-above-waist' | 'sleeve';
  readonly measure: MeasureId;
  readonly reason: string;
  readonly carries: (piece: Piece) => boolean;
}

const trunk: readonly Piece['role'][] = ['front', 'back'];

/** Zones that a body measure decides by itself. Below the waist it is where she wants the hem to land, which no measure says. */
const zones: readonly LengthZone[] = [
  {
    level: 'body-above-waist',
    measure: 'backWaistLength',
    reason: 'fit.length-back-waist',
    carries: (piece) => trunk.includes(piece.role) && piece.levels.some((level) => level.id === 'waist'),
  },
  {
    // A sleeve that does not reach the elbow ends where it looks well, whatever the arm's length.
    level: 'sleeve',
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
  for (const zone of zones) {
    const count = pieces
      .filter(zone.carries)
      .reduce((sum, piece) => sum + (piece.cut.find((order) => order.layer === 'shell')?.count ?? 0), 0);
    const body = measures[zone.measure];
    const chart = figures.body[zone.measure];
    if (count === 0 || body === undefined || chart === undefined) continue;
    if (estimated.has(zone.measure)) {
      reasons.push({ code: 'fit.length-not-measured', values: { measure: zone.measure } });
      continue;
    }
    const amount = markable(body - chart);
    if (Math.abs(amount) < leastLength) continue;
    alterations.push({
      id: `lengthen-shorten-${zone.level}`,
      alteration: 'lengthen-shorten',
      version: 1,
      on: true,
      params: { level: zone.level, amount },
      // Each piece is made longer by the whole amount; nothing is shared out.
      total: amount,
      perPiece: amount,
      count,
    });
    reasons.push({ code: zone.reason, values: { body: { mm: body }, chart: { mm: chart }, amount: { mm: amount } } });
  }
  return { alterations, reasons };
};
