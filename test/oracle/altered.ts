import { judgeCutLine } from './cut-line.ts';
import { apart, type Line, lineOf, minus, turn, wayAt } from './line.ts';
import { polygonArea, readRuns, runsLength, type Spot, type Stroke, type Strokes, sampled, spotAt } from './path.ts';
import {
  judgeGirths,
  judgePieces,
  judgeSeams,
  type PrintedGarment,
  type PrintedPiece,
  type PrintedSeam,
} from './pieces.ts';

/** What `easewright alter` prints, as far as judging needs it. */
export interface AlteredPiece extends PrintedPiece {
  readonly areaBefore?: number;
  readonly areaAfter?: number;
  readonly areaTrued?: number;
  readonly lengthBefore?: Readonly<Record<string, number>>;
  readonly puts?: readonly { readonly area: number }[];
}

export interface AlteredGarment extends PrintedGarment {
  /** Where right and left differ: the unaltered garment told in the same pieces. */
  readonly before?: Omit<PrintedGarment, 'ok'>;
  readonly pieces: readonly AlteredPiece[];
  readonly held?: readonly {
    readonly step?: string;
    readonly what: string;
    readonly piece?: string;
    readonly edge?: string;
    readonly by: number;
    readonly ok: boolean;
  }[];
  readonly step?: string;
  readonly code?: string;
  readonly message?: string;
  readonly largest?: number;
}

/** mm, mm² and radians. */
const slack = {
  area: 1,
  /** Truing may move this share of a piece a step: an edge blended over 65 mm each side of a band, on a small piece. */
  trued: 0.02,
  kept: 0.1,
  onEdge: 0.05,
  notch: 1,
  kink: (3 * Math.PI) / 180,
  grain: (0.05 * Math.PI) / 180,
  /** New joints of an outline for each step. */
  joints: 4,
} as const;

const outlineOf = (piece: PrintedPiece): Strokes => readRuns(piece.outline)[0] ?? [];

/** Areas that do not add up: what was there, put in and trued must make what is there now. */
export const judgeAreas = (garment: AlteredGarment, steps = 1): readonly string[] =>
  garment.pieces.flatMap((piece) => {
    const { areaBefore, areaAfter, areaTrued, puts } = piece;
    if (areaBefore === undefined || areaAfter === undefined || areaTrued === undefined || puts === undefined) return [];
    const measured = polygonArea(sampled(outlineOf(piece), 0.05));
    const found: string[] = [];
    if (Math.abs(measured - areaAfter) > slack.area)
      found.push(`${piece.id}: area is ${measured}, printed ${areaAfter}`);
    const made = areaBefore + puts.reduce((sum, one) => sum + one.area, 0) + areaTrued;
    if (Math.abs(made - areaAfter) > 0.01) found.push(`${piece.id}: ${made} made, ${areaAfter} there`);
    const bound = steps * slack.trued * Math.max(areaBefore, areaAfter);
    if (Math.abs(areaTrued) > bound) found.push(`${piece.id}: truing moved ${areaTrued}, more than ${bound}`);
    return found;
  });

/** Edges lie on the outline and, with the darts' mouths, make up the whole of it. */
const judgeEdges = (piece: PrintedPiece, outline: Line): readonly string[] => {
  const found: string[] = [];
  let sum = 0;
  for (const edge of piece.edges) {
    const runs = readRuns(edge.path);
    sum += runsLength(runs);
    const stray = Math.max(
      0,
      ...runs.flat().flatMap((stroke) => [0, 0.5, 1].map((t) => outline.distance(spotAt(stroke, t)))),
    );
    if (stray > slack.onEdge) found.push(`${piece.id}: ${edge.id} lies ${stray} off the outline`);
  }
  const mouths = piece.darts.reduce((total, dart) => total + apart(...dart.legs), 0);
  const whole = runsLength([outlineOf(piece)]);
  if (Math.abs(whole - sum - mouths) > 0.1)
    found.push(`${piece.id}: its edges and darts measure ${sum + mouths}, its outline ${whole}`);
  return found;
};

const judgeDarts = (piece: PrintedPiece, outline: Line): readonly string[] =>
  piece.darts.flatMap((dart) => {
    const found: string[] = [];
    const stray = Math.max(...dart.legs.map((leg) => outline.distance(leg)));
    if (stray > slack.onEdge) found.push(`${piece.id}: a leg of ${dart.id} ends ${stray} off the outline`);
    if (Math.abs(apart(...dart.legs) - dart.intake) > 0.02) found.push(`${piece.id}: ${dart.id} is misprinted`);
    if (!outline.holds(dart.point)) found.push(`${piece.id}: the point of ${dart.id} lies outside`);
    return found;
  });

