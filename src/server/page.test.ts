import { join } from 'node:path';
import { expect, test } from 'vitest';
import { ask, start, temporaryFolder } from './testing/server.ts';

test.each([
  ['/', 'text/html; charset=utf-8', 'no-cache'],
  ['/makes/demo-concert-blouse', 'text/html; charset=utf-8', 'no-cache'],
  ['/assets/index-B3xk91Qa.js', 'text/javascript; charset=utf-8', 'public, max-age=31536000, immutable'],
  ['/assets/index-Dk2_9aZx.css', 'text/css; charset=utf-8', 'public, max-age=31536000, immutable'],
  ['/fonts/AlegreyaSans_400Regular.ttf', 'font/ttf', 'no-cache'],
  ['/mark.svg', 'image/svg+xml', 'no-cache'],
])('%s is served as what it is', async (path, type, caching) => {
  const server = await start();
  const got = await ask(server, 'GET', path);
  expect([got.status, got.headers['content-type'], got.headers['cache-control']]).toEqual([200, type, caching]);
  expect(got.text.length).toBe(Number(got.headers['content-length']));
  const head = await ask(server, 'HEAD', path);
  expect([head.status, head.headers['content-type'], head.text]).toEqual([200, type, '']);
});

test.each([
  ['/nothing.js'],
  ['/../secret.txt'],
  ['/..%2fsecret.txt'],
  ['/%2e%2e/secret.txt'],
  ['/assets/..%2f..%2f..%2fsecret.txt'],
  ['/assets/%00.js'],
  ['/%ff.js'],
])('%s is not found', async (path) => {
  const server = await start();
  const got = await ask(server, 'GET', path);
  expect(got.status).toBe(404);
  expect(got.text).not.toContain('outside');
});

test('before the page was built, that is said', async () => {
  const server = await start({ pageFolder: join(temporaryFolder(), 'not-there') });
  const got = await ask(server, 'GET', '/');
  expect(got.status).toBe(500);
  expect(got.text).toContain('has not been built yet');
});
