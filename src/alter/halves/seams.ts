import type { Garment, Girth, Piece, Seam, SeamSide } from '../../pattern/index.ts';
import { leftId, type Standing } from './kinds.ts';

type Standings = ReadonlyMap<string, Standing>;

const isSplit = (standing: Standing | undefined): boolean => standing === 'pair' || standing === 'opened';

/**
 * One side of a seam as the left half has it. A left piece is the right one's mirror: its outline runs the other way, and
 * so does every edge of it. What is alike on both halves is the same piece, face down.
 */
const onLeft = (side: SeamSide, standing: Standing | undefined): SeamSide => {
  if (standing === 'pair') return { ...side, piece: leftId(side.piece), reversed: !side.reversed };
  return standing === 'opened' ? { ...side, edge: leftId(side.edge), reversed: !side.reversed } : side;
};

/** Whether a piece is cut twice from cloth that is seen, once for each half: its seam to itself then joins the halves. */
const isPairOfHalves = ({ cut }: Piece): boolean => {
  const seen = cut.filter(({ layer }) => layer !== 'interfacing');
  return seen.length === 1 && seen[0]?.mirrored === true && seen[0].count === 2;
};

/** Seams of one edge to itself across the centre: right piece to left piece. */
const joinsHalves = (garment: Garment, { a, b }: Seam): boolean => {
  const piece = garment.pieces.find(({ id }) => id === a.piece);
  return a.piece === b.piece && a.edge === b.edge && piece !== undefined && isPairOfHalves(piece);
};

/** Which half an edge of a whole piece is sewn to: what its name says, or else its place among its fellows. */
const halfOf = (seam: Seam, whole: SeamSide, seams: readonly Seam[]): 'right' | 'left' | 'both' => {
  if (/(^|-)left(-|$)/.test(whole.edge)) return 'left';
  if (/(^|-)right(-|$)/.test(whole.edge)) return 'right';
  const other = (one: Seam): SeamSide => (one.a.piece === whole.piece ? one.b : one.a);
  const own = other(seam);
  const fellows = seams.filter(
    (one) =>
      (one.a.piece === whole.piece || one.b.piece === whole.piece) &&
      other(one).piece === own.piece &&
      other(one).edge === own.edge,
  );
  if (fellows.length < 2) return 'both';
  return fellows[0] === seam ? 'right' : 'left';
};

const isWhole = (garment: Garment, id: string): boolean => {
  const piece = garment.pieces.find((one) => one.id === id);
  return (
    piece !== undefined &&
    !piece.edges.some(({ finish }) => finish === 'fold') &&
    !piece.cut.every(({ mirrored }) => mirrored)
  );
};

/**
 * The seams of a garment whose halves differ: once for each half where either of its pieces is told apart, each with the ease
 * its own half allows.
 */
export const splitSeams = (garment: Garment, leftHalf: Garment, stand: Standings): readonly Seam[] => {
  const others = new Map(leftHalf.seams.map((seam) => [seam.id, seam]));
  return garment.seams.flatMap((seam): readonly Seam[] => {
    const [first, second] = [stand.get(seam.a.piece), stand.get(seam.b.piece)];
    if (!isSplit(first) && !isSplit(second)) {
      const whole = [seam.a, seam.b].find(({ piece }) => isWhole(garment, piece));
      const ofLeft = whole !== undefined && halfOf(seam, whole, garment.seams) === 'left';
      return [ofLeft ? (others.get(seam.id) ?? seam) : seam];
    }
    const left: Seam = {
      ...(others.get(seam.id) ?? seam),
      id: leftId(seam.id),
      a: onLeft(seam.a, first),
      b: onLeft(seam.b, second),
      notches: leftNotches(seam, first, second),
    };
    if (joinsHalves(garment, seam) && first === 'pair') {
      return [{ ...seam, b: left.b, notches: seam.notches }];
    }
    const whole =
      !isSplit(first) && isWhole(garment, seam.a.piece)
        ? seam.a
        : !isSplit(second) && isWhole(garment, seam.b.piece)
          ? seam.b
          : null;
    const half = whole ? halfOf(seam, whole, garment.seams) : 'both';
    if (half === 'right') return [seam];
    // Told for the left half the whole piece keeps its edge; only its mate is another.
    return half === 'left' ? [{ ...left, id: seam.id }] : [seam, left];
  });
};

const leftNotches = (seam: Seam, first: Standing | undefined, second: Standing | undefined): Seam['notches'] =>
  seam.notches.map(([a, b]) => [first === 'opened' ? leftId(a) : a, second === 'opened' ? leftId(b) : b]);

/** Girths round the body count both halves; one round an arm or a leg is told for each where they differ. */
export const splitGirths = (garment: Garment, stand: Standings): readonly Girth[] =>
  garment.girths.flatMap((girth): readonly Girth[] => {
    if (!girth.pieces.some(({ piece }) => isSplit(stand.get(piece)))) return [girth];
    const left = girth.pieces.map((one) => {
      const standing = stand.get(one.piece);
      if (standing === 'pair') return { ...one, piece: leftId(one.piece) };
      return standing === 'opened' ? { ...one, level: leftId(girth.level) } : one;
    });
    if (girth.around === 'limb') return [girth, { ...girth, pieces: left, half: 'left' }];
    const halved = (pieces: Girth['pieces']): Girth['pieces'] =>
      pieces.map((one) => ({ ...one, factor: one.factor / 2 }));
    const alike = girth.pieces.filter(({ piece }) => !isSplit(stand.get(piece)));
    const apart = (pieces: Girth['pieces']): Girth['pieces'] =>
      halved(pieces.filter((_, i) => isSplit(stand.get(girth.pieces[i]?.piece ?? ''))));
    return [{ ...girth, pieces: [...alike, ...apart(girth.pieces), ...apart(left)] }];
  });
