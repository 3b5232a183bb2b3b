import { connect, type Socket } from 'node:net';
import { expect, test } from 'vitest';
import type { RunningServer } from './start.ts';
import { ask, start } from './testing/server.ts';

const megabyte = 1024 * 1024;

interface Poured {
  readonly answer: string;
  /** How much the server let us send before it closed, bytes. */
  readonly sent: number;
}

/** Pours a body of `size` bytes into the server as fast as it takes it, and gives what it answered. */
const pour = (server: RunningServer, head: string, size: number, frame: (part: Buffer) => Buffer): Promise<Poured> =>
  new Promise((settle) => {
    const part = frame(Buffer.alloc(megabyte, 'x'));
    let answer = '';
    let sent = 0;
    let open = true;
    const socket: Socket = connect({ host: '127.0.0.1', port: server.port }, () => {
      socket.write(head);
      const more = () => {
        if (!open || sent >= size) return;
        sent += megabyte;
        socket.write(part, more);
      };
      more();
    });
    socket.on('data', (data) => {
      answer += data.toString('utf8');
    });
    // Being cut off while still sending is what is expected here.
    socket.on('error', () => undefined);
    socket.on('close', () => {
      open = false;
      settle({ answer, sent: Math.min(sent, socket.bytesWritten) });
    });
  });

const head = (server: RunningServer, length: string) =>
  [
    'POST /api/documents HTTP/1.1',
    `Host: 127.0.0.1:${server.port}`,
    `Origin: ${server.address}`,
    'Content-Type: application/json',
    length,
    '',
    '',
  ].join('\r\n');

test.each([
  ['announced', `Content-Length: ${200 * megabyte}`, (part: Buffer) => part],
  [
    'not announced',
    'Transfer-Encoding: chunked',
    (part: Buffer) => Buffer.concat([Buffer.from(`${part.length.toString(16)}\r\n`), part, Buffer.from('\r\n')]),
  ],
])('200 MB, %s, are refused in words without being read to the end', async (_, length, frame) => {
  const server = await start();
  const { answer, sent } = await pour(server, head(server, length), 200 * megabyte, frame);
  expect(answer).toMatch(/^HTTP\/1\.1 413 /);
  expect(answer).toContain('"code":"server.too-large"');
  expect(answer).toContain('larger than 8 MB');
  console.info(`server: took ${(sent / megabyte).toFixed(1)} of 200 MB before it cut the connection`);
  expect(sent).toBeLessThan(40 * megabyte);
  expect((await ask(server, 'GET', '/api/documents')).json).toEqual({ documents: [] });
});

test('a document of just under 8 MB is read', async () => {
  const server = await start();
  const body = JSON.stringify({ kind: 'cloth', body: { note: 'x'.repeat(8 * megabyte - 200) } });
  expect((await ask(server, 'POST', '/api/documents', body)).json.error.code).toBe('store.wrong-field');
});
