import { type ParseArgsConfig, parseArgs } from 'node:util';
import { bad, good, type Result } from '../units/index.ts';

type OptionKinds = Readonly<Record<string, 'string' | 'flag'>>;

export interface Arguments {
  readonly words: readonly string[];
  readonly text: (name: string) => string | undefined;
  readonly flag: (name: string) => boolean;
}

/** Reads a command's words and options; an option it does not have is a problem that names it. */
export const readArguments = (argv: readonly string[], kinds: OptionKinds): Result<Arguments> => {
  const options: NonNullable<ParseArgsConfig['options']> = {};
  for (const [name, kind] of Object.entries(kinds)) options[name] = { type: kind === 'flag' ? 'boolean' : 'string' };
  try {
    const { values, positionals } = parseArgs({ args: [...argv], options, allowPositionals: true, strict: true });
    return good({
      words: positionals,
      text: (name) => (typeof values[name] === 'string' ? values[name] : undefined),
      flag: (name) => values[name] === true,
    });
  } catch (fault) {
    return bad('cli.option', { what: fault instanceof Error ? fault.message : String(fault) });
  }
};

/** A number given as an option, within bounds; `otherwise` where it is not given. */
export const numberOption = (
  given: Arguments,
  name: string,
  { low, high, otherwise }: { readonly low: number; readonly high: number; readonly otherwise: number },
): Result<number> => {
  const text = given.text(name);
  if (text === undefined) return good(otherwise);
  const value = Number(text);
  return text.trim() !== '' && Number.isFinite(value) && value >= low && value <= high
    ? good(value)
    : bad('cli.number', { option: name, low, high, written: text });
};
