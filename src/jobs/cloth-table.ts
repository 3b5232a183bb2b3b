import { type ClothAnswer, type ClothQuestion, clothAnswer, searchLayout } from '../lay/index.ts';
import type { ClothAdvice } from '../pattern/index.ts';
import { good } from '../units/index.ts';
import type { Job } from './types.ts';

export interface ClothTableInput {
  readonly questions: readonly ClothQuestion[];
  readonly advice: ClothAdvice;
  /** Wall time for each question; or `rounds`, for a table that does not hang on the machine's speed. */
  readonly seconds?: number;
  readonly rounds?: number;
}

/** Lays a garment on cloth of every width asked about, one after the other; partial results are the rows so far. */
export const clothTableJob: Job<ClothTableInput, readonly ClothAnswer[], readonly ClothAnswer[]> = {
  kind: 'cloth-table',
  run: async ({ questions, advice, seconds, rounds }, context) => {
    const rows: ClothAnswer[] = [];
    for (const question of questions) {
      if (context.cancelled()) break;
      const found = question.problem
        ? await searchLayout(question.problem, {
            ...(seconds === undefined ? {} : { seconds }),
            ...(rounds === undefined ? {} : { rounds }),
            seed: context.seed,
            now: () => context.now(),
            cancelled: () => context.cancelled(),
            pause: () => context.pause(),
          })
        : null;
      rows.push(clothAnswer(question, found, advice));
      context.report(rows.length / questions.length, [...rows]);
    }
    return good(rows);
  },
};
