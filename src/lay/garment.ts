import type { Cloth } from '../cloth/index.ts';
import { type Point, tolerance } from '../geometry/index.ts';
import { cutLine, edgeRuns, type Garment, type Grain, type Layer, type Piece } from '../pattern/index.ts';
import { bad, good, type Result } from '../units/index.ts';
import { layoutProblemFault } from './check.ts';
import { grainTurns } from './grain.ts';
import { outwardPolygon } from './outward.ts';
import type { ClothFold, LayoutItem, LayoutProblem } from './types.ts';

export interface GarmentLayoutOptions {
  readonly fold: ClothFold;
  /** Room for the blade, mm. */
  readonly gap: number;
  /** Default: what the cloth says, and all knits. */
  readonly oneWay?: boolean;
  /** Which layer is cut from this cloth; the shell by default. */
  readonly layer?: Layer;
}

/** The two ends of a piece's fold edge on its cut line, or null for a piece not on the fold. */
const foldEnds = (piece: Piece, outline: readonly Point[]): readonly [Point, Point] | null => {
  const edge = piece.edges.find(({ finish }) => finish === 'fold');
  if (!edge) return null;
  const run = edgeRuns(piece, edge.id).flat();
  const [a, b] = [run[0]?.from as Point, run[run.length - 1]?.to as Point];
  const size = Math.hypot(b.x - a.x, b.y - a.y);
  const place = (p: Point): { readonly off: number; readonly along: number } => ({
    off: ((p.x - a.x) * (b.y - a.y) - (p.y - a.y) * (b.x - a.x)) / size,
    along: ((p.x - a.x) * (b.x - a.x) + (p.y - a.y) * (b.y - a.y)) / size,
  });
  // Allowances at neck and hem lengthen the fold beyond the seam line's ends.
  const on = outline.filter((p) => Math.abs(place(p).off) <= tolerance.same);
  const ordered = [...on].sort((p, q) => place(p).along - place(q).along);
  const [first, last] = [ordered[0], ordered[ordered.length - 1]];
  return first && last && ordered.length > 1 ? [first, last] : null;
};

/** Whether the grain arrow runs along the fold within what the trade allows. */
const alongFold = ({ from, to }: Grain, [a, b]: readonly [Point, Point]): boolean => {
  const size = Math.hypot(b.x - a.x, b.y - a.y);
  return Math.abs(((to.x - from.x) * (b.y - a.y) - (to.y - from.y) * (b.x - a.x)) / size) <= tolerance.grain;
};

const itemFor = (piece: Piece, layer: Layer, oneWay: boolean): Result<LayoutItem | null> => {
  const orders = piece.cut.filter((order) => order.layer === layer && order.count > 0);
  if (orders.length === 0) return good(null);
  const outline = cutLine(piece);
  const corners = outline.map(({ from }) => from);
  const fold = foldEnds(piece, corners);
  if (piece.edges.some(({ finish }) => finish === 'fold') && !fold)
    return bad('lay.fold-not-straight', { piece: piece.name });
  if (fold && !alongFold(piece.grain, fold)) return bad('lay.fold-off-grain', { piece: piece.name });
  const mirrored = fold
    ? 0
    : orders.reduce((sum, { count, mirrored: half }) => sum + (half ? Math.floor(count / 2) : 0), 0);
  const all = orders.reduce((sum, { count }) => sum + count, 0);
  // On the fold the fold itself is the grain, so that it lies on the folded cloth to the last bit.
  const down = fold ? { from: fold[0], to: fold[1] } : piece.grain;
  return good({
    id: piece.id,
    name: piece.name,
    outline: outwardPolygon(outline, fold ?? []),
    plain: all - mirrored,
    mirrored,
    turns: grainTurns(down, oneWay),
    fold,
  });
};

/**
 * The layout problem of a garment: every piece of one layer, outlined outside its cut line, its grain along
 * the cloth. The cloth counts as washed: narrower, and shorter in hand, by what the first wash takes.
 * Problems: `lay.fold-off-grain`, `lay.fold-not-straight`, and those of `layoutProblemFault`.
 */
export const layoutProblemFor = (
  garment: Garment,
  cloth: Cloth,
  { fold, gap, layer = 'shell', oneWay = cloth.oneWay || cloth.structure === 'knit' }: GarmentLayoutOptions,
): Result<LayoutProblem> => {
  const items: LayoutItem[] = [];
  for (const piece of garment.pieces) {
    const item = itemFor(piece, layer, oneWay);
    if (!item.ok) return item;
    if (item.value) items.push(item.value);
  }
  const across = cloth.washed ? 0 : cloth.shrinkAcross;
  const along = cloth.washed ? 0 : cloth.shrinkAlong;
  const problem: LayoutProblem = {
    cloth: {
      width: cloth.width * (1 - across),
      length: cloth.length === null ? null : cloth.length * (1 - along),
      fold,
      oneWay,
      gap,
    },
    items,
  };
  const fault = layoutProblemFault(problem);
  return fault ? { ok: false, problem: fault } : good(problem);
};
