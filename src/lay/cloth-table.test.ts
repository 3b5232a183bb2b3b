import { describe, expect, it } from 'vitest';
import { housePattern } from '../drafting/index.ts';
import { clothAnswer, clothQuestions, searchLayout } from './index.ts';

const pattern = housePattern('jacket')?.pattern();
const size = pattern?.sizes[4];
if (!pattern || !size) throw new Error('no jacket');

describe('the table of cloth needed', () => {
  const questions = clothQuestions(size.garment, pattern.cloth);
  it('asks for every layer, and the shell both ways up', () => {
    expect(new Set(questions.map(({ layer }) => layer))).toEqual(new Set(['shell', 'lining', 'interfacing']));
    const shell = questions.filter(({ layer }) => layer === 'shell');
    expect(shell.filter(({ oneWay }) => oneWay).length).toBe(shell.length / 2);
  });
  it('answers with a length to buy that the plan fits on', async () => {
    const question = questions.find(({ layer, width }) => layer === 'lining' && width === 1400);
    if (!question?.problem) throw new Error('the lining cannot be laid');
    const found = await searchLayout(question.problem, { rounds: 20, seed: 20261 });
    const answer = clothAnswer(question, found, pattern.cloth);
    expect(answer.toBuyMetric).toBeGreaterThan(answer.length ?? Number.NaN);
    expect((answer.toBuyMetric ?? 1) % 100).toBeCloseTo(0, 6);
    expect(answer.refused).toBeUndefined();
  });
  it('says why there is none: a piece wider than the cloth, or no plan', () => {
    const narrow = clothQuestions(size.garment, pattern.cloth, {
      woven: [300],
      knit: [300],
      lining: [300],
      interfacing: [300],
    });
    const shell = narrow.find(({ layer }) => layer === 'shell');
    if (!shell) throw new Error('no shell');
    expect(clothAnswer(shell, null, pattern.cloth)).toMatchObject({ length: null, refused: 'lay.wider-than-cloth' });
    const [first] = questions;
    if (!first) throw new Error('no question');
    const stopped = { ok: false, problem: { code: 'lay.cancelled' } } as const;
    expect(clothAnswer(first, stopped, pattern.cloth).refused).toBe('lay.cancelled');
  });
});
