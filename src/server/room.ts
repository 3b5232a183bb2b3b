import {
  isMendable,
  type OpenOptions,
  openWorkroom,
  type Restored,
  restoreBackup,
  type Workroom,
} from '../store/index.ts';
import type { Problem, Result } from '../units/index.ts';
import { bad, good } from '../units/index.ts';

/**
 * The workroom behind the server: open, or damaged and waiting for its owner to choose a backup. The
 * server runs in both, so that she is offered the backup on the page and not only in the terminal.
 */
export interface Room {
  readonly folder: string;
  workroom(): Result<Workroom>;
  /** Goes back to the last good backup, or to the one taken at a moment; only where the workroom is damaged. */
  goBack(takenAt?: string): Promise<Result<Restored>>;
  /** Writes down where the server listens, now and whenever the workroom is opened anew. */
  announce(address: string): Result<unknown>;
  token(): string;
  close(): Promise<void>;
}

/** Opens a workroom for serving. A problem here is one that no backup mends. */
export const openRoom = async (folder: string, options: OpenOptions = {}): Promise<Result<Room>> => {
  const opened = await openWorkroom(folder, options);
  if (!opened.ok && !isMendable(opened.problem)) return opened;
  let address: string | undefined;
  let problem: Problem = opened.ok ? { code: 'server.stopping' } : opened.problem;
  let workroom = opened.ok ? opened.value : undefined;

  const current = (): Result<Workroom> => (workroom ? good(workroom) : { ok: false, problem });

  const adopt = (open: Workroom): Result<unknown> => {
    workroom = open;
    problem = { code: 'server.stopping' };
    return address ? open.announce(address) : good(null);
  };

  return good({
    folder,
    workroom: current,
    goBack: async (takenAt) => {
      if (workroom || !isMendable(problem)) return bad('server.nothing-to-mend');
      // It may have been mended from the terminal meanwhile; a sound file is never moved aside.
      const sound = await openWorkroom(folder, options);
      if (sound.ok) {
        adopt(sound.value);
        return bad('server.nothing-to-mend');
      }
      const restored = await restoreBackup(folder, takenAt);
      if (!restored.ok) return restored;
      const reopened = await openWorkroom(folder, options);
      if (!reopened.ok) {
        problem = reopened.problem;
        return reopened;
      }
      const announced = adopt(reopened.value);
      return announced.ok ? restored : announced;
    },
    announce: (at) => {
      address = at;
      return workroom ? workroom.announce(at) : good(null);
    },
    token: () => workroom?.owner.token ?? '',
    close: async () => {
      const open = workroom;
      workroom = undefined;
      await open?.close();
    },
  });
};
