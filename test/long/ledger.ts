import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));

const git = (...args: readonly string[]): string => execFileSync('git', args, { cwd: root, encoding: 'utf8' }).trim();

/** The commit a long run is made at; a changed checkout is told apart, so that its figures are never taken for the commit's. */
export const commit = (): string => {
  const changed = git('status', '--porcelain', '--', 'src', 'package-lock.json') !== '';
  return `${git('rev-parse', '--short=12', 'HEAD')}${changed ? '-changed' : ''}`;
};

/** What a long run has done so far at this commit, batch by batch: a run that was stopped goes on where it was. */
export const ledger = <T>(name: string) => {
  const folder = join(root, '.cache', 'long', commit());
  const file = join(folder, `${name}.json`);
  const done: Record<string, T> = existsSync(file) ? (JSON.parse(readFileSync(file, 'utf8')) as Record<string, T>) : {};
  return {
    async batch(key: string, work: () => Promise<T>): Promise<T> {
      const known = done[key];
      if (known !== undefined) return known;
      const result = await work();
      done[key] = result;
      mkdirSync(folder, { recursive: true });
      writeFileSync(file, JSON.stringify(done));
      return result;
    },
  };
};

/** Writes a table of results, with the commit and the day, where a reader of the repository finds it. */
export const writeResults = (
  name: string,
  title: string,
  about: string,
  rows: readonly (readonly (string | number)[])[],
): void => {
  const [head = [], ...rest] = rows;
  const line = (cells: readonly (string | number)[]) => `| ${cells.join(' | ')} |`;
  const text = [
    `# ${title}`,
    '',
    about,
    '',
    `Commit \`${commit()}\`, ${new Date().toISOString().slice(0, 10)}; \`npm run test:long\`.`,
    '',
    line(head),
    line(head.map((_, i) => (i === 0 ? '---' : '---:'))),
    ...rest.map(line),
    '',
  ].join('\n');
  mkdirSync(join(root, 'docs', 'results'), { recursive: true });
  writeFileSync(join(root, 'docs', 'results', `${name}.md`), text);
};
