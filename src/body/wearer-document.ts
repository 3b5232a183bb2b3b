import { z } from 'zod';
import type { Result } from '../units/index.ts';
import { bad, good } from '../units/index.ts';
import { checkMeasure } from './describe.ts';
import { measureIds } from './types.ts';
import type { Wearer } from './wearer.ts';

/** A calendar day that exists, `2026-03-14`. */
const day = z.iso.date();

const readingSchema = z.strictObject({
  measure: z.enum(measureIds),
  side: z.enum(['both', 'left', 'right']),
  mm: z.number().positive().max(3000),
  written: z.string().max(60),
});

const measureSetSchema = z.strictObject({
  id: z.string().min(1).max(64),
  date: day,
  waistAt: z.enum(['waistband', 'narrowest', 'midway']),
  readings: z.array(readingSchema).max(500),
  note: z.string().max(20_000),
});

const usualSchema = z.strictObject({
  id: z.string().min(1).max(64),
  alteration: z.string().min(1).max(64),
  version: z.number().int().min(1),
  params: z.record(z.string().max(80), z.union([z.number(), z.string().max(200), z.boolean()])),
  reason: z.string().max(500),
  madeAs: z.string().max(200),
  make: z.string().max(200),
  kind: z.enum(['top', 'dress', 'jacket', 'coat', 'trousers', 'skirt']),
  date: day,
});

/** A wearer as she is stored and exchanged. Shape only; whether a measure is possible is asked of `readWearer`. */
export const wearerSchema = z.strictObject({
  format: z.literal('easewright-wearer/1'),
  name: z.string().trim().min(1).max(200),
  comparedWith: z.enum(['women', 'men']).nullable(),
  sets: z.array(measureSetSchema).max(1000),
  note: z.string().max(20_000),
  usual: z.exactOptional(z.array(usualSchema).max(200)),
}) satisfies z.ZodType<Wearer>;

/**
 * Reads a wearer from outside. Refuses an unknown version (`body.wearer-version`), a wrong shape
 * (`body.wearer-shape`, with the place) and a measure nobody has (`body.impossible`).
 */
export const readWearer = (json: unknown): Result<Wearer> => {
  const format = typeof json === 'object' && json !== null && 'format' in json ? json.format : undefined;
  if (typeof format === 'string' && format !== 'easewright-wearer/1') {
    return bad('body.wearer-version', { format: format.slice(0, 40) });
  }
  const parsed = wearerSchema.safeParse(json);
  if (!parsed.success) {
    const issue = parsed.error.issues[0];
    return bad('body.wearer-shape', { what: issue?.message ?? '', where: issue?.path.join('.') || 'the top' });
  }
  for (const set of parsed.data.sets) {
    for (const reading of set.readings) {
      const checked = checkMeasure(reading.measure, reading.mm);
      if (!checked.ok) return checked;
    }
  }
  return good(parsed.data);
};
