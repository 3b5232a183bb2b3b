import { distance, tolerance } from '../../geometry/index.ts';
import { type Garment, type Piece, pieceOf, type Seam } from '../../pattern/index.ts';
import { bad, type Problem } from '../../units/index.ts';
import {
  type EdgeAt,
  type End,
  edgeOrder,
  endPoint,
  isBack,
  isBody,
  isFront,
  isLining,
  isSleeve,
  liesAcross,
  matesOf,
  neighbourAt,
  other,
  sewnToSleeve,
} from '../parts.ts';

/**
 * One stretch of the shoulder: the edge of one piece from towards the neck to towards the armhole. Pieces of a princess
 * line carry one each.
 */
export interface Panel {
  readonly piece: Piece;
  readonly edge: string;
  /** The end of the edge that lies towards the neck. */
  readonly inner: End;
  /** What meets it there: the neckline, a princess seam, the edge of a facing. */
  readonly innerMeets: EdgeAt;
  /** What meets it at its other end: the armhole or a princess seam. */
  readonly outerMeets: EdgeAt;
  readonly side: 'front' | 'back';
  readonly lining: boolean;
}

const outward = (piece: Piece): 1 | -1 => {
  // Pieces lie with their centre along y: levels begin there, and what has none is told by its fold or its armhole.
  const [level] = piece.levels;
  if (level && Math.abs(level.to.x - level.from.x) > tolerance.kink) return level.to.x > level.from.x ? 1 : -1;
  const fold = piece.edges.find(({ finish }) => finish === 'fold');
  if (fold) {
    const at = endPoint(piece, { edge: fold.id, end: 'start' });
    const far = piece.runs.flatMap(({ path }) => path.map(({ to }) => to.x - at.x));
    return far.reduce((a, b) => (Math.abs(b) > Math.abs(a) ? b : a), 0) >= 0 ? 1 : -1;
  }
  return 1;
};

const panelOf = (piece: Piece, edge: string): Panel | null => {
  const [start, end] = [endPoint(piece, { edge, end: 'start' }), endPoint(piece, { edge, end: 'end' })];
  const inner: End = outward(piece) * (end.x - start.x) > 0 ? 'start' : 'end';
  const [innerMeets, outerMeets] = [
    neighbourAt(piece, { edge, end: inner }),
    neighbourAt(piece, { edge, end: other(inner) }),
  ];
  if (!innerMeets || !outerMeets) return null;
  return {
    piece,
    edge,
    inner,
    innerMeets,
    outerMeets,
    side: isFront(piece) ? 'front' : 'back',
    lining: isLining(piece),
  };
};

/** Seams over the shoulder: front to back (or yoke), of one layer, lying across both pieces. */
export const shoulderSeams = (garment: Garment): readonly Seam[] =>
  garment.seams.filter(({ a, b }) => {
    const [one, two] = [pieceOf(garment, a.piece), pieceOf(garment, b.piece)];
    const faces = (isFront(one) && isBack(two)) || (isBack(one) && isFront(two));
    return faces && isLining(one) === isLining(two) && liesAcross(one, a.edge) && liesAcross(two, b.edge);
  });

export const panelsOf = (garment: Garment): readonly Panel[] =>
  shoulderSeams(garment).flatMap(({ a, b }) =>
    [a, b].flatMap(({ piece, edge }) => {
      const panel = panelOf(pieceOf(garment, piece), edge);
      return panel ? [panel] : [];
    }),
  );

/** Panels from the neck to the armhole, one chain for each front and back, of shell and of lining. */
export type Chain = readonly Panel[];

export const chainsOf = (garment: Garment): readonly Chain[] => {
  const panels = panelsOf(garment);
  const joinedTo = (panel: Panel): Panel | undefined =>
    panels.find(
      (next) =>
        next !== panel &&
        next.side === panel.side &&
        matesOf(garment, panel.piece.id, panel.outerMeets.edge).some(
          ({ piece, edge }) => piece.id === next.piece.id && edge === next.innerMeets.edge,
        ),
    );
  const followers = new Set(panels.map(joinedTo));
  return panels
    .filter((panel) => !followers.has(panel))
    .map((first) => {
      const chain = [first];
      for (let next = joinedTo(first); next; next = joinedTo(next)) chain.push(next);
      return chain;
    });
};

/** The armhole of one piece: its edges from the upper end to the underarm (of a yoke, on to where the back is joined). */
export interface Armhole {
  readonly piece: Piece;
  readonly edges: readonly string[];
  /** Whether that is against the outline. */
  readonly reversed: boolean;
  /** What meets it at its upper end, and at its lower. */
  readonly top: EdgeAt;
  readonly foot: EdgeAt;
  /** Whether its lower end is the underarm, where the side seam begins. */
  readonly underarm: boolean;
}

