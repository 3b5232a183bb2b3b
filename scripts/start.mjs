// npm start: everything a fresh clone needs, then the workroom.
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build, checkNode, installPackages, root } from './setup.mjs';

checkNode();
installPackages();
build();
process.argv.splice(2, 0, 'serve');
await import(pathToFileURL(join(root, 'bin', 'easewright.js')).href);
