import { type Measures, type Survey, surveyBodies } from '../body/index.ts';
import { bad, good, type Result } from '../units/index.ts';
import type { Arguments } from './arguments.ts';
import { readTextFile } from './files.ts';

/** One body a command is asked about: its row in the file it came from, and what is known of it or what is wrong with it. */
export interface AskedBody {
  readonly row: number;
  readonly body: Result<Measures>;
}

const surveyOf = (written: string | undefined): Result<Survey> =>
  written === 'women' || written === 'men'
    ? good(written)
    : bad('cli.choice', { option: 'survey', written: written ?? '', choices: 'women, men' });

/** The bodies of `--bodies FILE.csv --survey women|men`, in the file's order. */
export const readBodies = async (
  given: Arguments,
): Promise<Result<{ readonly survey: Survey; readonly bodies: readonly AskedBody[] }>> => {
  const survey = surveyOf(given.text('survey'));
  if (!survey.ok) return survey;
  const file = given.text('bodies') ?? '';
  const text = await readTextFile(file);
  if (!text.ok) return text;
  const bodies = surveyBodies(text.value, survey.value);
  if (!bodies.ok) return bodies;
  if (bodies.value.length === 0) return bad('cli.no-bodies', { file });
  return good({
    survey: survey.value,
    bodies: bodies.value.map(({ row, measures, problem }) => ({
      row,
      body: problem ? { ok: false, problem } : good(measures),
    })),
  });
};
