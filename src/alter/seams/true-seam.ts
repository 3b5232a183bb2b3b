import {
  edgeRuns,
  type Garment,
  type Piece,
  pieceOf,
  type Seam,
  trueAcross,
  trueLength,
  walkSeam,
} from '../../pattern/index.ts';
import { bad, type Problem, type Result } from '../../units/index.ts';
import { follow } from '../follow.ts';
import type { Drawn } from '../reshape.ts';
import type { Alteration, Applied, Params } from '../types.ts';
import { walkSeams } from '../walk-seams.ts';
import { beginWork, finishWork, trueEdges, type Work } from '../work.ts';
import { endsToTrue, seamNamed, seamsToTrue } from './seam-ends.ts';

/** A crossing line that turns by more than this, radians (20°), has a corner there on purpose. */
const mostTurned = Math.PI / 9;

/** Edges whose lines are not the very ones they were, told as `reshape` wants them. */
const drawnAnew = (before: Piece, after: Piece): Drawn =>
  Object.fromEntries(
    before.edges.flatMap(({ id }) => {
      const [was, is] = [edgeRuns(before, id), edgeRuns(after, id)];
      return was.every((path, i) => path === is[i]) ? [] : [[id, is]];
    }),
  );

/** What was drawn on a garment, done on the workbench, where notches, marks and levels keep their places. */
const asWork = (work: Work, drawn: Garment): Work =>
  drawn.pieces.reduce((now, piece) => {
    const before = pieceOf(work.garment, piece.id);
    return before === piece ? now : trueEdges(now, piece.id, drawnAnew(before, piece));
  }, work);

/** The garment with one side of a seam, or both, carried on or cut back at an end. Null where an edge would be used up. */
const lengthTrued = (garment: Garment, seam: Seam, end: 'start' | 'end', params: Params): Garment | null => {
  const amount = Number(params['amount']);
  const { which } = params;
  const { difference, excess, lengthA, lengthB } = walkSeam(garment, seam);
  const mirrored = seam.a.piece === seam.b.piece && seam.a.edge === seam.b.edge;
  const towards = amount === 0 ? -excess : 0;
  // What each side grows by: all of what is wanted on one, or half and half.
  const share = which === 'both' ? 0.5 : 1;
  const a = which === 'b' ? 0 : towards * share + amount;
  const b = which === 'a' || mirrored ? 0 : -towards * share + amount;
  if (lengthA + a <= leastEdge || lengthB + b <= leastEdge) return null;
  const first = a === 0 ? garment : trueLength(garment, seam, 'a', end, difference + a).garment;
  return b === 0 ? first : trueLength(first, seam, 'b', end, difference + a - b).garment;
};

/** An edge shorter than this, mm, cannot be sewn. */
const leastEdge = 5;

/** What hangs on the redrawn lines follows; upright seams beside it are walked too, once the seam itself needs no more. */
const finished = (work: Work, seam: string): Result<Applied> => {
  const followed = follow(work);
  if (!followed.ok) return followed;
  const done = followed.value;
  const own = seamNamed(done.garment, seam);
  return finishWork(own && walkSeam(done.garment, own).meets ? walkSeams(done) : done);
};

const holds = (done: Result<Applied>): boolean => done.ok && done.value.held.every(({ ok }) => ok);

/**
 * A seam trued at one end: the edge of one side, or of both, is carried on straight or cut back there, and the lines that
 * meet it are redrawn to the new corner. An `amount` of 0 goes on until the seam walks; any other makes the side that much longer
 * (less: shorter). Where the line that crosses the end then turns a little it is redrawn to run on smoothly, if every
 * seam that line belongs to still walks.
 *
 * Problems: `alter.seam-end-on-fold` where a side ends on a fold or at a dart; `alter.edge-used-up`; those of following.
 * Source: how joined pattern pieces are walked and trued on paper.
 */
export const trueSeam: Alteration = {
  id: 'true-seam',
  version: 1,
  family: 'seams',
  params: {
    seam: { unit: 'named', of: 'seam' },
    end: { unit: 'choice', choices: ['start', 'end'], usual: 'end' },
    which: { unit: 'choice', choices: ['both', 'a', 'b'], usual: 'both' },
    amount: { unit: 'mm', min: -60, max: 60, usual: [1, 6] },
  },
  amount: 'amount',
  inAll: 1,
  needs: (garment): Problem | null =>
    seamsToTrue(garment).length === 0 ? bad('alter.no-seam-to-true', {}).problem : null,
  options: (garment, parameter, params) => {
    if (parameter === 'seam') return seamsToTrue(garment).map(({ id }) => id);
    if (parameter !== 'end') return [];
    const seam = seamNamed(garment, params?.['seam']);
    return seam ? endsToTrue(garment, seam) : [];
  },
  holds: ['seam-walks'],
  follows: ['crossing-line', 'mates-of-crossing'],
  apply: (garment, params) => {
    const seam = seamNamed(garment, params['seam']);
    const end = params['end'] === 'start' ? 'start' : 'end';
    if (!seam || !endsToTrue(garment, seam).includes(end)) return bad('alter.seam-end-on-fold', {});
    const longer = lengthTrued(garment, seam, end, params);
    if (!longer) return bad('alter.edge-used-up', {});
    const plain = asWork(beginWork(garment), longer);
    const turn = Math.abs(walkSeam(plain.garment, seam).ends[end === 'start' ? 0 : 1].turn);
    if (turn < leastTurn || turn > mostTurned) return finished(plain, seam.id);
    const smooth = finished(asWork(plain, trueAcross(plain.garment, seam, end).garment), seam.id);
    return holds(smooth) ? smooth : finished(plain, seam.id);
  },
};

/** Radians: half a degree is drawn straight on by any hand. */
const leastTurn = Math.PI / 360;
