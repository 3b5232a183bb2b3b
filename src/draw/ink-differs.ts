import type { Path } from '../geometry/index.ts';
import type { Piece } from '../pattern/index.ts';
import { differingStretches } from './differing.ts';
import { pieceGroup } from './piece.ts';
import type { Mark, PathMark } from './types.ts';

/** Lines drawn now that were not drawn before, and lines drawn before that are gone, each cut down to what differs. */
export interface InkDiffering {
  readonly now: readonly Path[];
  readonly was: readonly Path[];
}

/** What a scissor or a pencil follows: no paper, no words, and not the pattern as bought, which is drawn for comparison. */
const counts = (mark: Mark): mark is PathMark =>
  mark.kind === 'path' && mark.ink !== 'paper' && mark.layer !== 'original' && mark.layer !== 'words';

const kindOf = ({ layer, ink, filled }: PathMark): string => `${layer} ${ink} ${filled ? 'filled' : 'drawn'}`;

const byKind = (marks: readonly Mark[]): ReadonlyMap<string, readonly Path[]> => {
  const kinds = new Map<string, Path[]>();
  for (const mark of marks) {
    if (!counts(mark)) continue;
    const paths = kinds.get(kindOf(mark)) ?? [];
    paths.push(...mark.paths);
    kinds.set(kindOf(mark), paths);
  }
  return kinds;
};

/**
 * Where two drawings of a piece differ by more than an alteration may move what it holds. A line counts as the same only
 * where a line of the same ink in the same layer was.
 */
export const inkDiffering = (now: readonly Mark[], was: readonly Mark[]): InkDiffering => {
  const [kindsNow, kindsWas] = [byKind(now), byKind(was)];
  const beyond = (these: typeof kindsNow, those: typeof kindsNow): readonly Path[] =>
    [...these].flatMap(([kind, paths]) => {
      const others = (those.get(kind) ?? []).flat();
      return paths.flatMap((path) => (others.length === 0 ? [path] : differingStretches(path, others)));
    });
  return { now: beyond(kindsNow, kindsWas), was: beyond(kindsWas, kindsNow) };
};

/** A piece's lines and marks, no words. */
export const lineMarks = (piece: Piece): readonly PathMark[] =>
  pieceGroup(piece, { unit: 'cm', layers: ['cut', 'seam', 'marks'] }).marks.filter(counts);

const sameOrders = (a: Piece, b: Piece): boolean =>
  a.cut.length === b.cut.length &&
  a.cut.every((order, index) => {
    const other = b.cut[index];
    return order.layer === other?.layer && order.count === other.count && order.mirrored === other.mirrored;
  });

/** Whether a piece has to be printed anew: a line or mark of it lies elsewhere, or it is cut otherwise or called otherwise. */
export const pieceDiffers = (before: Piece, after: Piece): boolean => {
  if (before === after) return false;
  if (before.name !== after.name || !sameOrders(before, after)) return true;
  const { now, was } = inkDiffering(lineMarks(after), lineMarks(before));
  return now.length > 0 || was.length > 0;
};
