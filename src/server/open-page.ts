import { spawn } from 'node:child_process';

const openers: Readonly<Partial<Record<NodeJS.Platform, readonly string[]>>> = {
  darwin: ['open'],
  win32: ['cmd', '/c', 'start', ''],
};

/** Shows an address in this person's browser. Where there is none to be found the printed address has to do. */
export const openPage = (address: string): void => {
  const [command = 'xdg-open', ...first] = openers[process.platform] ?? ['xdg-open'];
  const child = spawn(command, [...first, address], { stdio: 'ignore', detached: true });
  child.on('error', () => undefined);
  child.unref();
};
