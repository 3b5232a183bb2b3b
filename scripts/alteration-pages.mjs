// npm run alteration-pages: writes docs/alterations, its pages and pictures, from the code.
import { spawnSync } from 'node:child_process';
import { checkNode, installPackages, root } from './setup.mjs';

checkNode();
installPackages();
const { status } = spawnSync(
  'npx',
  ['vitest', 'run', 'test/alteration-pages.test.ts', '--update', ...process.argv.slice(2)],
  {
    cwd: root,
    stdio: 'inherit',
    shell: process.platform === 'win32',
  },
);
process.exit(status ?? 1);
