import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The folder the program itself lies in, whether it runs compiled or as written. */
export const projectFolder = (from = dirname(fileURLToPath(import.meta.url))): string => {
  if (existsSync(join(from, 'package.json'))) return from;
  const above = dirname(from);
  if (above === from) throw new Error('no package.json above the program');
  return projectFolder(above);
};

export const programVersion = (): string =>
  (JSON.parse(readFileSync(join(projectFolder(), 'package.json'), 'utf8')) as { version: string }).version;