const armholeOf = (garment: Garment, piece: Piece): Armhole | null => {
  const order = edgeOrder(piece);
  const sewn = order.map((edge) => sewnToSleeve(garment, piece, edge));
  const first = sewn.findIndex((is, i) => is && !sewn[(i + sewn.length - 1) % sewn.length]);
  if (first < 0) return null;
  const turned = [...order.slice(first), ...order.slice(0, first)];
  const count = turned.findIndex((edge) => !sewnToSleeve(garment, piece, edge));
  const edges = turned.slice(0, count < 0 ? turned.length : count);
  const start: EdgeAt = { edge: edges[0] as string, end: 'start' };
  const end: EdgeAt = { edge: edges.at(-1) as string, end: 'end' };
  const reversed = endPoint(piece, start).y > endPoint(piece, end).y;
  const [upper, lower] = reversed ? [end, start] : [start, end];
  const [top, foot] = [neighbourAt(piece, upper), neighbourAt(piece, lower)];
  if (!top || !foot) return null;
  return {
    piece,
    edges: reversed ? edges.toReversed() : edges,
    reversed,
    top,
    foot,
    underarm: !liesAcross(piece, foot.edge),
  };
};

export const armholesOf = (garment: Garment): readonly Armhole[] =>
  garment.pieces.flatMap((piece) => {
    const found = isBody(piece) ? armholeOf(garment, piece) : null;
    return found ? [found] : [];
  });

/** The neckline of one piece, from the centre out: the edges that this needs drawn. */
export interface Neckline {
  readonly piece: Piece;
  readonly edges: readonly string[];
  readonly reversed: boolean;
  /** What meets it at the centre, and at the shoulder (or, on a raglan, at the sleeve). */
  readonly centre: EdgeAt;
  readonly shoulder: EdgeAt;
  readonly side: 'front' | 'back';
}

const landmarks: ReadonlySet<string> = new Set(['centre-neck', 'nape']);

const necklineFrom = (piece: Piece, shoulder: EdgeAt): Neckline | null => {
  const edges: string[] = [];
  let here = neighbourAt(piece, shoulder);
  while (here && edges.length < piece.edges.length) {
    edges.push(here.edge);
    const far: EdgeAt = { edge: here.edge, end: other(here.end) };
    const point = endPoint(piece, far);
    const next = neighbourAt(piece, far);
    const centred = piece.landmarks.some(({ id, at }) => landmarks.has(id) && distance(at, point) <= tolerance.walk);
    if (!next) return null;
    if (centred || !liesAcross(piece, next.edge)) {
      const reversed = here.end === 'start';
      return {
        piece,
        edges: edges.toReversed(),
        reversed,
        centre: next,
        shoulder,
        side: isFront(piece) ? 'front' : 'back',
      };
    }
    here = next;
  }
  return null;
};

/** Necklines of shell pieces: from the shoulder, or from the raglan, to the centre. */
export const necklinesOf = (garment: Garment): readonly Neckline[] => {
  const panels = panelsOf(garment).filter(({ lining }) => !lining);
  const raglans = armholesOf(garment).filter(
    ({ piece, top }) => !isLining(piece) && isNeckEdge(garment, piece, top.edge),
  );
  const ends = [
    ...panels
      .filter(({ piece, innerMeets }) => isNeckEdge(garment, piece, innerMeets.edge))
      .map(({ piece, edge, inner }) => ({ piece, at: { edge, end: inner } })),
    ...raglans.map(({ piece, edges, reversed }) => ({
      piece,
      at: { edge: edges[0] as string, end: reversed ? ('end' as const) : ('start' as const) },
    })),
  ];
  return ends.flatMap(({ piece, at }) => {
    const found = necklineFrom(piece, at);
    return found ? [found] : [];
  });
};

/** An edge at which no body piece and no sleeve is joined: the neckline, bare or with a collar, band or facing. */
const isNeckEdge = (garment: Garment, piece: Piece, edge: string): boolean =>
  !matesOf(garment, piece.id, edge).some((mate) => isBody(mate.piece) || isSleeve(mate.piece));

/** What a garment lacks whose shoulder is to be altered: a seam over it, with the armhole at its end. */
export const needsShoulder = (garment: Garment): Problem | null => {
  const chains = chainsOf(garment);
  if (chains.length === 0) return bad('alter.no-shoulder-seam', {}).problem;
  const armholes = armholesOf(garment);
  const reach = chains.every((chain) => {
    const last = chain.at(-1) as Panel;
    return armholes.some(({ piece, edges }) => piece.id === last.piece.id && edges.includes(last.outerMeets.edge));
  });
  return reach ? null : bad('alter.no-shoulder-seam', {}).problem;
};

export const needsNeckline = (garment: Garment): Problem | null => {
  const necklines = necklinesOf(garment);
  const both = ['front', 'back'].every((side) => necklines.some((one) => one.side === side));
  return both ? null : bad('alter.no-neckline', {}).problem;
};

export const needsArmhole = (garment: Garment): Problem | null => {
  const armholes = armholesOf(garment).filter(({ underarm }) => underarm);
  return armholes.length > 0 ? needsShoulder(garment) : bad('alter.no-armhole', {}).problem;
};
