import {
  type Alteration,
  type AlterationCache,
  alterationCatalogue,
  applyAlterations,
  createAlterationCache,
  suits,
} from '../../alter/index.ts';
import { housePatterns } from '../../drafting/index.ts';
import type { Pattern, Size } from '../../pattern/index.ts';
import { bad } from '../../units/index.ts';
import { readArguments } from '../arguments.ts';
import { readTextFile } from '../files.ts';
import { type ChosenGarment, readChosen, readStepsText } from '../patterns.ts';
import { printedAltered } from '../printed-altered.ts';
import { type ExitCode, printedProblem, printJson, refuse, type Terminal, withValue } from '../terminal.ts';

const optionKinds = {
  json: 'flag',
  size: 'string',
  view: 'string',
  cup: 'string',
  alterations: 'string',
  lists: 'string',
} as const;

/** An alteration is for a pattern when its usual amount can be applied to the pattern's middle size. */
const patternsFor = (alteration: Alteration): readonly string[] =>
  housePatterns
    .filter((pattern) => {
      const middle = pattern.chart[Math.floor(pattern.chart.length / 2)];
      const garment = middle ? pattern.draft(middle.body) : null;
      return garment?.ok === true && suits(alteration, garment.value);
    })
    .map((pattern) => pattern.id);

/** `easewright alteration catalogue`. */
export const alterationCommand = async (argv: readonly string[], terminal: Terminal): Promise<ExitCode> =>
  withValue(terminal, readArguments(argv, { json: 'flag' }), (given) => {
    if (given.words[0] !== 'catalogue')
      return refuse(terminal, bad('cli.usage', { usage: 'alteration catalogue --json' }).problem);
    printJson(
      terminal,
      alterationCatalogue.map((alteration) => ({
        id: alteration.id,
        version: alteration.version,
        params: alteration.params,
        patterns: patternsFor(alteration),
        holds: alteration.holds,
        follows: alteration.follows,
      })),
    );
    return 0;
  });

const alter = (
  { size, steps }: ChosenGarment,
  terminal: Terminal,
  cache?: AlterationCache,
  list?: { readonly list: number },
): ExitCode => {
  const altered = applyAlterations(size.garment, steps, cache);
  const printed = printedAltered(altered, {
    body: size.body,
    problem: (problem) => printedProblem(terminal, problem),
  });
  printJson(terminal, { ...list, ...printed });
  return 0;
};

/** Many lists for one pattern and size, one a line of a file; a line each is printed, in order, wrong ones with their reason. */
const alterEach = (pattern: Pattern, size: Size, text: string, terminal: Terminal): ExitCode => {
  const cache = createAlterationCache();
  text.split(/\r?\n/).forEach((line, index) => {
    if (line.trim() === '') return;
    const steps = readStepsText(pattern, line);
    if (steps.ok) alter({ pattern, size, steps: steps.value }, terminal, cache, { list: index + 1 });
    else printJson(terminal, { list: index + 1, ok: false, ...printedProblem(terminal, steps.problem) });
  });
  return 0;
};

/** `easewright alter PATTERN --size S`, with one list in `--alterations FILE.json` or many in `--lists FILE.jsonl`. */
export const alterCommand = async (argv: readonly string[], terminal: Terminal): Promise<ExitCode> =>
  withValue(terminal, readArguments(argv, optionKinds), async (given) => {
    const [name] = given.words;
    const size = given.text('size');
    const alterations = given.text('alterations');
    const lists = given.text('lists');
    if (!name || size === undefined || (alterations === undefined) === (lists === undefined)) {
      return refuse(
        terminal,
        bad('cli.usage', {
          usage:
            'alter PATTERN --size S [--view VIEW] [--cup MM] (--alterations FILE.json | --lists FILE.jsonl) --json',
        }).problem,
      );
    }
    return withValue(terminal, await readChosen(name, size, alterations, given), async (chosen) => {
      if (lists === undefined) return alter(chosen, terminal);
      return withValue(terminal, await readTextFile(lists), (text) =>
        alterEach(chosen.pattern, chosen.size, text, terminal),
      );
    });
  });
