// The program that is killed: serves the workroom in the folder it is given, and says where.
import { startServer } from '../../src/server/index.ts';

const [folder = ''] = process.argv.slice(2);
const started = await startServer({ dataFolder: folder, port: 0, print: () => undefined });
if (!started.ok) {
  process.stderr.write(`${JSON.stringify(started.problem)}\n`);
  process.exit(2);
}
process.stdout.write(`${started.value.address}\n`);
