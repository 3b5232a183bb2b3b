import { createServer, type Server } from 'node:http';
import { join } from 'node:path';
import { getRequestListener } from '@hono/node-server';
import { dataFolder as usualDataFolder } from '../store/index.ts';
import type { Problem, Result } from '../units/index.ts';
import { good } from '../units/index.ts';
import { fill, sentence, serverWords } from '../words/index.ts';
import { createApp } from './app.ts';
import { allowedHosts, authority } from './guard.ts';
import { listen } from './listen.ts';
import { openPage } from './open-page.ts';
import { programVersion, projectFolder } from './project.ts';
import { openRoom, type Room } from './room.ts';
import { isTooLarge, refuseUnread } from './unread.ts';

export const usualPort = 8317;

export interface ServerOptions {
  /** The workroom's folder; this person's own data folder unless given. */
  readonly dataFolder?: string;
  /** The port to try first; 0 takes any. */
  readonly port?: number;
  /** The address to listen on; this machine only unless given. */
  readonly host?: string;
  /** Show the page in the browser. */
  readonly open?: boolean;
  /** Where the built page lies. */
  readonly pageFolder?: string;
  /** Takes each line that is said. */
  readonly print?: (line: string) => void;
  /** Stop in good order when the system asks (SIGTERM, SIGINT). */
  readonly heedSignals?: boolean;
}

export interface RunningServer {
  readonly address: string;
  readonly port: number;
  readonly folder: string;
  /** What is wrong with the workroom while it waits for a backup to be chosen; null when it is open. */
  readonly problem: Problem | null;
  /** Finishes what is being answered, then closes the workroom. Stopping twice is stopping once. */
  stop(): Promise<void>;
  /** Settles once it has stopped. */
  readonly stopped: Promise<void>;
}

const isLoopback = (host: string): boolean => host === 'localhost' || host === '::1' || host.startsWith('127.');

/** How long requests in progress may take when stopping, ms. */
const patience = 5000;

const hour = 60 * 60 * 1000;

const closeServer = (server: Server): Promise<void> =>
  new Promise((settle) => {
    const impatient = setTimeout(() => server.closeAllConnections(), patience);
    server.close(() => {
      clearTimeout(impatient);
      settle();
    });
    server.closeIdleConnections();
  });

const keepBackups = (room: Room, print: (line: string) => void): (() => void) => {
  const look = async () => {
    const workroom = room.workroom();
    const backup = workroom.ok ? await workroom.value.backupIfDue() : good(null);
    if (!backup.ok) print(fill(serverWords.backupFailed, { ...sentence(backup.problem, 'cm') }, 'cm'));
  };
  const attempt = () => void look().catch((fault) => console.error(fault));
  const timer = setInterval(attempt, hour);
  timer.unref();
  attempt();
  return () => clearInterval(timer);
};

/**
 * Opens the workroom and serves it, and the page, to this machine. Takes the next free port where the
 * wanted one is taken, and prints the address. A damaged workroom is served too, so that going back to
 * its backup can be offered on the page; other problems of opening are given back and nothing runs.
 */
export const startServer = async (options: ServerOptions = {}): Promise<Result<RunningServer>> => {
  const folder = usualDataFolder(options.dataFolder);
  const host = options.host ?? '127.0.0.1';
  const wanted = options.port ?? usualPort;
  const print = options.print ?? ((line) => process.stdout.write(`${line}\n`));
  const opened = await openRoom(folder);
  if (!opened.ok) return opened;
  const room = opened.value;

  // The port is known only once it listens, and which Host headers are ours depends on it.
  let listener: ReturnType<typeof getRequestListener> | undefined;
  const server = createServer((request, response) => {
    if (isTooLarge(request)) refuseUnread(request);
    else void listener?.(request, response);
  });
  const port = await listen(server, wanted, host);
  if (!port.ok) {
    await room.close();
    return port;
  }
  const app = createApp({
    room,
    hosts: allowedHosts(host, port.value),
    pageFolder: options.pageFolder ?? join(projectFolder(), 'dist', 'web'),
    version: programVersion(),
    report: (fault) => console.error(fault),
  });
  listener = getRequestListener(app.fetch, { overrideGlobalObjects: false });

  const shown = host === '0.0.0.0' || host === '::' ? '127.0.0.1' : host;
  const address = `http://${authority(shown, port.value)}`;
  const announced = room.announce(address);
  if (!announced.ok) {
    await closeServer(server);
    await room.close();
    return announced;
  }

  const workroom = room.workroom();
  if (!workroom.ok) {
    const { message, remedy } = sentence(workroom.problem, 'cm');
    print(message);
    print(remedy);
  }
  if (wanted !== 0 && port.value !== wanted) {
    print(fill(serverWords.elsewhere, { wanted: String(wanted), port: String(port.value) }, 'cm'));
  }
  print(fill(serverWords.open, { address: `${address}/` }, 'cm'));
  print(fill(serverWords.keeps, { folder }, 'cm'));
  if (!isLoopback(host)) print(serverWords.everyone);
  const endBackups = keepBackups(room, print);

  let stopping: Promise<void> | undefined;
  let markStopped: () => void = () => undefined;
  const stopped = new Promise<void>((settle) => {
    markStopped = settle;
  });
  const stop = (): Promise<void> => {
    stopping ??= (async () => {
      endBackups();
      for (const signal of ['SIGTERM', 'SIGINT'] as const) process.off(signal, heed);
      await closeServer(server);
      await room.close();
      markStopped();
    })();
    return stopping;
  };
  const heed = () => {
    print(serverWords.stopping);
    void stop();
  };
  if (options.heedSignals ?? true) for (const signal of ['SIGTERM', 'SIGINT'] as const) process.on(signal, heed);
  if (options.open) openPage(`${address}/`);

  return good({ address, port: port.value, folder, problem: workroom.ok ? null : workroom.problem, stop, stopped });
};
