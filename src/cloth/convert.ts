import { bad, good, lengthToBuy, type Problem, type Result, type Unit } from '../units/index.ts';
import { usualShrinkage } from './shrinkage.ts';
import type { Cloth } from './types.ts';

/** How the cloth lies when it is cut: one layer, or folded along its length with the selvages together. */
export type ClothLaid = 'single' | 'lengthwise';

export interface ClothConversion {
  /** Cloth needed as printed, mm; of a range the larger. */
  readonly needed: number | readonly [low: number, high: number];
  /** Width it is printed for, and usable width of the cloth it is wanted in, mm. */
  readonly fromWidth: number;
  readonly toWidth: number;
  /** Whether all is laid one way: what the printed length allows for, and what the cloth wants. */
  readonly nap?: { readonly from: 'with' | 'without' | 'either'; readonly to: 'with' | 'without' };
  readonly layout?: { readonly from: ClothLaid; readonly to: ClothLaid };
  /** What the first wash takes, as fractions; left out, the usual figure of `cloth` is taken where there is one. */
  readonly shrinkage?: { readonly along: number; readonly across: number };
  readonly cloth?: Pick<Cloth, 'structure' | 'fibres'>;
  /** It has been washed: it shrinks no more. */
  readonly washed?: boolean;
  /** Area of all pieces with their allowances, mm², where it is known: the answer is never under it. */
  readonly minimumArea?: number;
  /** Width of the widest piece as it lies on the opened-out cloth, mm, where it is known. */
  readonly widestPiece?: number;
  readonly unit?: Unit;
}

/** Without the pieces this is always an estimate. Lengths mm. */
export interface ConvertedCloth {
  /** Washed cloth it takes. */
  readonly length: number;
  /** To ask for: before the first wash, with enough to square the ends, up to the next 0.1 m or ⅛ yd. */
  readonly buy: number;
  readonly estimate: true;
  /** Every allowance in it with its amount; words for them stand in `clothWords.converted`, by code. */
  readonly why: readonly Problem[];
}

/**
 * A quarter of a yard, mm: what the conversion charts of home-economics extension services tell one to add for
 * one-way cloth, and for widths that differ much.
 */
const quarterYard = 914.4 / 4;

/** Widths differ much, for the full quarter yard, when the new one is narrower by this share (1500 cut from 1120). */
const muchNarrower = 0.25;

/** Of what the area alone would save on wider cloth only this share is promised: pieces seldom fill a wider cloth as well. */
const savingPromised = 0.75;

/** Trade: 50 to 100 to square the ends; knits come from the roll the least straight. */
const squaring = (structure: Cloth['structure'] | undefined): number => (structure === 'knit' ? 100 : 50);

/** mm of length and width nobody has: only slips of the hand are refused. */
const mostLength = 50_000;
const widths = { least: 50, most: 5000 };

interface Sum {
  readonly length: number;
  readonly why: readonly Problem[];
}

const because = (code: string, mm: number): Problem => ({ code, values: { amount: { mm, purpose: 'cloth' } } });

/** Adds an allowance and says it, unless it comes to nothing. */
const plus = (sum: Sum, code: string, mm: number): Sum =>
  mm > 0 ? { length: sum.length + mm, why: [...sum.why, because(code, mm)] } : sum;

/**
 * The area kept, and what a changed width wastes. Narrower: the quarter yard of the extension charts, growing evenly
 * up to a quarter narrower, so that a little narrower is not a quarter yard dearer. Wider: three quarters of the
 * saving. Both fall as the cloth widens, so narrower cloth never comes out at less.
 */
const forWidth = (length: number, from: number, to: number): Sum => {
  const kept = (length * from) / to;
  if (to < from) {
    const wasted = quarterYard * Math.min(1, (1 - to / from) / muchNarrower);
    return plus(
      { length: kept, why: [because('cloth.convert-narrower', kept - length)] },
      'cloth.convert-apart',
      wasted,
    );
  }
  const saved = savingPromised * (length - kept);
  return { length: length - saved, why: saved > 0 ? [because('cloth.convert-wider', saved)] : [] };
};

/** How many of the widest piece lie side by side. On folded cloth half the width counts, twice. */
const abreast = (width: number, laid: ClothLaid, piece: number): number =>
  laid === 'lengthwise' ? 2 * Math.floor(width / 2 / piece) : Math.floor(width / piece);

/**
 * Where the widest pieces lay side by side and no longer can, one follows the other: the length grows by as much
 * as fewer lie abreast, whatever the area says.
 */
