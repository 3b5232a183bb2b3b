// What a fresh machine with only Node and npm needs before anything else runs: packages, then a build.
// Plain JavaScript and node: modules only, because nothing else is installed yet.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = dirname(dirname(fileURLToPath(import.meta.url)));

const fail = (sentence) => {
  console.error(sentence);
  process.exit(1);
};

const run = (command, args, failure) => {
  const done = spawnSync(command, args, {
    cwd: root,
    stdio: ['ignore', 'inherit', 'inherit'],
    shell: process.platform === 'win32',
  });
  if (done.status !== 0) fail(failure);
};

export const checkNode = () => {
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
  if (major < 20 || (major === 20 && minor < 19)) {
    fail(
      `Easewright needs Node 20.19 or newer; this is ${process.versions.node}. Install a newer one from your system or nodejs.org.`,
    );
  }
};

const stampIs = (file, stamp) => existsSync(file) && readFileSync(file, 'utf8') === stamp;
const writeStamp = (file, stamp) => {
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, stamp);
};

export const installPackages = () => {
  const stampFile = join(root, 'node_modules', '.easewright-installed');
  const stamp = createHash('sha256')
    .update(readFileSync(join(root, 'package-lock.json')))
    .update(process.version)
    .digest('hex');
  if (stampIs(stampFile, stamp)) return;
  console.error('Installing what Easewright is built from (once; a minute or two) …');
  run(
    'npm',
    ['ci', '--include=dev', '--no-audit', '--no-fund', '--loglevel=error'],
    'The packages could not be installed: see the message above. Check the network and run the command again.',
  );
  writeStamp(stampFile, stamp);
};

const filesBelow = (path) =>
  statSync(path).isDirectory() ? readdirSync(path).flatMap((name) => filesBelow(join(path, name))) : [path];

/** A fingerprint of all that the build is made from, so that an unchanged checkout starts at once. */
const sourceStamp = () => {
  const hash = createHash('sha256');
  const places = ['src', 'web', 'demo', 'package-lock.json', 'tsconfig.json', 'tsconfig.build.json', 'vite.config.ts'];
  for (const file of places
    .map((place) => join(root, place))
    .filter(existsSync)
    .flatMap(filesBelow)
    .sort()) {
    hash.update(file.slice(root.length)).update(readFileSync(file));
  }
  return hash.digest('hex');
};

export const build = () => {
  const stampFile = join(root, 'dist', '.built');
  const stamp = sourceStamp();
  if (stampIs(stampFile, stamp)) return;
  console.error('Building Easewright (once after each change; some seconds) …');
  run('npx', ['tsc', '-p', 'tsconfig.build.json'], 'The program could not be built: see the message above.');
  run('npx', ['vite', 'build', '--logLevel', 'error'], 'The page could not be built: see the message above.');
  writeStamp(stampFile, stamp);
};