const placeOn = (runs: readonly Strokes[], share: number): Spot => {
  let left = share * runsLength(runs);
  const spots = runs.map((run) => sampled(run, 0.25));
  for (const run of spots) {
    for (let i = 1; i < run.length; i += 1) {
      const [a, b] = [run[i - 1] as Spot, run[i] as Spot];
      const size = apart(a, b);
      if (left <= size) return { x: a.x + ((b.x - a.x) * left) / size, y: a.y + ((b.y - a.y) * left) / size };
      left -= size;
    }
  }
  return spots.at(-1)?.at(-1) as Spot;
};

const judgeNotches = (piece: PrintedPiece): readonly string[] =>
  piece.notches.flatMap((notch) => {
    const edge = piece.edges.find((one) => one.id === notch.edge);
    if (!edge) return [`${piece.id}: notch ${notch.id} is on no edge`];
    if (notch.at < 0 || notch.at > 1) return [`${piece.id}: notch ${notch.id} is off its edge`];
    const stray = apart(placeOn(readRuns(edge.path), notch.at), notch.point);
    return stray > slack.onEdge ? [`${piece.id}: notch ${notch.id} is ${stray} from its place`] : [];
  });

/** How far notches that should meet lie apart beyond what the seam eases. */
const notchesApart = (garment: PrintedGarment, seam: PrintedSeam): ReadonlyMap<string, number> => {
  const at = (side: PrintedSeam['a'], id: string): number | null => {
    const piece = garment.pieces.find((one) => one.id === side.piece);
    const edge = piece?.edges.find((one) => one.id === side.edge);
    const notch = piece?.notches.find((one) => one.id === id && one.edge === side.edge);
    if (!edge || !notch) return null;
    return runsLength(readRuns(edge.path)) * (side.reversed ? 1 - notch.at : notch.at);
  };
  return new Map(
    seam.notches.map(([a, b]) => {
      const [one, other] = [at(seam.a, a), at(seam.b, b)];
      if (one === null || other === null) return [`${a} ${b}`, Number.POSITIVE_INFINITY];
      const low = Math.min(0, seam.easeMin);
      const high = Math.max(0, seam.easeMax);
      return [`${a} ${b}`, Math.max(0, low - (one - other), one - other - high)];
    }),
  );
};

const judgeMeetings = (before: PrintedGarment, after: PrintedGarment): readonly string[] =>
  after.seams.flatMap((seam) => {
    const old = before.seams.find((one) => one.id === seam.id);
    const was = old ? notchesApart(before, old) : new Map<string, number>();
    return [...notchesApart(after, seam)].flatMap(([pair, by]) =>
      by > Math.max(was.get(pair) ?? 0, slack.notch) + 0.02 ? [`${seam.id}: notches ${pair} lie ${by} apart`] : [],
    );
  });

/** Sharpest turn within any run of an edge, radians. */
const sharpest = (path: string): number =>
  Math.max(
    0,
    ...readRuns(path).flatMap((run) =>
      run.slice(1).map((stroke, i) => turn(wayAt(run[i] as Stroke, 'end'), wayAt(stroke, 'start'))),
    ),
  );

const grainOf = (piece: PrintedPiece): Spot => minus(piece.grain.to, piece.grain.from);

const sheets = (piece: PrintedPiece): number => piece.count * (piece.onFold ? 2 : 1);

/** What a piece must keep from before: its edges, smoothness, grain, count, and few points. */
const judgeKept = (
  old: PrintedPiece,
  piece: PrintedPiece,
  fresh: readonly PrintedPiece[],
  steps: number,
): readonly string[] => {
  const found: string[] = [];
  for (const { id, path } of old.edges) {
    const now = piece.edges.find((edge) => edge.id === id);
    if (!now) {
      if (!fresh.some((one) => one.edges.some((edge) => edge.id === id)))
        found.push(`${piece.id}: its edge ${id} is gone`);
    } else if (sharpest(now.path) > Math.max(sharpest(path), slack.kink) + 0.002) {
      found.push(`${piece.id}: ${id} has a kink of ${((sharpest(now.path) * 180) / Math.PI).toFixed(1)} degrees`);
    }
  }
  const turned = turn(grainOf(old), grainOf(piece));
  if (turned > slack.grain) found.push(`${piece.id}: its grain is turned by ${(turned * 180) / Math.PI} degrees`);
  const others = fresh.reduce((sum, one) => sum + (one.role === piece.role ? sheets(one) : 0), 0);
  if (sheets(piece) > sheets(old) || sheets(piece) + others < sheets(old))
    found.push(`${piece.id}: cut ${sheets(piece)} times instead of ${sheets(old)}`);
  const joints = outlineOf(piece).length - outlineOf(old).length;
  // A piece opened from the fold has each of its edges twice.
  const halves = piece.edges.some(({ id }) => id.endsWith('-left')) ? 2 : 1;
  if (joints > slack.joints * steps * halves) found.push(`${piece.id}: ${joints} joints more after ${steps} steps`);
  return found;
};

