import { applyAlterations } from '../../alter/index.ts';
import { type PrintedAlteration, paperSizes, printPdf } from '../../formats/index.ts';
import type { Paper } from '../../make/index.ts';
import { bad } from '../../units/index.ts';
import { sayStep } from '../../words/index.ts';
import { readArguments } from '../arguments.ts';
import { writeWholeFile } from '../files.ts';
import { readFonts } from '../fonts.ts';
import { type ChosenGarment, readChosen } from '../patterns.ts';
import { type ExitCode, printedProblem, printJson, refuse, type Terminal, withValue } from '../terminal.ts';

const optionKinds = {
  json: 'flag',
  size: 'string',
  view: 'string',
  cup: 'string',
  alterations: 'string',
  paper: 'string',
  out: 'string',
} as const;

const usage =
  'print PATTERN --size S [--view VIEW] [--cup MM] [--alterations FILE.json] --paper a4|letter|a0|roll36 --out FILE.pdf';

const isPaper = (name: string): name is Paper => Object.hasOwn(paperSizes, name);

const print = async (chosen: ChosenGarment, paper: Paper, out: string, terminal: Terminal): Promise<ExitCode> => {
  const { pattern, size, steps } = chosen;
  const altered = applyAlterations(size.garment, steps);
  if (altered.refusal) return refuse(terminal, altered.refusal.problem);
  const alterations: readonly PrintedAlteration[] = altered.outcomes.map(({ step, applied }) => ({
    text: sayStep(step, terminal.unit),
    pieces: applied.pieces.map((report) => report.piece),
  }));
  const printed = await printPdf({
    garment: altered.garment,
    ...(altered.outcomes.length > 0 ? { original: size.garment } : {}),
    title: pattern.name,
    size: size.id,
    alterations,
    paper,
    unit: terminal.unit,
    fonts: await readFonts(),
  });
  return withValue(terminal, printed, async ({ bytes, pages, tiles, warnings }) =>
    withValue(terminal, await writeWholeFile(out, bytes), () => {
      printJson(terminal, {
        ok: true,
        written: out,
        paper,
        pages,
        tiles,
        warnings: warnings.map((one) => printedProblem(terminal, one)),
      });
      return 0;
    }),
  );
};

/** `easewright print PATTERN --size S --paper … --out FILE.pdf`. */
export const printCommand = async (argv: readonly string[], terminal: Terminal): Promise<ExitCode> =>
  withValue(terminal, readArguments(argv, optionKinds), async (given) => {
    const [name] = given.words;
    const size = given.text('size');
    const paper = given.text('paper') ?? 'a4';
    const out = given.text('out');
    if (!name || size === undefined || out === undefined) return refuse(terminal, bad('cli.usage', { usage }).problem);
    if (!isPaper(paper)) {
      const choices = Object.keys(paperSizes).join(', ');
      return refuse(terminal, bad('cli.choice', { option: 'paper', written: paper, choices }).problem);
    }
    return withValue(terminal, await readChosen(name, size, given.text('alterations'), given), (chosen) =>
      print(chosen, paper, out, terminal),
    );
  });
