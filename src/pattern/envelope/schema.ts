import { z } from 'zod';
import { measureIds } from '../../body/index.ts';
import { finishedKinds } from './names.ts';
import type { Envelope } from './types.ts';

/** How much of everything an envelope holds: more than any prints. What a chart is read into keeps to it too. */
export const envelopeHolds = { sizes: 60, views: 26, rows: 300, line: 500 } as const;

/** The longest figure of each chart, mm. Wider than any garment or cloth, so that only slips of the hand are refused. */
export const longestFigure = { body: 10_000, finished: 20_000, cloth: 50_000 } as const;

/** Cloth narrower is ribbon, and no loom is wider, mm. */
export const clothWidths = { least: 50, most: 5000 } as const;

const name = z.string().min(1).max(200);
const line = z.string().max(envelopeHolds.line);
const words = z.string().max(20_000);
/** Names of sizes and ids of views and doubts: short, and with something in them. */
const sizeName = z.string().trim().min(1).max(30);
const viewId = z.string().trim().min(1).max(60);
const viewOrAll = viewId.nullable();

/** mm; doubts ask about what is let through and hardly can be so. */
const length = (most: number) => z.number().positive().max(most);
const figure = (most: number) => z.union([length(most), z.tuple([length(most), length(most)]), z.null()]);
const figures = (most: number) => z.array(figure(most)).min(1).max(envelopeHolds.sizes);
const finishedOf = z.enum(finishedKinds);

const flatPiece = z.strictObject({
  name,
  flat: length(20_000),
  allowances: z.number().min(0).max(5000),
  takenOut: z.number().min(0).max(20_000),
  times: z.number().int().min(1).max(20),
});

/**
 * An envelope's document at the door: shapes, and limits on how much of everything. What its entries say of
 * each other (a figure a size, views that exist) is checked after it, in `readEnvelope`.
 */
export const envelopeSchema = z.strictObject({
  format: z.literal('easewright-envelope/1'),
  name,
  house: line,
  number: line,
  about: words,
  for: z.enum(['women', 'men', 'child']),
  kind: z.enum(['top', 'dress', 'jacket', 'coat', 'trousers', 'skirt']),
  printedIn: z.enum(['inches', 'cm']),
  sizes: z.array(sizeName).min(1).max(envelopeHolds.sizes),
  views: z
    .array(z.strictObject({ id: viewId, name, about: words, sleeves: z.exactOptional(z.boolean()) }))
    .max(envelopeHolds.views),
  body: z
    .array(z.strictObject({ measure: z.enum(measureIds), figures: figures(longestFigure.body) }))
    .max(measureIds.length),
  finished: z
    .array(z.strictObject({ of: finishedOf, label: line, view: viewOrAll, figures: figures(longestFigure.finished) }))
    .max(envelopeHolds.rows),
  clothNeeded: z
    .array(
      z.strictObject({
        view: viewOrAll,
        layer: z.enum(['shell', 'lining', 'interfacing', 'contrast']),
        width: z.number().min(clothWidths.least).max(clothWidths.most),
        nap: z.enum(['with', 'without', 'either']),
        figures: figures(longestFigure.cloth),
      }),
    )
    .max(envelopeHolds.rows),
  notions: z.array(z.strictObject({ view: viewOrAll, text: line })).max(100),
  allowance: z.number().min(0).max(200).nullable(),
  draftedCup: z.number().min(0).max(500).nullable(),
  draftedStature: length(3000).nullable(),
  cloth: z.strictObject({
    structure: z.enum(['woven', 'knit']),
    weight: z.tuple([z.number().min(0).max(3000), z.number().min(0).max(3000)]),
    stretch: z.number().min(0).max(3),
    cloths: z.array(z.string().max(200)).max(50),
  }),
  advice: words,
  flat: z
    .array(
      z.strictObject({ of: finishedOf, view: viewOrAll, size: sizeName, pieces: z.array(flatPiece).min(1).max(20) }),
    )
    .max(500),
  kept: z.array(z.string().min(1).max(300)).max(2000),
  owned: z.strictObject({
    form: z.enum(['paper', 'pdf']),
    where: line,
    cut: z.array(sizeName).max(envelopeHolds.sizes),
    traced: z.array(sizeName).max(envelopeHolds.sizes),
    copyAt: line,
    link: z.string().max(2000),
    price: line,
    drafting: words,
    instructions: words,
  }),
  photographs: z.array(z.string().min(1).max(200)).max(50),
}) satisfies z.ZodType<Envelope>;
