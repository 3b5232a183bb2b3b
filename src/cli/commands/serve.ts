import { join } from 'node:path';
import { reachWorkroom, startServer, usualPort } from '../../server/index.ts';
import { dataFolder } from '../../store/index.ts';
import { bad } from '../../units/index.ts';
import { type Arguments, numberOption, readArguments } from '../arguments.ts';
import { type ExitCode, printJson, refuse, type Terminal, withValue } from '../terminal.ts';

const optionKinds = {
  data: 'string',
  port: 'string',
  host: 'string',
  open: 'flag',
  'no-open': 'flag',
  json: 'flag',
} as const;

/** A browser is opened only where somebody sits before the machine. */
const someoneIsThere = (): boolean => Boolean(process.stdout.isTTY) && process.env['CI'] === undefined;

const serveFolder = async (given: Arguments, terminal: Terminal, folder: string): Promise<ExitCode> =>
  withValue(terminal, numberOption(given, 'port', { low: 0, high: 65535, otherwise: usualPort }), async (port) => {
    const host = given.text('host');
    const running = await startServer({
      dataFolder: folder,
      port,
      ...(host === undefined ? {} : { host }),
      open: given.flag('open') || (someoneIsThere() && !given.flag('no-open')),
      print: terminal.print,
      heedSignals: true,
    });
    return withValue(terminal, running, async (server): Promise<ExitCode> => {
      await server.stopped;
      return 0;
    });
  });

/** `easewright serve`: opens the workroom and serves its page until stopped. */
export const serveCommand = async (argv: readonly string[], terminal: Terminal): Promise<ExitCode> =>
  withValue(terminal, readArguments(argv, optionKinds), (given) =>
    serveFolder(given, terminal, dataFolder(given.text('data'))),
  );

/** `easewright demo`: the demo workroom in a folder of its own, so that it never mixes with hers. */
export const demoCommand = async (argv: readonly string[], terminal: Terminal): Promise<ExitCode> =>
  withValue(terminal, readArguments(argv, { ...optionKinds, 'only-make': 'flag' }), async (given) => {
    const folder = given.text('data') ?? join(dataFolder(), '..', 'easewright-demo');
    return withValue(terminal, await reachWorkroom(folder), async (workroom) => {
      const facts = await workroom.facts();
      const started = facts.ok && !facts.value.started ? await workroom.start('demo') : facts;
      await workroom.close();
      if (!started.ok) return refuse(terminal, started.problem);
      if (!started.value.demo) return refuse(terminal, bad('cli.not-a-demo', { folder }).problem);
      if (!given.flag('only-make')) return serveFolder(given, terminal, folder);
      printJson(terminal, { folder, ...started.value });
      return 0;
    });
  });