const single = new WeakMap<PrintedPiece, readonly string[]>();

/** What is wrong with a piece whatever it was before; a printed piece met again is not judged again. */
const judgeAlone = (piece: PrintedPiece): readonly string[] => {
  const known = single.get(piece);
  if (known) return known;
  const outline = lineOf(readRuns(piece.outline));
  const found = [
    ...judgePieces({ pieces: [piece] }),
    ...judgeEdges(piece, outline),
    ...judgeDarts(piece, outline),
    ...judgeNotches(piece),
    ...judgeCutLine(piece),
  ];
  single.set(piece, found);
  return found;
};

/** What of a single garment is wrong, so that what was so before is not laid to an alteration. */
const faults = (garment: PrintedGarment): readonly string[] => [
  ...garment.pieces.flatMap(judgeAlone),
  ...judgeSeams(garment),
  ...judgeGirths(garment),
];

/** Cloth in all the sheets of a piece. */
const clothOf = (piece: PrintedPiece): number =>
  sheets(piece) * Math.abs(polygonArea(sampled(readRuns(piece.outline)[0] ?? [], 1)));

/** The unaltered garment told for right and left apart is the very garment: as much cloth, piece by piece. */
const judgeApart = (plain: PrintedGarment, told: PrintedGarment): readonly string[] =>
  plain.pieces.flatMap((piece) => {
    const parts = told.pieces.filter(({ id }) => id === piece.id || id === `${piece.id}-left`);
    const sum = parts.reduce((area, part) => area + clothOf(part), 0);
    return Math.abs(sum - clothOf(piece)) > 1e-4 * clothOf(piece)
      ? [`${piece.id}: told apart it has ${sum} of ${clothOf(piece)} mm²`]
      : [];
  });

/** A complaint without its figures: the same one before and after. */
const kindOf = (complaint: string): string => complaint.replace(/-?\d+(\.\d+)?(e-?\d+)?/g, '#');

/**
 * Everything the judge has to say of an altered garment, beside the same printed with no steps; empty when it is sound.
 * `steps`: how many were done between the two.
 */
export const judgeAltered = (plain: PrintedGarment, after: AlteredGarment, steps: number): readonly string[] => {
  if (!after.ok) return [`refused: ${after.message ?? 'without a reason'}`];
  const before: PrintedGarment = after.before ? { ...after.before, ok: true } : plain;
  const known = new Set(faults(before).map(kindOf));
  const fresh = after.pieces.filter((piece) => !before.pieces.some((one) => one.id === piece.id));
  const held = after.held ?? [];
  return [
    ...faults(after).filter((complaint) => !known.has(kindOf(complaint))),
    ...judgeAreas(after, steps),
    ...(after.before ? judgeApart(plain, before) : []),
    ...judgeMeetings(before, after),
    ...after.pieces.flatMap((piece) => {
      const old = before.pieces.find((one) => one.id === piece.id);
      return old && old.outline + old.count !== piece.outline + piece.count
        ? judgeKept(old, piece, fresh, steps)
        : old
          ? judgeSame(old, piece)
          : [];
    }),
    ...held.filter((one) => !one.ok).map((one) => `${one.what} did not hold`),
    ...(steps === 1 ? judgeHeld(before, after) : []),
  ];
};

/** A piece whose seam line is as it was keeps its grain and its edges too. */
const judgeSame = (old: PrintedPiece, piece: PrintedPiece): readonly string[] =>
  turn(grainOf(old), grainOf(piece)) > slack.grain ||
  old.edges.some(({ id }) => !piece.edges.some((edge) => edge.id === id))
    ? judgeKept(old, piece, [], 1)
    : [];

/** Edges an alteration says it kept, measured before and after. */
const judgeHeld = (before: PrintedGarment, after: AlteredGarment): readonly string[] =>
  (after.held ?? []).flatMap(({ what, piece, edge }) => {
    if (what !== 'edge-length' || piece === undefined || edge === undefined) return [];
    const [was, now] = [before, after].map((garment) =>
      garment.pieces.find((one) => one.id === piece)?.edges.find((one) => one.id === edge),
    );
    // An edge on the fold is gone from both once its piece was opened.
    if (!was && !now) return [];
    if (!was || !now) return [`${piece}: ${edge} was said to be kept and is not there`];
    const by = runsLength(readRuns(now.path)) - runsLength(readRuns(was.path));
    return Math.abs(by) > slack.kept + 0.01 ? [`${piece}: ${edge} was said to be kept and changed by ${by}`] : [];
  });
