// Finds a Chromium for the browser tests, or gets one where it may.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import { delimiter, join } from 'node:path';
import { root } from './setup.mjs';

const systemNames = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome'];
const systemPlaces = [
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];

const onPath = () =>
  (process.env.PATH ?? '')
    .split(delimiter)
    .flatMap((folder) => systemNames.map((name) => join(folder, name)))
    .find((file) => existsSync(file));

const playwrightsOwn = () => {
  const { chromium } = createRequire(join(root, 'package.json'))('playwright-core');
  const file = chromium.executablePath();
  return file && existsSync(file) ? file : undefined;
};

const look = () => {
  const named = process.env.EASEWRIGHT_CHROMIUM;
  if (named && existsSync(named)) return named;
  return onPath() ?? systemPlaces.find((file) => existsSync(file)) ?? playwrightsOwn();
};

const attempt = (command, args) =>
  spawnSync(command, args, { cwd: root, stdio: ['ignore', 'ignore', 'ignore'], timeout: 240_000 }).status === 0;

/** Path of a Chromium, or undefined after saying in a sentence how to get one. */
export const findChromium = () => {
  const found = look();
  if (found) return found;
  console.error('No Chromium found; trying to get one for the browser tests …');
  attempt('npx', ['playwright-core', 'install', 'chromium']);
  if (!look() && process.getuid?.() === 0 && existsSync('/usr/bin/apt-get')) {
    attempt('apt-get', ['update', '-qq']);
    attempt('apt-get', ['install', '-y', '-qq', 'chromium']);
  }
  const got = look();
  if (!got) {
    console.error(
      "The browser tests need Chromium: install your system's `chromium` package, or set EASEWRIGHT_CHROMIUM to the path of one.",
    );
  }
  return got;
};
