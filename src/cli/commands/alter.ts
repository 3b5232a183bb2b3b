import { type Alteration, alterationCatalogue, applyAlterations, suits } from '../../alter/index.ts';
import { housePatterns } from '../../drafting/index.ts';
import { printedPiece, printedSeams } from '../../pattern/index.ts';
import { bad } from '../../units/index.ts';
import { readArguments } from '../arguments.ts';
import { type ChosenGarment, readChosen } from '../patterns.ts';
import { printedGirths } from '../printed-garment.ts';
import { type ExitCode, printedProblem, printJson, refuse, type Terminal, withValue } from '../terminal.ts';

const optionKinds = { json: 'flag', size: 'string', view: 'string', cup: 'string', alterations: 'string' } as const;

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

const alter = ({ size, steps }: ChosenGarment, terminal: Terminal): ExitCode => {
  const altered = applyAlterations(size.garment, steps);
  if (altered.refusal) {
    const { step, problem, largest } = altered.refusal;
    const { code, message, remedy } = printedProblem(terminal, problem);
    printJson(terminal, {
      ok: false,
      step,
      code,
      message,
      remedy,
      ...(largest ? { largest: largest.amount, largestOf: largest.parameter } : {}),
    });
    return 0;
  }
  printJson(terminal, {
    ok: true,
    pieces: altered.garment.pieces.map((piece) => {
      const report = altered.pieces.find((one) => one.piece === piece.id);
      return { ...printedPiece(piece), ...(report ? { ...report, piece: undefined } : {}) };
    }),
    seams: printedSeams(altered.garment),
    girths: printedGirths(altered.garment, size.body),
    held: altered.held,
    changes: altered.outcomes.flatMap(({ step, applied }) =>
      applied.changes.map((change) => ({ step: step.id, ...change })),
    ),
    warnings: altered.warnings.map((problem) => printedProblem(terminal, problem)),
  });
  return 0;
};

/** `easewright alter PATTERN --size S --alterations FILE.json`. */
export const alterCommand = async (argv: readonly string[], terminal: Terminal): Promise<ExitCode> =>
  withValue(terminal, readArguments(argv, optionKinds), async (given) => {
    const [name] = given.words;
    const size = given.text('size');
    const alterations = given.text('alterations');
    if (!name || size === undefined || alterations === undefined) {
      return refuse(
        terminal,
        bad('cli.usage', { usage: 'alter PATTERN --size S [--view VIEW] [--cup MM] --alterations FILE.json --json' })
          .problem,
      );
    }
    return withValue(terminal, await readChosen(name, size, alterations, given), (chosen) => alter(chosen, terminal));
  });
