import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../..', import.meta.url));

/** Runs one of the project's own tools and gives its exit code and everything it printed. */
export const runTool = (
  name: string,
  args: readonly string[],
): { readonly status: number; readonly printed: string } => {
  const done = spawnSync(join(root, 'node_modules', '.bin', name), args, {
    cwd: root,
    encoding: 'utf8',
    maxBuffer: 2 ** 28,
    shell: process.platform === 'win32',
  });
  return { status: done.status ?? 1, printed: `${done.stdout}${done.stderr}${done.error ?? ''}` };
};
