import type { Problem, Result, Unit } from '../units/index.ts';
import { sentence } from '../words/index.ts';

/** What a command talks through: JSON and answers to stdout, everything said beside them to stderr. */
export interface Terminal {
  readonly print: (line: string) => void;
  readonly say: (line: string) => void;
  readonly unit: Unit;
}

/** Exit codes of docs/command-line.md: 0 done, 1 a fault of ours, 2 bad input. */
export type ExitCode = 0 | 1 | 2;

/** Prints one object on one line. */
export const printJson = (terminal: Terminal, value: unknown): void => terminal.print(JSON.stringify(value));

/** A problem in the form every command prints it. */
export const printedProblem = (terminal: Terminal, problem: Problem) => {
  const { message, remedy } = sentence(problem, terminal.unit);
  return { code: problem.code, message, remedy };
};

/** Says what was wrong with what was given, as JSON on stdout and as a sentence on stderr. */
export const refuse = (terminal: Terminal, problem: Problem): ExitCode => {
  const error = printedProblem(terminal, problem);
  printJson(terminal, { error });
  terminal.say(`${error.message} ${error.remedy}`);
  return 2;
};

/** Carries on with a good value or refuses. */
export const withValue = async <T>(
  terminal: Terminal,
  result: Result<T>,
  next: (value: T) => ExitCode | Promise<ExitCode>,
): Promise<ExitCode> => (result.ok ? next(result.value) : refuse(terminal, result.problem));
