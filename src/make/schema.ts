import { z } from 'zod';
import { signSchema } from '../alter/index.ts';
import { alterationStepSchema } from '../pattern/index.ts';
import type { Fitting, Make } from './types.ts';

const id = z.string().min(1).max(200);

const distinct = (of: readonly { readonly id: string }[]): boolean =>
  new Set(of.map((one) => one.id)).size === of.length;

const fittingSchema: z.ZodType<Fitting> = z.strictObject({
  id,
  date: z.iso.date(),
  garment: z.enum(['toile', 'make']),
  steps: z.array(alterationStepSchema).max(500),
  signs: z.array(signSchema).max(100),
  notes: z.string().max(20_000),
  taken: z.array(id).max(500),
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
  view: z.exactOptional(id),
  cup: z.exactOptional(z.number().min(-100).max(400)),
  cloth: id.nullable(),
  size: id.nullable(),
  steps: z.array(alterationStepSchema).max(500).refine(distinct, { message: 'same-id-twice' }),
  fold: z.enum(['single', 'lengthwise']),
  gap: z.number().min(0).max(50),
  paper: z.enum(['a4', 'letter', 'a0', 'roll36']),
  state: z.enum(['planned', 'cut', 'sewn', 'worn', 'set-aside']),
  note: z.string().max(20_000),
  fittings: z.exactOptional(z.array(fittingSchema).max(50).refine(distinct, { message: 'same-id-twice' })),
});
