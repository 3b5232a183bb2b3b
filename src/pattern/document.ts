import { z } from 'zod';
import { measureIds } from '../body/index.ts';
import { type Path, type Point, pathFromSvg, pathToSvg } from '../geometry/index.ts';
import { bad, good, type Problem, type Result } from '../units/index.ts';
import type { AlterationList, Garment, Pattern, Piece, Run, Size } from './types.ts';
import { validateGarment } from './validate.ts';

/** Figures in a document keep a tenth of a micrometre: far below every tolerance, and still readable. */
const decimals = 7;

const id = z.string().min(1).max(80);
const words = z.string().max(4000);
const mm = z.number().min(-1e5).max(1e5);
const pointSchema = z.tuple([mm, mm]);
const pathText = z.string().min(3).max(20_000);

const runSchema = z.union([
  z.strictObject({ edge: id, path: pathText }),
  z.strictObject({ mouth: id, path: pathText }),
]);

const pieceSchema = z.strictObject({
  id,
  name: z.string().min(1).max(200),
  role: z.enum([
    'front',
    'back',
    'side-front',
    'side-back',
    'sleeve',
    'under-sleeve',
    'yoke',
    'tier',
    'bib',
    'strap',
    'hood',
    'placket',
    'front-facing',
    'back-facing',
    'neck-band',
    'cuff',
    'collar',
    'waistband',
    'pocket',
    'other',
  ]),
  cut: z
    .array(
      z.strictObject({
        layer: z.enum(['shell', 'lining', 'interfacing']),
        count: z.number().int().min(1).max(20),
        mirrored: z.boolean(),
      }),
    )
    .min(1),
  runs: z.array(runSchema).max(200),
  edges: z
    .array(
      z.strictObject({ id, finish: z.enum(['seam', 'hem', 'fold', 'raw']), allowance: z.number().min(0).max(200) }),
    )
    .max(100),
  darts: z
    .array(z.strictObject({ id, point: pointSchema, aims: id.optional(), pressed: z.enum(['before', 'after']) }))
    .max(50),
  notches: z
    .array(
      z.strictObject({ id, edge: id, at: z.number().min(0).max(1), strokes: z.union([z.literal(1), z.literal(2)]) }),
    )
    .max(200),
  grain: z.strictObject({ from: pointSchema, to: pointSchema }),
  levels: z
    .array(
      z.strictObject({
        id,
        from: pointSchema,
        to: pointSchema,
        over: pointSchema.optional(),
        stops: z.enum(['from', 'to', 'both']).optional(),
      }),
    )
    .max(50),
  landmarks: z.array(z.strictObject({ id, at: pointSchema })).max(100),
  lines: z
    .array(
      z.strictObject({ id, kind: z.enum(['fold', 'placement', 'stitching', 'lengthen-or-shorten']), path: pathText }),
    )
    .max(100),
});

const side = z.strictObject({ piece: id, edge: id, reversed: z.boolean() });

const measuresSchema = z.partialRecord(z.enum(measureIds), z.number().positive().max(10_000));

const sizeSchema = z.strictObject({
  id,
  body: measuresSchema,
  pieces: z.array(pieceSchema).min(1).max(60),
  seams: z.array(
    z.strictObject({
      id,
      a: side,
      b: side,
      easeMin: mm,
      easeMax: mm,
      how: z.enum(['plain', 'eased', 'gathered', 'stretched', 'pleated']),
      notches: z.array(z.tuple([id, id])).max(50),
    }),
  ),
  girths: z.array(
    z.strictObject({
      level: id,
      measure: z.enum(measureIds),
      around: z.enum(['body', 'limb']),
      pieces: z.array(z.strictObject({ piece: id, factor: z.number().positive().max(8), level: id.optional() })).min(1),
      half: z.literal('left').optional(),
    }),
  ),
});

const notionSchema = z.strictObject({
  what: z.enum([
    'concealed-zip',
    'zip',
    'open-ended-zip',
    'elastic',
    'button',
    'press-stud',
    'hook-and-bar',
    'buckle',
    'stay-tape',
    'bias-binding',
    'cord-stop',
    'shoulder-pad',
    'interfacing',
  ]),
  count: z.number().int().min(0).max(500).exactOptional(),
  size: mm.exactOptional(),
  along: z
    .array(
      z.strictObject({
        piece: id,
        edge: id,
        times: z.number().min(0).max(100),
        from: id.exactOptional(),
        to: id.exactOptional(),
      }),
    )
    .max(100)
    .exactOptional(),
  around: z.enum(measureIds).exactOptional(),
  share: z.number().min(0).max(10).exactOptional(),
  plus: mm.exactOptional(),
  step: z.number().positive().max(1000).exactOptional(),
  every: z.number().positive().max(1000).exactOptional(),
});

