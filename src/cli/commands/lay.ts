import { applyAlterations } from '../../alter/index.ts';
import type { Cloth } from '../../cloth/index.ts';
import { searchLayoutOnNode } from '../../jobs/host-node.ts';
import {
  buyLength,
  type Layout,
  type LayoutProblem,
  layoutProblemFor,
  printedLayout,
  readLayoutFile,
} from '../../lay/index.ts';
import { bad, good, parseLength, type Result } from '../../units/index.ts';
import { type Arguments, numberOption, readArguments } from '../arguments.ts';
import { readJsonFile } from '../files.ts';
import { readChosen } from '../patterns.ts';
import { type ExitCode, printJson, refuse, type Terminal, withValue } from '../terminal.ts';

const optionKinds = {
  json: 'flag',
  seconds: 'string',
  workers: 'string',
  seed: 'string',
  size: 'string',
  view: 'string',
  cup: 'string',
  alterations: 'string',
  width: 'string',
  length: 'string',
  fold: 'string',
  gap: 'string',
  'one-way': 'flag',
} as const;

const usage =
  'lay (FILE.json | PATTERN --size S [--view VIEW] [--cup MM] --width LENGTH) [--seconds N] [--workers N] [--seed N] --json';

/** Kept back of the time there is, for threads to end and the answer to be printed, seconds. */
const keptBack = 0.3;

interface Asked {
  readonly problem: LayoutProblem;
  readonly printed: (layout: Layout) => object;
}

const fromFile = async (file: string): Promise<Result<Asked>> => {
  const json = await readJsonFile(file);
  if (!json.ok) return json;
  const read = readLayoutFile(json.value);
  return read.ok
    ? good({ problem: read.value.problem, printed: (layout) => printedLayout(layout, read.value.numbered) })
    : read;
};

/** Cloth as the options describe it; nothing is said of washing, so nothing is added for it. */
const clothOf = (given: Arguments, width: number, length: number | null, structure: Cloth['structure']): Cloth => ({
  format: 'easewright-cloth/1',
  name: '',
  structure,
  fibres: '',
  weight: null,
  width,
  length,
  stretchAcross: 0,
  stretchAlong: 0,
  oneWay: given.flag('one-way'),
  shrinkAlong: 0,
  shrinkAcross: 0,
  washed: true,
  colour: '#888888',
  terms: 'unknown',
  from: '',
  note: '',
});

const optionalLength = (given: Arguments, name: string, terminal: Terminal): Result<number | null> => {
  const text = given.text(name);
  return text === undefined ? good(null) : parseLength(text, terminal.unit);
};

const fromPattern = async (given: Arguments, name: string, terminal: Terminal): Promise<Result<Asked>> => {
  const [size, widthText, fold = 'single'] = [given.text('size'), given.text('width'), given.text('fold')];
  if (size === undefined || widthText === undefined) return bad('cli.usage', { usage });
  if (fold !== 'single' && fold !== 'lengthwise') {
    return bad('cli.choice', { option: 'fold', written: fold, choices: 'single, lengthwise' });
  }
  const width = parseLength(widthText, terminal.unit);
  if (!width.ok) return width;
  const length = optionalLength(given, 'length', terminal);
  if (!length.ok) return length;
  const gap = numberOption(given, 'gap', { low: 0, high: 30, otherwise: 0 });
  if (!gap.ok) return gap;
  const chosen = await readChosen(name, size, given.text('alterations'), given);
  if (!chosen.ok) return chosen;
  const altered = applyAlterations(chosen.value.size.garment, chosen.value.steps);
  if (altered.refusal) return { ok: false, problem: altered.refusal.problem };
  const cloth = clothOf(given, width.value, length.value, chosen.value.pattern.cloth.structure);
  const problem = layoutProblemFor(altered.garment, cloth, { fold, gap: gap.value });
  if (!problem.ok) return problem;
  return good({
    problem: problem.value,
    printed: (layout) => ({ ...printedLayout(layout, false), cloth: buyLength(layout, cloth) }),
  });
};

const search = async (given: Arguments, { problem, printed }: Asked, terminal: Terminal): Promise<ExitCode> =>
  withValue(terminal, numberOption(given, 'seconds', { low: 0.5, high: 36_000, otherwise: 10 }), (seconds) =>
    withValue(terminal, numberOption(given, 'workers', { low: 1, high: 64, otherwise: 1 }), (workers) =>
      withValue(terminal, numberOption(given, 'seed', { low: 0, high: 2 ** 32, otherwise: 1 }), async (seed) => {
        // The time since the program was started is part of the time there is.
        const left = Math.max(0.1, seconds - keptBack - performance.now() / 1000);
        const found = await searchLayoutOnNode({ problem, seconds: left }, { seed, workers }).result;
        return withValue(terminal, found, (layout) => {
          printJson(terminal, printed(layout));
          return 0;
        });
      }),
    ),
  );

/** `easewright lay FILE.json` or `easewright lay PATTERN --size S --width LENGTH`. */
export const layCommand = async (argv: readonly string[], terminal: Terminal): Promise<ExitCode> =>
  withValue(terminal, readArguments(argv, optionKinds), async (given) => {
    const [name] = given.words;
    if (!name) return refuse(terminal, bad('cli.usage', { usage }).problem);
    const asked = given.text('size') === undefined ? await fromFile(name) : await fromPattern(given, name, terminal);
    return withValue(terminal, asked, (value) => search(given, value, terminal));
  });
