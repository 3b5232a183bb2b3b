import { beforeAll, describe, expect, it } from 'vitest';
import { type AlteredGarment, type AlteredPiece, judgeAltered } from './altered.ts';
import type { PrintedGarment } from './pieces.ts';
import { easewright, put, withFolder } from './program.ts';

/** The judge must say no to what no alteration may do; each fault is planted into a sound printed garment. */

const list = (steps: readonly object[]) =>
  JSON.stringify({ format: 'easewright-alterations/1', pattern: 'blouse', steps });
const bust = { id: 's1', alteration: 'full-bust', version: 1, on: true, params: { amount: 18 } };
const longer = { ...bust, alteration: 'lengthen-shorten', params: { where: 'above-waist', amount: 20 } };

let plain: PrintedGarment;
let altered: AlteredGarment;
let lengthened: AlteredGarment;

beforeAll(async () => {
  const { lines } = await withFolder((folder) =>
    easewright([
      'alter',
      'blouse',
      '--size',
      '5',
      '--lists',
      put(folder, 'lists.jsonl', `${list([])}\n${list([bust])}\n${list([longer])}\n`),
      '--json',
    ]),
  );
  [plain, altered, lengthened] = lines as [PrintedGarment, AlteredGarment, AlteredGarment];
});

const inPiece =
  (id: string, change: (piece: AlteredPiece) => AlteredPiece) =>
  (garment: AlteredGarment): AlteredGarment => ({
    ...garment,
    pieces: garment.pieces.map((piece) => (piece.id === id ? change(piece) : piece)),
  });

/** Every pair of figures of a printed path through a function. */
const moved = (path: string, by: (x: number, y: number) => readonly [number, number]): string =>
  path.replace(/(-?[\d.]+(?:e-?\d+)?)[ ,]+(-?[\d.]+(?:e-?\d+)?)/g, (_, x, y) => by(Number(x), Number(y)).join(' '));

const inEdge =
  (id: string, path: (path: string) => string) =>
  (piece: AlteredPiece): AlteredPiece => ({
    ...piece,
    edges: piece.edges.map((edge) => (edge.id === id ? { ...edge, path: path(edge.path) } : edge)),
  });

const spotsOf = (path: string): readonly (readonly [number, number])[] =>
  [...path.matchAll(/(-?[\d.]+(?:e-?\d+)?)[ ,]+(-?[\d.]+(?:e-?\d+)?)/g)].map(
    ([, x, y]) => [Number(x), Number(y)] as const,
  );

/** Moves the one joint of a piece's lines that lies at a point, by half the given figures wherever it is printed. */
const jointMoved = (piece: AlteredPiece, at: readonly [number, number], dx: number, dy: number): AlteredPiece => {
  const by = (x: number, y: number): readonly [number, number] =>
    Math.hypot(x - at[0], y - at[1]) < 1e-3 ? [x + dx, y + dy] : [x, y];
  return {
    ...piece,
    outline: moved(piece.outline, by),
    edges: piece.edges.map((edge) => ({ ...edge, path: moved(edge.path, by) })),
  };
};

const firstSpot = (piece: AlteredPiece, edge: string): readonly [number, number] =>
  spotsOf(piece.edges.find(({ id }) => id === edge)?.path ?? '')[0] as readonly [number, number];

const middleSpot = (piece: AlteredPiece, edge: string): readonly [number, number] => {
  const path = piece.edges.find(({ id }) => id === edge)?.path ?? '';
  const ends = [...path.matchAll(/C [^A-Z]+|L [^A-Z]+/g)].map(
    ([text]) => spotsOf(text).at(-1) as readonly [number, number],
  );
  return ends[Math.floor((ends.length - 1) / 2)] as readonly [number, number];
};

