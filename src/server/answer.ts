import type { Context } from 'hono';
import type { ContentfulStatusCode } from 'hono/utils/http-status';
import type { Problem, Result } from '../units/index.ts';
import { sentence } from '../words/index.ts';

/** What a person or a program is told when something could not be done. */
export interface ErrorAnswer {
  readonly error: {
    readonly code: string;
    readonly message: string;
    readonly remedy: string;
    readonly values?: Problem['values'];
  };
}

/** Statuses by problem code; whatever is not here was wrong with what was sent. */
const statuses: Readonly<Record<string, ContentfulStatusCode>> = {
  'server.wrong-host': 403,
  'server.wrong-origin': 403,
  'server.no-such-place': 404,
  'server.too-large': 413,
  'server.picture-too-heavy': 413,
  'server.not-a-picture': 415,
  'server.picture-from-a-phone': 415,
  'server.no-picture-library': 500,
  'server.fault': 500,
  'server.nothing-to-mend': 409,
  'server.stopping': 503,
  'store.no-such-document': 404,
  'store.no-such-revision': 404,
  'store.no-such-photograph': 404,
  'store.conflict': 409,
  'store.deleted': 409,
  'store.one-settings': 409,
  'store.already-started': 409,
  'store.nothing-to-undo': 409,
  'store.disk-full': 507,
  'store.disk-fault': 500,
  'store.not-writable': 500,
  'store.busy': 500,
  'store.corrupt': 500,
  'store.damaged': 500,
  'store.missing': 500,
};

export const statusOf = (problem: Problem): ContentfulStatusCode => statuses[problem.code] ?? 422;

export const errorAnswer = (problem: Problem): ErrorAnswer => ({
  error: {
    code: problem.code,
    ...sentence(problem, 'cm'),
    ...(problem.values ? { values: problem.values } : {}),
  },
});

export const refuse = (context: Context, problem: Problem, more: object = {}): Response =>
  context.json({ ...errorAnswer(problem), ...more }, statusOf(problem));

/** Answers with a value, or with the problem in words. */
export const answer = <T extends object>(
  context: Context,
  result: Result<T>,
  status: ContentfulStatusCode = 200,
): Response => (result.ok ? context.json(result.value, status) : refuse(context, result.problem));
