import { bad, good, type Problem, type Result } from '../units/index.ts';
import { csvFields, csvLines } from './csv-fields.ts';
import { checkMeasure } from './describe.ts';
import type { MeasureId, Measures } from './types.ts';
import { measureIds } from './types.ts';

/** One row of a file of children. `row` counts from 1, the first after the head. */
export interface ChildBody {
  readonly row: number;
  readonly measures: Measures;
  /** What is wrong with the row, if it cannot be used. */
  readonly problem: Problem | null;
}

const readChild = (names: readonly string[], line: string, row: number): ChildBody => {
  const cells = csvFields(line);
  const measures: { -readonly [K in MeasureId]?: number } = {};
  let problem: Problem | null =
    cells.length === names.length
      ? null
      : { code: 'body.row-length', values: { row, found: cells.length, expected: names.length } };
  for (const [index, name] of names.entries()) {
    const cell = cells[index];
    if (cell === undefined || cell === '' || !isMeasure(name)) continue;
    const value = Number(cell);
    if (!Number.isFinite(value)) {
      problem ??= { code: 'body.bad-cell', values: { row, column: name, text: cell.slice(0, 40) } };
      continue;
    }
    const checked = checkMeasure(name, value, 'child');
    if (!checked.ok) problem ??= checked.problem;
    measures[name] = value;
  }
  if (measures.stature === undefined) problem ??= { code: 'body.no-stature' };
  return { row, measures, problem };
};

const isMeasure = (name: string): name is MeasureId => (measureIds as readonly string[]).includes(name);

/**
 * Reads a file of children: a head naming our own measures (`stature` among them), then one child a line,
 * millimetres; a measure not taken is left empty, other columns are ignored. Refuses a file without a stature column
 * (`body.no-stature-column`); a row that cannot be used carries its own problem.
 */
export const childBodies = (csv: string): Result<readonly ChildBody[]> => {
  const lines = csvLines(csv);
  const names = csvFields(lines[0] ?? '');
  if (!names.includes('stature')) return bad('body.no-stature-column');
  return good(lines.slice(1).map((line, index) => readChild(names, line, index + 1)));
};
