import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { type IncomingHttpHeaders, type OutgoingHttpHeaders, request } from 'node:http';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { onTestFinished } from 'vitest';
import { type RunningServer, type ServerOptions, startServer } from '../start.ts';

export const temporaryFolder = (): string => {
  const folder = mkdtempSync(join(tmpdir(), 'easewright-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
};

const pageFiles: Readonly<Record<string, string>> = {
  'index.html': '<!doctype html><title>Easewright</title>',
  'assets/index-B3xk91Qa.js': 'export {};',
  'assets/index-Dk2_9aZx.css': 'body {}',
  'fonts/AlegreyaSans_400Regular.ttf': 'a font',
  'mark.svg': '<svg xmlns="http://www.w3.org/2000/svg"/>',
};

export const builtPage = (): string => {
  const folder = join(temporaryFolder(), 'web');
  for (const [name, text] of Object.entries(pageFiles)) {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), text);
  }
  writeFileSync(join(dirname(folder), 'secret.txt'), 'outside');
  return folder;
};

export const start = async (options: ServerOptions = {}): Promise<RunningServer & { readonly said: string[] }> => {
  const said: string[] = [];
  const started = await startServer({
    dataFolder: temporaryFolder(),
    port: 0,
    pageFolder: builtPage(),
    print: (line) => said.push(line),
    heedSignals: false,
    ...options,
  });
  if (!started.ok) throw new Error(JSON.stringify(started.problem));
  onTestFinished(() => started.value.stop());
  return { ...started.value, said };
};

export interface Answered {
  readonly status: number;
  readonly headers: IncomingHttpHeaders;
  readonly text: string;
  // biome-ignore lint/suspicious/noExplicitAny: an answer is looked at in a test and nowhere else
  readonly json: any;
}

/** Asks as a browser would from our own page, unless headers say otherwise; `null` leaves a header out. */
export const ask = (
  server: RunningServer,
  method: string,
  path: string,
  body?: unknown,
  headers: Readonly<Record<string, string | null>> = {},
): Promise<Answered> =>
  new Promise((settle, fail) => {
    const sent = body === undefined ? undefined : typeof body === 'string' ? body : JSON.stringify(body);
    const all: Record<string, string | null> = {
      origin: method === 'GET' || method === 'HEAD' ? null : server.address,
      'content-type': 'application/json',
      'content-length': sent === undefined ? null : String(Buffer.byteLength(sent)),
      ...headers,
    };
    const given: OutgoingHttpHeaders = {};
    for (const [name, value] of Object.entries(all)) if (value !== null) given[name] = value;
    const asked = request(
      { host: '127.0.0.1', port: server.port, method, path, headers: given, agent: false },
      (response) => {
        const chunks: Buffer[] = [];
        response.on('data', (chunk: Buffer) => chunks.push(chunk));
        response.on('end', () => {
          const text = Buffer.concat(chunks).toString('utf8');
          const json = response.headers['content-type']?.includes('json') && text ? JSON.parse(text) : undefined;
          settle({ status: response.statusCode ?? 0, headers: response.headers, text, json });
        });
        response.on('error', fail);
      },
    );
    asked.on('error', fail);
    asked.end(sent);
  });
