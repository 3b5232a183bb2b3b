import type { IncomingMessage } from 'node:http';
import { errorAnswer } from './answer.ts';
import { largestAt, tooLarge } from './body.ts';
import { safeHeaderValues } from './headers.ts';

export const isTooLarge = (request: IncomingMessage): boolean =>
  Number(request.headers['content-length'] ?? 0) > largestAt(request.url ?? '');

/** How long the sender gets to take the answer before the connection is cut, ms. */
const grace = 1000;

/**
 * Answers a request whose announced body is too large, without reading the body. Node's own response
 * would read what is left of it to the end; so the answer is put on the connection by hand, our half of
 * it is closed, and the sender is left waiting on a full buffer until it takes the answer or is cut off.
 */
export const refuseUnread = ({ socket, url }: IncomingMessage): void => {
  const body = JSON.stringify(errorAnswer(tooLarge(largestAt(url ?? '')).problem));
  const head = [
    'HTTP/1.1 413 Payload Too Large',
    ...Object.entries(safeHeaderValues).map(([name, value]) => `${name}: ${value}`),
    'Cache-Control: no-store',
    'Content-Type: application/json',
    `Content-Length: ${Buffer.byteLength(body)}`,
    'Connection: close',
  ];
  socket.end(`${head.join('\r\n')}\r\n\r\n${body}`);
  setTimeout(() => socket.destroy(), grace).unref();
};
