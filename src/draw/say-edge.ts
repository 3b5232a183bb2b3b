import { type Garment, type Piece, pieceOf, type Seam } from '../pattern/index.ts';
import { drawWords, fill } from '../words/index.ts';
import { sayId } from './say.ts';

/** What an edge is called, and which part of it this is: the cap of a sleeve has a front and a back. */
interface EdgeName {
  readonly edge: string;
  readonly part: string | null;
}

const names: Readonly<Record<string, string>> = drawWords.edgeNames;
const parts: Readonly<Record<string, string>> = drawWords.edgeParts;

/** `cap-front` is the front part of the cap; `centre-front` is a name of its own. */
const edgeName = (id: string): EdgeName => {
  const whole = names[id];
  if (whole !== undefined) return { edge: whole, part: null };
  const cut = id.lastIndexOf('-');
  const part = parts[id.slice(cut + 1)];
  if (cut < 1 || part === undefined) return { edge: sayId(id).toLowerCase(), part: null };
  const noun = id.slice(0, cut);
  return { edge: names[noun] ?? sayId(noun).toLowerCase(), part };
};

const isHalf = (part: string | null): boolean =>
  part === drawWords.edgeParts.right || part === drawWords.edgeParts.left;

/** The same on its piece: where the left half has an edge of its own, the other is the right one’s. */
const edgeNameOn = (piece: Piece, id: string): EdgeName => {
  const name = edgeName(id);
  const halved = name.part === null && piece.edges.some((edge) => edge.id === `${id}-left`);
  return halved ? { ...name, part: drawWords.edgeParts.right } : name;
};

/** Words alone, so the unit does not matter. */
const filled = (template: string, values: Readonly<Record<string, string>>): string => fill(template, values, 'cm');

const upperFirst = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
export const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

const withPart = ({ edge, part }: EdgeName): string =>
  part === null ? edge : filled(drawWords.edgePart, { edge, part });

/** An edge among those of its piece: `Armhole`, `Cap, front`, `Centre back`. */
export const sayEdge = (id: string): string => upperFirst(withPart(edgeName(id)));

/** A piece that is cut for one half of the body alone says so at the end of its name: `Back, right` is the right back. */
const ofOneHalf = (name: string): { readonly name: string; readonly half: string | null } => {
  for (const half of [drawWords.edgeParts.right, drawWords.edgeParts.left]) {
    const end = `, ${half}`;
    if (name.endsWith(end)) return { name: name.slice(0, -end.length), half };
  }
  return { name, half: null };
};

/** A piece in the middle of a sentence: `right back`, `front neck facing`. */
const sayPiece = ({ name }: Piece): string => {
  const plain = ofOneHalf(name);
  const said = lowerFirst(plain.name);
  return plain.half === null ? said : `${plain.half} ${said}`;
};

/** Words of one piece's name: in front of its edge if it is one word, else before a comma. */
const inPiece = (piece: Piece, edge: string): string => {
  const { name, half } = ofOneHalf(piece.name);
  // “Centre back” says that it is of the back.
  const said = edge.split(' ').includes(name.toLowerCase())
    ? edge
    : filled(name.includes(' ') ? drawWords.edgeOfNamed : drawWords.edgeOfPlain, { piece: lowerFirst(name), edge });
  return upperFirst(half === null ? said : `${half} ${said}`);
};

/** Anything a piece carries, told with the piece: `Front bust dart`. */
export const sayOnPiece = inPiece;

/** An edge among those of a garment: `Front armhole`, `Sleeve cap, front`, `Front neck facing, shoulder`. */
export const sayEdgeOf = (piece: Piece, id: string): string => {
  const { edge, part } = edgeNameOn(piece, id);
  return withPart({ edge: inPiece(piece, edge), part });
};

/**
 * A seam as the trade names it: `Sleeve cap, front, into front armhole`, `Back shoulder to front shoulder`, `Centre back, to
 * its mirror image`, `Sleeve underarm, front to back`, `Front neck facing to front, at the neck`.
 */
export const saySeam = (garment: Garment, { a, b, how }: Seam): string => {
  const [pieceA, pieceB] = [pieceOf(garment, a.piece), pieceOf(garment, b.piece)];
  const [nameA, nameB] = [edgeNameOn(pieceA, a.edge), edgeNameOn(pieceB, b.edge)];
  if (pieceA.id === pieceB.id) return withinPiece(pieceA, a.edge, nameA, nameB, a.edge === b.edge);
  if (nameA.edge === nameB.edge && (pieceA.name.includes(' ') || pieceB.name.includes(' '))) {
    return filled(drawWords.seamAt, {
      a: upperFirst(sayPiece(pieceA)),
      b: sayPiece(pieceB),
      edge: isHalf(nameA.part) ? withPart(nameA) : nameA.edge,
    });
  }
  const template = how === 'eased' && nameA.edge !== nameB.edge ? drawWords.seamInto : drawWords.seamTo;
  return filled(template, { a: sayEdgeOf(pieceA, a.edge), b: lowerFirst(sayEdgeOf(pieceB, b.edge)) });
};

const withinPiece = (piece: Piece, id: string, a: EdgeName, b: EdgeName, mirrored: boolean): string => {
  if (mirrored) return filled(drawWords.seamMirrored, { a: sayEdgeOf(piece, id) });
  const said = inPiece(piece, a.edge);
  if (a.edge === b.edge && a.part !== null && b.part !== null) {
    return filled(drawWords.seamParts, { edge: said, a: a.part, b: b.part });
  }
  if (a.part !== null && a.part === b.part) {
    return withPart({ edge: filled(drawWords.seamTo, { a: said, b: b.edge }), part: a.part });
  }
  return filled(drawWords.seamTo, { a: withPart({ edge: said, part: a.part }), b: withPart(b) });
};
