// npm test: set up, build, run every test, and end with the count. Words after `npm test --` choose files.
// npm run test:long: the same with what is too long for every day.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { findChromium } from './chromium.mjs';
import { build, checkNode, installPackages, root } from './setup.mjs';

const long = process.argv[2] === '--long';
const words = process.argv.slice(long ? 3 : 2);
const configuration = long ? ['--config', 'vitest.long.config.ts'] : [];

checkNode();
installPackages();
build();

const countFile = join(root, '.cache', 'test-count.json');
mkdirSync(join(root, '.cache'), { recursive: true });
rmSync(countFile, { force: true });

const chromium = findChromium();
const run = spawnSync('npx', ['vitest', 'run', ...configuration, ...words], {
  cwd: root,
  stdio: ['ignore', 'inherit', 'inherit'],
  shell: process.platform === 'win32',
  env: {
    ...process.env,
    ...(chromium ? { EASEWRIGHT_CHROMIUM: chromium } : {}),
    EASEWRIGHT_SEED: process.env.EASEWRIGHT_SEED ?? String(Date.now() % 2 ** 31),
    EASEWRIGHT_TEST_COUNT: countFile,
  },
});

const count = existsSync(countFile)
  ? JSON.parse(readFileSync(countFile, 'utf8'))
  : { passed: 0, failed: 1, skipped: 0 };
// A run that crashed, or in which nothing ran, has failed whatever it counted.
if ((run.status !== 0 || count.passed === 0) && count.failed === 0) count.failed = 1;
console.log(`\n${count.passed} passed, ${count.failed} failed, ${count.skipped} skipped`);
process.exit(count.failed === 0 ? 0 : 1);
