import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { extname, join, resolve, sep } from 'node:path';
import { Readable } from 'node:stream';
import type { Context, Handler } from 'hono';
import { sentence } from '../words/index.ts';
import { refuse } from './answer.ts';

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.map': 'application/json; charset=utf-8',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.jpg': 'image/jpeg',
  '.jpeg': 'image/jpeg',
  '.webp': 'image/webp',
  '.avif': 'image/avif',
  '.ico': 'image/x-icon',
  '.ttf': 'font/ttf',
  '.otf': 'font/otf',
  '.woff2': 'font/woff2',
  '.wasm': 'application/wasm',
  '.pdf': 'application/pdf',
};

/** Built files carry a fingerprint of what is in them, so a file of that name never changes. */
const hashed = /[-.][A-Za-z0-9_-]{8,}\.[a-z0-9]+$/;

const caching = (path: string): string =>
  path.startsWith('/assets/') && hashed.test(path) ? 'public, max-age=31536000, immutable' : 'no-cache';

/** The file a path names within the folder, or undefined where it names none, or something outside. */
const locate = async (folder: string, path: string): Promise<{ file: string; size: number } | undefined> => {
  const file = join(folder, path);
  if (!file.startsWith(folder + sep) || path.includes('\0')) return undefined;
  try {
    const found = await stat(file);
    return found.isFile() ? { file, size: found.size } : undefined;
  } catch {
    return undefined;
  }
};

const send = (context: Context, path: string, { file, size }: { file: string; size: number }): Response => {
  const headers = {
    'Content-Type': types[extname(file).toLowerCase()] ?? 'application/octet-stream',
    'Content-Length': String(size),
    'Cache-Control': caching(path),
  };
  if (context.req.method === 'HEAD') return new Response(null, { headers });
  return new Response(Readable.toWeb(createReadStream(file)) as ReadableStream<Uint8Array>, { headers });
};

const decoded = (path: string): string | undefined => {
  try {
    return decodeURIComponent(path);
  } catch {
    return undefined;
  }
};

/**
 * Serves the built page from a folder. A path without a dot in its last part is an address within the
 * page and gets index.html; anything else that is not there is not found.
 */
export const page =
  (named: string): Handler =>
  async (context) => {
    const folder = resolve(named);
    const path = decoded(context.req.path);
    const notFound = () => refuse(context, { code: 'server.no-such-place', values: { path: context.req.path } });
    if (path === undefined || !['GET', 'HEAD'].includes(context.req.method)) return notFound();
    const found = await locate(folder, path);
    if (found) return send(context, path, found);
    if (/\.[^/]*$/.test(path)) return notFound();
    const index = await locate(folder, '/index.html');
    if (index) return send(context, '/index.html', index);
    const { message, remedy } = sentence({ code: 'server.not-built' }, 'cm');
    return context.html(`<!doctype html><title>Easewright</title><p>${message}</p><p>${remedy}</p>`, 500);
  };
