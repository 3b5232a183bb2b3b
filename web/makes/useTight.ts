import { useMemo } from 'react';
import { applyAlterations } from '../../src/alter/index.ts';
import { latestMeasures, type Wearer } from '../../src/body/index.ts';
import type { Cloth } from '../../src/cloth/index.ts';
import { fitPattern, patternFigures } from '../../src/fit/index.ts';
import type { Make } from '../../src/make/index.ts';
import { useDocument } from '../app/desk-context.ts';
import { locale } from '../app/settings.tsx';
import { useHousePattern, usePattern } from '../patterns/pattern-source.ts';
import { easeAsAltered } from './altered-ease.ts';
import { choiceFor } from './choice.ts';
import { sayTight } from './tight.ts';

/** Where a make whose size is taken is too tight as altered so far, in words; empty where nowhere, and where that is not known. */
export const useTight = (make: Make): string => {
  const asked = useDocument<Wearer>(make.wearer);
  const wearer = asked.state === 'here' ? asked.value.body : null;
  const house = useHousePattern(make.pattern);
  const found = usePattern(make.pattern, choiceFor(make, house, wearer));
  const pattern = found.state === 'here' ? found.value : null;
  const kept = useDocument<Cloth>(make.cloth ?? '');
  const cloth = make.cloth !== null && kept.state === 'here' ? kept.value.body : null;
  return useMemo(() => {
    const size = pattern?.sizes.find(({ id }) => id === make.size);
    if (!pattern || !wearer || !size) return '';
    const figures = patternFigures(pattern);
    const fit = fitPattern({ measures: latestMeasures(wearer), pattern, figures, ...(cloth ? { cloth } : {}) });
    if (!fit.ok) return '';
    const { garment } = applyAlterations(size.garment, make.steps);
    return sayTight(easeAsAltered(fit.value, figures, size, garment, cloth), locale);
  }, [pattern, wearer, cloth, make.size, make.steps]);
};
