import {
  distance,
  extendPath,
  type Path,
  pathEnd,
  pathLength,
  pathStart,
  subPath,
  tolerance,
} from '../../geometry/index.ts';
import { dartOf, type Garment, type Piece } from '../../pattern/index.ts';
import { bad, type Problem } from '../../units/index.ts';
import { dartNames, namedDart } from '../bust/darts.ts';
import { held } from '../checks.ts';
import { follow } from '../follow.ts';
import { type DartMouth, isBody, isSleeve, matesOf, mouthOf } from '../parts.ts';
import { runIndices } from '../ring.ts';
import { secant } from '../secant.ts';
import { deeperTucks } from '../tucks.ts';
import { type Alteration, sideParameter } from '../types.ts';
import { beginWork, finishWork, lengthNow, pieceNow, redrawEdges } from '../work.ts';

/** What an edge sewn to must keep its length, whatever a dart in it does: another part of the body, or a sleeve. */
const fixes = (mate: Piece): boolean => isBody(mate) || isSleeve(mate);

/** Darts that shape an edge which may become longer or shorter: at a waist with a band, a facing or nothing. */
const shapingDarts = (garment: Garment): readonly string[] =>
  dartNames(garment).filter((name) => {
    const { piece, dart } = namedDart(garment, name);
    const opens = piece.role === 'yoke' ? null : mouthOf(piece, dart);
    return opens !== null && !matesOf(garment, piece.id, opens.edge).some((mate) => fixes(mate.piece));
  });

const needsDart = (garment: Garment): Problem | null =>
  shapingDarts(garment).length > 0 ? null : bad('alter.no-shaping-dart', {}).problem;

/** One run of the edge cut back from the dart, or carried on towards it, by so many mm along its own line. */
const drawnBack = (path: Path, at: 'start' | 'end', by: number): Path => {
  if (by < 0) return extendPath(path, at, -by);
  const length = pathLength(path);
  return at === 'end' ? subPath(path, 0, length - by) : subPath(path, by, length);
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
    const name = String(params.dart ?? shapingDarts(garment)[0] ?? '');
    if (!shapingDarts(garment).includes(name)) return null;
    const { piece, dart } = namedDart(garment, name);
    const { legs } = dartOf(piece, dart);
    const way = Math.sign(legs[1].x - legs[0].x) || 1;
    return { piece: piece.id, at: legs[1], perMillimetre: { x: way / 2, y: 0 } };
  },
  reverse: (params) => ({ alteration: 'dart-intake', params: { ...params, amount: -Number(params.amount) } }),
  holds: ['dart-legs', 'dart-point', 'seam-walks'],
  follows: ['waistband', 'facings'],
  apply: (garment, params) => {
    const { piece, dart } = namedDart(garment, String(params.dart));
    const { id } = piece;
    const amount = Number(params.amount);
    const { edge, before: left, after: right } = mouthOf(piece, dart) as DartMouth;
    const before = dartOf(piece, dart);
    if (before.intake + amount < leastIntake)
      return bad('alter.dart-closed', { piece: piece.name, intake: { mm: before.intake } });
    const indices = runIndices(piece.runs, edge);
    const beside = (index: number): number => pathLength((piece.runs[index] as Piece['runs'][number]).path);
    const room = Math.min(beside(left), beside(right));
    if (amount / 2 > room - leastBeside)
      return bad('alter.no-edge-beside-dart', { piece: piece.name, room: { mm: room } });
    // Of the two legs the longer is drawn back by a little more, until both are alike.
    const most = Math.min(Math.abs(amount) / 2 + 1, room - amount / 2);
    const paths = (wanted: number): readonly Path[] =>
      indices.map((index) => {
        const shift = Math.min(Math.max(wanted, -most), most);
        const { path } = piece.runs[index] as Piece['runs'][number];
        if (index === left) return drawnBack(path, 'end', amount / 2 + shift);
        return index === right ? drawnBack(path, 'start', amount / 2 - shift) : path;
      });
    const uneven = (drawn: readonly Path[]): number =>
      distance(before.point, pathEnd(drawn[indices.indexOf(left)] as Path)) -
      distance(before.point, pathStart(drawn[indices.indexOf(right)] as Path));
    const drawn = paths(secant((shift) => uneven(paths(shift)), 0, 0.1, tolerance.walk) ?? 0);
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

/** So much of the edge, mm, has to be left between a dart and the corner or dart beside it. */
const leastBeside = 5;

/** Narrower than this, mm, a dart cannot be stitched. */
const leastIntake = 4;

/** Above this intake, mm, a waist dart is better made two. */
const widestDart = 40;
