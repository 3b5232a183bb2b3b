import { childBodies, type Measures, type Survey, surveyBodies } from '../body/index.ts';
import { bad, good, type Result } from '../units/index.ts';
import type { Arguments } from './arguments.ts';
import { readTextFile } from './files.ts';

/** One body a command is asked about: its row in the file it came from, and what is known of it or what is wrong with it. */
export interface AskedBody {
  readonly row: number;
  readonly body: Result<Measures>;
}

/** Whose bodies a file holds: survey rows of women or men, or children by our own measures. */
export type BodiesOf = Survey | 'children';

const bodiesOf = (written: string | undefined): Result<BodiesOf> =>
  written === 'women' || written === 'men' || written === 'children'
    ? good(written)
    : bad('cli.choice', { option: 'survey', written: written ?? '', choices: 'women, men, children' });

/** The bodies of `--bodies FILE.csv --survey women|men|children`, in the file's order. */
export const readBodies = async (
  given: Arguments,
): Promise<Result<{ readonly survey: BodiesOf; readonly bodies: readonly AskedBody[] }>> => {
  const of = bodiesOf(given.text('survey'));
  if (!of.ok) return of;
  const file = given.text('bodies') ?? '';
  const text = await readTextFile(file);
  if (!text.ok) return text;
  const bodies = of.value === 'children' ? childBodies(text.value) : surveyBodies(text.value, of.value);
  if (!bodies.ok) return bodies;
  if (bodies.value.length === 0) return bad('cli.no-bodies', { file });
  return good({
    survey: of.value,
    bodies: bodies.value.map(({ row, measures, problem }) => ({
      row,
      body: problem ? { ok: false, problem } : good(measures),
    })),
  });
};
