import { useMemo } from 'react';
import { webWords } from '../../src/words/index.ts';
import { useUnit } from '../app/settings.tsx';
import { drawGarment } from '../parts/draw-garment.ts';
import { type Laid, useLay } from '../parts/table/laid.ts';
import { usePattern } from './pattern-source.ts';

/** Lays the pieces of the house blouse on the table, where a page has nothing of its own to show yet. */
export const useLayHousePieces = (subject: string): void => {
  const asked = usePattern('house:blouse');
  const unit = useUnit();
  const pattern = asked.state === 'here' ? asked.value : null;
  const laid = useMemo((): Laid | null => {
    const size = pattern?.sizes[Math.floor(pattern.sizes.length / 2)];
    if (!size) return null;
    return { drawing: drawGarment(size.garment, webWords.patterns.example, { unit, size: size.id }), subject };
  }, [pattern, unit, subject]);
  useLay(laid);
};
