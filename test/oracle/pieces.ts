import { polygonArea, readRuns, runsLength, type Spot, type Strokes, sampled } from './path.ts';

/** The shapes docs/command-line.md promises, as far as judging needs them. */
export interface PrintedPiece {
  readonly id: string;
  readonly count: number;
  readonly mirrored: boolean;
  readonly onFold: boolean;
  readonly role: string;
  readonly notches: readonly {
    readonly id: string;
    readonly edge: string;
    readonly at: number;
    readonly point: Spot;
  }[];
  readonly grain: { readonly from: Spot; readonly to: Spot };
  readonly outline: string;
  readonly cut: string;
  readonly edges: readonly {
    readonly id: string;
    readonly path: string;
    readonly allowance: number;
    readonly finish: string;
  }[];
  readonly darts: readonly {
    readonly id: string;
    readonly point: Spot;
    readonly legs: readonly [Spot, Spot];
    readonly intake: number;
  }[];
  readonly levels: readonly {
    readonly id: string;
    readonly from: Spot;
    readonly to: Spot;
    readonly over?: Spot;
    readonly stops?: 'from' | 'to' | 'both';
  }[];
}

interface PrintedSide {
  readonly piece: string;
  readonly edge: string;
  readonly reversed: boolean;
}

export interface PrintedSeam {
  readonly id: string;
  readonly notches: readonly (readonly [string, string])[];
  readonly a: PrintedSide;
  readonly b: PrintedSide;
  readonly lengthA: number;
  readonly lengthB: number;
  readonly easeMin: number;
  readonly easeMax: number;
  readonly difference: number;
}

export interface PrintedGirth {
  readonly level: string;
  readonly body: number;
  readonly ease: number;
  readonly finished: number;
  /** The pieces it is measured over, and how often each is met. */
  readonly pieces: readonly { readonly piece: string; readonly factor: number; readonly level?: string }[];
}

export interface PrintedGarment {
  readonly ok: boolean;
  readonly reason?: string;
  readonly seams: readonly PrintedSeam[];
  readonly girths: readonly PrintedGirth[];
  readonly pieces: readonly PrintedPiece[];
}

/** How far the judge lets a printed figure stray from what it measures, mm. */
const slack = { figure: 0.02, seam: 0.1, girth: 1, leg: 0.1, closed: 1e-3 };

const pieceOf = (garment: PrintedGarment, id: string): PrintedPiece | undefined =>
  garment.pieces.find((piece) => piece.id === id);

const edgeLength = (garment: PrintedGarment, side: PrintedSide): number | null => {
  const edge = pieceOf(garment, side.piece)?.edges.find((candidate) => candidate.id === side.edge);
  return edge ? runsLength(readRuns(edge.path)) : null;
};

/** Complaints about the seams: lengths misprinted, or sides that do not meet within the ease allowed. */
export const judgeSeams = (garment: PrintedGarment): readonly string[] =>
  garment.seams.flatMap((seam) => {
    const name = `${seam.a.piece} ${seam.a.edge} to ${seam.b.piece} ${seam.b.edge}`;
    const a = edgeLength(garment, seam.a);
    const b = edgeLength(garment, seam.b);
    if (a === null || b === null) return [`${name}: a side is not printed`];
    const found: string[] = [];
    if (Math.abs(a - seam.lengthA) > slack.figure) found.push(`${name}: side a is ${a}, printed ${seam.lengthA}`);
    if (Math.abs(b - seam.lengthB) > slack.figure) found.push(`${name}: side b is ${b}, printed ${seam.lengthB}`);
    if (Math.abs(a - b - seam.difference) > slack.figure)
      found.push(`${name}: differs by ${a - b}, printed ${seam.difference}`);
    if (a - b < seam.easeMin - slack.seam || a - b > seam.easeMax + slack.seam) {
      found.push(`${name}: differs by ${a - b}, allowed ${seam.easeMin} to ${seam.easeMax}`);
    }
    return found;
  });

const crossing = (p: Spot, q: Spot, a: Spot, b: Spot): { readonly s: number; readonly t: number } | null => {
  const dx = q.x - p.x;
  const dy = q.y - p.y;
  const ex = b.x - a.x;
  const ey = b.y - a.y;
  const det = dx * ey - dy * ex;
  if (Math.abs(det) < 1e-12) return null;
  const s = ((a.x - p.x) * ey - (a.y - p.y) * ex) / det;
  const t = ((a.x - p.x) * dy - (a.y - p.y) * dx) / det;
  return t >= -1e-9 && t <= 1 + 1e-9 ? { s, t } : null;
};

