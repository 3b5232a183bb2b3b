import {
  applyToPath,
  line,
  outlineArea,
  type Path,
  type Point,
  pathEnd,
  pathStart,
  samePoint,
  type Transform,
  tolerance,
} from '../geometry/index.ts';
import type { Piece, Run } from '../pattern/index.ts';
import type { CutPiece, Fragment } from './cut.ts';
import { carryMarks, type MarkOwners } from './marks.ts';
import { motionOf } from './move.ts';
import { type Put, putIn, sumOf } from './put.ts';
import { runKey } from './ring.ts';
import { tidy } from './tidy.ts';

/** Where an edge was cut and its parts moved apart or turned: the two ends that were one point. */
export interface FormerCut {
  readonly edge: string;
  readonly before: Point;
  readonly after: Point;
}

/** The parts put together again, before truing. */
export interface Joined {
  readonly piece: Piece;
  readonly formers: readonly FormerCut[];
  readonly puts: readonly Put[];
  /** Where the piece was cut, as it lay before its parts moved. */
  readonly cuts: readonly { readonly id: string; readonly points: readonly Point[] }[];
}

interface Growing {
  readonly run: Run;
  readonly segments: Path[number][];
}

const sameMotion = (a: Transform, b: Transform): boolean => a.a === b.a && a.b === b.b && a.e === b.e && a.f === b.f;

/** Everything but the wedges of darts, beginning with the stretch that follows a wedge where the ring begins with one. */
const clothOf = (pieces: CutPiece): readonly (Fragment & { readonly wedgeBefore: string | null })[] => {
  let wedge: string | null = null;
  const cloth: (Fragment & { wedgeBefore: string | null })[] = [];
  for (const fragment of pieces.fragments) {
    const own = pieces.parts[fragment.part]?.wedge ?? null;
    if (own !== null) {
      wedge = own;
      continue;
    }
    cloth.push({ ...fragment, wedgeBefore: wedge });
    wedge = null;
  }
  const first = cloth[0];
  return wedge !== null && first ? [{ ...first, wedgeBefore: wedge }, ...cloth.slice(1)] : cloth;
};

/**
 * Joins moved parts: walks the original outline, lays every fragment where its part went, and bridges the
 * gaps straight. A bridge belongs to the edge that was cut; where a dart's wedge was cut out it is the
 * dart's new mouth, and where nothing is left of the mouth the dart is gone and its edge whole again.
 *
 * Throws where the area is not what it was plus what was put in: that would be a fault of the mechanism.
 */
export const join = (pieces: CutPiece, owners: MarkOwners = {}): Joined => {
  const cloth = clothOf(pieces);
  const laid = cloth.map((fragment) => ({
    ...fragment,
    laid: applyToPath(motionOf(pieces, fragment.part), fragment.path),
  }));
  const runs: Growing[] = [];
  const formers: FormerCut[] = [];
  laid.forEach((fragment, index) => {
    const previous = laid[(index + laid.length - 1) % laid.length] as (typeof laid)[number];
    const from = pathEnd(previous.laid);
    const to = pathStart(fragment.laid);
    const open = !samePoint(from, to);
    const sameEdge = runKey(previous.of) === runKey(fragment.of);
    const wedge = fragment.wedgeBefore;
    const mouth: Run | null = wedge !== null && open ? { kind: 'mouth', dart: wedge, path: [line(from, to)] } : null;
    const last = runs.at(-1);
    // The bridge before the first fragment closes the ring: it is drawn after the last one.
    if (index > 0 && last) {
      if (mouth) runs.push({ run: mouth, segments: [line(from, to)] });
      else if (open) last.segments.push(line(from, to));
    }
    const moved =
      previous.part !== fragment.part && !sameMotion(motionOf(pieces, previous.part), motionOf(pieces, fragment.part));
    if (moved && sameEdge && !mouth && fragment.of.kind === 'edge') {
      formers.push({ edge: fragment.of.edge, before: from, after: to });
    }
    const current = runs.at(-1);
    if (current && sameEdge && !mouth && index > 0) current.segments.push(...fragment.laid);
    else runs.push({ run: fragment.of, segments: [...fragment.laid] });
    if (index === laid.length - 1) closeRing(runs, pathEnd(fragment.laid), laid[0] as (typeof laid)[number]);
  });
  const shaped = exact(runs.map(({ run, segments }): Run => ({ ...run, path: tidy(continuous(segments)) })));
  const puts = putIn(pieces);
  const mouths = new Set(shaped.flatMap((run) => (run.kind === 'mouth' ? [run.dart] : [])));
  const bare: Piece = {
    ...pieces.piece,
    runs: shaped,
    darts: pieces.piece.darts.filter((dart) => mouths.has(dart.id)),
  };
  checkArea(pieces, bare, puts);
  return {
    piece: carryMarks(pieces, bare, owners),
    formers,
    puts,
    cuts: pieces.cuts.map(({ id, points }) => ({ id, points })),
  };
};

const closeRing = (
  runs: Growing[],
  from: Point,
  first: { readonly laid: Path; readonly wedgeBefore: string | null },
): void => {
  const to = pathStart(first.laid);
  if (samePoint(from, to)) return;
  if (first.wedgeBefore !== null) {
    runs.push({ run: { kind: 'mouth', dart: first.wedgeBefore, path: [line(from, to)] }, segments: [line(from, to)] });
  } else runs.at(-1)?.segments.push(line(from, to));
};

/** Segments made to begin exactly where the one before ends. */
const continuous = (segments: readonly Path[number][]): Path => {
  const path: Path[number][] = [];
  for (const segment of segments) {
    const last = path.at(-1);
    path.push(last ? { ...segment, from: last.to } : segment);
  }
  return path;
};

/** Runs of which something is left, each made to begin exactly where the one before it ends. */
const exact = (runs: readonly Run[]): readonly Run[] => {
  const left = runs.filter((run) => run.path.length > 0);
  return left.map((run, index) => {
    const before = left[(index + left.length - 1) % left.length] as Run;
    const from = pathEnd(before.path);
    const [first, ...rest] = run.path;
    return first ? { ...run, path: [{ ...first, from }, ...rest] } : run;
  });
};

/** Rounding of an area of a few square metres, summed over a hundred segments, stays far below this share of it. */
const areaShare = 1e-9;

const checkArea = (pieces: CutPiece, after: Piece, puts: readonly Put[]): void => {
  const before = outlineArea(pieces.piece.runs.flatMap((run) => run.path));
  const now = outlineArea(after.runs.flatMap((run) => run.path));
  const expected = before + sumOf(puts);
  const size = Math.abs(before) + puts.reduce((sum, { area }) => sum + Math.abs(area), 0);
  if (Math.abs(now - expected) > areaShare * size + tolerance.area) {
    throw new Error(`${pieces.piece.id} has an area of ${now} mm² where its parts make ${expected}`);
  }
};
