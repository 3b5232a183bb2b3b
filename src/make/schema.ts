import { z } from 'zod';
import { alterationStepSchema } from '../pattern/index.ts';
import type { Make } from './types.ts';

const id = z.string().min(1).max(200);

/**
 * A make document at the door. What an alteration's numbers may be is for alter/ to say when the list
 * is applied; here only the shape is held, and that no two steps share an id.
 */
export const makeSchema: z.ZodType<Make> = z.strictObject({
  format: z.literal('easewright-make/1'),
  name: z.string().trim().min(1).max(200),
  wearer: id,
  pattern: id,
  view: z.exactOptional(id),
  cup: z.exactOptional(z.number().min(-100).max(400)),
  cloth: id.nullable(),
  size: id.nullable(),
  steps: z
    .array(alterationStepSchema)
    .max(500)
    .refine((steps) => new Set(steps.map((step) => step.id)).size === steps.length, { message: 'same-id-twice' }),
  fold: z.enum(['single', 'lengthwise']),
  gap: z.number().min(0).max(50),
  paper: z.enum(['a4', 'letter', 'a0', 'roll36']),
  state: z.enum(['planned', 'cut', 'sewn', 'worn', 'set-aside']),
  note: z.string().max(20_000),
});
