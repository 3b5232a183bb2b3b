import { z } from 'zod';

/** How the program is set for its owner. There is one such document in a workroom. */
export interface Settings {
  readonly format: 'easewright-settings/1';
  /** The unit lengths are shown and typed in. */
  readonly unit: 'cm' | 'in';
  readonly paper: 'a4' | 'letter' | 'a0' | 'roll36';
  /** Id of the make that lies on the table. */
  readonly onTheTable: string | null;
  /** What the page remembers of itself: which drawer is folded away, which layers are shown. */
  readonly page: Readonly<Record<string, string | number | boolean | null>>;
}

export const settingsSchema: z.ZodType<Settings> = z.strictObject({
  format: z.literal('easewright-settings/1'),
  unit: z.enum(['cm', 'in']),
  paper: z.enum(['a4', 'letter', 'a0', 'roll36']),
  onTheTable: z.string().min(1).max(200).nullable(),
  page: z.record(z.string().min(1).max(100), z.union([z.string().max(2000), z.number(), z.boolean(), z.null()])),
});
