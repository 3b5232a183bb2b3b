import { type Bounds, pathBounds } from '../../geometry/index.ts';
import { type ClothRow, cutLine, type Envelope, type Garment, onFold, pieceArea } from '../../pattern/index.ts';
import type { CardCloth, CardPicture } from './types.ts';

/** Cloth between the pieces of a layout that nothing is cut from: this share at least of what is laid is used. A starting belief, low on purpose. */
const usedShare = 0.7;

/** Cloth is bought and torn in steps; more than nothing is rounded up to this, mm. */
const step = 50;

const layerOf: Readonly<Record<ClothRow['layer'], 'shell' | 'lining' | 'interfacing'>> = {
  shell: 'shell',
  contrast: 'shell',
  lining: 'lining',
  interfacing: 'interfacing',
};

interface Grown {
  readonly width: number;
  readonly longer: number;
  readonly area: number;
}

const size = ({ minX, minY, maxX, maxY }: Bounds) => ({ width: maxX - minX, height: maxY - minY });

/** Each piece cut of a layer that the alteration changed: its width on folded cloth, and how it grew. */
const grownPieces = (before: Garment, after: Garment, layer: 'shell' | 'lining' | 'interfacing'): readonly Grown[] =>
  after.pieces.flatMap((piece): Grown[] => {
    const old = before.pieces.find(({ id }) => id === piece.id);
    const order = piece.cut.find((one) => one.layer === layer);
    if (!old || old === piece || !order) return [];
    const [was, now] = [size(pathBounds(cutLine(old))), size(pathBounds(cutLine(piece)))];
    const times = onFold(piece) ? 2 * order.count : order.count;
    return [
      {
        width: now.width,
        longer: Math.max(0, now.height - was.height),
        area: times * (pieceArea(piece) - pieceArea(old)),
      },
    ];
  });

type Grows = Pick<CardPicture, 'before' | 'after'>;

type Layer = 'shell' | 'lining' | 'interfacing';

/** How an alteration's pieces grow, layer by layer; a cut line takes long enough to be drawn once. */
const grownBy = ({ before, after }: Grows): ((layer: Layer) => readonly Grown[]) => {
  const known = new Map<Layer, readonly Grown[]>();
  return (layer) => {
    const grown = known.get(layer) ?? grownPieces(before, after, layer);
    known.set(layer, grown);
    return grown;
  };
};

/** What one alteration adds to one row of the cloth chart, mm. */
const moreFor = (grownOf: (layer: Layer) => readonly Grown[], row: ClothRow): number => {
  const grown = grownOf(layerOf[row.layer]);
  const inLength = inRows(grown, row.width / 2);
  const inArea = grown.reduce((sum, { area }) => sum + area, 0) / (row.width * usedShare);
  return Math.max(0, Math.ceil(Math.max(inLength, inArea) / step - 1e-6) * step);
};

/**
 * What the alteration adds to the cloth printed on the envelope, row by row, as an estimate: the changed pieces laid
 * on folded cloth side by side as far as its width goes and below one another beyond that, each row of them as much
 * longer as its longest; never less than the area put in needs. What a smaller piece saves shows only in a layout:
 * then the printed length stands. What alterations before it added is in what it begins from.
 */
export const clothAfter = (
  envelope: Envelope,
  view: string | null,
  sizeId: string,
  picture: Grows | null,
  earlier: readonly Grows[] = [],
): readonly CardCloth[] => {
  const index = envelope.sizes.indexOf(sizeId);
  const own = picture && grownBy(picture);
  const others = earlier.map(grownBy);
  return envelope.clothNeeded
    .filter((row) => row.view === view || row.view === null || view === null)
    .flatMap((row): CardCloth[] => {
      const figure = row.figures[index] ?? null;
      if (figure === null) return [];
      // Of a range the larger: the smaller may be too little.
      const printed = typeof figure === 'number' ? figure : figure[1];
      const old = others.reduce((sum, one) => sum + moreFor(one, row), printed);
      const more = own ? moreFor(own, row) : 0;
      return [{ layer: row.layer, width: row.width, nap: row.nap, old, more, now: old + more }];
    });
};

/** Pieces in rows as wide as the folded cloth, in the pattern's order: each row grows by the most any of its pieces does. */
const inRows = (pieces: readonly Grown[], width: number): number => {
  let [used, tallest, sum] = [0, 0, 0];
  for (const piece of pieces) {
    if (used > 0 && used + piece.width > width) {
      sum += tallest;
      [used, tallest] = [0, 0];
    }
    used += piece.width;
    tallest = Math.max(tallest, piece.longer);
  }
  return sum + tallest;
};
