#!/usr/bin/env node
import { existsSync } from 'node:fs';

const program = new URL('../dist/node/src/cli/main.js', import.meta.url);
if (!existsSync(program)) {
  console.error('Easewright is not built yet. Run `npm start`, or `npm ci && npm run build`, in its folder first.');
  process.exit(1);
}
await import(program.href);
