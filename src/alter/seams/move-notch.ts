import { edgeLength, type Garment, type Piece, pieceOf, pointOnEdge, tangentOnEdge } from '../../pattern/index.ts';
import { bad } from '../../units/index.ts';
import type { Alteration } from '../types.ts';
import { beginWork, finishWork, restructure } from '../work.ts';

interface Moved {
  readonly piece: string;
  readonly notch: string;
  /** Along the edge in outline order, mm. */
  readonly by: number;
}

const key = ({ piece, notch }: Pick<Moved, 'piece' | 'notch'>): string => `${piece}/${notch}`;

const noticed = (garment: Garment, name: unknown): Pick<Moved, 'piece' | 'notch'> | null => {
  for (const piece of garment.pieces) {
    for (const { id } of piece.notches) if (`${piece.id}/${id}` === name) return { piece: piece.id, notch: id };
  }
  return null;
};

/** The notches that meet it, and those that meet these, each moved the same way along the seam. */
const withMates = (garment: Garment, first: Moved): readonly Moved[] => {
  const found = new Map([[key(first), first]]);
  const queue = [first];
  while (queue.length > 0) {
    const now = queue.pop() as Moved;
    for (const { a, b, notches } of garment.seams) {
      for (const [idA, idB] of notches) {
        for (const [own, ownId, mate, mateId] of [[a, idA, b, idB] as const, [b, idB, a, idA] as const]) {
          if (own.piece !== now.piece || ownId !== now.notch) continue;
          const next = { piece: mate.piece, notch: mateId, by: own.reversed === mate.reversed ? now.by : -now.by };
          if (found.has(key(next))) continue;
          found.set(key(next), next);
          queue.push(next);
        }
      }
    }
  }
  return [...found.values()];
};

/** The share of its edge a notch would lie at. */
const shareAfter = (piece: Piece, { notch, by }: Moved): number => {
  const mark = piece.notches.find(({ id }) => id === notch);
  return mark ? mark.at + by / edgeLength(piece, mark.edge) : 0.5;
};

/**
 * A notch marked elsewhere on its edge: `amount` further along the outline (less: back), alone or with all that meet it.
 * Alone it is how a notch that misses its mate is mended; notches that met and would not any more are refused.
 *
 * Problem `alter.notch-off-edge` where it would leave its edge.
 */
export const moveNotch: Alteration = {
  id: 'move-notch',
  version: 1,
  family: 'seams',
  params: {
    notch: { unit: 'named', of: 'notch' },
    amount: { unit: 'mm', min: -300, max: 300, usual: [2, 15] },
    with: { unit: 'choice', choices: ['with-mate', 'alone'], usual: 'with-mate' },
  },
  amount: 'amount',
  inAll: 1,
  needs: (garment) =>
    garment.pieces.every(({ notches }) => notches.length === 0) ? bad('alter.no-notch', {}).problem : null,
  options: (garment, parameter) =>
    parameter === 'notch' ? garment.pieces.flatMap(({ id, notches }) => notches.map((one) => `${id}/${one.id}`)) : [],
  handle: (garment, params) => {
    const named = noticed(garment, params['notch']);
    const piece = named ? pieceOf(garment, named.piece) : undefined;
    const mark = piece?.notches.find(({ id }) => id === named?.notch);
    if (!piece || !mark) return null;
    return {
      piece: piece.id,
      at: pointOnEdge(piece, mark.edge, mark.at),
      perMillimetre: tangentOnEdge(piece, mark.edge, mark.at),
    };
  },
  reverse: (params) => ({ alteration: 'move-notch', params: { ...params, amount: -Number(params['amount']) } }),
  holds: ['notches-meet', 'edge-length'],
  follows: ['mate-notch'],
  apply: (garment, params) => {
    const named = noticed(garment, params['notch']);
    if (!named) return bad('alter.no-notch', {});
    const first: Moved = { ...named, by: Number(params['amount']) };
    const all = params['with'] === 'alone' ? [first] : withMates(garment, first);
    for (const one of all) {
      const piece = pieceOf(garment, one.piece);
      const share = shareAfter(piece, one);
      if (share < 0 || share > 1) return bad('alter.notch-off-edge', { piece: piece.name });
    }
    const pieces = garment.pieces.map((piece) => {
      const mine = all.filter((one) => one.piece === piece.id);
      if (mine.length === 0) return piece;
      const notches = piece.notches.map((mark) => {
        const one = mine.find(({ notch }) => notch === mark.id);
        return one ? { ...mark, at: shareAfter(piece, one) } : mark;
      });
      return { ...piece, notches };
    });
    return finishWork(restructure(beginWork(garment), (given) => ({ ...given, pieces })));
  },
};
