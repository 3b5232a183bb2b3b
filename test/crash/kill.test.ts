import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { setTimeout as wait } from 'node:timers/promises';
import sharp from 'sharp';
import { afterAll, beforeAll, expect, onTestFinished, test } from 'vitest';
import { openWorkroom } from '../../src/store/index.ts';
import { compileWriter } from './compiled.ts';

let writer: ReturnType<typeof compileWriter>;
beforeAll(() => {
  writer = compileWriter();
}, 60_000);
afterAll(() => writer?.remove());

const temporaryFolder = (): string => {
  const folder = mkdtempSync(join(tmpdir(), 'easewright-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
};

/** mulberry32: small, and the same everywhere for the same seed. */
const randomFrom = (seed: number) => {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
};

interface Running {
  readonly child: ChildProcess;
  readonly address: string;
  readonly token: string;
}

const spawnWriter = (folder: string): ChildProcess =>
  spawn(process.execPath, [writer.script, folder], { stdio: ['ignore', 'pipe', 'inherit'] });

const ended = (child: ChildProcess): Promise<unknown> =>
  new Promise((settle) => {
    if (child.exitCode !== null || child.signalCode !== null) settle(null);
    else child.once('exit', settle);
  });

const kill = async (child: ChildProcess): Promise<void> => {
  child.kill('SIGKILL');
  await ended(child);
};

const run = async (folder: string): Promise<Running> => {
  const child = spawnWriter(folder);
  onTestFinished(() => kill(child));
  const address = await new Promise<string>((settle, fail) => {
    if (child.stdout) createInterface(child.stdout).once('line', settle);
    child.once('exit', (code) => fail(new Error(`the writer ended with ${code} before it listened`)));
  });
  const { token } = JSON.parse(readFileSync(join(folder, 'owner.json'), 'utf8')) as { token: string };
  return { child, address, token };
};

interface Stored {
  readonly id: string;
  readonly revision: number;
  readonly deleted: boolean;
  readonly body: { readonly note: string };
}

/** Asks; undefined when the connection broke before the answer was whole, so that nothing was acknowledged. */
const ask = async <T>(
  { address, token }: Running,
  method: string,
  path: string,
  body?: unknown,
): Promise<T | undefined> => {
  let response: Response;
  let read: unknown;
  try {
    response = await fetch(`${address}/api${path}`, {
      method,
      headers: { authorization: `Bearer ${token}`, 'content-type': 'application/json' },
      ...(body === undefined ? {} : { body: JSON.stringify(body) }),
    });
    read = await response.json();
  } catch {
    return undefined;
  }
  if (!response.ok) throw new Error(`${method} ${path} was answered with ${response.status}: ${JSON.stringify(read)}`);
  return read as T;
};

const cloth = (note: string) => ({
  format: 'easewright-cloth/1',
  name: 'Oilcloth',
  structure: 'woven',
  fibres: 'cotton 100 %',
  weight: 320,
  width: 1400,
  length: 2000,
  stretchAcross: 0,
  stretchAlong: 0,
  oneWay: false,
  shrinkAlong: 0,
  shrinkAcross: 0,
  washed: true,
  colour: '#c9a227',
  terms: 'bought',
  from: 'The ship chandler',
  note,
});

/** What was acknowledged of a document, and what was sent after that and not acknowledged. */
interface Known {
  acknowledged: Stored;
  pending: { readonly deleted: boolean; readonly note: string } | undefined;
}

/** Long enough to span several of the database's pages, so that half of it would be seen. */
const noteOf = (mark: string, random: () => number): string =>
  `${mark} ${'tide '.repeat(Math.floor(random() * 3900))}${mark}`;

/** One hand that writes, one request after another, until the program is gone. */
const write = async (
  server: Running,
  known: Map<string, Known>,
  sent: Set<string>,
  hand: string,
  random: () => number,
  acknowledged: () => void,
) => {
  for (let count = 0; ; count++) {
    const note = noteOf(`${hand}.${count}`, random);
    const own = [...known.values()].filter(({ acknowledged }) => acknowledged.body.note.startsWith(hand.slice(0, 1)));
    const target = own[Math.floor(random() * own.length)];
    if (!target || random() < 0.3) {
      sent.add(note);
      const made = await ask<Stored>(server, 'POST', '/documents', { kind: 'cloth', body: cloth(note) });
      if (!made) return;
      known.set(made.id, { acknowledged: made, pending: undefined });
      acknowledged();
      continue;
    }
    const { id, revision, deleted, body } = target.acknowledged;
    const path = `/documents/${id}`;
    const next = deleted
      ? { deleted: false, note: body.note }
      : random() < 0.2
        ? { deleted: true, note: body.note }
        : { deleted: false, note };
    target.pending = next;
    const answered = deleted
      ? await ask<Stored>(server, 'POST', `${path}/restore`, { revision })
      : next.deleted
        ? await ask<Stored>(server, 'DELETE', path, { revision })
        : await ask<Stored>(server, 'PUT', path, { revision, body: cloth(note) });
    if (!answered) return;
    target.acknowledged = answered;
    target.pending = undefined;
    acknowledged();
  }
};

/** Everything acknowledged is there; what was not is there whole or not at all. Takes up what it found. */
const verify = async (server: Running, known: Map<string, Known>, sent: Set<string>): Promise<void> => {
  const listed = await ask<{ documents: Stored[] }>(server, 'GET', '/documents?deleted=yes');
  const found = new Map(listed?.documents.map((document) => [document.id, document]));
  for (const [id, { acknowledged, pending }] of known) {
    const now = found.get(id);
    if (now?.revision === acknowledged.revision) expect(now).toEqual(acknowledged);
    else {
      expect(pending, `${id} is at ${now?.revision}, acknowledged at ${acknowledged.revision}`).toBeDefined();
      expect(now).toMatchObject({
        revision: acknowledged.revision + 1,
        deleted: pending?.deleted,
        body: { note: pending?.note },
      });
    }
  }
  for (const [id, document] of found) {
    if (!known.has(id)) {
      expect(document.revision).toBe(1);
      expect(sent.has(document.body.note), 'a document that was never sent').toBe(true);
    }
    known.set(id, { acknowledged: document, pending: undefined });
  }
};

/** Every state a document has been in is kept, without a gap. */
const verifyHistory = async (server: Running, known: Map<string, Known>): Promise<void> => {
  for (const [id, { acknowledged }] of known) {
    const history = await ask<{ revisions: Stored[] }>(server, 'GET', `/documents/${id}/history`);
    expect(history?.revisions.map(({ revision }) => revision)).toEqual(
      Array.from({ length: acknowledged.revision }, (_, index) => acknowledged.revision - index),
    );
  }
};

const seed = Number(process.env.EASEWRIGHT_SEED ?? Date.now());

test('thirty kills lose nothing acknowledged and leave nothing half', { timeout: 180_000 }, async () => {
  console.info(`crash: seed ${seed}`);
  const random = randomFrom(seed);
  const folder = temporaryFolder();
  const known = new Map<string, Known>();
  const sent = new Set<string>();
  let acknowledged = 0;
  for (let round = 0; round < 30; round++) {
    const server = await run(folder);
    await verify(server, known, sent);
    // Killed somewhere within the write after so many, so that a slow machine shows as much as a fast one.
    const enough = acknowledged + 4 + Math.floor(random() * 8);
    let reached: () => void = () => undefined;
    const written = new Promise<void>((settle) => {
      reached = settle;
    });
    const count = () => {
      acknowledged += 1;
      if (acknowledged === enough) reached();
    };
    const hands = ['a', 'b'].map((hand) => write(server, known, sent, `${hand}${round}`, random, count));
    await Promise.race([written, Promise.all(hands)]);
    await wait(random() * 20);
    await kill(server.child);
    await Promise.all(hands);
  }
  const last = await run(folder);
  await verify(last, known, sent);
  await verifyHistory(last, known);
  console.info(`crash: ${acknowledged} writes acknowledged over 30 kills, ${known.size} documents`);
  expect(acknowledged).toBeGreaterThanOrEqual(120);
});

test('killed while it is being set up, a workroom opens the next time', { timeout: 60_000 }, async () => {
  const random = randomFrom(seed + 1);
  for (let round = 0; round < 5; round++) {
    const folder = temporaryFolder();
    const child = spawnWriter(folder);
    await wait(60 + random() * 300);
    await kill(child);
    const server = await run(folder);
    expect(await ask<{ documents: Stored[] }>(server, 'GET', '/documents')).toEqual({ documents: [] });
    await kill(server.child);
  }
});

test('killed while the demo workroom is filled, it is filled or empty', { timeout: 60_000 }, async () => {
  const random = randomFrom(seed + 2);
  for (let round = 0; round < 5; round++) {
    const folder = temporaryFolder();
    const server = await run(folder);
    const filling = ask<{ started: boolean }>(server, 'POST', '/workroom/start', { choice: 'demo' });
    await wait(random() * 12);
    await kill(server.child);
    const acknowledged = await filling;
    const again = await run(folder);
    const facts = await ask<{ started: boolean }>(again, 'GET', '/workroom');
    const listed = await ask<{ documents: Stored[] }>(again, 'GET', '/documents');
    if (acknowledged) expect(facts?.started).toBe(true);
    const count = listed?.documents.length ?? -1;
    if (facts?.started) expect(count).toBeGreaterThan(5);
    else expect(count).toBe(0);
    await kill(again.child);
  }
});

test('killed while photographs come in, every one acknowledged is there whole', { timeout: 90_000 }, async () => {
  const random = randomFrom(seed + 3);
  const folder = temporaryFolder();
  const acknowledged = new Map<string, number>();
  const width = 300;
  for (let round = 0; round < 4; round++) {
    const server = await run(folder);
    for (const [id, height] of acknowledged) {
      const picture = await fetch(`${server.address}/api/photographs/${id}`);
      const bytes = Buffer.from(await picture.arrayBuffer());
      // Decoded to its last row: a picture cut short would not be.
      const { info } = await sharp(bytes, { failOn: 'error' }).raw().toBuffer({ resolveWithObject: true });
      expect([info.width, info.height]).toEqual([width, height]);
    }
    const enough = acknowledged.size + 1 + Math.floor(random() * 3);
    const post = async () => {
      for (;;) {
        const height = 100 + Math.floor(random() * 300);
        const noise = { type: 'gaussian', mean: 128, sigma: 60 } as const;
        const bytes = await sharp({ create: { width, height, channels: 3, background: '#888888', noise } })
          .jpeg()
          .toBuffer();
        const answer = await fetch(`${server.address}/api/photographs`, {
          method: 'POST',
          headers: { authorization: `Bearer ${server.token}`, 'content-type': 'image/jpeg' },
          body: new Uint8Array(bytes),
        })
          .then((response) => response.json() as Promise<{ id: string }>)
          .catch(() => undefined);
        if (!answer) return;
        acknowledged.set(answer.id, height);
      }
    };
    const hands = [post(), post()];
    while (acknowledged.size < enough) await wait(5);
    await wait(random() * 15);
    await kill(server.child);
    await Promise.all(hands);
  }
  expect(acknowledged.size).toBeGreaterThanOrEqual(4);
});

test('one process has a workroom, and lets go of it when it is killed', { timeout: 30_000 }, async () => {
  const folder = temporaryFolder();
  const server = await run(folder);
  const refused = await openWorkroom(folder);
  if (refused.ok) throw new Error('two processes have the workroom');
  expect(refused.problem).toMatchObject({
    code: 'store.in-use-at',
    values: { process: String(server.child.pid), address: server.address },
  });
  await kill(server.child);
  // The note of who had it still lies there; the lock does not.
  expect(existsSync(join(folder, 'owner.json'))).toBe(true);
  const opened = await openWorkroom(folder);
  if (!opened.ok) throw new Error(opened.problem.code);
  await opened.value.close();
});

test.skipIf(process.platform === 'win32')('asked to stop, it stops in good order', { timeout: 30_000 }, async () => {
  const folder = temporaryFolder();
  const server = await run(folder);
  const made = await ask<Stored>(server, 'POST', '/documents', { kind: 'cloth', body: cloth('last') });
  server.child.kill('SIGTERM');
  await ended(server.child);
  expect(server.child.exitCode).toBe(0);
  for (const left of ['owner.json', 'workroom.sqlite-wal', 'workroom.sqlite-shm']) {
    expect([left, existsSync(join(folder, left))]).toEqual([left, false]);
  }
  const again = await run(folder);
  expect(await ask<Stored>(again, 'GET', `/documents/${made?.id}`)).toEqual(made);
});
