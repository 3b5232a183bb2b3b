import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';
import type { Cloth } from '../../cloth/index.ts';
import type { Result } from '../../units/index.ts';
import { type OpenOptions, openWorkroom, type Workroom } from '../workroom.ts';

/** A folder that goes when the test ends. */
export const temporaryFolder = (): string => {
  const folder = mkdtempSync(join(tmpdir(), 'easewright-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
};

export const valueIn = <T>(result: Result<T>): T => {
  if (!result.ok) throw new Error(`expected a value, got ${JSON.stringify(result.problem)}`);
  return result.value;
};

export const codeOf = (result: Result<unknown>): string => (result.ok ? 'good' : result.problem.code);

/** A clock that starts at a given moment and is only moved by hand. */
export const handClock = (start = '2026-03-14T09:00:00.000Z') => {
  let time = Date.parse(start);
  return {
    now: () => new Date(time),
    forward: (hours: number) => {
      time += hours * 3_600_000;
    },
  };
};

export const open = async (folder: string, options?: OpenOptions): Promise<Workroom> => {
  const workroom = valueIn(await openWorkroom(folder, options));
  let closed = false;
  onTestFinished(async () => {
    if (!closed) await workroom.close();
  });
  return {
    ...workroom,
    close: async () => {
      closed = true;
      await workroom.close();
    },
  };
};

export const poplin = (note = ''): Cloth => ({
  format: 'easewright-cloth/1',
  name: 'White poplin',
  structure: 'woven',
  fibres: 'cotton 100 %',
  weight: 118,
  width: 1480,
  length: 2400,
  stretchAcross: 0,
  stretchAlong: 0,
  oneWay: false,
  shrinkAlong: 0.035,
  shrinkAcross: 0.01,
  washed: false,
  colour: '#f6f3ea',
  terms: 'bought',
  from: 'The stall by the fish steps',
  note,
});
