import { type CutOrder, onFold, type Piece } from '../pattern/index.ts';
import { formatLength, type Unit } from '../units/index.ts';
import { drawWords, fill } from '../words/index.ts';

/** An id read as words: `centre-front` is “Centre front”. */
export const sayId = (id: string): string => {
  const words = id.replaceAll('-', ' ');
  return words.charAt(0).toUpperCase() + words.slice(1);
};

/** `Cut 2 of cloth, one mirrored`, for each layer the piece is cut from. */
export const sayCut = (piece: Piece, unit: Unit, locale: string): readonly string[] =>
  piece.cut.map((order) =>
    fill(cutTemplate(piece, order), { count: order.count, layer: drawWords.layer[order.layer] }, unit, locale),
  );

const cutTemplate = (piece: Piece, order: CutOrder): string => {
  if (onFold(piece)) return drawWords.cutOnFold;
  if (!order.mirrored) return drawWords.cut;
  return order.count === 2 ? drawWords.cutPair : drawWords.cutPairs;
};

/** What of the paper is allowance: one sentence when all sewn edges have the same, else the usual one and what differs. */
export const sayAllowance = (piece: Piece, unit: Unit, locale: string): string => {
  const length = (mm: number) => formatLength(mm, unit, { locale });
  const sewn = piece.edges.filter((edge) => edge.finish !== 'fold');
  const counts = new Map<number, number>();
  for (const edge of sewn) counts.set(edge.allowance, (counts.get(edge.allowance) ?? 0) + 1);
  const usual = [...counts].sort((a, b) => b[1] - a[1])[0]?.[0] ?? 0;
  const others = sewn.filter((edge) => edge.allowance !== usual);
  if (others.length === 0) {
    return usual === 0
      ? drawWords.allowanceNone
      : fill(drawWords.allowanceAll, { allowance: length(usual) }, unit, locale);
  }
  const parts = [
    fill(drawWords.seamAllowance, { allowance: length(usual) }, unit, locale),
    ...others.map((edge) =>
      fill(
        edge.allowance === 0 ? drawWords.edgeNoAllowance : drawWords.edgeAllowance,
        { edge: sayId(edge.id).toLowerCase(), allowance: length(edge.allowance) },
        unit,
        locale,
      ),
    ),
  ];
  return fill(drawWords.allowance, { allowance: parts.join(', ') }, unit, locale);
};

/** An amount so small that it is written with no figure but nought. */
export const isWrittenAsNothing = (amount: string): boolean => !/[1-9½⅓⅔¼¾⅛⅜⅝⅞¹²³⁴-⁹]/.test(amount);
