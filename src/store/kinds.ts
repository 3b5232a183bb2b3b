import type { z } from 'zod';
import { readWearer, wearerSchema } from '../body/index.ts';
import { clothSchema } from '../cloth/index.ts';
import { makeSchema } from '../make/index.ts';
import { readEnvelope, readPattern, writeEnvelope, writePattern } from '../pattern/index.ts';
import type { Result } from '../units/index.ts';
import { bad, good } from '../units/index.ts';
import { type Body, bringUp, type Format, isBody } from './format.ts';
import { problemFromIssue } from './issue.ts';
import type { DocumentKind } from './kind.ts';
import { settingsSchema } from './settings.ts';

/** Every kind's format. A new version of one also adds a migration, so that an older program leaves the workroom alone. */
const formats: Readonly<Record<DocumentKind, Format>> = {
  wearer: { name: 'easewright-wearer', steps: [] },
  pattern: { name: 'easewright-pattern', steps: [] },
  envelope: { name: 'easewright-envelope', steps: [] },
  cloth: { name: 'easewright-cloth', steps: [] },
  make: { name: 'easewright-make', steps: [] },
  settings: { name: 'easewright-settings', steps: [] },
};

const read =
  (kind: DocumentKind, schema: z.ZodType) =>
  (body: Body): Result<Body> => {
    const checked = schema.safeParse(body);
    if (checked.success) return good(checked.data as Body);
    const issue = checked.error.issues[0];
    if (!issue) throw new Error('a schema refused without saying why');
    return { ok: false, problem: problemFromIssue(kind, issue, body) };
  };

const readers: Readonly<Record<DocumentKind, (body: Body) => Result<unknown>>> = {
  // The shape first, in our sentences; then whether anybody has such measures.
  wearer: (body) => {
    const shaped = read('wearer', wearerSchema)(body);
    return shaped.ok ? readWearer(shaped.value) : shaped;
  },
  // Kept as its readable document, which is checked by drawing it up in every size.
  pattern: (body) => {
    const pattern = readPattern(body);
    return pattern.ok ? good(writePattern(pattern.value)) : pattern;
  },
  envelope: (body) => {
    const envelope = readEnvelope(body);
    return envelope.ok ? good(writeEnvelope(envelope.value)) : envelope;
  },
  cloth: read('cloth', clothSchema),
  make: read('make', makeSchema),
  settings: read('settings', settingsSchema),
};

/** The door: outside data as a body of its kind, brought up and checked, or the problem with it. */
export const checkBody = (kind: DocumentKind, json: unknown): Result<Body> => {
  if (!isBody(json)) return bad('store.not-a-document', { kind });
  const current = bringUp(formats[kind], json);
  if (!current.ok) return current;
  const checked = readers[kind](current.value);
  // What is stored is what was read and not what was sent, so that nothing unchecked gets in.
  return checked.ok ? good(checked.value as Body) : checked;
};

/** A body that passed the door before, brought up to the newest version of its format. */
export const readStored = (kind: DocumentKind, text: string): Result<Body> =>
  bringUp(formats[kind], JSON.parse(text) as Body);