const patternSchema = z.strictObject({
  format: z.literal('easewright-pattern/1'),
  id,
  name: z.string().min(1).max(200),
  about: words,
  for: z.enum(['women', 'men', 'child']),
  kind: z.enum(['top', 'dress', 'jacket', 'coat', 'trousers', 'skirt']),
  draftedCup: mm.optional(),
  draftedStature: z.number().positive().max(3000),
  cloth: z.strictObject({
    structure: z.enum(['woven', 'knit']),
    weight: z.tuple([z.number().min(0), z.number().max(3000)]),
    stretch: z.number().min(0).max(3),
    cloths: z.array(z.string().max(200)).max(50),
  }),
  view: z.strictObject({ id, name: z.string().min(1).max(200), about: words }).exactOptional(),
  notions: z.array(z.union([z.string().max(400), notionSchema])).max(50),
  sizes: z.array(sizeSchema).min(1).max(60),
});

type PieceDocument = z.infer<typeof pieceSchema>;
type PatternDocument = z.infer<typeof patternSchema>;

const toPoint = ([x, y]: readonly [number, number]): Point => ({ x, y });
const fromPoint = ({ x, y }: Point): [number, number] => [round(x), round(y)];
const round = (value: number): number => Math.round(value * 10 ** decimals) / 10 ** decimals + 0;

/** Carries a line that could not be read from deep inside a document to the door, and no further. */
class UnreadablePath extends Error {
  readonly problem: Problem;
  constructor(problem: Problem) {
    super(problem.code);
    this.problem = problem;
  }
}

const readPath = (text: string): Path => {
  const read = pathFromSvg(text);
  if (!read.ok) throw new UnreadablePath(read.problem);
  return read.value;
};

const readPiece = (document: PieceDocument): Piece => ({
  ...document,
  runs: document.runs.map(
    (run): Run =>
      'edge' in run
        ? { kind: 'edge', edge: run.edge, path: readPath(run.path) }
        : { kind: 'mouth', dart: run.mouth, path: readPath(run.path) },
  ),
  darts: document.darts.map(({ aims, ...dart }) => ({
    ...dart,
    ...(aims ? { aims } : {}),
    point: toPoint(dart.point),
  })),
  grain: { from: toPoint(document.grain.from), to: toPoint(document.grain.to) },
  levels: document.levels.map(({ over, stops, ...level }) => ({
    id: level.id,
    from: toPoint(level.from),
    to: toPoint(level.to),
    ...(over ? { over: toPoint(over) } : {}),
    ...(stops ? { stops } : {}),
  })),
  landmarks: document.landmarks.map((mark) => ({ id: mark.id, at: toPoint(mark.at) })),
  lines: document.lines.map((line) => ({ ...line, path: readPath(line.path) })),
});

const writePiece = (piece: Piece): PieceDocument => ({
  ...piece,
  cut: piece.cut.map((order) => ({ ...order })),
  edges: piece.edges.map((edge) => ({ ...edge })),
  notches: piece.notches.map((notch) => ({ ...notch })),
  runs: piece.runs.map((run) =>
    run.kind === 'edge'
      ? { edge: run.edge, path: pathToSvg(run.path, decimals) }
      : { mouth: run.dart, path: pathToSvg(run.path, decimals) },
  ),
  darts: piece.darts.map((dart) => ({ ...dart, point: fromPoint(dart.point) })),
  grain: { from: fromPoint(piece.grain.from), to: fromPoint(piece.grain.to) },
  levels: piece.levels.map(({ over, stops, ...level }) => ({
    id: level.id,
    from: fromPoint(level.from),
    to: fromPoint(level.to),
    ...(over ? { over: fromPoint(over) } : {}),
    ...(stops ? { stops } : {}),
  })),
  landmarks: piece.landmarks.map((mark) => ({ id: mark.id, at: fromPoint(mark.at) })),
  lines: piece.lines.map((line) => ({ ...line, path: pathToSvg(line.path as Path, decimals) })),
});

/** Runs read from a document meet to rounding; make them meet exactly, so that everything after may rely on it. */
const snapped = (piece: Piece): Piece => {
  const runs = piece.runs.map((run, index) => {
    const next = piece.runs[(index + 1) % piece.runs.length];
    const last = run.path[run.path.length - 1];
    const start = next?.path[0]?.from;
    if (!last || !start || Math.hypot(last.to.x - start.x, last.to.y - start.y) > 10 ** (1 - decimals)) return run;
    return { ...run, path: [...run.path.slice(0, -1), { ...last, to: start }] };
  });
  return { ...piece, runs };
};

