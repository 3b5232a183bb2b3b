import { z } from 'zod';
import { bad, good, type Result } from '../units/index.ts';
import { layoutProblemFault } from './check.ts';
import { grainTurns } from './grain.ts';
import { tidyPolygon } from './polygon.ts';
import type { Layout, LayoutItem, LayoutProblem } from './types.ts';

const corner = z.tuple([z.number(), z.number()]);
const polygon = z.array(corner).min(3).max(20_000);
const identifier = z.union([z.string().min(1), z.number()]);
const copies = z.number().int().min(0).max(10_000);

/** The public format of strip packing instances; its names end here. */
const publicInstance = z.object({
  strip_height: z.number().positive(),
  items: z.array(
    z.object({
      id: identifier,
      demand: copies,
      allowed_orientations: z.array(z.number()).optional(),
      shape: z.object({ data: polygon }),
    }),
  ),
});

/** Our own layout problem: see docs/layout-format.md. */
const ownProblem = z.object({
  format: z.literal('easewright-layout/1'),
  cloth: z.object({
    width: z.number().positive(),
    length: z.number().positive().nullable().default(null),
    fold: z.enum(['single', 'lengthwise']).default('single'),
    oneWay: z.boolean().default(false),
    gap: z.number().min(0).default(0),
  }),
  items: z.array(
    z.object({
      id: identifier,
      name: z.string().optional(),
      outline: polygon,
      copies,
      mirrored: z.boolean().default(false),
      grain: z.tuple([corner, corner]),
      fold: z.tuple([corner, corner]).nullable().default(null),
    }),
  ),
});

/** A problem read from a file, and whether its ids were numbers there. */
export interface LayoutFile {
  readonly problem: LayoutProblem;
  readonly numbered: boolean;
}

const point = ([x, y]: readonly [number, number]) => ({ x, y });

const fromPublic = (file: z.infer<typeof publicInstance>): LayoutProblem => ({
  cloth: { width: file.strip_height, length: null, fold: 'single', oneWay: false, gap: 0 },
  items: file.items.map((item) => ({
    id: String(item.id),
    name: String(item.id),
    outline: tidyPolygon(item.shape.data.map(point)),
    plain: item.demand,
    mirrored: 0,
    turns: (item.allowed_orientations ?? [0]).map((rotation) => ({ rotation, mirrored: false })),
    fold: null,
  })),
});

const fromOwn = ({ cloth, items }: z.infer<typeof ownProblem>): LayoutProblem => ({
  cloth,
  items: items.map((item): LayoutItem => {
    const fold = item.fold ? ([point(item.fold[0]), point(item.fold[1])] as const) : null;
    const mirrored = item.mirrored && !fold ? Math.floor(item.copies / 2) : 0;
    const grain = fold ?? ([point(item.grain[0]), point(item.grain[1])] as const);
    return {
      id: String(item.id),
      name: item.name ?? String(item.id),
      outline: tidyPolygon(item.outline.map(point)),
      plain: item.copies - mirrored,
      mirrored,
      turns: grainTurns({ from: grain[0], to: grain[1] }, cloth.oneWay),
      fold,
    };
  }),
});

/**
 * Reads a layout problem, in the public instance format (any unit) or our own (mm). Problems:
 * `lay.not-a-layout`, `lay.field`, `lay.same-id`, and those of `layoutProblemFault`.
 */
export const readLayoutFile = (json: unknown): Result<LayoutFile> => {
  if (typeof json !== 'object' || json === null) return bad('lay.not-a-layout');
  const isPublic = 'strip_height' in json;
  if (!isPublic && !('format' in json)) return bad('lay.not-a-layout');
  const read = isPublic ? publicInstance.safeParse(json) : ownProblem.safeParse(json);
  if (!read.success) {
    const issue = read.error.issues[0];
    return bad('lay.field', { where: issue?.path.join('.') ?? '', what: issue?.message ?? '' });
  }
  const problem = 'strip_height' in read.data ? fromPublic(read.data) : fromOwn(read.data);
  const twice = problem.items.find((item, i) => problem.items.findIndex(({ id }) => id === item.id) !== i);
  if (twice) return bad('lay.same-id', { piece: twice.id });
  const fault = layoutProblemFault(problem);
  if (fault) return { ok: false, problem: fault };
  return good({ problem, numbered: read.data.items.every(({ id }) => typeof id === 'number') });
};

/** A plan as the command line prints it: `length`, `density` and one entry a placement, and the rest beside. */
export const printedLayout = (layout: Layout, numbered: boolean) => ({
  density: layout.density,
  length: layout.length,
  placed: layout.placed.map(({ id, ...placement }) => ({ id: numbered ? Number(id) : id, ...placement })),
  stretches: layout.stretches,
  spare: layout.spare,
});
