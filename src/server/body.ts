import type { HonoRequest } from 'hono';
import type { z } from 'zod';
import { documentKinds } from '../store/index.ts';
import type { Result } from '../units/index.ts';
import { bad, good } from '../units/index.ts';
import { fill, serverWords } from '../words/index.ts';

const megabyte = 1024 * 1024;

/** The largest document that is read, bytes. */
const largestDocument = 8 * megabyte;
/** The largest photograph that is read, bytes. */
export const largestPhotograph = 20 * megabyte;

/** The most that is read of what is sent to a place, bytes. */
export const largestAt = (path: string): number =>
  path.startsWith('/api/photographs') ? largestPhotograph : largestDocument;

export const tooLarge = (most: number) =>
  bad(most === largestPhotograph ? 'server.picture-too-heavy' : 'server.too-large', { most: most / megabyte });

/** Reads no more than `most` bytes: by the announced length where there is one, else by what has come so far. */
export const readBytes = async (request: HonoRequest, most: number): Promise<Result<Buffer>> => {
  if (Number(request.header('content-length') ?? 0) > most) return tooLarge(most);
  const stream = request.raw.body;
  if (!stream) return good(Buffer.alloc(0));
  const reader = stream.getReader();
  const chunks: Uint8Array[] = [];
  let size = 0;
  for (;;) {
    const { done, value } = await reader.read();
    if (done) break;
    size += value.byteLength;
    if (size > most) {
      await reader.cancel().catch(() => undefined);
      return tooLarge(most);
    }
    chunks.push(value);
  }
  return good(Buffer.concat(chunks));
};

const fieldWords: Readonly<Record<string, string>> = serverWords.fields;
const wantWords: Readonly<Record<string, string>> = serverWords.wants;

/** The request's JSON through its schema; no body at all reads as no fields. */
export const readBody = async <T>(request: HonoRequest, schema: z.ZodType<T>): Promise<Result<T>> => {
  const bytes = await readBytes(request, largestDocument);
  if (!bytes.ok) return bytes;
  const text = bytes.value.toString('utf8');
  let json: unknown;
  try {
    json = text === '' ? {} : JSON.parse(text);
  } catch {
    return bad('server.not-json');
  }
  const checked = schema.safeParse(json);
  if (checked.success) return good(checked.data);
  const name = String(checked.error.issues[0]?.path[0] ?? 'request');
  const wanted = fill(wantWords[name] ?? serverWords.wants.request, { kinds: documentKinds.join(', ') }, 'cm');
  return bad('server.wrong-request', { field: fieldWords[name] ?? serverWords.fields.request, wanted });
};