const formatOf = (json: unknown): string | null => {
  const format = typeof json === 'object' && json !== null ? (json as { format?: unknown }).format : undefined;
  return typeof format === 'string' ? format : null;
};

const whereOf = (path: readonly PropertyKey[]): string => path.map(String).join(' › ') || 'the whole document';

/** Brings a pattern document in through its one schema, then checks that every size can be cut. Problems name the piece. */
export const readPattern = (json: unknown): Result<Pattern> => {
  const format = formatOf(json);
  if (format === null) return bad('pattern.not-a-pattern');
  if (format !== 'easewright-pattern/1') return bad('pattern.unknown-version', { format });
  const parsed = patternSchema.safeParse(json);
  if (!parsed.success) {
    const issue = parsed.error.issues[0];
    return bad('pattern.field', { where: whereOf(issue?.path ?? []), what: issue?.message ?? '' });
  }
  let sizes: Size[];
  try {
    sizes = parsed.data.sizes.map(readSize);
  } catch (fault) {
    if (fault instanceof UnreadablePath) return { ok: false, problem: fault.problem };
    throw fault;
  }
  for (const size of sizes) {
    const [first] = validateGarment(size.garment);
    if (first) return { ok: false, problem: { ...first, values: { ...first.values, size: size.id } } };
    const lost = lostNotion(size.garment, parsed.data.notions);
    if (lost) return bad('pattern.notion-missing', { piece: lost.piece, edge: lost.edge, size: size.id });
  }
  const { draftedCup, sizes: _documents, ...rest } = parsed.data;
  return good({ ...rest, ...(draftedCup === undefined ? {} : { draftedCup }), sizes });
};

/** The first notion that follows an edge the pieces do not have. */
const lostNotion = ({ pieces }: Garment, notions: PatternDocument['notions']) => {
  const followed = notions.flatMap((rule) => (typeof rule === 'string' ? [] : (rule.along ?? [])));
  return followed.find(
    ({ piece, edge }) => !pieces.some(({ id, edges }) => id === piece && edges.some((one) => one.id === edge)),
  );
};

const readSize = (document: PatternDocument['sizes'][number]): Size => ({
  id: document.id,
  body: withoutAbsent(document.body),
  garment: {
    pieces: document.pieces.map(readPiece).map(snapped),
    seams: document.seams,
    girths: document.girths,
  } as Garment,
});

const withoutAbsent = (body: PatternDocument['sizes'][number]['body']): Size['body'] =>
  Object.fromEntries(Object.entries(body).filter(([, value]) => value !== undefined));

/** The readable JSON of a pattern, as docs/pattern-format.md describes it. */
export const writePattern = (pattern: Pattern): unknown => ({
  ...pattern,
  sizes: pattern.sizes.map((size) => ({
    id: size.id,
    body: size.body,
    pieces: size.garment.pieces.map(writePiece),
    seams: size.garment.seams,
    girths: size.garment.girths,
  })),
});

/** Reads a pattern from the text of a file; a file cut short or that is not JSON is a problem, not a fault. */
export const readPatternText = (text: string): Result<Pattern> => {
  try {
    return readPattern(JSON.parse(text));
  } catch {
    return bad('pattern.not-json');
  }
};

/** The size with that id. */
export const sizeOf = (pattern: Pattern, size: string): Result<Size> => {
  const found = pattern.sizes.find((candidate) => candidate.id === size);
  return found
    ? good(found)
    : bad('pattern.size-unknown', {
        size,
        pattern: pattern.name,
        sizes: pattern.sizes.map((one) => one.id).join(', '),
      });
};

// A suggested alteration says more of itself than a step needs, and may be put into a list as it is: what is not a step's is left out.
const stepSchema = z.object({
  id,
  alteration: id,
  version: z.number().int().min(1),
  on: z.boolean(),
  params: z.record(z.string().max(80), z.union([z.number(), z.string().max(200), z.boolean()])),
});

/** One step of an alteration list, wherever it is stored. */
export const alterationStepSchema = stepSchema;

const listSchema = z.strictObject({
  format: z.literal('easewright-alterations/1'),
  pattern: id,
  steps: z.array(stepSchema).max(200),
});

export const readAlterationList = (json: unknown): Result<AlterationList> => {
  const format = formatOf(json);
  if (format === null) return bad('pattern.not-an-alteration-list');
  if (format !== 'easewright-alterations/1') return bad('pattern.unknown-list-version', { format });
  const parsed = listSchema.safeParse(json);
  if (parsed.success) return good(parsed.data);
  const issue = parsed.error.issues[0];
  return bad('pattern.field', { where: whereOf(issue?.path ?? []), what: issue?.message ?? '' });
};
