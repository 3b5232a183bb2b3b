// npm run pictures: takes the pictures of the documentation from the running demo workroom, so that they stay true.
import { spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { findChromium } from './chromium.mjs';
import { build, checkNode, installPackages, root } from './setup.mjs';

checkNode();
installPackages();
build();

const folder = mkdtempSync(join(tmpdir(), 'easewright-pictures-'));
const server = spawn(
  process.execPath,
  [join(root, 'bin', 'easewright.js'), 'demo', '--data', folder, '--port', '0', '--no-open'],
  {
    stdio: ['ignore', 'pipe', 'inherit'],
  },
);
const address = await new Promise((settle) => {
  server.stdout.setEncoding('utf8').on('data', (text) => {
    const found = /http:\/\/\S+/.exec(text)?.[0];
    if (found) settle(found.replace(/\/$/, ''));
  });
});
const browser = await chromium.launch({
  executablePath: findChromium(),
  args: [
    '--no-sandbox',
    '--disable-gpu',
    '--disable-background-networking',
    '--disable-component-update',
    '--no-first-run',
  ],
});
try {
  const page = await (
    await browser.newContext({ viewport: { width: 1440, height: 900 }, reducedMotion: 'reduce' })
  ).newPage();
  mkdirSync(join(root, 'docs', 'pictures'), { recursive: true });
  const take = async (path, name) => {
    await page.goto('about:blank');
    await page.goto(`${address}${path}`);
    await page.waitForTimeout(2500);
    await page.screenshot({ path: join(root, 'docs', 'pictures', `${name}.png`) });
    console.log(`docs/pictures/${name}.png`);
  };
  for (const passage of ['fit', 'alterations', 'layout'])
    await take(`/makes/demo-concert-blouse#${passage}`, `make-${passage}`);
} finally {
  await browser.close();
  server.kill('SIGTERM');
  await new Promise((settle) => server.once('exit', settle));
  rmSync(folder, { recursive: true, force: true });
}
