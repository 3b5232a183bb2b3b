import {
  distance,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  pathStart,
  reversePath,
  subPath,
} from '../../geometry/index.ts';
import { dartOf, type Garment, type Piece, pieceOf } from '../../pattern/index.ts';
import { bad, type Problem } from '../../units/index.ts';
import { held } from '../checks.ts';
import { follow } from '../follow.ts';
import { runIndices } from '../ring.ts';
import { deeperTucks } from '../tucks.ts';
import { type Alteration, sideParameter } from '../types.ts';
import { beginWork, finishWork, lengthNow, pieceNow, redrawEdges } from '../work.ts';

/** Edges of the body that must keep their length whatever a dart in them does: they are sewn to another half, or to a sleeve. */
const fixedRoles: ReadonlySet<Piece['role']> = new Set([
  'front',
  'back',
  'side-front',
  'side-back',
  'sleeve',
  'under-sleeve',
  'yoke',
]);

/** Pieces that hang round the body, whose darts shape a waist. */
const bodyRoles: ReadonlySet<Piece['role']> = new Set(['front', 'back', 'side-front', 'side-back', 'tier', 'bib']);

const matesOf = (garment: Garment, piece: string, edge: string): readonly Piece[] =>
  garment.seams.flatMap(({ a, b }) => {
    if (a.piece === piece && a.edge === edge) return [pieceOf(garment, b.piece)];
    return b.piece === piece && b.edge === edge ? [pieceOf(garment, a.piece)] : [];
  });

/** The edge a dart opens in; null where it opens at a corner between two. */
const edgeOfDart = (piece: Piece, dart: string): string | null => {
  const count = piece.runs.length;
  const mouth = piece.runs.findIndex((run) => run.kind === 'mouth' && run.dart === dart);
  const [before, after] = [piece.runs[(mouth + count - 1) % count], piece.runs[(mouth + 1) % count]];
  return before?.kind === 'edge' && after?.kind === 'edge' && before.edge === after.edge ? before.edge : null;
};

/** Darts that shape an edge which may become longer or shorter: at a waist with a band, a facing or nothing. */
const shapingDarts = (garment: Garment): readonly string[] =>
  garment.pieces
    .filter(({ role }) => bodyRoles.has(role))
    .flatMap((piece) =>
      piece.darts.flatMap(({ id }) => {
        const edge = edgeOfDart(piece, id);
        if (edge === null || matesOf(garment, piece.id, edge).some(({ role }) => fixedRoles.has(role))) return [];
        return [`${piece.id}/${id}`];
      }),
    );

const needsDart = (garment: Garment): Problem | null =>
  shapingDarts(garment).length > 0 ? null : bad('alter.no-shaping-dart', {}).problem;

/** One run of the edge cut back from the dart, or carried on towards it, by so many mm along its own line. */
const drawnBack = (path: Path, at: 'start' | 'end', by: number): Path => {
  const towards = at === 'end' ? path : reversePath(path);
  const length = pathLength(towards);
  const drawn =
    by >= 0
      ? subPath(towards, 0, length - by)
      : [...towards, { kind: 'line' as const, from: pathEnd(towards), to: carriedOn(towards, -by) }];
  return at === 'end' ? drawn : reversePath(drawn);
};

const carriedOn = (path: Path, by: number): Point => {
  const last = path.at(-1) as Path[number];
  const from = last.kind === 'line' ? last.from : last.control2;
  const size = distance(from, last.to);
  return { x: last.to.x + ((last.to.x - from.x) * by) / size, y: last.to.y + ((last.to.y - from.y) * by) / size };
};

/**
 * A dart's intake wider (or narrower) by `amount` at its mouth, half on each side; its point stays, its legs are as long
 * as each other. The edge it opens in is as much shorter once it is stitched.
 *
 *     ____/\\____        ____/    \\____
 *        /  \\      →       /      \\
 *         \\/                 \\  /
 *                             \\/
 *
 * Takes in a waist where the waist is smaller than the pattern's for the hips; the waistband follows.
 * Source: fitting manuals on taking in at waist darts.
 */
