import { describe, expect, it } from 'vitest';
import { alterationCatalogue, applyAlterations } from '../../src/alter/index.ts';
import { writeSvg } from '../../src/formats/index.ts';
import { chainOf, judgeChain, printedChain } from '../chains/chain.ts';
import { unsound } from '../chains/sound.ts';
import { type Subject, sizesOf } from '../chains/subjects.ts';
import { alterationDrawing, alterationPage, shownBest } from '../pages/alteration-page.ts';
import { curvedHem } from './curved-hem.ts';

/** An alteration written outside the house needs nothing but itself. */
describe('an alteration from outside the house', () => {
  const catalogue = [...alterationCatalogue, curvedHem];
  const subject = shownBest(curvedHem);

  it('is applied by name where it is in the catalogue, and unknown where it is not', () => {
    const steps = [{ id: 's1', alteration: 'curved-hem', version: 1, on: true, params: { amount: 8 } }];
    const garment = subject?.garment as Subject['garment'];
    expect(applyAlterations(garment, steps, undefined, catalogue).refusal).toBeNull();
    expect(applyAlterations(garment, steps).refusal?.problem.code).toBe('alter.unknown');
  });

  it('is printed, drawn and has a page', () => {
    if (!subject) throw new Error('on no house pattern');
    const [size] = sizesOf(subject.house.id, subject.view);
    const printed = printedChain(size as Subject, subject.altered);
    expect(printed.ok).toBe(true);
    expect(printed.pieces.some(({ puts }) => (puts ?? []).length > 0)).toBe(true);
    const page = alterationPage(curvedHem, subject, { name: 'Curved hem', about: 'Curves a straight hem downward.' });
    expect(page).toContain('# Curved hem');
    expect(page).toContain('## Measured here');
    expect(writeSvg(alterationDrawing(subject))).toContain('<svg');
  });

  it('goes through the random chains by itself, and the judge has nothing to say', () => {
    const found = Array.from({ length: 30 }, (_, seed) => chainOf(seed, 'usual', [curvedHem])).flatMap((chain) => [
      ...unsound(chain),
      ...judgeChain(chain),
    ]);
    expect(found).toEqual([]);
  });
});
