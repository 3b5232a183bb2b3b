import { homedir } from 'node:os';
import { join, resolve } from 'node:path';

export interface Surroundings {
  readonly platform: NodeJS.Platform;
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly home: string;
}

const here = (): Surroundings => ({ platform: process.platform, env: process.env, home: homedir() });

/**
 * Where this person's workroom lies unless she says otherwise: `Library/Application Support` on macOS,
 * `%APPDATA%` on Windows, else `$XDG_DATA_HOME` (XDG Base Directory Specification 0.8: relative values
 * are ignored) or `~/.local/share`. `chosen`, as given with `--data`, outranks all.
 */
export const dataFolder = (chosen?: string, { platform, env, home }: Surroundings = here()): string => {
  if (chosen) return resolve(chosen);
  if (platform === 'darwin') return join(home, 'Library', 'Application Support', 'Easewright');
  if (platform === 'win32') return join(env.APPDATA || join(home, 'AppData', 'Roaming'), 'Easewright');
  const data = env.XDG_DATA_HOME;
  return join(data?.startsWith('/') ? data : join(home, '.local', 'share'), 'easewright');
};

/** The files and folders a workroom is made of, all inside its one folder. */
export const placesOf = (folder: string) => ({
  database: join(folder, 'workroom.sqlite'),
  /** SQLite's companions of the database, which belong to it and move with it. */
  companions: [join(folder, 'workroom.sqlite-wal'), join(folder, 'workroom.sqlite-shm')],
  /** A workroom being set up; renamed to `database` once it is whole. */
  unfinished: join(folder, 'workroom.sqlite.new'),
  lock: join(folder, 'lock.sqlite'),
  owner: join(folder, 'owner.json'),
  backups: join(folder, 'backups'),
});

export type Places = ReturnType<typeof placesOf>;
