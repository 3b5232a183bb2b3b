import { existsSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';

/**
 * Where the shared survey and nesting data lie, or null where they are absent. The only file that
 * knows. In continuous integration (`EASEWRIGHT_REQUIRE_DATA=1`) absence is a failure, not a skip.
 */
export const sharedData = (): string | null => {
  const folder = resolve(process.env['EASEWRIGHT_DATA'] ?? join(process.cwd(), '..', 'shared', 'data'));
  if (existsSync(join(folder, 'bodies', 'ansur2-women.csv'))) return folder;
  if (process.env['EASEWRIGHT_REQUIRE_DATA'] === '1') {
    throw new Error(
      `The shared data is missing at ${folder}: set EASEWRIGHT_DATA to the folder that holds bodies/ and nesting/.`,
    );
  }
  return null;
};

/** The text of one shared file, for example `bodies/ansur2-women.csv`; null where the data is absent. */
export const sharedText = (name: string): string | null => {
  const folder = sharedData();
  return folder === null ? null : readFileSync(join(folder, name), 'utf8');
};