const forWidest = (
  sum: Sum,
  needed: number,
  request: Required<Pick<ClothConversion, 'layout'>> & ClothConversion,
  to: number,
): Sum => {
  const { widestPiece, fromWidth, layout } = request;
  if (widestPiece === undefined) return sum;
  const before = abreast(fromWidth, layout.from, widestPiece);
  const after = abreast(to, layout.to, widestPiece);
  return after >= before ? sum : plus(sum, 'cloth.convert-widest', (needed * before) / after - sum.length);
};

const check = ({
  needed,
  fromWidth,
  toWidth,
  minimumArea,
  widestPiece,
  shrinkage,
}: ClothConversion): Problem | null => {
  const lengths = typeof needed === 'number' ? [needed] : needed;
  if (!lengths.every((mm) => mm > 0 && mm <= mostLength)) return { code: 'cloth.convert-no-length' };
  if (![fromWidth, toWidth].every((mm) => mm >= widths.least && mm <= widths.most)) {
    return { code: 'cloth.convert-no-width' };
  }
  const shares = shrinkage ? [shrinkage.along, shrinkage.across] : [];
  if (!shares.every((share) => share >= 0 && share <= 0.5)) return { code: 'cloth.convert-shrinkage' };
  if (![minimumArea ?? 0, widestPiece ?? 1].every((given) => Number.isFinite(given) && given >= 0)) {
    return { code: 'cloth.convert-no-pieces' };
  }
  return null;
};

/** What the first wash takes: as entered, else the larger of what is usual for such cloth; washed cloth has shrunk already. */
const shrinkageOf = ({
  washed,
  shrinkage,
  cloth,
}: ClothConversion): { along: number; across: number; usual: boolean } => {
  if (washed) return { along: 0, across: 0, usual: false };
  if (shrinkage) return { ...shrinkage, usual: false };
  const usual = cloth ? usualShrinkage(cloth) : null;
  return { along: usual?.to ?? 0, across: 0, usual: usual !== null };
};

/**
 * Cloth needed in another width or laid another way, as an estimate: without the pieces nobody can know how they
 * will lie. The area is kept; allowances for what no longer lies side by side, for cloth laid one way and for a fold
 * are added; then L / (1 − s) for the first wash and 50 to 100 to square the ends (trade: cloth; cutting layout).
 * A saving is never promised for cloth that may be turned, or for a fold opened out. Length × width is never less
 * than the printed area in that it was cut from, when cloth gets narrower, nor than `minimumArea`.
 *
 * Refused: `cloth.convert-no-length`, `-no-width`, `-shrinkage`, `-no-pieces`, `-piece-too-wide`.
 */
export const convertCloth = (request: ClothConversion): Result<ConvertedCloth> => {
  const wrong = check(request);
  if (wrong) return { ok: false, problem: wrong };
  const layout = request.layout ?? { from: 'lengthwise', to: 'lengthwise' };
  const { along, across, usual } = shrinkageOf(request);
  const width = request.toWidth * (1 - across);
  const widest = request.widestPiece;
  if (widest !== undefined && widest > 0 && abreast(width, layout.to, widest) < 1) {
    return bad('cloth.convert-piece-too-wide', {
      piece: { mm: widest },
      width: { mm: layout.to === 'single' ? width : width / 2 },
    });
  }
  const needed = typeof request.needed === 'number' ? request.needed : Math.max(...request.needed);
  const { from, to } = request.nap ?? { from: 'either', to: 'without' };
  let sum = forWidth(needed, request.fromWidth, width);
  if (widest !== undefined && widest > 0) sum = forWidest(sum, needed, { ...request, layout }, width);
  if (from === 'without' && to === 'with') sum = plus(sum, 'cloth.convert-nap', quarterYard);
  // Cut singly, a piece lies wherever there is room; folded, its mirror image takes the same room beside it.
  if (layout.from === 'single' && layout.to === 'lengthwise') sum = plus(sum, 'cloth.convert-fold', quarterYard);
  sum = plus(sum, 'cloth.convert-area', (request.minimumArea ?? 0) / width - sum.length);
  const bought = plus(
    plus(
      sum,
      usual ? 'cloth.convert-usual-shrinkage' : 'cloth.convert-shrinkage-added',
      sum.length / (1 - along) - sum.length,
    ),
    'cloth.convert-squaring',
    squaring(request.cloth?.structure),
  );
  return good({
    length: sum.length,
    buy: lengthToBuy(bought.length, request.unit ?? 'cm'),
    estimate: true,
    why: bought.why,
  });
};
