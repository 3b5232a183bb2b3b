import { fill, type ProblemWords, webWords } from '../../src/words/index.ts';

/** A document as the workroom keeps it. `revision` counts its saves; `body` is the document itself. */
export interface StoredDocument<Body = unknown> {
  readonly id: string;
  readonly kind: DocumentKind;
  readonly revision: number;
  readonly updatedAt: string;
  readonly deleted: boolean;
  readonly body: Body;
}

export type DocumentKind = 'wearer' | 'pattern' | 'envelope' | 'cloth' | 'make' | 'settings';

/**
 * What came of asking the workroom: its answer; a refusal in words (with the version it keeps, where ours
 * was stale); or no answer at all, because the program has been stopped or is still starting.
 */
export type Answer<T> =
  | { readonly kind: 'answer'; readonly value: T }
  | {
      readonly kind: 'refusal';
      readonly status: number;
      readonly words: ProblemWords;
      readonly current?: StoredDocument;
    }
  | { readonly kind: 'silence' };

export type Fetcher = (path: string, init: RequestInit) => Promise<Response>;

interface ErrorBody {
  readonly error?: { readonly message?: string; readonly remedy?: string };
  readonly problem?: { readonly message?: string; readonly remedy?: string };
  readonly current?: StoredDocument;
}

const wordsOf = (body: ErrorBody | null, status: number): ProblemWords => {
  const told = body?.error ?? body?.problem;
  return { message: told?.message ?? fill(webWords.saving.strange, { status }, 'cm'), remedy: told?.remedy ?? '' };
};

const readJson = async (response: Response): Promise<unknown> => {
  try {
    return await response.json();
  } catch {
    return null;
  }
};

/** Asks the workroom's server on this machine, with JSON or with a file as it is; never throws. A 502 to 504 comes from a proxy whose server is gone. */
export const ask = async <T>(
  fetcher: Fetcher,
  method: 'GET' | 'POST' | 'PUT' | 'DELETE',
  path: string,
  body?: unknown,
  options: { readonly keepalive?: boolean } = {},
): Promise<Answer<T>> => {
  const init: RequestInit = { method, headers: { accept: 'application/json' } };
  if (options.keepalive) init.keepalive = true;
  if (body instanceof Blob) {
    init.body = body;
    init.headers = { accept: 'application/json', 'content-type': body.type || 'application/octet-stream' };
  } else if (body !== undefined) {
    init.body = JSON.stringify(body);
    init.headers = { accept: 'application/json', 'content-type': 'application/json' };
  }
  let response: Response;
  try {
    response = await fetcher(path, init);
  } catch {
    return { kind: 'silence' };
  }
  if (response.status >= 502 && response.status <= 504) return { kind: 'silence' };
  const read = await readJson(response);
  if (response.ok) return { kind: 'answer', value: read as T };
  const told = read as ErrorBody | null;
  const refusal = { kind: 'refusal', status: response.status, words: wordsOf(told, response.status) } as const;
  return told?.current ? { ...refusal, current: told.current } : refusal;
};
