import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { ask, start } from './testing/server.ts';

const choice = { choice: 'own' };

test.each([
  ['evil.example', 403],
  ['evil.example:8317', 403],
  ['127.0.0.1.evil.example', 403],
  ['localhost', 403],
  ['localhost:1', 403],
])('asked for as %j it answers %i', async (host, status) => {
  const server = await start();
  for (const path of ['/api/workroom', '/', '/mark.svg']) {
    const refused = await ask(server, 'GET', path, undefined, { host });
    expect(refused.status).toBe(status);
    expect(refused.text).not.toContain('My workroom');
  }
});

test('it answers under the names of this machine', async () => {
  const server = await start();
  for (const name of ['127.0.0.1', 'localhost', 'LOCALHOST', '[::1]']) {
    const answered = await ask(server, 'GET', '/api/workroom', undefined, { host: `${name}:${server.port}` });
    expect([name, answered.status]).toEqual([name, 200]);
  }
});

test.each([
  ['from another site', { origin: 'http://evil.example' }],
  ['from another port', { origin: 'http://127.0.0.1:1' }],
  ['from no site to be named', { origin: 'null' }],
  ['over https', { origin: 'https://127.0.0.1' }],
  ['with neither origin nor token', { origin: null }],
  ['with a wrong token', { origin: null, authorization: 'Bearer guess' }],
  ['with an empty token', { origin: null, authorization: 'Bearer ' }],
])('a change %s is refused', async (_, headers) => {
  const server = await start();
  const refused = await ask(server, 'POST', '/api/workroom/start', choice, headers);
  expect([refused.status, refused.json.error.code]).toEqual([403, 'server.wrong-origin']);
  expect((await ask(server, 'GET', '/api/workroom')).json.started).toBe(false);
});

test('a change from the page, or with the token of the owner, is let through', async () => {
  const server = await start();
  const { token } = JSON.parse(readFileSync(join(server.folder, 'owner.json'), 'utf8')) as { token: string };
  const started = await ask(server, 'POST', '/api/workroom/start', choice, {
    origin: null,
    authorization: `Bearer ${token}`,
  });
  expect(started.status).toBe(200);
  // A page elsewhere that got hold of the token is still a page elsewhere.
  const elsewhere = { origin: 'http://evil.example', authorization: `Bearer ${token}` };
  expect((await ask(server, 'POST', '/api/documents', {}, elsewhere)).status).toBe(403);
});

test('the workroom is not read across sites, but the page may be opened from a link', async () => {
  const server = await start();
  const across = { 'sec-fetch-site': 'cross-site' };
  expect((await ask(server, 'GET', '/api/documents', undefined, across)).status).toBe(403);
  expect((await ask(server, 'GET', '/api/documents', undefined, { origin: 'http://evil.example' })).status).toBe(403);
  expect((await ask(server, 'GET', '/', undefined, across)).status).toBe(200);
});

test.each([['/'], ['/api/workroom'], ['/api/nothing'], ['/nothing.js'], ['/assets/index-B3xk91Qa.js']])(
  '%s carries the headers that keep the page to itself',
  async (path) => {
    const server = await start();
    const { headers } = await ask(server, 'GET', path);
    const policy = headers['content-security-policy'] as string;
    expect(policy).toMatch(/^default-src 'none'; /);
    expect(policy).not.toMatch(/unsafe|http:|https:|\*/);
    expect(policy).toContain("frame-ancestors 'none'");
    expect(headers['x-content-type-options']).toBe('nosniff');
    expect(headers['referrer-policy']).toBe('no-referrer');
    expect(headers['cross-origin-opener-policy']).toBe('same-origin');
    expect(headers['cross-origin-embedder-policy']).toBe('require-corp');
    expect(headers['access-control-allow-origin']).toBeUndefined();
  },
);

test('refusals carry them too', async () => {
  const server = await start();
  const { headers } = await ask(server, 'GET', '/', undefined, { host: 'evil.example' });
  expect(headers['content-security-policy']).toMatch(/^default-src 'none'/);
});