const mutants: Readonly<Record<string, (garment: AlteredGarment) => AlteredGarment>> = {
  'an edge moved half a millimetre': inPiece(
    'front',
    inEdge('armhole', (path) => moved(path, (x, y) => [x + 0.5, y])),
  ),
  'a corner of the seam line moved half a millimetre': inPiece('front', (piece) =>
    jointMoved(piece, firstSpot(piece, 'hem'), 0.5, 0.5),
  ),
  'a dart leg lengthened': inPiece('front', (piece) => ({
    ...piece,
    darts: piece.darts.map((dart) => ({
      ...dart,
      legs: [{ x: dart.legs[0].x + 0.7, y: dart.legs[0].y }, dart.legs[1]] as const,
    })),
  })),
  'a dart point outside the piece': inPiece('front', (piece) => ({
    ...piece,
    darts: piece.darts.map((dart) => ({ ...dart, point: { x: dart.point.x + 900, y: dart.point.y } })),
  })),
  'a dart intake misprinted': inPiece('front', (piece) => ({
    ...piece,
    darts: piece.darts.map((dart) => ({ ...dart, intake: dart.intake + 1 })),
  })),
  'a notch slid off its place': inPiece('front', (piece) => ({
    ...piece,
    notches: piece.notches.map((notch, i) => (i === 0 ? { ...notch, at: notch.at * 0.9 } : notch)),
  })),
  'a notch on an edge that is not there': inPiece('front', (piece) => ({
    ...piece,
    notches: piece.notches.map((notch, i) => (i === 0 ? { ...notch, edge: 'elsewhere' } : notch)),
  })),
  'a notch that was to meet lost': (garment) => {
    const seam = garment.seams.find(({ notches }) => notches.length > 0);
    return inPiece(seam?.a.piece ?? '', (piece) => ({
      ...piece,
      notches: piece.notches.filter(({ id }) => id !== seam?.notches[0]?.[0]),
    }))(garment);
  },
  'truing misprinted': inPiece('front', (piece) => ({ ...piece, areaTrued: (piece.areaTrued ?? 0) + 5 })),
  'an area misprinted': inPiece('front', (piece) => ({
    ...piece,
    areaAfter: (piece.areaAfter ?? 0) + 5,
    areaTrued: (piece.areaTrued ?? 0) + 5,
  })),
  'truing without bound': inPiece('front', (piece) => ({
    ...piece,
    areaBefore: (piece.areaBefore ?? 0) * 0.9,
    areaTrued: (piece.areaTrued ?? 0) + (piece.areaBefore ?? 0) * 0.1,
  })),
  'the cut line shrunk at a corner': inPiece('front', (piece) => {
    const at = spotsOf(piece.cut)[0] as readonly [number, number];
    return {
      ...piece,
      cut: moved(piece.cut, (x, y) => (Math.hypot(x - at[0], y - at[1]) < 1e-3 ? [x + 2, y + 2] : [x, y])),
    };
  }),
  'the cut line of the seam line': inPiece('back', (piece) => ({ ...piece, cut: piece.outline })),
  'an allowance misprinted': inPiece('back', (piece) => ({
    ...piece,
    edges: piece.edges.map((edge) => ({ ...edge, allowance: edge.allowance === 0 ? 0 : edge.allowance + 1 })),
  })),
  'a kink in the armhole': inPiece('front', (piece) => jointMoved(piece, middleSpot(piece, 'armhole'), 3, 0)),
  'the grain turned one degree': inPiece('front', (piece) => {
    const { from, to } = piece.grain;
    return { ...piece, grain: { from, to: { x: to.x + (to.y - from.y) * Math.tan(Math.PI / 180), y: to.y } } };
  }),
  'a piece mirrored': inPiece('front', (piece) => ({
    ...piece,
    outline: moved(piece.outline, (x, y) => [-x, y]),
    cut: moved(piece.cut, (x, y) => [-x, y]),
  })),
  'a seam line that crosses itself': inPiece('back', (piece) => jointMoved(piece, firstSpot(piece, 'hem'), -400, -300)),
  'an open seam line': inPiece('back', (piece) => ({ ...piece, outline: piece.outline.replace(/ Z\s*$/, ' L 0 0') })),
  'an edge renamed': inPiece('front', (piece) => ({
    ...piece,
    edges: piece.edges.map((edge) => (edge.id === 'hem' ? { ...edge, id: 'lower' } : edge)),
  })),
  'a count changed': inPiece('front', (piece) => ({ ...piece, count: piece.count + 1 })),
  'a girth misprinted': (garment) => ({
    ...garment,
    girths: garment.girths.map((girth, i) => (i === 0 ? { ...girth, finished: girth.finished + 2 } : girth)),
  }),
  'something that did not hold': (garment) => ({
    ...garment,
    held: (garment.held ?? []).map((one, i) => (i === 0 ? { ...one, ok: false } : one)),
  }),
};

describe('the judge of alterations', () => {
  it('accepts what is printed', () => {
    expect(altered.ok, altered.message).toBe(true);
    expect(judgeAltered(plain, altered, 1)).toEqual([]);
    expect(judgeAltered(plain, plain, 0)).toEqual([]);
  });

  it.each(Object.keys(mutants))('rejects %s', (name) => {
    const mutant = mutants[name]?.(altered) as AlteredGarment;
    expect(mutant).not.toEqual(altered);
    expect(judgeAltered(plain, mutant, 1)).not.toEqual([]);
  });

  it('rejects a seam mate left unaltered, and says by how much it does not meet', () => {
    expect(judgeAltered(plain, lengthened, 1)).toEqual([]);
    const back = plain.pieces.find(({ id }) => id === 'back') as AlteredPiece;
    const unmet = inPiece(
      'back',
      () => back,
    )({
      ...lengthened,
      seams: lengthened.seams.map((seam) => {
        const was = plain.seams.find(({ id }) => id === seam.id);
        // As a program would print it that forgot the mate, its sums still right.
        const lengthB = seam.b.piece === 'back' ? (was?.lengthB ?? 0) : seam.lengthB;
        const lengthA = seam.a.piece === 'back' ? (was?.lengthA ?? 0) : seam.lengthA;
        return { ...seam, lengthA, lengthB, difference: lengthA - lengthB };
      }),
    });
    expect(judgeAltered(plain, unmet, 1).join()).toMatch(/allowed/);
  });
});
