import {
  type Alteration,
  type Altered,
  alterationCatalogue,
  applyAlterations,
  createAlterationCache,
} from '../../src/alter/index.ts';
import { printedAltered } from '../../src/cli/printed-altered.ts';
import type { AlterationStep } from '../../src/pattern/index.ts';
import { type Piece, printedPiece } from '../../src/pattern/index.ts';
import { type AlteredGarment, judgeAltered } from '../oracle/altered.ts';
import type { PrintedGarment } from '../oracle/pieces.ts';
import { drawStep, oneOf, type Random, type Range, randomFrom } from './draw-steps.ts';
import { type Subject, sizesOf, views } from './subjects.ts';

/** What came of one step of a chain. */
export interface StepTried {
  readonly alteration: string;
  readonly refused: string | null;
  /** Nothing stood before it in the list. */
  readonly alone: boolean;
}

export interface Chain {
  readonly seed: number;
  readonly subject: Subject;
  /** Steps that hold; those refused are left out of the list and told in `tried`. */
  readonly steps: readonly AlterationStep[];
  readonly tried: readonly StepTried[];
  readonly altered: Altered;
  /** A fault of the program: what was thrown, and by which step. */
  readonly thrown: { readonly step: AlterationStep; readonly message: string } | null;
}

/** A random list of one to six steps on a random garment, all of it told by the seed and the catalogue. */
export const chainOf = (
  seed: number,
  range: Range,
  catalogue: readonly Alteration[] = alterationCatalogue,
  among: (random: Random) => Subject = anySubject,
): Chain => {
  const random = randomFrom(seed);
  const subject = among(random);
  const wanted = 1 + Math.floor(random() * 6);
  const cache = createAlterationCache();
  const steps: AlterationStep[] = [];
  const tried: StepTried[] = [];
  let altered = applyAlterations(subject.garment, [], cache, catalogue);
  for (let i = 0; i < wanted; i += 1) {
    const step = drawStep(random, `s${i + 1}`, altered.garment, range, catalogue);
    if (!step) break;
    const alone = steps.length === 0;
    try {
      const next = applyAlterations(subject.garment, [...steps, step], cache, catalogue);
      tried.push({ alteration: step.alteration, refused: next.refusal?.problem.code ?? null, alone });
      if (next.refusal) continue;
      steps.push(step);
      altered = next;
    } catch (fault) {
      const message = fault instanceof Error ? fault.message : String(fault);
      return { seed, subject, steps, tried, altered, thrown: { step, message } };
    }
  }
  return { seed, subject, steps, tried, altered, thrown: null };
};

const anySubject = (random: Random): Subject => {
  const { pattern, view } = oneOf(random, views);
  return oneOf(random, sizesOf(pattern, view));
};

const printed = new WeakMap<Piece, ReturnType<typeof printedPiece>>();

/** A piece met again is printed once, so that the judge knows it again. */
const printOnce = (piece: Piece): ReturnType<typeof printedPiece> => {
  const known = printed.get(piece);
  if (known) return known;
  const made = printedPiece(piece);
  printed.set(piece, made);
  return made;
};

/** As `easewright alter` prints it, through the same functions. */
export const printedChain = (subject: Subject, altered: Altered): AlteredGarment =>
  printedAltered(altered, {
    body: subject.body,
    problem: ({ code }) => ({ code, message: code, remedy: '' }),
    piece: printOnce,
  }) as unknown as AlteredGarment;

const plains = new WeakMap<Subject, PrintedGarment>();
const plainOf = (subject: Subject): PrintedGarment => {
  const known = plains.get(subject);
  if (known) return known;
  const made = printedChain(subject, applyAlterations(subject.garment, []));
  plains.set(subject, made);
  return made;
};

/** What the judge says of a chain's end, from what is printed of it. */
export const judgeChain = ({ subject, altered, steps, thrown }: Chain): readonly string[] => [
  ...(thrown ? [`thrown by ${thrown.step.alteration}: ${thrown.message}`] : []),
  ...(steps.length === 0 ? [] : judgeAltered(plainOf(subject), printedChain(subject, altered), steps.length)),
];

/** A chain as a person repeats it. */
export const sayChain = ({ seed, subject, steps, thrown }: Chain): string =>
  JSON.stringify({
    seed,
    pattern: subject.pattern,
    view: subject.view,
    size: subject.size,
    steps: [...steps, ...(thrown ? [thrown.step] : [])].map(({ alteration, params }) => ({ alteration, params })),
  });
