import { pathPointAtLength, tolerance } from '../../geometry/index.ts';
import { bad } from '../../units/index.ts';
import { held } from '../checks.ts';
import { heldLengths } from '../held-edges.ts';
import { type Alteration, sideParameter } from '../types.ts';
import { beginWork, finishWork, pieceNow } from '../work.ts';
import { sleevesOf } from './anatomy.ts';
import { divided, openedCap, raised, sum, withCap } from './cap-line.ts';
import { headEaseChanges } from './head-ease.ts';
import { keptHem } from './hem-line.ts';
import { gatheredBy, needsOneSleeve, openAlong } from './opened.ts';
import { axisOf } from './quarters.ts';

/** A gathered head stands up: it is raised by this share of what is gathered in, lest it drag (pattern-cutting manuals: a quarter to a third). */
const rise = 0.25;

/**
 * A gathered sleeve head: `amount` more along the cap, to be gathered into the same armhole. Cut down the middle from cap
 * to hem and spread from nothing at the hem; the cap is drawn anew and raised by a quarter of what is gathered in.
 *
 *         .-´`-.          both halves turn about the wrist,
 *       /  \ /  \         underarm seams and hem keep their lengths
 *      |    |    |
 *
 * Source: the gathered sleeve head of pattern-cutting manuals.
 */
export const sleeveHead: Alteration = {
  id: 'sleeve-head',
  version: 1,
  family: 'sleeve',
  params: { amount: { unit: 'mm', min: 5, max: 160, usual: [20, 60] }, side: sideParameter },
  amount: 'amount',
  inAll: 1,
  needs: needsOneSleeve,
  handle: (garment) => {
    const sleeve = sleevesOf(garment)[0];
    return sleeve ? { piece: sleeve.piece.id, at: sleeve.top, perMillimetre: { x: 0, y: -rise } } : null;
  },
  holds: ['sleeve-seams', 'wrist', 'cap-grows', 'seam-walks'],
  follows: ['gathered-into-armhole', 'lining'],
  apply: (garment, params) => {
    const amount = Number(params.amount);
    const sleeves = sleevesOf(garment);
    let work = beginWork(garment);
    for (const sleeve of sleeves) {
      const done = openAlong(work, sleeve, 'top', amount);
      if (!done.ok) return done;
      const opened = openedCap(done.value, sleeve);
      const axis = axisOf(sleeve);
      const drawn = opened && raised(opened, axis, rise * amount);
      const edges = drawn && divided(sleeve, opened, drawn.line, drawn.crown);
      if (!opened || !drawn || !edges) return bad('alter.cut-not-clear', { piece: sleeve.piece.name });
      const top = pathPointAtLength(drawn.line, drawn.crown);
      work = keptHem(withCap(done.value, sleeve, edges, top), sleeve);
      const grown = new Map(
        sleeve.cap.map((edge, i) => [
          edge,
          work.tape.edge(pieceNow(work, sleeve.piece.id), edge) - (opened.before[i] as number),
        ]),
      );
      work = gatheredBy(work, sleeve.piece.id, grown);
    }
    return finishWork(work, {
      held: sleeves.flatMap(({ piece, left, right, hem, cap }) => {
        const after = pieceNow(work, piece.id);
        const grew = sum(cap.map((edge) => work.tape.edge(after, edge) - work.tape.edge(piece, edge)));
        return [
          ...heldLengths(work, piece.id, [left, right, ...hem]),
          held('cap-grows', grew - amount, { piece: piece.id }, Math.max(tolerance.holds, capWithin * amount)),
        ];
      }),
      changes: sleeves.flatMap(({ piece }) => headEaseChanges(work, piece.id)),
    });
  },
};

/** Raising the cap makes it longer than the gap alone: by under this share of it. */
const capWithin = 0.35;
