import { type Alteration, sideParameter } from '../../src/alter/index.ts';
import { beginWork, finishWork, redrawEdges } from '../../src/alter/work.ts';
import { cubic, type Path, pathEnd, pathStart } from '../../src/geometry/index.ts';
import { edgeRuns, type Garment, type Piece } from '../../src/pattern/index.ts';
import { bad } from '../../src/units/index.ts';

/** The turned-up hem of a piece that lies straight and is sewn to nothing; undefined where it has none. */
const hemOf = (garment: Garment, piece: Piece): { readonly id: string; readonly path: Path } | undefined => {
  const sewn = new Set(
    garment.seams.flatMap(({ a, b }) => [a, b].flatMap((side) => (side.piece === piece.id ? [side.edge] : []))),
  );
  for (const { id, finish } of piece.edges) {
    const [path, another] = edgeRuns(piece, id);
    if (finish === 'hem' && !sewn.has(id) && path?.length === 1 && path[0]?.kind === 'line' && !another)
      return { id, path };
  }
  return undefined;
};

/**
 * The hem of front and back curved down by `amount` in its middle, its ends where they were.
 *
 * Source: the Bézier form. In its middle a cubic lies ¾ of the way out to inner control points that are equally far off
 * the chord, so they are put 4/3 of the depth out.
 */
export const curvedHem: Alteration = {
  id: 'curved-hem',
  version: 1,
  family: 'length',
  params: { amount: { unit: 'mm', min: 1, max: 30, usual: [3, 12] }, side: sideParameter },
  amount: 'amount',
  inAll: 1,
  needs: (garment) =>
    garment.pieces.some((piece) => hemOf(garment, piece)) ? null : bad('alter.no-piece', { role: 'hem' }).problem,
  holds: ['seam-walks'],
  follows: [],
  apply: (garment, { amount }) => {
    let work = beginWork(garment);
    for (const piece of garment.pieces) {
      const hem = hemOf(garment, piece);
      if (!hem) continue;
      const [from, to] = [pathStart(hem.path), pathEnd(hem.path)];
      const size = Math.hypot(to.x - from.x, to.y - from.y);
      // Outward is to the left of travel, y down.
      const out = { x: (to.y - from.y) / size, y: -(to.x - from.x) / size };
      const control = (share: number) => ({
        x: from.x + (to.x - from.x) * share + (out.x * Number(amount) * 4) / 3,
        y: from.y + (to.y - from.y) * share + (out.y * Number(amount) * 4) / 3,
      });
      work = redrawEdges(work, piece.id, { [hem.id]: [[cubic(from, control(1 / 3), control(2 / 3), to)]] });
    }
    return finishWork(work);
  },
};
