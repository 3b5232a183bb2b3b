import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))));

/**
 * Compiles the writer and what it stands on into a folder of its own within the project, where packages
 * are found, so that what is killed is the program as it is now and not as it was last built.
 */
export const compileWriter = (): { readonly script: string; readonly remove: () => void } => {
  mkdirSync(join(root, '.cache'), { recursive: true });
  const folder = mkdtempSync(join(root, '.cache', 'crash-'));
  const settings = join(folder, 'tsconfig.json');
  writeFileSync(
    settings,
    JSON.stringify({
      extends: join(root, 'tsconfig.build.json'),
      compilerOptions: { rootDir: root, outDir: folder, noCheck: true, sourceMap: false, types: [] },
      include: [],
      files: [join(root, 'test', 'crash', 'writer.ts')],
    }),
  );
  const done = spawnSync('npx', ['tsc', '-p', settings], {
    cwd: root,
    encoding: 'utf8',
    shell: process.platform === 'win32',
  });
  if (done.status !== 0) throw new Error(`the writer could not be compiled: ${done.stdout}${done.stderr}`);
  return {
    script: join(folder, 'test', 'crash', 'writer.js'),
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
};
