import { cliWords } from '../words/index.ts';
import { commands } from './commands/index.ts';
import { type ExitCode, refuse, type Terminal } from './terminal.ts';

const terminal: Terminal = {
  print: (line) => process.stdout.write(`${line}\n`),
  say: (line) => process.stderr.write(`${line}\n`),
  unit: process.env['EASEWRIGHT_UNIT'] === 'in' ? 'in' : 'cm',
};

const help = (): ExitCode => {
  terminal.print(cliWords.help);
  return 0;
};

const run = async (argv: readonly string[]): Promise<ExitCode> => {
  const [name, ...rest] = argv;
  if (name === undefined || name === 'help' || name === '--help' || name === '-h') return help();
  const command = commands[name];
  if (!command) {
    return refuse(terminal, {
      code: 'cli.command',
      values: { command: name, commands: Object.keys(commands).join(', ') },
    });
  }
  return (await command())(rest, terminal);
};

try {
  process.exitCode = await run(process.argv.slice(2));
} catch (fault) {
  terminal.say(cliWords.fault);
  terminal.say(fault instanceof Error ? (fault.stack ?? fault.message) : String(fault));
  process.exitCode = 1;
}
