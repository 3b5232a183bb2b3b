import { joinPaths, type Path, type Point } from '../../geometry/index.ts';
import { dartOf, type Garment, type Piece, type Run, type Seam } from '../../pattern/index.ts';
import { bad } from '../../units/index.ts';
import { held } from '../checks.ts';
import { redraw } from '../redraw.ts';
import { type Alteration, sideParameter } from '../types.ts';
import { beginWork, finishWork, lengthNow, restructure, type Work, withPiece } from '../work.ts';
import { dartNames, namedDart, needsDart } from './darts.ts';

const ways = ['gathers', 'tucks', 'ease'] as const;
type Way = (typeof ways)[number];

/** How a seam is sewn when what a dart took in is put into it. */
const howFor: Readonly<Record<Way, Seam['how']>> = { gathers: 'gathered', tucks: 'pleated', ease: 'eased' };

/** More of an edge than this share of it can hardly be eased in without showing (manuals: about a twentieth, in wool a tenth). */
const mostEased = 0.08;

/** The dart's mouth made part of the edge it opens in; null where it opens at a corner. */
const opened = (piece: Piece, dart: string): { readonly piece: Piece; readonly edge: string } | null => {
  const count = piece.runs.length;
  const at = piece.runs.findIndex((run) => run.kind === 'mouth' && run.dart === dart);
  const [before, mouth, after] = [piece.runs[(at + count - 1) % count], piece.runs[at], piece.runs[(at + 1) % count]];
  if (before?.kind !== 'edge' || after?.kind !== 'edge' || before.edge !== after.edge || !mouth) return null;
  const joined: Run = { ...before, path: joinPaths(before.path, mouth.path as Path, after.path) };
  const rest = Array.from({ length: count - 3 }, (_, i) => piece.runs[(at + 2 + i) % count] as Run);
  return {
    piece: { ...piece, runs: [joined, ...rest], darts: piece.darts.filter(({ id }) => id !== dart) },
    edge: before.edge,
  };
};

/** The seams of an edge allowed so much more of it, sewn in the way chosen. */
const allowed = (work: Work, piece: string, edge: string, more: number, way: Way): Work =>
  restructure(work, (garment) => ({
    ...garment,
    seams: garment.seams.map((seam): Seam => {
      const first = seam.a.piece === piece && seam.a.edge === edge;
      const second = seam.b.piece === piece && seam.b.edge === edge;
      if (first === second) return seam;
      // Side a is the one that is gathered on to the other: where it was the other, the two change places.
      const [low, high] = first ? [seam.easeMin, seam.easeMax] : [-seam.easeMax, -seam.easeMin];
      const turned = first
        ? seam
        : { ...seam, a: seam.b, b: seam.a, notches: seam.notches.map(([one, two]) => [two, one] as const) };
      return { ...turned, easeMin: low + more, easeMax: high + more, how: howFor[way] };
    }),
  }));

/**
 * A dart left unstitched: what it took in stays in its edge and is gathered, laid in tucks or eased into what the edge is
 * sewn to. At a free edge, such as a hem, it simply hangs as fullness. Source: dart equivalents, any pattern-cutting manual.
 */
export const dartTo: Alteration = {
  id: 'dart-to',
  version: 1,
  family: 'bust',
  params: {
    dart: { unit: 'named', of: 'dart' },
    as: { unit: 'choice', choices: ways, usual: 'gathers' },
    side: sideParameter,
  },
  amount: null,
  inAll: 2,
  needs: needsDart,
  options: (garment, name) => (name === 'dart' ? dartNames(garment) : []),
  holds: ['other-edges', 'seam-walks'],
  follows: ['gathered-in'],
  apply: (garment: Garment, params) => {
    const { piece, dart } = namedDart(garment, String(params.dart));
    const way = String(params.as) as Way;
    const shape = dartOf(piece, dart);
    const made = opened(piece, dart);
    if (!made) return bad('alter.dart-at-corner', { piece: piece.name });
    const { edge } = made;
    const [from, to]: readonly [Point, Point] = shape.legs;
    const notches = piece.notches.map((notch) =>
      notch.edge === edge ? stretched(piece, made.piece, notch, dart) : notch,
    );
    const bare: Piece = { ...made.piece, notches };
    const trued = redraw(bare, { edge, before: from, after: to }, false).piece;
    const start = beginWork(garment);
    // The wedge was counted within the outline as the cloth a dart folds away: nothing is put in.
    const laid = withPiece(start, { piece: trued, untrued: bare, puts: [], cuts: [] });
    const grew = lengthNow(laid, piece.id, edge) - start.tape.edge(piece, edge);
    const work = allowed(laid, piece.id, edge, grew, way);
    const sewn = garment.seams.some(({ a, b }) => [a, b].some((side) => side.piece === piece.id && side.edge === edge));
    const whole = start.tape.edge(piece, edge);
    return finishWork(work, {
      held: piece.edges
        .filter(({ id }) => id !== edge)
        .map(({ id }) =>
          held('edge-length', lengthNow(work, piece.id, id) - start.tape.edge(piece, id), {
            piece: piece.id,
            edge: id,
          }),
        ),
      changes: [{ what: 'dart-let-go', piece: piece.id, edge, by: shape.intake, now: 0 }],
      warnings: [
        ...(sewn ? [] : [bad('alter.dart-hangs', { piece: piece.name, intake: { mm: shape.intake } }).problem]),
        ...(sewn && way === 'ease' && grew > mostEased * whole
          ? [bad('alter.too-much-ease', { piece: piece.name, by: { mm: grew } }).problem]
          : []),
      ],
    });
  },
};

/** A notch keeps its distance from the end of the edge beyond which the dart does not lie. */
const stretched = (
  before: Piece,
  after: Piece,
  notch: Piece['notches'][number],
  dart: string,
): Piece['notches'][number] => {
  const length = (piece: Piece): number => {
    const tape = beginWork({ pieces: [piece], seams: [], girths: [] }).tape;
    return tape.edge(piece, notch.edge);
  };
  const [was, is] = [length(before), length(after)];
  const runs = before.runs.filter((run) => run.kind === 'mouth' || run.edge === notch.edge);
  const mouth = runs.findIndex((run) => run.kind === 'mouth' && run.dart === dart);
  const first = runs.slice(0, mouth).flatMap((run) => (run.kind === 'edge' ? [run] : []));
  const upTo = beginWork({
    pieces: [{ ...before, runs: first, edges: before.edges }],
    seams: [],
    girths: [],
  }).tape.edges({
    ...before,
    runs: first,
  })[notch.edge];
  const along = notch.at * was;
  return along <= (upTo ?? 0) ? { ...notch, at: along / is } : { ...notch, at: (along + is - was) / is };
};
