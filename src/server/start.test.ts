import { readdirSync, truncateSync } from 'node:fs';
import { connect, createServer } from 'node:net';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { openWorkroom } from '../store/index.ts';
import { reachWorkroom } from './client.ts';
import { startServer } from './start.ts';
import { ask, start, temporaryFolder } from './testing/server.ts';

test('the address and the folder are printed', async () => {
  const server = await start();
  expect(server.said).toContain(`Easewright is open at http://127.0.0.1:${server.port}/`);
  expect(server.said).toContain(`It keeps its data in ${server.folder}`);
});

test('where the port is taken the next free one is, and that is said', async () => {
  const first = await start();
  const second = await start({ port: first.port });
  expect(second.port).toBeGreaterThan(first.port);
  expect(second.said[0]).toBe(`Port ${first.port} was taken, so it is at ${second.port} this time.`);
  expect((await ask(second, 'GET', '/api/workroom')).status).toBe(200);
});

test('it listens on this machine only', async () => {
  const server = await start();
  const own = createServer();
  onTestFinished(() => void own.close());
  // Were it bound to all addresses, another loopback address would reach it.
  const reached = await new Promise<boolean>((settle) => {
    const socket = connect({ host: '127.0.0.2', port: server.port }, () => {
      socket.destroy();
      settle(true);
    });
    socket.on('error', () => settle(false));
  });
  expect(reached).toBe(false);
});

test('an address that is none of this machine is said', async () => {
  const refused = await startServer({
    dataFolder: temporaryFolder(),
    port: 0,
    host: '203.0.113.1',
    heedSignals: false,
  });
  expect(refused.ok ? 'good' : refused.problem.code).toBe('server.cannot-listen');
});

test('a workroom in use is not served twice', async () => {
  const first = await start();
  const second = await startServer({ dataFolder: first.folder, port: 0, heedSignals: false });
  if (second.ok) throw new Error('it was served twice');
  expect(second.problem).toMatchObject({ code: 'store.in-use-at', values: { address: first.address } });
});

test('stopping lets go of the workroom, and what was stored is there', async () => {
  const server = await start();
  await ask(server, 'POST', '/api/workroom/start', { choice: 'demo' });
  await Promise.all([server.stop(), server.stop()]);
  await server.stopped;
  await expect(ask(server, 'GET', '/')).rejects.toThrow(/ECONNREFUSED/);
  const opened = await openWorkroom(server.folder);
  if (!opened.ok) throw new Error(opened.problem.code);
  expect(opened.value.facts().demo).toBe(true);
  await opened.value.close();
});

test('a backup is taken on opening', async () => {
  const server = await start();
  await expect.poll(() => readdirSync(join(server.folder, 'backups'))).toHaveLength(1);
});

test('the terminal reaches the workroom itself, or through the server that has it', async () => {
  const server = await start();
  const opened = await reachWorkroom(server.folder);
  if (!opened.ok) throw new Error(opened.problem.code);
  const workroom = opened.value;
  expect(workroom.through).toBe('server');
  expect(await workroom.start('demo')).toMatchObject({ ok: true, value: { demo: true } });
  const jersey = await workroom.read('demo-jersey');
  if (!jersey.ok) throw new Error(jersey.problem.code);
  expect(await workroom.update('demo-jersey', 1, { ...jersey.value.body, length: 900 })).toMatchObject({ ok: true });
  expect(await workroom.update('demo-jersey', 1, jersey.value.body)).toMatchObject({
    problem: { code: 'store.conflict', values: { current: 2, given: 1 } },
  });
  expect(await workroom.remove('demo-jersey', 2)).toMatchObject({ ok: true });
  expect(await workroom.list({ kind: 'cloth' })).toMatchObject({ value: { length: 2 } });
  expect(await workroom.list({ kind: 'cloth', deleted: true })).toMatchObject({ value: { length: 3 } });
  expect(await workroom.restore('demo-jersey')).toMatchObject({ value: { revision: 4, deleted: false } });
  expect(await workroom.history('demo-jersey')).toMatchObject({ value: { length: 4 } });
  await workroom.close();
  await server.stop();

  const again = await reachWorkroom(server.folder);
  if (!again.ok) throw new Error(again.problem.code);
  expect(again.value.through).toBe('here');
  expect(await again.value.read('demo-jersey')).toMatchObject({ value: { revision: 4 } });
  await again.value.close();
});

/** A stopped workroom that was damaged after its backup. */
const damaged = async (): Promise<string> => {
  const server = await start();
  await ask(server, 'POST', '/api/workroom/start', { choice: 'demo' });
  await expect
    .poll(() => readdirSync(join(server.folder, 'backups')).filter((name) => name.endsWith('.sqlite')))
    .toHaveLength(1);
  await server.stop();
  truncateSync(join(server.folder, 'workroom.sqlite'), 3000);
  return server.folder;
};

test('a damaged workroom is told on the page, and its backup can be gone back to there', async () => {
  const folder = await damaged();
  const server = await start({ dataFolder: folder });
  expect(server.problem?.code).toBe('store.damaged');
  expect(server.said.join(' ')).toMatch(/is damaged .* good backup of .* its page, which offers to go back/);
  const told = await ask(server, 'GET', '/api/workroom');
  expect([told.status, told.json.error.code]).toEqual([500, 'store.damaged']);
  expect(told.json.error.values.takenAt).toMatch(/^\d{4}-/);
  expect((await ask(server, 'POST', '/api/documents', { kind: 'cloth', body: {} })).json.error.code).toBe(
    'store.damaged',
  );
  const restored = await ask(server, 'POST', '/api/workroom/restore', {});
  expect(restored.status).toBe(200);
  expect(restored.json.movedTo).toMatch(/workroom-damaged-/);
  expect((await ask(server, 'GET', '/api/workroom')).status).toBe(200);
  // The terminal finds the server again.
  const reached = await reachWorkroom(folder);
  expect(reached.ok && reached.value.through).toBe('server');
});

test('without any script the browser shows what is wrong and goes back with one button', async () => {
  const server = await start({ dataFolder: await damaged() });
  const shown = await ask(server, 'GET', '/makes/demo-concert-blouse');
  expect(shown.status).toBe(500);
  expect(shown.text).toMatch(/is damaged .* good backup of/);
  expect(shown.text).toContain('<form method="post" action="/go-back"><button>Go back to the backup of');
  expect((await ask(server, 'POST', '/go-back', '', { origin: 'http://evil.example' })).status).toBe(403);
  const mended = await ask(server, 'POST', '/go-back', '');
  expect([mended.status, mended.text]).toEqual([200, expect.stringContaining('kept as')]);
  expect((await ask(server, 'GET', '/')).text).toContain('<title>Easewright</title>');
  expect((await ask(server, 'GET', '/api/workroom')).status).toBe(200);
  expect((await ask(server, 'POST', '/go-back', '')).status).toBe(404);
});
