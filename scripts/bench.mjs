// npm run bench -- NAME [WORDS]: compiles and runs one benchmark of bench/, or lists them.
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { build, checkNode, installPackages, root } from './setup.mjs';

checkNode();
installPackages();
const [name, ...words] = process.argv.slice(2);
if (!name || !existsSync(join(root, 'bench', `${name}.ts`))) {
  const names = readdirSync(join(root, 'bench')).flatMap((file) => (file.endsWith('.ts') ? [file.slice(0, -3)] : []));
  console.log(`npm run bench -- NAME, where NAME is one of ${names.join(', ')}.`);
  process.exit(name ? 2 : 0);
}
build();
const run = (command, args) =>
  spawnSync(command, args, { cwd: root, stdio: 'inherit', shell: process.platform === 'win32' }).status ?? 1;
const compiled = run('npx', ['tsc', '-p', 'tsconfig.bench.json']);
process.exit(compiled || run(process.execPath, [join(root, '.cache', 'bench', 'bench', `${name}.js`), ...words]));
