// npm run pattern-pages: lays out the cloth of every house pattern anew and writes docs/patterns from the code. Takes some minutes.
import { spawnSync } from 'node:child_process';
import { checkNode, installPackages, root } from './setup.mjs';

checkNode();
installPackages();
const { status } = spawnSync(
  'npx',
  ['vitest', 'run', 'test/pattern-pages.test.ts', '--update', ...process.argv.slice(2)],
  {
    cwd: root,
    stdio: 'inherit',
    shell: process.platform === 'win32',
    env: { ...process.env, EASEWRIGHT_LAY_ANEW: '1' },
  },
);
process.exit(status ?? 1);
