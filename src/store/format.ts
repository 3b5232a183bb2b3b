import type { Result } from '../units/index.ts';
import { bad, good } from '../units/index.ts';

/** A document's body as JSON. */
export type Body = Readonly<Record<string, unknown>>;

/** A document's format and the pure steps that bring an older one up: step n takes version n + 1 to n + 2. */
export interface Format {
  readonly name: string;
  readonly steps: readonly ((body: Body) => Body)[];
}

export const isBody = (value: unknown): value is Body =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/**
 * Brings a body of any older version up to the newest. One that names no version of this format is given
 * back as it is, for the schema to refuse; one from a newer program is refused here.
 */
export const bringUp = (format: Format, body: Body): Result<Body> => {
  const [name, written] = typeof body.format === 'string' ? body.format.split('/') : [];
  const version = Number(written);
  if (name !== format.name || !Number.isSafeInteger(version) || version < 1) return good(body);
  const newest = format.steps.length + 1;
  if (version > newest) return bad('store.newer-document', { format: format.name, version, known: newest });
  return good(format.steps.slice(version - 1).reduce((older, step) => step(older), body));
};
