import type { ExitCode, Terminal } from '../terminal.ts';
import { alterationCommand, alterCommand } from './alter.ts';
import { fitCommand } from './fit.ts';
import { layCommand } from './lay.ts';
import { patternCommand } from './pattern.ts';
import { printCommand } from './print.ts';
import { demoCommand, serveCommand } from './serve.ts';
import { wearerCommand } from './wearer.ts';

/** Every command by its name. */
export const commands: Readonly<
  Record<string, (argv: readonly string[], terminal: Terminal) => ExitCode | Promise<ExitCode>>
> = {
  serve: serveCommand,
  demo: demoCommand,
  wearer: wearerCommand,
  pattern: patternCommand,
  fit: fitCommand,
  alteration: alterationCommand,
  alter: alterCommand,
  lay: layCommand,
  print: printCommand,
};