const around = (spot: Spot, centre: Spot, angle: number): Spot => {
  const x = spot.x - centre.x;
  const y = spot.y - centre.y;
  return {
    x: centre.x + x * Math.cos(angle) - y * Math.sin(angle),
    y: centre.y + x * Math.sin(angle) + y * Math.cos(angle),
  };
};

const bearing = (from: Spot, to: Spot): number => Math.atan2(to.y - from.y, to.x - from.x);

/** Straight across a printed piece at a level, darts folded: from leg to leg the line is carried round the dart's point. */
export const widthAt = (piece: PrintedPiece, levelId: string): number => {
  const level = piece.levels.find((candidate) => candidate.id === levelId);
  if (!level) throw new Error(`${piece.id} prints no level ${levelId}`);
  const edges = piece.edges.flatMap((edge) => readRuns(edge.path)).map((run) => sampled(run, 0.1));
  const towards = (from: Spot, to: Spot): Spot => {
    const size = Math.hypot(to.x - from.x, to.y - from.y);
    return { x: (to.x - from.x) / size, y: (to.y - from.y) / size };
  };
  const unit = towards(level.from, level.to);
  // A level that bends is measured from its bend both ways.
  const inside = level.over ?? { x: level.from.x + unit.x * 0.7, y: level.from.y + unit.y * 0.7 };
  const march = (end: Spot): number => {
    let from = inside;
    let heading = towards(inside, end);
    let sum = 0;
    let passed: string | null = null;
    for (let turn = 0; turn < 6; turn += 1) {
      const ahead = { x: from.x + heading.x, y: from.y + heading.y };
      let nearest = Number.POSITIVE_INFINITY;
      let onLeg: { readonly dart: PrintedPiece['darts'][number]; readonly leg: 0 | 1 } | null = null;
      for (const edge of edges) {
        for (let i = 1; i < edge.length; i += 1) {
          const hit = crossing(from, ahead, edge[i - 1] as Spot, edge[i] as Spot);
          if (hit && hit.s > 1e-4 && hit.s < nearest) {
            nearest = hit.s;
            onLeg = null;
          }
        }
      }
      for (const dart of piece.darts) {
        if (dart.id === passed) continue;
        for (const leg of [0, 1] as const) {
          const hit = crossing(from, ahead, dart.point, dart.legs[leg]);
          if (hit && hit.s >= 0 && hit.s < nearest) {
            nearest = hit.s;
            onLeg = { dart, leg };
          }
        }
      }
      if (!Number.isFinite(nearest)) throw new Error(`Level ${levelId} of ${piece.id} runs off the piece`);
      sum += nearest;
      if (!onLeg) return sum;
      const { dart, leg } = onLeg;
      const angle = bearing(dart.point, dart.legs[leg === 0 ? 1 : 0]) - bearing(dart.point, dart.legs[leg]);
      const met = { x: from.x + heading.x * nearest, y: from.y + heading.y * nearest };
      from = around(met, dart.point, angle);
      heading = around(heading, { x: 0, y: 0 }, angle);
      passed = dart.id;
    }
    throw new Error(`Level ${levelId} of ${piece.id} keeps crossing darts`);
  };
  // Where a level stops (a centre line, a pleat's fold) it is measured to there and not to the edge beyond.
  const upTo = (end: 'from' | 'to'): number =>
    level.stops === end || level.stops === 'both'
      ? Math.hypot(level[end].x - inside.x, level[end].y - inside.y)
      : march(level[end]);
  return upTo('to') + upTo('from');
};

/** How often a piece goes round: once round a limb; round a body as often as it is cut, twice when on the fold. */
const factorAround = (piece: PrintedPiece): number => (piece.onFold ? 2 : piece.count);

/** Second layers, and what lies on the shell: they go round with it and add nothing. */
const liesWithin = (piece: PrintedPiece): boolean => /^lining|facing|pocket|placket|flap|stand/.test(piece.id);

/** Complaints about finished girths: misprinted, not body + ease, or over pieces counted more often than they are cut. */
export const judgeGirths = (garment: PrintedGarment): readonly string[] =>
  garment.girths.flatMap((girth) => {
    const found: string[] = [];
    let finished = 0;
    for (const { piece: id, factor, level: own = girth.level } of girth.pieces) {
      const piece = pieceOf(garment, id);
      if (!piece?.levels.some((level) => level.id === own)) {
        found.push(`${girth.level}: ${id} does not carry it`);
        continue;
      }
      if (factor > factorAround(piece)) found.push(`${girth.level}: ${id} is counted more often than it is cut`);
      finished += factor * widthAt(piece, own);
    }
    // No shell piece that carries the level may be left out: what goes round the body goes into its girth. A level measured on
    // the waistband is not measured again on what is gathered or darted into it.
    const onBand = girth.pieces.some(({ piece }) => /band|^waist-/.test(piece));
    for (const piece of onBand ? [] : garment.pieces) {
      const counted = garment.girths.some(
        (one) => one.level === girth.level && one.pieces.some((part) => part.piece === piece.id),
      );
      if (!counted && !liesWithin(piece) && piece.levels.some((level) => level.id === girth.level))
        found.push(`${girth.level}: ${piece.id} carries it and is not counted`);
    }
    if (Math.abs(finished - girth.finished) > slack.girth / 10)
      found.push(`${girth.level}: measures ${finished}, printed ${girth.finished}`);
    if (Math.abs(finished - girth.body - girth.ease) > slack.girth) {
      found.push(`${girth.level}: measures ${finished}, but body ${girth.body} + ease ${girth.ease}`);
    }
    return found;
  });

