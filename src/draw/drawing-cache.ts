import { type Bounds, type Point, pathBounds } from '../geometry/index.ts';
import { cutLine, type Piece } from '../pattern/index.ts';
import type { TextWidth } from './marks.ts';
import type { PieceChange } from './piece-changes.ts';
import type { GroupMark, PathMark } from './types.ts';

/** What decides how a piece is drawn, besides the piece. */
export interface DrawnHow {
  readonly unit: string;
  readonly locale?: string;
  readonly textSize?: number;
  readonly textWidth?: TextWidth;
  readonly amounts?: string;
}

/**
 * Remembers how pieces were drawn last, so that while an amount is dragged only pieces that change are drawn again; what
 * did not change is the very same value as before. Passed in by the caller and kept by it. Pieces are known by what they are,
 * not by which object holds them: a later step of a list makes equal pieces anew. With it and without, drawings are equal.
 */
export interface DrawingCache {
  /** What a piece's paper covers. */
  readonly paper: (piece: Piece) => Bounds;
  /** The lines of the piece as bought. */
  readonly original: (piece: Piece, make: () => readonly PathMark[]) => readonly PathMark[];
  /** What changed from one piece to the other. */
  readonly lines: (before: Piece, after: Piece, make: () => readonly PathMark[]) => readonly PathMark[];
  /** The lengths and widths that did. */
  readonly changes: (before: Piece, after: Piece, make: () => readonly PieceChange[]) => readonly PieceChange[];
  /** The whole piece, in its place. */
  readonly group: (
    before: Piece,
    after: Piece,
    how: readonly [place: Point, options: DrawnHow],
    make: () => GroupMark,
  ) => GroupMark;
}

interface Last<Drawn> {
  readonly before: Piece;
  readonly after: Piece;
  readonly how: string;
  readonly textWidth: TextWidth | undefined;
  readonly drawn: Drawn;
}

const samePiece = (a: Piece, b: Piece): boolean => a === b || JSON.stringify(a) === JSON.stringify(b);

export const createDrawingCache = (): DrawingCache => {
  const papers = new WeakMap<Piece, Bounds>();
  const originals = new WeakMap<Piece, readonly PathMark[]>();
  const lines = new Map<string, Last<readonly PathMark[]>>();
  const changes = new Map<string, Last<readonly PieceChange[]>>();
  const groups = new Map<string, Last<GroupMark>>();

  const recall = <Drawn>(
    known: Map<string, Last<Drawn>>,
    before: Piece,
    after: Piece,
    how: string,
    textWidth: TextWidth | undefined,
    make: () => Drawn,
  ): Drawn => {
    const last = known.get(after.id);
    const same =
      last?.how === how &&
      last.textWidth === textWidth &&
      samePiece(last.before, before) &&
      samePiece(last.after, after);
    const drawn = same ? last.drawn : make();
    known.set(after.id, { before, after, how, textWidth, drawn });
    return drawn;
  };
  const once = <Made>(known: WeakMap<Piece, Made>, piece: Piece, make: () => Made): Made => {
    const made = known.get(piece) ?? make();
    known.set(piece, made);
    return made;
  };

  return {
    paper: (piece) => once(papers, piece, () => pathBounds(cutLine(piece))),
    original: (piece, make) => once(originals, piece, make),
    lines: (before, after, make) => recall(lines, before, after, '', undefined, make),
    changes: (before, after, make) => recall(changes, before, after, '', undefined, make),
    group: (before, after, [place, { unit, locale, textSize, textWidth, amounts }], make) =>
      recall(groups, before, after, JSON.stringify([place, unit, locale, textSize, amounts]), textWidth, make),
  };
};
