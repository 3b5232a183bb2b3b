import { useCallback, useEffect, useRef, useState } from 'react';
import { type ClothAnswer, clothQuestions, usualWidths } from '../../src/lay/index.ts';
import type { Pattern, Size } from '../../src/pattern/index.ts';
import type { Unit } from '../../src/units/index.ts';
import { startWorker, type WorkerInHand } from '../jobs/workers.ts';

/** How a table of cloth needed stands; its rows can be read while more are laid. */
export interface ClothTable {
  readonly state: 'idle' | 'working' | 'done' | 'broken';
  readonly rows: readonly ClothAnswer[];
  readonly all: number;
}

const idle: ClothTable = { state: 'idle', rows: [], all: 0 };

/** Rounds of the search for each width: the same everywhere, so that the table is the same on every machine. */
const rounds = 1000;
const seed = 20261;

/** Lays one size on cloth of every width usual in her unit in a thread beside the page. A new size, view or unit begins anew. */
export const useClothTable = (pattern: Pattern, size: Size, unit: Unit) => {
  const [table, setTable] = useState<ClothTable>(idle);
  const worker = useRef<WorkerInHand | null>(null);
  const end = useCallback(() => {
    worker.current?.end();
    worker.current = null;
  }, []);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what was laid for another garment is put away.
  useEffect(() => {
    setTable(idle);
    return end;
  }, [pattern, size, unit, end]);
  const start = useCallback(() => {
    end();
    const questions = clothQuestions(size.garment, pattern.cloth, usualWidths[unit]);
    const own = startWorker();
    worker.current = own;
    const current = () => worker.current === own;
    setTable({ state: 'working', rows: [], all: questions.length });
    own.caller
      .start(
        'cloth-table',
        { questions, advice: pattern.cloth, rounds },
        { seed, report: (_progress, rows) => current() && setTable((now) => ({ ...now, rows: rows ?? now.rows })) },
      )
      .result.then(
        (result) => {
          if (!current()) return;
          setTable((now) => ({ ...now, state: 'done', rows: result.ok ? result.value : now.rows }));
          end();
        },
        () => current() && setTable((now) => ({ ...now, state: 'broken' })),
      );
  }, [pattern, size, unit, end]);
  const stop = useCallback(() => {
    end();
    setTable((now) => ({ ...now, state: 'done' }));
  }, [end]);
  return { table, start, stop };
};
