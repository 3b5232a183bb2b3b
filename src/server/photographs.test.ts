import { request } from 'node:http';
import sharp from 'sharp';
import { expect, test } from 'vitest';
import { openWorkroom } from '../store/index.ts';
import type { RunningServer } from './start.ts';
import { ask, start } from './testing/server.ts';

interface Sent {
  readonly status: number;
  readonly type: string;
  readonly bytes: Buffer;
  // biome-ignore lint/suspicious/noExplicitAny: an answer is looked at in a test and nowhere else
  readonly json: any;
}

const send = (server: RunningServer, method: string, path: string, bytes?: Buffer, type = 'image/jpeg') =>
  new Promise<Sent>((settle, fail) => {
    const asked = request(
      {
        host: '127.0.0.1',
        port: server.port,
        method,
        path,
        headers: bytes
          ? { origin: server.address, 'content-type': type, 'content-length': bytes.length }
          : { origin: server.address },
        agent: false,
      },
      (response) => {
        const chunks: Buffer[] = [];
        response.on('data', (chunk: Buffer) => chunks.push(chunk));
        response.on('end', () => {
          const all = Buffer.concat(chunks);
          const got = response.headers['content-type'] ?? '';
          const json = got.includes('json') ? JSON.parse(all.toString('utf8')) : undefined;
          settle({ status: response.statusCode ?? 0, type: got, bytes: all, json });
        });
      },
    );
    asked.on('error', fail);
    asked.end(bytes);
  });

/** A landscape picture, black on its left half, as a camera held upright stores it: turned, with the place it was taken. */
const fromACamera = (): Promise<Buffer> =>
  sharp({ create: { width: 600, height: 400, channels: 3, background: '#ffffff' } })
    .composite([
      { input: { create: { width: 300, height: 400, channels: 3, background: '#000000' } }, left: 0, top: 0 },
    ])
    .withExif({
      IFD0: { Make: 'Kvist', Orientation: '6' },
      IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '62/1 28/1 0/1', GPSLongitudeRef: 'E', GPSLongitude: '6/1 9/1 0/1' },
    })
    .withMetadata({ orientation: 6 })
    .jpeg()
    .toBuffer();

test('a photograph comes in upright and without the place it was taken, and comes out again', async () => {
  const server = await start();
  const taken = await fromACamera();
  const before = await sharp(taken).metadata();
  expect([before.orientation, before.exif !== undefined]).toEqual([6, true]);

  const kept = await send(server, 'POST', '/api/photographs', taken);
  expect(kept.status).toBe(201);
  expect(kept.json).toMatchObject({ mime: 'image/jpeg', width: 400, height: 600, deleted: false });
  const at = `/api/photographs/${kept.json.id}`;
  const seen = await send(server, 'GET', at);
  expect([seen.status, seen.type]).toEqual([200, 'image/jpeg']);
  const after = await sharp(seen.bytes).metadata();
  expect([after.width, after.height, after.exif, after.orientation]).toEqual([400, 600, undefined, undefined]);
  expect(seen.bytes.includes('Kvist')).toBe(false);
  // Turned a quarter clockwise, what was its left half is on top.
  const { data } = await sharp(seen.bytes).greyscale().raw().toBuffer({ resolveWithObject: true });
  expect((data[50 * 400 + 200] ?? 255) < 20 && (data[550 * 400 + 200] ?? 0) > 235).toBe(true);
});

test.each(['png', 'webp'] as const)('a %s loses what was written into it, too', async (form) => {
  const server = await start();
  const xmp = '<packet><place>Kvist harbour</place></packet>';
  const taken = await sharp({ create: { width: 60, height: 40, channels: 3, background: '#7a8b99' } })
    .withExif({ IFD0: { Make: 'Kvist' } })
    .withXmp(xmp)
    .toFormat(form)
    .toBuffer();
  const before = await sharp(taken).metadata();
  expect([before.exif !== undefined, before.xmp !== undefined]).toEqual([true, true]);
  const kept = await send(server, 'POST', '/api/photographs', taken, `image/${form}`);
  expect(kept.json).toMatchObject({ mime: `image/${form}`, width: 60, height: 40 });
  const { bytes } = await send(server, 'GET', `/api/photographs/${kept.json.id}`);
  const after = await sharp(bytes).metadata();
  expect([after.exif, after.xmp, after.comments]).toEqual([undefined, undefined, undefined]);
  expect(bytes.includes('Kvist')).toBe(false);
});

