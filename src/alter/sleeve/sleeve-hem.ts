import { pathStart, tolerance } from '../../geometry/index.ts';
import { edgeRuns } from '../../pattern/index.ts';
import { held } from '../checks.ts';
import { follow } from '../follow.ts';
import { heldLengths } from '../held-edges.ts';
import { type Alteration, sideParameter } from '../types.ts';
import { beginWork, finishWork, lengthNow, pieceNow } from '../work.ts';
import { sleevesOf } from './anatomy.ts';
import { capKept } from './cap-line.ts';
import { fairHem } from './hem-line.ts';
import { gatheredBy, needsOneSleeve, openAlong } from './opened.ts';

/**
 * A sleeve's hem wider (or narrower) by `amount`: cut down the middle from hem to cap and spread from nothing at the cap.
 *
 *        .-T-.
 *      /   |   \\        both halves turn about the cap's top T;
 *     |   / \\   |       cap and underarm seams keep their lengths,
 *     |  /   \\  |       the hem is drawn round as one curve
 *     `-´     `-´
 *
 * Where the hem is sewn into a cuff, what it is wider by is gathered into it. Source: the flared sleeve of pattern-cutting
 * manuals.
 */
export const sleeveHem: Alteration = {
  id: 'sleeve-hem',
  version: 1,
  family: 'sleeve',
  params: { amount: { unit: 'mm', min: -60, max: 200, usual: [10, 80] }, side: sideParameter },
  amount: 'amount',
  inAll: 1,
  needs: needsOneSleeve,
  handle: (garment) => {
    const sleeve = sleevesOf(garment)[0];
    if (!sleeve) return null;
    const [edge] = sleeve.hem;
    const path = edge === undefined ? undefined : edgeRuns(sleeve.piece, edge)[0];
    return path ? { piece: sleeve.piece.id, at: pathStart(path), perMillimetre: { x: 0.5, y: 0 } } : null;
  },
  reverse: (params) => ({ alteration: 'sleeve-hem', params: { ...params, amount: -Number(params.amount) } }),
  holds: ['cap', 'sleeve-seams', 'seam-walks'],
  follows: ['hem', 'gathered-into-cuff', 'lining'],
  apply: (garment, params) => {
    const amount = Number(params.amount);
    const sleeves = sleevesOf(garment);
    let work = beginWork(garment);
    for (const sleeve of sleeves) {
      const opened = openAlong(work, sleeve, 'wrist', amount);
      if (!opened.ok) return opened;
      work = fairHem(capKept(opened.value, sleeve), sleeve);
      const grown = new Map(
        sleeve.hem.map((edge) => [edge, lengthNow(work, sleeve.piece.id, edge) - work.tape.edge(sleeve.piece, edge)]),
      );
      work = gatheredBy(work, sleeve.piece.id, grown);
    }
    const followed = follow(work);
    if (!followed.ok) return followed;
    const done = followed.value;
    return finishWork(done, {
      held: sleeves.flatMap((sleeve) => {
        const after = pieceNow(done, sleeve.piece.id);
        const grew = sleeve.hem.reduce(
          (sum, edge) => sum + done.tape.edge(after, edge) - done.tape.edge(sleeve.piece, edge),
          0,
        );
        return [
          ...heldLengths(done, sleeve.piece.id, [...sleeve.cap, sleeve.left, sleeve.right]),
          held(
            'hem-grows',
            grew - amount,
            { piece: sleeve.piece.id },
            Math.max(tolerance.holds, hemWithin * Math.abs(amount)),
          ),
        ];
      }),
    });
  },
};

/** A round hem is as much longer than the straight opening as an arc than its chord: under this share of it. */
const hemWithin = 0.15;
