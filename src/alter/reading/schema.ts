import { z } from 'zod';
import { directions, halves, postures, type Sign, signKinds } from './types.ts';
import { type ZoneId, zoneIds } from './zones.ts';

/** Nothing pinned on a body is longer than this, mm. */
const mostPinned = 500;

/** A sign at the door. */
export const signSchema: z.ZodType<Sign> = z.strictObject({
  zone: z.enum(zoneIds as [ZoneId, ...ZoneId[]]),
  kind: z.enum(signKinds),
  direction: z.enum(directions).nullable(),
  posture: z.enum(postures),
  half: z.enum(halves),
  pinned: z.number().min(0).max(mostPinned).nullable(),
});
