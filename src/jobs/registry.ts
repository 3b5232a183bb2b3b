import { clothTableJob } from './cloth-table.ts';
import { layoutJob } from './layout.ts';
import type { Job } from './types.ts';

/** Every job there is, by kind. */
export const jobs = { layout: layoutJob, 'cloth-table': clothTableJob } as const;

export type JobKind = keyof typeof jobs;
export type InputOf<Kind extends JobKind> =
  (typeof jobs)[Kind] extends Job<infer Input, infer _P, infer _O> ? Input : never;
export type PartialOf<Kind extends JobKind> =
  (typeof jobs)[Kind] extends Job<infer _I, infer Partial, infer _O> ? Partial : never;
export type OutputOf<Kind extends JobKind> =
  (typeof jobs)[Kind] extends Job<infer _I, infer _P, infer Output> ? Output : never;

/** A job by the kind named in a message; undefined for a kind there is none of. */
export const jobOf = (kind: string): Job | undefined =>
  Object.hasOwn(jobs, kind) ? (jobs[kind as JobKind] as unknown as Job) : undefined;
