import type { ExitCode, Terminal } from '../terminal.ts';

type Command = (argv: readonly string[], terminal: Terminal) => ExitCode | Promise<ExitCode>;

/** Every command by its name. Each is loaded only when asked for, so that none waits for what another needs. */
export const commands: Readonly<Record<string, () => Promise<Command>>> = {
  serve: async () => (await import('./serve.ts')).serveCommand,
  demo: async () => (await import('./serve.ts')).demoCommand,
  wearer: async () => (await import('./wearer.ts')).wearerCommand,
  pattern: async () => (await import('./pattern.ts')).patternCommand,
  fit: async () => (await import('./fit.ts')).fitCommand,
  alteration: async () => (await import('./alter.ts')).alterationCommand,
  alter: async () => (await import('./alter.ts')).alterCommand,
  lay: async () => (await import('./lay.ts')).layCommand,
  print: async () => (await import('./print.ts')).printCommand,
};
