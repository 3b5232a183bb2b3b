import type { Problem, Result } from '../units/index.ts';
import { bad, good } from '../units/index.ts';
import { csvFields, csvLines } from './csv-fields.ts';
import type { Survey, SurveyRow } from './survey-row.ts';
import { bodyFromSurveyRow, surveyRules } from './survey-row.ts';
import type { MeasureId, Measures } from './types.ts';

/** One row of a survey file. `row` counts from 1, the first after the head. */
export interface SurveyBody {
  readonly row: number;
  /** The row's own columns, as far as they are numbers. */
  readonly columns: SurveyRow;
  readonly measures: Measures;
  /** Measures that could not be had, for want of a column. */
  readonly missing: readonly MeasureId[];
  /** What is wrong with the row, if it cannot be used. */
  readonly problem: Problem | null;
}

const readRow = (names: readonly string[], line: string, row: number, survey: Survey): SurveyBody => {
  const cells = csvFields(line);
  const columns: Record<string, number> = {};
  let problem: Problem | null =
    cells.length === names.length
      ? null
      : { code: 'body.row-length', values: { row, found: cells.length, expected: names.length } };
  for (const [index, name] of names.entries()) {
    const cell = cells[index];
    if (cell === undefined || cell === '') continue;
    const value = Number(cell);
    if (Number.isFinite(value)) columns[name] = value;
    if (!(value > 0) && surveyColumns.has(name)) {
      problem ??= { code: 'body.bad-cell', values: { row, column: name, text: cell.slice(0, 40) } };
    }
  }
  const measures = bodyFromSurveyRow(columns, survey);
  const missing = (Object.keys(surveyRules) as MeasureId[]).filter((measure) => measures[measure] === undefined);
  return { row, columns, measures, missing, problem };
};

/** Every survey column that some measure comes from. */
const surveyColumns: ReadonlySet<string> = new Set(Object.values(surveyRules).flatMap((rule) => rule.columns));

/**
 * Reads a survey file: a head of column names, then one body a line, millimetres. Extra columns are kept
 * and ignored. Refuses a file without a head that names at least one known column (`body.no-columns`); a
 * row that cannot be used carries its own problem, so that one bad row does not lose the others.
 */
export const surveyBodies = (csv: string, survey: Survey): Result<readonly SurveyBody[]> => {
  const lines = csvLines(csv);
  const names = csvFields(lines[0] ?? '');
  if (!names.some((name) => surveyColumns.has(name))) return bad('body.no-columns');
  return good(lines.slice(1).map((line, index) => readRow(names, line, index + 1, survey)));
};
