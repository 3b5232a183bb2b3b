import { type Altered, applyAlterations } from '../../alter/index.ts';
import { cutPlaces, piecesTold, sayOutcomes } from '../../draw/index.ts';
import {
  type PrintedAlteration,
  type PrintRequest,
  paperSizes,
  printPdf,
  printSummaryPdf,
} from '../../formats/index.ts';
import type { Paper } from '../../make/index.ts';
import type { AlterationStep } from '../../pattern/index.ts';
import { bad, good, type Problem, type Result } from '../../units/index.ts';
import { readArguments } from '../arguments.ts';
import { writeWholeFile } from '../files.ts';
import { readFonts } from '../fonts.ts';
import { type ChosenGarment, readChosen, readSteps } from '../patterns.ts';
import { type ExitCode, printedProblem, printJson, refuse, type Terminal, withValue } from '../terminal.ts';

const optionKinds = {
  json: 'flag',
  size: 'string',
  view: 'string',
  cup: 'string',
  alterations: 'string',
  paper: 'string',
  only: 'string',
  printed: 'string',
  out: 'string',
} as const;

const usage =
  'print PATTERN --size S [--view VIEW] [--cup MM] [--alterations FILE.json] --paper a4|letter|a0|roll36 [--only changed|overlay|summary|sheets] [--printed FILE.json] --out FILE.pdf';

const isPaper = (name: string): name is Paper => Object.hasOwn(paperSizes, name);

const choices = ['changed', 'overlay', 'summary', 'sheets'] as const;
type Only = (typeof choices)[number];
const isOnly = (name: string): name is Only => choices.some((choice) => choice === name);

interface Asked {
  readonly paper: Paper;
  readonly out: string;
  readonly only: Only | null;
  /** The alteration list an earlier print was of; none where the pattern was printed as bought. */
  readonly printed: readonly AlterationStep[];
}

const toldOf = (altered: Altered, terminal: Terminal): readonly PrintedAlteration[] => {
  const said = sayOutcomes(altered.before, altered.outcomes, terminal.unit);
  return altered.outcomes.map(({ step, applied }, place) => ({
    text: said[place] ?? '',
    pieces: piecesTold(
      applied.pieces.map((report) => report.piece),
      step,
      altered.garment,
    ),
  }));
};

/** What is printed in its own way: pieces that changed, overlays, or sheets to exchange. */
const wayOf = (
  { size }: ChosenGarment,
  { only, printed }: Asked,
  altered: Altered,
  terminal: Terminal,
): Result<Partial<PrintRequest>> => {
  if (only === 'changed' || only === 'overlay') {
    return good({ original: altered.before, only, cuts: cutPlaces(altered.before, altered) });
  }
  if (only !== 'sheets') return good(altered.outcomes.length > 0 ? { original: altered.before } : {});
  const before = applyAlterations(size.garment, printed);
  if (before.refusal) return { ok: false, problem: before.refusal.problem };
  return good({
    printed: {
      garment: before.garment,
      alterations: toldOf(before, terminal),
      ...(before.outcomes.length > 0 ? { original: before.before } : {}),
    },
  });
};

const print = async (chosen: ChosenGarment, asked: Asked, terminal: Terminal): Promise<ExitCode> => {
  const { pattern, size, steps } = chosen;
  const { paper, out, only } = asked;
  const altered = applyAlterations(size.garment, steps);
  if (altered.refusal) return refuse(terminal, altered.refusal.problem);
  const common = { title: pattern.name, size: size.id, unit: terminal.unit, fonts: await readFonts() };
  const write = (bytes: Uint8Array, told: object, warnings: readonly Problem[]) =>
    writeWholeFile(out, bytes).then((written) =>
      withValue(terminal, written, () => {
        const said = warnings.map((one) => printedProblem(terminal, one));
        printJson(terminal, { ok: true, written: out, paper, ...told, warnings: said });
        return 0;
      }),
    );
  if (only === 'summary') {
    if (paper !== 'a4' && paper !== 'letter') return refuse(terminal, bad('formats.summary-paper').problem);
    const summary = await printSummaryPdf({ ...common, before: altered.before, altered, paper });
    return withValue(terminal, summary, ({ bytes, pages, warnings }) => write(bytes, { pages }, warnings));
  }
  return withValue(terminal, wayOf(chosen, asked, altered, terminal), async (way) => {
    const alterations = toldOf(altered, terminal);
    const printed = await printPdf({ ...common, garment: altered.garment, alterations, paper, ...way });
    return withValue(terminal, printed, ({ bytes, pages, tiles, warnings }) =>
      write(bytes, { pages, tiles }, warnings),
    );
  });
};

/** `easewright print PATTERN --size S --paper … [--only …] --out FILE.pdf`. */
export const printCommand = async (argv: readonly string[], terminal: Terminal): Promise<ExitCode> =>
  withValue(terminal, readArguments(argv, optionKinds), async (given) => {
    const [name] = given.words;
    const size = given.text('size');
    const paper = given.text('paper') ?? 'a4';
    const out = given.text('out');
    const only = given.text('only') ?? null;
    if (!name || size === undefined || out === undefined) return refuse(terminal, bad('cli.usage', { usage }).problem);
    if (!isPaper(paper)) {
      const papers = Object.keys(paperSizes).join(', ');
      return refuse(terminal, bad('cli.choice', { option: 'paper', written: paper, choices: papers }).problem);
    }
    if (only !== null && !isOnly(only)) {
      return refuse(
        terminal,
        bad('cli.choice', { option: 'only', written: only, choices: choices.join(', ') }).problem,
      );
    }
    return withValue(terminal, await readChosen(name, size, given.text('alterations'), given), async (chosen) =>
      withValue(terminal, await readSteps(chosen.pattern, given.text('printed')), (printed) =>
        print(chosen, { paper, out, only, printed }, terminal),
      ),
    );
  });