test('a large one is kept no larger than it needs to be, in its own form', async () => {
  const server = await start();
  const large = await sharp({ create: { width: 3600, height: 1800, channels: 3, background: '#7a8b99' } })
    .webp()
    .toBuffer();
  const kept = await send(server, 'POST', '/api/photographs', large, 'image/webp');
  expect(kept.json).toMatchObject({ mime: 'image/webp', width: 2400, height: 1200 });
});

test('it is taken away and put back', async () => {
  const server = await start();
  const kept = await send(server, 'POST', '/api/photographs', await fromACamera());
  const at = `/api/photographs/${kept.json.id}`;
  expect((await ask(server, 'DELETE', at)).json).toMatchObject({ deleted: true });
  expect((await send(server, 'GET', at)).json.error.code).toBe('store.no-such-photograph');
  expect((await ask(server, 'POST', `${at}/restore`)).json).toMatchObject({ deleted: false });
  expect((await send(server, 'GET', at)).status).toBe(200);
});

const ftyp = (brand: string) =>
  Buffer.concat([Buffer.from([0, 0, 0, 24]), Buffer.from(`ftyp${brand}`), Buffer.alloc(40)]);

test.each([
  ['a list of notions', Buffer.from('thread, needles, a 55 cm zip'), 415, 'server.not-a-picture'],
  ['nothing', Buffer.alloc(0), 415, 'server.not-a-picture'],
  [
    'a drawing that could fetch from elsewhere',
    Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"/>'),
    415,
    'server.not-a-picture',
  ],
  ['one as some phones save it', ftyp('heic'), 415, 'server.picture-from-a-phone'],
  ['a film', ftyp('isom'), 415, 'server.not-a-picture'],
  ['the head of a photograph and no more', Buffer.from([0xff, 0xd8, 0xff, 0xe0, 0, 16]), 422, 'server.picture-damaged'],
  ['more than 20 MB', Buffer.alloc(21 * 1024 * 1024, 0xff), 413, 'server.picture-too-heavy'],
])('%s is refused in words, and nothing is stored', async (_, bytes, status, code) => {
  const server = await start();
  const refused = await send(server, 'POST', '/api/photographs', bytes);
  expect([refused.status, refused.json.error.code]).toEqual([status, code]);
  expect(refused.json.error.message).not.toMatch(/[{}]/);
  expect(refused.json.error.remedy).toContain('Nothing was stored');
});

test('one cut short is refused', async () => {
  const server = await start();
  const whole = await sharp({
    create: {
      width: 900,
      height: 900,
      channels: 3,
      noise: { type: 'gaussian', mean: 128, sigma: 40 },
      background: '#888',
    },
  })
    .jpeg()
    .toBuffer();
  const refused = await send(server, 'POST', '/api/photographs', whole.subarray(0, Math.floor(whole.length / 2)));
  expect([refused.status, refused.json.error.code]).toEqual([422, 'server.picture-damaged']);
});

test('a small file that would unfold to fill the memory is refused', async () => {
  const server = await start();
  const bomb = await sharp({ create: { width: 13_000, height: 13_000, channels: 3, background: '#000000' } })
    .png({ compressionLevel: 9 })
    .toBuffer();
  expect(bomb.length).toBeLessThan(2 * 1024 * 1024);
  const refused = await send(server, 'POST', '/api/photographs', bomb, 'image/png');
  expect([refused.status, refused.json.error.code]).toEqual([422, 'server.picture-too-many-points']);
});

test('a photograph outlives the program', async () => {
  const server = await start();
  const kept = await send(server, 'POST', '/api/photographs', await fromACamera());
  await server.stop();
  const workroom = await openWorkroom(server.folder);
  if (!workroom.ok) throw new Error(workroom.problem.code);
  expect(workroom.value.photograph(kept.json.id)).toMatchObject({ ok: true, value: { width: 400 } });
  await workroom.value.close();
});
