import { join, resolve } from 'node:path';
import { expect, test } from 'vitest';
import { dataFolder } from './folder.ts';

const home = '/home/runa';

test.each([
  ['Linux', 'linux', {}, join(home, '.local', 'share', 'easewright')],
  ['Linux with XDG_DATA_HOME', 'linux', { XDG_DATA_HOME: '/data/runa' }, join('/data/runa', 'easewright')],
  ['Linux with a relative one', 'linux', { XDG_DATA_HOME: 'data' }, join(home, '.local', 'share', 'easewright')],
  ['macOS', 'darwin', {}, join(home, 'Library', 'Application Support', 'Easewright')],
  ['Windows', 'win32', { APPDATA: '/roaming' }, join('/roaming', 'Easewright')],
  ['Windows without APPDATA', 'win32', {}, join(home, 'AppData', 'Roaming', 'Easewright')],
] as const)('on %s the workroom lies where that system keeps a person’s data', (_, platform, env, folder) => {
  expect(dataFolder(undefined, { platform, env, home })).toBe(folder);
});

test('a chosen folder outranks them all', () => {
  expect(dataFolder('rooms/mine', { platform: 'linux', env: { XDG_DATA_HOME: '/data' }, home })).toBe(
    resolve('rooms/mine'),
  );
});
