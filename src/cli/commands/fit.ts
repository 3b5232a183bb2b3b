import type { Cloth } from '../../cloth/index.ts';
import { clothSchema } from '../../cloth/index.ts';
import { type Fit, fitPattern, patternFigures } from '../../fit/index.ts';
import type { Pattern } from '../../pattern/index.ts';
import { bad, good, type Problem, type Result } from '../../units/index.ts';
import { reasonSentence } from '../../words/index.ts';
import { type Arguments, readArguments } from '../arguments.ts';
import { type AskedBody, readBodies } from '../bodies.ts';
import { readJsonFile } from '../files.ts';
import { readNamedPattern } from '../patterns.ts';
import { type ExitCode, printedProblem, printJson, refuse, type Terminal, withValue } from '../terminal.ts';
import { measuresOfWearer } from '../workroom.ts';

const optionKinds = {
  json: 'flag',
  bodies: 'string',
  survey: 'string',
  wearer: 'string',
  data: 'string',
  cloth: 'string',
  view: 'string',
  cup: 'string',
} as const;

const usage =
  'fit PATTERN (--bodies FILE.csv --survey women|men|children | --wearer NAME) [--view VIEW] [--cup MM] [--cloth FILE.json] --json';

const readCloth = async (file: string | undefined): Promise<Result<Cloth | undefined>> => {
  if (file === undefined) return good(undefined);
  const json = await readJsonFile(file);
  if (!json.ok) return json;
  const cloth = clothSchema.safeParse(json.value);
  if (cloth.success) return good(cloth.data);
  const issue = cloth.error.issues[0];
  return bad('pattern.field', { where: issue?.path.map(String).join(' › ') ?? '', what: issue?.message ?? '' });
};

const printedFit = (row: number | string, fit: Fit) => ({
  row,
  ok: true,
  recommended: fit.recommended,
  ways: fit.ways.map((way) => ({
    ...way,
    reasons: way.reasons.map((reason) => ({ ...reason, sentence: reasonSentence(reason, 'cm') })),
  })),
  estimated: fit.estimated,
});

const asked = async (
  given: Arguments,
): Promise<Result<readonly { readonly row: number | string; readonly body: AskedBody['body'] }[]>> => {
  const wearer = given.text('wearer');
  if (wearer !== undefined) {
    const known = await measuresOfWearer(given.text('data'), wearer);
    return known.ok ? good([{ row: wearer, body: good(known.value.known) }]) : known;
  }
  const bodies = await readBodies(given);
  return bodies.ok ? good(bodies.value.bodies) : bodies;
};

const fitAll = async (given: Arguments, terminal: Terminal, pattern: Pattern): Promise<ExitCode> =>
  withValue(terminal, await readCloth(given.text('cloth')), async (cloth) =>
    withValue(terminal, await asked(given), (bodies) => {
      const figures = patternFigures(pattern);
      const failed = (row: number | string, problem: Problem) => {
        const { code, message } = printedProblem(terminal, problem);
        return { row, ok: false, code, reason: message };
      };
      for (const { row, body } of bodies) {
        if (!body.ok) {
          printJson(terminal, failed(row, body.problem));
          continue;
        }
        const fit = fitPattern({ measures: body.value, pattern, figures, ...(cloth ? { cloth } : {}) });
        printJson(terminal, fit.ok ? printedFit(row, fit.value) : failed(row, fit.problem));
      }
      return 0;
    }),
  );

/** `easewright fit PATTERN --bodies FILE.csv --survey …`. */
export const fitCommand = async (argv: readonly string[], terminal: Terminal): Promise<ExitCode> =>
  withValue(terminal, readArguments(argv, optionKinds), async (given) => {
    const [name] = given.words;
    if (!name || (given.text('bodies') === undefined && given.text('wearer') === undefined)) {
      return refuse(terminal, bad('cli.usage', { usage }).problem);
    }
    return withValue(terminal, await readNamedPattern(name, given), (pattern) => fitAll(given, terminal, pattern));
  });
