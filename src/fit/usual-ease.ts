import type { MeasureId } from '../body/index.ts';
import type { Pattern } from '../pattern/index.ts';

export type Kind = Pattern['kind'];

/** Ease (garment − body) in mm over the whole girth: the least one can move in, and what most people find comfortable. */
export interface EaseRange {
  readonly least: number;
  readonly low: number;
  readonly high: number;
}

const range = (least: number, low: number, high: number): EaseRange => ({ least, low, high });

/** Wearing ease in woven cloth most people find comfortable; starting beliefs, outranked by what this wearer liked before. */
const woven: { readonly [K in MeasureId]?: EaseRange } = {
  bustGirth: range(50, 65, 90),
  waistGirth: range(20, 25, 40),
  abdomenGirth: range(20, 25, 40),
  hipGirth: range(40, 50, 75),
  upperArmGirth: range(40, 50, 75),
  elbowGirth: range(40, 50, 75),
  acrossBack: range(10, 15, 30),
  thighGirth: range(40, 50, 75),
  kneeGirth: range(30, 40, 60),
  bodyRise: range(10, 15, 25),
  crotchLength: range(20, 25, 40),
};

/** A waistband sits closer than a fitted dress. */
const waistband = range(10, 10, 25);

/** What a layer over others wants beyond a blouse's: a jacket 40 to 70 more than what is under it; a coat over a jacket 130 to 200 in all at the bust. */
const over: Readonly<
  Record<'jacket' | 'coat', { readonly least: number; readonly low: number; readonly high: number }>
> = {
  jacket: { least: 40, low: 40, high: 70 },
  coat: { least: 65, low: 65, high: 110 },
};

/**
 * Usual ease at a body measure for a kind of garment in woven cloth, or null where the trade has no figure
 * (neck, wrist, lengths). A jacket and a coat add what goes under them at every girth they share with it.
 */
export const usualEase = (measure: MeasureId, kind: Kind): EaseRange | null => {
  const usual = woven[measure];
  if (!usual) return null;
  if (measure === 'waistGirth' && (kind === 'trousers' || kind === 'skirt')) return waistband;
  if (kind !== 'jacket' && kind !== 'coat') return usual;
  const more = over[kind];
  return range(usual.least + more.least, usual.low + more.low, usual.high + more.high);
};

/**
 * How far a knit of crosswise stretch `stretch` (0.3: 100 mm reach 130) may be extended in wear, as
 * body / garment − 1: usually a tenth to a fifth of the stretch, at most three tenths and never over a
 * quarter; not at all where the cloth stretches by less than a fifth or springs back by less than 90 %.
 */
export const knitExtension = (
  stretch: number,
  recovery = 1,
): { readonly usualLow: number; readonly usualHigh: number; readonly most: number } => {
  if (stretch < 0.2 || recovery < 0.9) return { usualLow: 0, usualHigh: 0, most: 0 };
  const most = Math.min(0.3 * stretch, 0.25);
  return { usualLow: 0.1 * stretch, usualHigh: Math.min(0.2 * stretch, most), most };
};

/** Usual ease of a knit worn close: negative, from the extension in wear. mm, for a body of `body` mm. */
export const knitEase = (body: number, stretch: number, recovery = 1): EaseRange => {
  const { usualLow, usualHigh, most } = knitExtension(stretch, recovery);
  const easeAt = (extension: number): number => body / (1 + extension) - body;
  return range(easeAt(most), easeAt(usualHigh), easeAt(usualLow));
};

/** The trade's words for how a dress or blouse sits, by its ease at the bust. */
export type EaseWord = 'skims' | 'easy' | 'roomy' | 'full';

export const easeWord = (bustEase: number): EaseWord =>
  bustEase < 60 ? 'skims' : bustEase < 95 ? 'easy' : bustEase <= 150 ? 'roomy' : 'full';

/** What layers of thickness `thickness` mm cost of a girth: 2πt (5 mm wadding: 31). */
export const girthOfLayer = (thickness: number): number => 2 * Math.PI * thickness;
