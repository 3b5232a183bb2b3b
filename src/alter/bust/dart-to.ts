import { type Point, pathLength } from '../../geometry/index.ts';
import { dartOf, type Garment, type Notch, type Piece, type Run, type Seam } from '../../pattern/index.ts';
import { bad } from '../../units/index.ts';
import { heldOthers } from '../held-edges.ts';
import { type DartMouth, mouthOf } from '../parts.ts';
import { redraw } from '../redraw.ts';
import { runIndices } from '../ring.ts';
import { turnedSeam } from '../seams/turned.ts';
import { type Alteration, sideParameter } from '../types.ts';
import { beginWork, finishWork, lengthNow, restructure, type Work, withPiece } from '../work.ts';
import { dartNames, namedDart, needsDart } from './darts.ts';
import { levelsOverDart } from './levels-over-dart.ts';
import { withoutDart } from './without-dart.ts';

const ways = ['gathers', 'tucks', 'ease'] as const;
type Way = (typeof ways)[number];

/** How a seam is sewn when what a dart took in is put into it. */
const howFor: Readonly<Record<Way, Seam['how']>> = { gathers: 'gathered', tucks: 'pleated', ease: 'eased' };

/** More of an edge than this share of it can hardly be eased in without showing (manuals: about a twentieth, in wool a tenth). */
const mostEased = 0.08;

/** How far along the edge a dart opens in it does so, mm, darts closed. */
const alongToMouth = (piece: Piece, { edge, before }: DartMouth): number => {
  const indices = runIndices(piece.runs, edge);
  return indices
    .slice(0, indices.indexOf(before) + 1)
    .reduce((sum, i) => sum + pathLength((piece.runs[i] as Run).path), 0);
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
      const turned = first ? seam : turnedSeam(seam);
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
    const opens = mouthOf(piece, dart);
    if (!opens) return bad('alter.dart-at-corner', { piece: piece.name });
    const { edge } = opens;
    const [from, to]: readonly [Point, Point] = shape.legs;
    const made = withoutDart(piece, dart, opens, 'let-go');
    const start = beginWork(garment);
    const [was, is] = [start.tape.edge(piece, edge), start.tape.edge(made, edge)];
    const at = alongToMouth(piece, opens);
    const notches = piece.notches.map((notch) => (notch.edge === edge ? stretched(notch, at, was, is) : notch));
    const bare: Piece = { ...made, notches, levels: levelsOverDart(piece, shape) };
    const trued = redraw(bare, { edge, before: from, after: to }, false).piece;
    // The wedge was counted within the outline as the cloth a dart folds away: nothing is put in.
    const laid = withPiece(start, { piece: trued, untrued: bare, puts: [], cuts: [] });
    const grew = lengthNow(laid, piece.id, edge) - was;
    const work = allowed(laid, piece.id, edge, grew, way);
    const sewn = garment.seams.some(({ a, b }) => [a, b].some((side) => side.piece === piece.id && side.edge === edge));
    return finishWork(work, {
      held: heldOthers(work, piece.id, [edge]),
      changes: [{ what: 'dart-let-go', piece: piece.id, edge, by: shape.intake, now: 0 }],
      warnings: [
        ...(sewn ? [] : [bad('alter.dart-hangs', { piece: piece.name, intake: { mm: shape.intake } }).problem]),
        ...(sewn && way === 'ease' && grew > mostEased * was
          ? [bad('alter.too-much-ease', { piece: piece.name, by: { mm: grew } }).problem]
          : []),
      ],
    });
  },
};

/** A notch keeps its distance from the end of the edge that lies on its own side of the dart. */
const stretched = (notch: Notch, opens: number, was: number, is: number): Notch => {
  const along = notch.at * was;
  return { ...notch, at: (along <= opens ? along : along + is - was) / is };
};
