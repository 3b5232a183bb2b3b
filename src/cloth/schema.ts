import { z } from 'zod';
import type { Cloth } from './types.ts';

const fraction = (most: number) => z.number().min(0).max(most);

/**
 * A cloth document at the door. Bounds are wider than any cloth sold, so that only slips of the hand
 * are refused: a width in inches or metres, a percentage where a fraction stands.
 * Unknown fields are refused and not dropped, so that nothing she entered is lost without a word.
 */
export const clothSchema: z.ZodType<Cloth> = z.strictObject({
  format: z.literal('easewright-cloth/1'),
  name: z.string().trim().min(1).max(200),
  structure: z.enum(['woven', 'knit']),
  fibres: z.string().max(500),
  weight: z.number().min(5).max(3000).nullable(),
  width: z.number().min(50).max(5000),
  length: z.number().min(0).max(1_000_000).nullable(),
  stretchAcross: fraction(3),
  stretchAlong: fraction(3),
  oneWay: z.boolean(),
  shrinkAlong: fraction(0.5),
  shrinkAcross: fraction(0.5),
  washed: z.boolean(),
  // A hexadecimal colour or a CSS colour name; nothing that could carry more than a colour.
  colour: z.string().regex(/^(#[0-9a-f]{3}|#[0-9a-f]{6}|[a-z]{3,30})$/i),
  terms: z.enum(['bought', 'given', 'given-in-return', 'unknown']),
  from: z.string().max(500),
  note: z.string().max(20_000),
});
