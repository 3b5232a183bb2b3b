// Computes src/body/survey-joint.ts: mean, standard deviation and correlation of every measure over the
// surveyed women and men, as body/survey-row.ts converts them. Run after a change there:
//   npm run build && node scripts/survey-joint.mjs FOLDER
// where FOLDER holds ansur2-women.csv and ansur2-men.csv.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const built = process.env.EASEWRIGHT_BUILT ?? join(import.meta.dirname, '..', 'dist', 'node');
const { surveyBodies } = await import(join(built, 'src/body/survey-csv.js'));
const { surveyRules } = await import(join(built, 'src/body/survey-row.js'));
const { measureIds } = await import(join(built, 'src/body/types.js'));

const folder = process.argv[2];
if (!folder) throw new Error('name the folder that holds the survey files');

const average = (values) => values.reduce((sum, value) => sum + value, 0) / values.length;

const joint = (survey) => {
  const read = surveyBodies(readFileSync(join(folder, `ansur2-${survey}.csv`), 'utf8'), survey);
  if (!read.ok) throw new Error(read.problem.code);
  const bodies = read.value.filter((body) => body.missing.length === 0).map((body) => body.measures);
  const mean = measureIds.map((id) => average(bodies.map((body) => body[id])));
  const covariance = (i, j) =>
    average(bodies.map((body) => (body[measureIds[i]] - mean[i]) * (body[measureIds[j]] - mean[j])));
  // What a conversion adds is independent of the rest: it widens the measure itself and nothing else.
  const deviation = measureIds.map((id, i) => Math.sqrt(covariance(i, i) + surveyRules[id].spread ** 2));
  const correlation = measureIds.map((_, i) =>
    measureIds.slice(0, i).map((_, j) => Number((covariance(i, j) / (deviation[i] * deviation[j])).toFixed(5))),
  );
  const one = (value) => Number(value.toFixed(2));
  return { bodies: bodies.length, mean: mean.map(one), deviation: deviation.map(one), correlation };
};

const text = `import type { Survey } from './survey-row.ts';

/** How the measures vary together over one survey. */
export interface SurveyJoint {
  readonly bodies: number;
  /** By measure, in the order of \`measureIds\`; mm. */
  readonly mean: readonly number[];
  /** Standard deviation, with what the conversion from survey columns adds; mm. */
  readonly deviation: readonly number[];
  /** Row i holds the correlations of measure i with measures 0 to i − 1. */
  readonly correlation: readonly (readonly number[])[];
}

/** Written by scripts/survey-joint.mjs; not by hand. */
export const surveyJoint: Readonly<Record<Survey, SurveyJoint>> = ${JSON.stringify({ women: joint('women'), men: joint('men') })};
`;
writeFileSync(join(import.meta.dirname, '..', 'src', 'body', 'survey-joint.ts'), text);
