import type { ClothLaid } from '../../src/cloth/index.ts';
import { type Envelope, finishedOf } from '../../src/pattern/index.ts';
import type { Problem } from '../../src/units/index.ts';

/** Cloth for garments is hardly woven narrower than this, mm: 70 cm, which a blouse still goes into by luck. */
const narrow = 700;

/** Seam allowance supposed where the envelope says none, mm. */
const supposedAllowance = 15;

export interface ClothAsked {
  readonly envelope: Envelope;
  readonly view: string | null;
  readonly size: string;
  /** Usable width, mm, and how it is laid. */
  readonly width: number;
  readonly laid: ClothLaid;
  /** What would have to be bought of it, mm; null where that is not reckoned. */
  readonly buy: number | null;
  /** What there is of it, mm; null where it is still to be bought. */
  readonly inHand: number | null;
}

/**
 * A front or back is at least about a quarter of the finished garment wide, and its seam allowances; null where no
 * girth is known. Which piece is really the widest, only the pieces tell.
 */
const widestLikely = ({ envelope, view, size }: ClothAsked): number | null => {
  const girths = (['bust', 'hip'] as const).flatMap((of) => finishedOf(envelope, size, view, of)?.mm ?? []);
  return girths.length === 0 ? null : Math.max(...girths) / 4 + 2 * (envelope.allowance ?? supposedAllowance);
};

/** What stands against a cloth: too narrow for the pieces, as far as can be known of them, or too little of it in hand. */
export const clothSaid = (asked: ClothAsked): readonly Problem[] => {
  const { width, laid, buy, inHand } = asked;
  const room = laid === 'single' ? width : width / 2;
  const piece = widestLikely(asked);
  return [
    ...(piece !== null && piece > room
      ? [{ code: 'web.cloth-under-piece', values: { piece: { mm: piece }, room: { mm: room } } }]
      : width < narrow
        ? [{ code: 'web.cloth-narrow', values: { width: { mm: width }, narrow: { mm: narrow } } }]
        : []),
    ...(buy !== null && inHand !== null && inHand < buy
      ? [
          {
            code: 'web.cloth-too-short',
            values: {
              inHand: { mm: inHand, purpose: 'cloth' as const },
              buy: { mm: buy, purpose: 'cloth' as const },
              // Less than cloth is bought in is too little as well.
              short: { mm: buy - inHand },
            },
          },
        ]
      : []),
  ];
};
