import { expect, test } from 'vitest';
import { ask, start } from './testing/server.ts';

const cloth = {
  format: 'easewright-cloth/1',
  name: 'White poplin',
  structure: 'woven',
  fibres: 'cotton 100 %',
  weight: 118,
  width: 1480,
  length: 2400,
  stretchAcross: 0,
  stretchAlong: 0,
  oneWay: false,
  shrinkAlong: 0.035,
  shrinkAcross: 0.01,
  washed: false,
  colour: '#f6f3ea',
  terms: 'bought',
  from: 'The stall by the fish steps',
  note: '',
};

test('a new workroom says so, and is started once', async () => {
  const server = await start();
  expect((await ask(server, 'GET', '/api/workroom')).json).toEqual({
    name: 'My workroom',
    started: false,
    demo: false,
    version: expect.stringMatching(/^\d+\.\d+\.\d+$/),
  });
  const wrong = await ask(server, 'POST', '/api/workroom/start', { choice: 'both' });
  expect(wrong.status).toBe(422);
  expect(wrong.json.error.message).toBe('The request is not one the workroom knows: the choice should be demo or own.');
  expect((await ask(server, 'POST', '/api/workroom/start', { choice: 'own' })).json).toMatchObject({
    started: true,
    demo: false,
  });
  const again = await ask(server, 'POST', '/api/workroom/start', { choice: 'demo' });
  expect([again.status, again.json.error.code]).toEqual([409, 'store.already-started']);
  expect((await ask(server, 'GET', '/api/documents')).json).toEqual({ documents: [] });
});

test('the demo workroom is filled, and its make names what is there', async () => {
  const server = await start();
  expect((await ask(server, 'POST', '/api/workroom/start', { choice: 'demo' })).json.demo).toBe(true);
  const count = async (kind: string) =>
    (await ask(server, 'GET', `/api/documents?kind=${kind}`)).json.documents.length as number;
  expect(await count('wearer')).toBeGreaterThanOrEqual(2);
  expect(await count('cloth')).toBeGreaterThanOrEqual(3);
  const { documents } = (await ask(server, 'GET', '/api/documents?kind=make')).json;
  expect(documents[0].body.pattern).toBe('house:blouse');
  expect((await ask(server, 'GET', `/api/documents/${documents[0].body.wearer}`)).json.kind).toBe('wearer');
});

test('a document goes in, comes back, is changed, deleted and restored', async () => {
  const server = await start();
  const created = await ask(server, 'POST', '/api/documents', { kind: 'cloth', body: cloth });
  expect(created.status).toBe(201);
  expect(created.json).toMatchObject({ kind: 'cloth', revision: 1, deleted: false, body: cloth });
  const at = `/api/documents/${created.json.id}`;
  expect((await ask(server, 'GET', at)).json).toEqual(created.json);

  const changed = await ask(server, 'PUT', at, { revision: 1, body: { ...cloth, length: 1000 } });
  expect([changed.status, changed.json.revision, changed.json.body.length]).toEqual([200, 2, 1000]);
  const stale = await ask(server, 'PUT', at, { revision: 1, body: { ...cloth, length: 500 } });
  expect(stale.status).toBe(409);
  expect(stale.json).toMatchObject({
    error: { code: 'store.conflict', message: expect.stringContaining('changed elsewhere') },
    problem: { code: 'store.conflict' },
    current: changed.json,
  });

  expect((await ask(server, 'DELETE', at, { revision: 2 })).json).toMatchObject({ revision: 3, deleted: true });
  expect((await ask(server, 'GET', '/api/documents')).json.documents).toEqual([]);
  expect((await ask(server, 'GET', '/api/documents?deleted=yes')).json.documents).toHaveLength(1);
  expect((await ask(server, 'POST', `${at}/restore`)).json).toMatchObject({ revision: 4, deleted: false });
  expect((await ask(server, 'POST', `${at}/restore`, { to: 1 })).json).toMatchObject({ revision: 5, body: cloth });
  const { revisions } = (await ask(server, 'GET', `${at}/history`)).json;
  expect(revisions.map(({ revision }: { revision: number }) => revision)).toEqual([5, 4, 3, 2, 1]);
});

test.each([
  ['a kind that is none', 'POST', '/api/documents', { kind: 'button', body: cloth }, 422, 'server.wrong-request'],
  ['no kind', 'POST', '/api/documents', { body: cloth }, 422, 'server.wrong-request'],
  ['no body', 'POST', '/api/documents', { kind: 'cloth' }, 422, 'server.wrong-request'],
  [
    'a wrong field',
    'POST',
    '/api/documents',
    { kind: 'cloth', body: { ...cloth, width: 0 } },
    422,
    'store.wrong-field',
  ],
  ['half a request', 'POST', '/api/documents', '{"kind": "cloth", "bo', 422, 'server.not-json'],
  ['a list', 'POST', '/api/documents', '[]', 422, 'server.wrong-request'],
  ['no revision', 'PUT', '/api/documents/x', { body: cloth }, 422, 'server.wrong-request'],
  [
    'a document that is not there',
    'PUT',
    '/api/documents/x',
    { revision: 1, body: cloth },
    404,
    'store.no-such-document',
  ],
  ['one that is not there', 'GET', '/api/documents/x', undefined, 404, 'store.no-such-document'],
  ['deleting what is not there', 'DELETE', '/api/documents/x', { revision: 1 }, 404, 'store.no-such-document'],
  ['a list of no kind', 'GET', '/api/documents?kind=button', undefined, 422, 'server.wrong-request'],
  ['a route that is none', 'GET', '/api/nothing', undefined, 404, 'server.no-such-place'],
  ['a method that is none', 'PATCH', '/api/documents/x', {}, 404, 'server.no-such-place'],
  ['going back while all is well', 'POST', '/api/workroom/restore', {}, 409, 'server.nothing-to-mend'],
] as const)('%s is refused in words', async (_, method, path, body, status, code) => {
  const server = await start();
  const refused = await ask(server, method, path, body);
  expect([refused.status, refused.json.error.code]).toEqual([status, code]);
  expect(refused.json.error.message).not.toMatch(/[{}]/);
  expect(refused.json.error.remedy.length).toBeGreaterThan(10);
  expect((await ask(server, 'GET', '/api/documents?deleted=yes')).json.documents).toEqual([]);
});
