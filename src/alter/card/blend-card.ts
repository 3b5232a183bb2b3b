import { envelopeFigures, type Generic, genericGarment, type PatternFigures } from '../../fit/index.ts';
import type { Envelope, Garment } from '../../pattern/index.ts';
import { bad, good } from '../../units/index.ts';
import { sideSeamsAlteration } from '../width/side-seams.ts';
import { type CardStep, type CarriedOut, carriedOut, girthsChanged, pictureOf } from './carried-out.ts';
import { type CardMaker, say, sayAll } from './parts.ts';
import type { CardDimension, CardPicture, CardRequest } from './types.ts';

/** Levels that can be drawn out to another size, below the armhole, downward. */
const blendable = ['waist', 'hip'] as const;
type BlendLevel = (typeof blendable)[number];

/** The side edges that share what is put in: two of the front, two of the back. */
const sideEdges = 4;

interface BlendAt {
  readonly level: BlendLevel;
  readonly to: string;
  /** In all, mm, by the finished measurements where both sizes have them, else by the body chart. */
  readonly total: number;
  readonly by: 'finished' | 'body';
}

const measureAt = { waist: 'waistGirth', hip: 'hipGirth' } as const;

const stepBetween = (figures: PatternFigures, level: BlendLevel, from: string, to: string): BlendAt | null => {
  const size = (id: string) => figures.sizes.find((one) => one.size === id);
  const finished = (id: string) => size(id)?.girths.find((girth) => girth.level === level)?.finished;
  const body = (id: string) => size(id)?.body[measureAt[level]];
  for (const [by, of] of [['finished', finished] as const, ['body', body] as const]) {
    const [here, there] = [of(from), of(to)];
    if (here !== undefined && there !== undefined) return { level, to, total: there - here, by };
  }
  return null;
};

const dimensionsOf = (before: Garment, after: Garment, levels: readonly BlendAt[]): readonly CardDimension[] =>
  after.pieces.flatMap((piece) => {
    const old = before.pieces.find(({ id }) => id === piece.id);
    if (!old || old === piece) return [];
    return levels.flatMap(({ level, total }): CardDimension[] => {
      const [from, to] = [old, piece].map((one) => one.levels.find(({ id }) => id === level)?.to);
      return from && to ? [{ piece: piece.id, on: 'after', from, to, mm: Math.abs(total) / sideEdges }] : [];
    });
  });

/** The generic pieces in the sizes run to, laid to the same centre and waist. */
const nestedSizes = (request: CardRequest, generic: Generic, sizes: readonly string[]): CardPicture['nested'] =>
  sizes.flatMap((size) => {
    const { envelope, view } = request;
    const other = genericGarment(generic.house, envelope, view, size);
    const pieces = other?.garment.pieces.filter(({ role }) => role === 'front' || role === 'back') ?? [];
    return pieces.length > 0 ? [{ size, pieces }] : [];
  });

/** The sides moved at each level by its share; on trousers, below the hip, back to the starting size's line at the hem. */
const stepsFor = (kind: Envelope['kind'], levels: readonly BlendAt[]): readonly CardStep[] => {
  const run = (where: string, total: number): CardStep => ({
    alteration: sideSeamsAlteration,
    params: { where, amount: total / sideEdges },
  });
  const moved = levels.filter(({ total }) => total !== 0);
  const hip = kind === 'trousers' ? moved.find(({ level }) => level === 'hip') : undefined;
  return [...moved.map(({ level, total }) => run(level, total)), ...(hip ? [run('hem', -hip.total)] : [])];
};

const drawn = (request: CardRequest, levels: readonly BlendAt[]): ReturnType<typeof carriedOut> => {
  const steps = stepsFor(request.envelope.kind, levels);
  return steps.length > 0
    ? carriedOut(request, steps)
    : { done: null, problem: bad('alter.changes-nothing', {}).problem };
};

const pictured = (request: CardRequest, done: CarriedOut, levels: readonly BlendAt[]): CardPicture => ({
  ...pictureOf(done, dimensionsOf(done.before, done.after, levels)),
  nested: nestedSizes(request, done.generic, [...new Set(levels.map(({ to }) => to))]),
});

export const blendCard: CardMaker = (request) => {
  const { envelope, view, size, step } = request;
  const figures = envelopeFigures(envelope, view);
  const asked = blendable.flatMap((level) => {
    const to = step.params[level];
    return typeof to === 'string' && to !== size ? [{ level, to }] : [];
  });
  if (asked.length === 0) return bad('alter.card-no-blend', { levels: blendable.join(', ') });
  const unknown = asked.find(({ to }) => !envelope.sizes.includes(to));
  if (unknown) {
    return bad('fit.size-unknown', { size: unknown.to, pattern: envelope.name, sizes: envelope.sizes.join(', ') });
  }
  const levels = asked.flatMap(({ level, to }) => stepBetween(figures, level, size, to) ?? []);
  const missing = asked.find(({ level }) => !levels.some((one) => one.level === level));
  if (missing) return bad('alter.card-no-figures', { level: missing.level, size, to: missing.to });
  const made = drawn(request, levels);
  const [first] = levels;
  const valuesOf = ({ level, to, total }: BlendAt) => ({
    level,
    to,
    size,
    all: { mm: Math.abs(total) },
    share: { mm: Math.abs(total) / sideEdges },
    count: sideEdges,
  });
  const code = (base: string, { total }: BlendAt) => `card.blend-${total > 0 ? 'out' : 'in'}${base}`;
  const values = first ? valuesOf(first) : {};
  return good({
    title: levels.length === 1 && first ? say(code('', first), values) : say('card.blend-several', { size }),
    purpose: say('card.blend-purpose'),
    amounts: levels.map((at) => ({
      at: at.level,
      total: at.total,
      perPiece: at.total / sideEdges,
      count: sideEdges,
      said: say(code(at.by === 'body' ? '-amount-by-body' : '-amount', at), valuesOf(at)),
    })),
    where: sayAll('card.blend-where', 'card.blend-where-not'),
    steps: [
      ...sayAll('card.blend-trace', 'card.blend-keep'),
      ...levels.map((at) => say('card.blend-point', valuesOf(at))),
      say('card.blend-draw'),
      say(envelope.kind === 'trousers' ? 'card.blend-below-leg' : 'card.blend-below'),
      ...sayAll('card.blend-mate', 'card.blend-walk'),
    ],
    follows: sayAll('card.blend-follows-waist', 'card.follows-lining', 'card.follows-notches'),
    holds: sayAll('card.hold-armhole-all', 'card.hold-side', 'card.hold-centre'),
    cautions: [
      ...(levels.some(({ total }) => Math.abs(total) > mostBlended) ? [say('card.blend-far')] : []),
      say('card.blend-dart'),
      ...(envelope.allowance === null ? [say('card.allowance-unknown')] : []),
    ],
    changes: {
      ...(made.done ? girthsChanged(made.done) : {}),
      ...Object.fromEntries(levels.map(({ level, total }) => [level, total])),
    },
    picture: made.done ? pictured(request, made.done, levels) : null,
    notDrawn: made.done ? null : made.problem,
  });
};

/** A side seam that runs out further than two or three sizes do, mm in all, wants its share at darts and seams too. */
const mostBlended = 120;
