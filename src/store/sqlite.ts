import type BetterSqlite3 from 'better-sqlite3';
import type { Result } from '../units/index.ts';
import { bad, good } from '../units/index.ts';

export type Sqlite = typeof BetterSqlite3;
export type Connection = BetterSqlite3.Database;

const load = async (): Promise<Sqlite> => (await import('better-sqlite3')).default;

/**
 * The SQLite library, whose compiled part is fetched or built when packages are installed. Where that
 * failed it is only met at the first connection, so one is opened here, in memory, to find out.
 */
export const loadSqlite = async (loader: () => Promise<Sqlite> = load): Promise<Result<Sqlite>> => {
  try {
    const sqlite = await loader();
    new sqlite(':memory:').close();
    return good(sqlite);
  } catch (fault) {
    const reason = fault instanceof Error ? (fault.message.split('\n')[0] ?? '') : String(fault);
    return bad('store.no-sqlite', { reason });
  }
};
