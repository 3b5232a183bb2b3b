import type { Measures } from '../../body/index.ts';
import { type HousePattern, housePattern, housePatterns } from '../../drafting/index.ts';
import { readPatternText, writePattern } from '../../pattern/index.ts';
import { bad, type Problem, type Result } from '../../units/index.ts';
import { type Arguments, readArguments } from '../arguments.ts';
import { readBodies } from '../bodies.ts';
import { readTextFile, writeWholeFile } from '../files.ts';
import { readHouseChoice, readNamedPattern } from '../patterns.ts';
import { printedGarment } from '../printed-garment.ts';
import { type ExitCode, printedProblem, printJson, refuse, type Terminal, withValue } from '../terminal.ts';
import { measuresOfWearer, storeInWorkroom } from '../workroom.ts';

const optionKinds = {
  json: 'flag',
  pieces: 'flag',
  bodies: 'string',
  survey: 'string',
  size: 'string',
  view: 'string',
  cup: 'string',
  wearer: 'string',
  data: 'string',
  out: 'string',
} as const;

const usage = (terminal: Terminal, written: string): ExitCode =>
  refuse(terminal, bad('cli.usage', { usage: written }).problem);

const list = (terminal: Terminal): ExitCode => {
  printJson(
    terminal,
    housePatterns.map(({ id, name, for: wearers, chart, views, cups }) => ({
      id,
      name,
      for: wearers,
      sizes: chart.map((size) => size.id),
      views: views.map((view) => view.id),
      cups,
    })),
  );
  return 0;
};

const draftedLine = (
  terminal: Terminal,
  pattern: HousePattern,
  row: number | string,
  body: Result<Measures>,
  pieces: boolean,
  view: string | undefined,
) => {
  const failed = (problem: Problem) => {
    const { code, message } = printedProblem(terminal, problem);
    return { row, ok: false, code, reason: message, seams: [], girths: [] };
  };
  if (!body.ok) return failed(body.problem);
  const options = view === undefined ? {} : { view };
  const garment = pattern.draft(body.value, options);
  if (!garment.ok) return failed(garment.problem);
  const ease = pattern.ease(body.value, options);
  return { row, ok: true, ...printedGarment(garment.value, body.value, ease.ok ? ease.value : {}, pieces) };
};

/** What `--size` says for every size, a line each. */
const everySize = 'all';

const draft = async (given: Arguments, terminal: Terminal): Promise<ExitCode> => {
  const id = given.words[1] ?? '';
  const pattern = housePattern(id);
  if (!pattern) {
    return refuse(
      terminal,
      bad('cli.no-pattern', { pattern: id, patterns: housePatterns.map((one) => one.id).join(', ') }).problem,
    );
  }
  const choice = readHouseChoice(pattern, given);
  if (!choice.ok) return refuse(terminal, choice.problem);
  const { view, cup } = choice.value;
  const pieces = given.flag('pieces');
  const line = (row: number | string, body: Result<Measures>): void =>
    printJson(terminal, draftedLine(terminal, pattern, row, body, pieces, view));
  const size = given.text('size');
  if (size === everySize) {
    for (const { id: row, body } of pattern.chartFor(cup)) line(row, { ok: true, value: body });
    return 0;
  }
  if (size !== undefined) {
    const found = pattern.chartFor(cup).find((one) => one.id === size);
    if (!found) {
      const sizes = pattern.chart.map((one) => one.id).join(', ');
      return refuse(terminal, bad('pattern.size-unknown', { size, pattern: pattern.name, sizes }).problem);
    }
    line(size, { ok: true, value: found.body });
    return 0;
  }
  const wearer = given.text('wearer');
  if (wearer !== undefined) {
    return withValue(terminal, await measuresOfWearer(given.text('data'), wearer), ({ measures }) => {
      line(wearer, { ok: true, value: measures });
      return 0;
    });
  }
  if (given.text('bodies') === undefined) {
    return usage(
      terminal,
      'pattern draft ID (--bodies FILE.csv --survey women|men|children | --size S | --wearer NAME) [--pieces] --json',
    );
  }
  return withValue(terminal, await readBodies(given), ({ bodies }) => {
    for (const { row, body } of bodies) line(row, body);
    return 0;
  });
};

const exportOne = async (given: Arguments, terminal: Terminal): Promise<ExitCode> =>
  withValue(terminal, await readNamedPattern(given.words[1] ?? '', given), async (pattern) => {
    const out = given.text('out');
    const text = JSON.stringify(writePattern(pattern), null, 1);
    if (out === undefined) {
      terminal.print(text);
      return 0;
    }
    return withValue(terminal, await writeWholeFile(out, `${text}\n`), () => {
      printJson(terminal, { written: out, pattern: pattern.id, sizes: pattern.sizes.map((size) => size.id) });
      return 0;
    });
  });

const check = async (given: Arguments, terminal: Terminal): Promise<ExitCode> =>
  withValue(terminal, await readTextFile(given.words[1] ?? ''), (text) =>
    withValue(terminal, readPatternText(text), (pattern) => {
      printJson(terminal, {
        ok: true,
        id: pattern.id,
        name: pattern.name,
        sizes: pattern.sizes.map((size) => size.id),
      });
      return 0;
    }),
  );

const keep = async (given: Arguments, terminal: Terminal): Promise<ExitCode> =>
  withValue(terminal, await readTextFile(given.words[1] ?? ''), (text) =>
    withValue(terminal, readPatternText(text), async (pattern) =>
      withValue(terminal, await storeInWorkroom(given.text('data'), 'pattern', writePattern(pattern)), (stored) => {
        printJson(terminal, { kept: pattern.name, id: stored.id });
        return 0;
      }),
    ),
  );

/** `easewright pattern list | draft | export | check | import`. */
export const patternCommand = async (argv: readonly string[], terminal: Terminal): Promise<ExitCode> =>
  withValue(terminal, readArguments(argv, optionKinds), (given) => {
    switch (given.words[0]) {
      case 'list':
        return list(terminal);
      case 'draft':
        return draft(given, terminal);
      case 'export':
        return exportOne(given, terminal);
      case 'check':
        return check(given, terminal);
      case 'import':
        return keep(given, terminal);
      default:
        return usage(terminal, 'pattern list | draft | export | check | import');
    }
  });