export const dartIntake: Alteration = {
  id: 'dart-intake',
  version: 1,
  family: 'width',
  params: {
    dart: { unit: 'named', of: 'dart' },
    amount: { unit: 'mm', min: -30, max: 30, usual: [-6, 8] },
    side: sideParameter,
  },
  amount: 'amount',
  inAll: 2,
  needs: needsDart,
  options: (garment, name) => (name === 'dart' ? shapingDarts(garment) : []),
  handle: (garment, params) => {
    const [id, dart] = String(params.dart).split('/') as [string, string];
    const found = garment.pieces.find((piece) => piece.id === id && piece.darts.some((one) => one.id === dart));
    if (!found) return null;
    const { legs } = dartOf(found, dart);
    const way = Math.sign(legs[1].x - legs[0].x) || 1;
    return { piece: id, at: legs[1], perMillimetre: { x: way / 2, y: 0 } };
  },
  reverse: (params) => ({ alteration: 'dart-intake', params: { ...params, amount: -Number(params.amount) } }),
  holds: ['dart-legs', 'dart-point', 'seam-walks'],
  follows: ['waistband', 'facings'],
  apply: (garment, params) => {
    const [id, dart] = String(params.dart).split('/') as [string, string];
    const amount = Number(params.amount);
    const piece = pieceOf(garment, id);
    const edge = edgeOfDart(piece, dart) as string;
    const before = dartOf(piece, dart);
    if (before.intake + amount < leastIntake)
      return bad('alter.dart-closed', { piece: piece.name, intake: { mm: before.intake } });
    const mouth = piece.runs.findIndex((run) => run.kind === 'mouth' && run.dart === dart);
    const indices = runIndices(piece.runs, edge);
    const count = piece.runs.length;
    const [left, right] = [(mouth + count - 1) % count, (mouth + 1) % count];
    // Of the two legs the longer is drawn back by a hair more, until both are alike: three rounds are plenty.
    const paths = (shift: number): readonly Path[] =>
      indices.map((index) => {
        const { path } = piece.runs[index] as Piece['runs'][number];
        if (index === left) return drawnBack(path, 'end', amount / 2 + shift);
        return index === right ? drawnBack(path, 'start', amount / 2 - shift) : path;
      });
    const uneven = (drawn: readonly Path[]): number =>
      distance(before.point, pathEnd(drawn[indices.indexOf(left)] as Path)) -
      distance(before.point, pathStart(drawn[indices.indexOf(right)] as Path));
    let [a, b] = [-Math.abs(amount) / 2 - 1, Math.abs(amount) / 2 + 1];
    const rising = uneven(paths(b)) > uneven(paths(a));
    for (let i = 0; i < 30; i += 1) {
      const middle = (a + b) / 2;
      if (uneven(paths(middle)) < 0 === rising) a = middle;
      else b = middle;
    }
    const drawn = paths((a + b) / 2);
    const followed = follow(redrawEdges(beginWork(garment), id, { [edge]: drawn }));
    if (!followed.ok) return followed;
    const { work, warnings } = deeperTucks(followed.value);
    const after = dartOf(pieceNow(work, id), dart);
    return finishWork(work, {
      held: [
        held('dart-legs', after.legLengths[0] - after.legLengths[1], { piece: id }),
        held('dart-point', distance(after.point, before.point), { piece: id }),
        held('edge-shrinks', lengthNow(work, id, edge) - work.tape.edge(piece, edge) + amount, { piece: id, edge }),
      ],
      changes: [{ what: 'dart-intake', piece: id, by: after.intake - before.intake, now: after.intake }],
      warnings: [
        ...warnings,
        ...(after.intake > widestDart
          ? [bad('alter.wide-dart', { piece: piece.name, intake: { mm: after.intake } }).problem]
          : []),
      ],
    });
  },
};

/** Narrower than this, mm, a dart cannot be stitched. */
const leastIntake = 4;

/** Above this intake, mm, a waist dart is better made two. */
const widestDart = 40;
