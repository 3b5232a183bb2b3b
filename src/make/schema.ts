import { z } from 'zod';
import type { AlterationStep } from '../pattern/types.ts';
import type { Make } from './types.ts';

const id = z.string().min(1).max(200);

const stepSchema: z.ZodType<AlterationStep> = z.strictObject({
  id,
  alteration: id,
  version: z.int().min(1).max(10_000),
  on: z.boolean(),
  params: z.record(id, z.union([z.number(), z.string().max(500), z.boolean()])),
});

/**
 * A make document at the door. What an alteration's numbers may be is for alter/ to say when the list
 * is applied; here only the shape is held, and that no two steps share an id.
 */
export const makeSchema: z.ZodType<Make> = z.strictObject({
  format: z.literal('easewright-make/1'),
  name: z.string().trim().min(1).max(200),
  wearer: id,
  pattern: id,
  cloth: id.nullable(),
  size: id.nullable(),
  steps: z
    .array(stepSchema)
    .max(500)
    .refine((steps) => new Set(steps.map((step) => step.id)).size === steps.length, { message: 'same-id-twice' }),
  fold: z.enum(['single', 'lengthwise']),
  gap: z.number().min(0).max(50),
  paper: z.enum(['a4', 'letter', 'a0', 'roll36']),
  state: z.enum(['planned', 'cut', 'sewn', 'worn', 'set-aside']),
  note: z.string().max(20_000),
});