/** Does a closed line of points cross itself? Segments are binned so that long outlines stay quick. */
export const crossesItself = (spots: readonly Spot[]): boolean => {
  const cell = 10;
  const bins = new Map<string, number[]>();
  const count = spots.length;
  for (let i = 0; i < count; i += 1) {
    const a = spots[i] as Spot;
    const b = spots[(i + 1) % count] as Spot;
    for (let x = Math.floor(Math.min(a.x, b.x) / cell); x <= Math.floor(Math.max(a.x, b.x) / cell); x += 1) {
      for (let y = Math.floor(Math.min(a.y, b.y) / cell); y <= Math.floor(Math.max(a.y, b.y) / cell); y += 1) {
        const key = `${x},${y}`;
        const bin = bins.get(key);
        if (bin) bin.push(i);
        else bins.set(key, [i]);
      }
    }
  }
  const properly = (i: number, j: number): boolean => {
    const a = spots[i] as Spot;
    const b = spots[(i + 1) % count] as Spot;
    const c = spots[j] as Spot;
    const d = spots[(j + 1) % count] as Spot;
    const hit = crossing(a, b, c, d);
    return hit !== null && hit.s > 1e-7 && hit.s < 1 - 1e-7 && hit.t > 1e-7 && hit.t < 1 - 1e-7;
  };
  for (const bin of bins.values()) {
    for (let m = 0; m < bin.length; m += 1) {
      for (let n = m + 1; n < bin.length; n += 1) {
        const i = bin[m] as number;
        const j = bin[n] as number;
        const apart = Math.min(Math.abs(i - j), count - Math.abs(i - j));
        if (apart > 1 && properly(i, j)) return true;
      }
    }
  }
  return false;
};

const open = (run: Strokes): boolean => {
  const first = run[0]?.points[0];
  const last = run[run.length - 1]?.points.at(-1);
  return !first || !last || Math.hypot(first.x - last.x, first.y - last.y) > slack.closed;
};

const judgeLine = (piece: PrintedPiece, what: 'outline' | 'cut'): readonly string[] => {
  const runs = readRuns(piece[what]);
  const [run] = runs;
  if (runs.length !== 1 || !run) return [`${piece.id}: its ${what} is not one run`];
  if (open(run)) return [`${piece.id}: its ${what} is open`];
  const spots = sampled(run, 1).slice(0, -1);
  const found: string[] = [];
  if (polygonArea(spots) <= 0) found.push(`${piece.id}: its ${what} is the wrong way round`);
  if (crossesItself(spots)) found.push(`${piece.id}: its ${what} crosses itself`);
  return found;
};

/** Complaints about single pieces: outlines and cut lines closed, simple and one inside the other; darts that fold flat. */
export const judgePieces = (garment: Pick<PrintedGarment, 'pieces'>): readonly string[] =>
  garment.pieces.flatMap((piece) => {
    const area = (what: 'outline' | 'cut') => polygonArea(sampled(readRuns(piece[what])[0] ?? [], 1));
    return [
      ...judgeLine(piece, 'outline'),
      ...judgeLine(piece, 'cut'),
      ...(area('cut') < area('outline') ? [`${piece.id}: its cut line is smaller than its seam line`] : []),
      ...piece.darts.flatMap((dart) => {
        const [first, second] = dart.legs.map((leg) => Math.hypot(leg.x - dart.point.x, leg.y - dart.point.y));
        return Math.abs((first ?? 0) - (second ?? 0)) > slack.leg ? [`${piece.id}: the legs of ${dart.id} differ`] : [];
      }),
    ];
  });

/** Everything the judge has to say of a drafted or altered garment; empty when it is sound. */
export const judgeGarment = (garment: PrintedGarment): readonly string[] =>
  garment.ok
    ? [...judgePieces(garment), ...judgeSeams(garment), ...judgeGirths(garment)]
    : [`refused: ${garment.reason ?? 'without a reason'}`];
