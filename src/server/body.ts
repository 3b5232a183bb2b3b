import type { HonoRequest } from 'hono';
import type { z } from 'zod';
import { documentKinds } from '../store/index.ts';
import type { Result } from '../units/index.ts';
import { bad, good } from '../units/index.ts';
import { fill, serverWords } from '../words/index.ts';

/** The largest request that is read, bytes. */
export const largestBody = 8 * 1024 * 1024;

export const tooLarge = () => bad('server.too-large', { most: largestBody / (1024 * 1024) });

/** Reads no more than is allowed: by the announced length where there is one, else by what has come so far. */
const readText = async (request: HonoRequest): Promise<Result<string>> => {
  if (Number(request.header('content-length') ?? 0) > largestBody) return tooLarge();
  const stream = request.raw.body;
  if (!stream) return good('');
  const reader = stream.getReader();
  const chunks: Uint8Array[] = [];
  let size = 0;
  for (;;) {
    const { done, value } = await reader.read();
    if (done) break;
    size += value.byteLength;
    if (size > largestBody) {
      await reader.cancel().catch(() => undefined);
      return tooLarge();
    }
    chunks.push(value);
  }
  return good(Buffer.concat(chunks).toString('utf8'));
};

const fieldWords: Readonly<Record<string, string>> = serverWords.fields;
const wantWords: Readonly<Record<string, string>> = serverWords.wants;

/** The request's JSON through its schema; no body at all reads as no fields. */
export const readBody = async <T>(request: HonoRequest, schema: z.ZodType<T>): Promise<Result<T>> => {
  const text = await readText(request);
  if (!text.ok) return text;
  let json: unknown;
  try {
    json = text.value === '' ? {} : JSON.parse(text.value);
  } catch {
    return bad('server.not-json');
  }
  const checked = schema.safeParse(json);
  if (checked.success) return good(checked.data);
  const name = String(checked.error.issues[0]?.path[0] ?? 'request');
  const wanted = fill(wantWords[name] ?? serverWords.wants.request, { kinds: documentKinds.join(', ') }, 'cm');
  return bad('server.wrong-request', { field: fieldWords[name] ?? serverWords.fields.request, wanted });
};
