import { pieceArea, validateGarment, walkAll } from '../../src/pattern/index.ts';
import type { Chain } from './chain.ts';

/** What a chain breaks, by the program's own rulers: quick, so that many chains can be asked. Empty when sound. */
export const unsound = ({ subject, altered, thrown }: Chain): readonly string[] => {
  if (thrown) return [`thrown by ${thrown.step.alteration}: ${thrown.message}`];
  const { garment } = altered;
  const known = new Set(validateGarment(subject.garment).map((problem) => JSON.stringify(problem)));
  const was = new Map(walkAll(subject.garment).map((walk) => [walk.seam.id, Math.abs(walk.excess)]));
  return [
    ...validateGarment(garment)
      .map((problem) => JSON.stringify(problem))
      .filter((problem) => !known.has(problem)),
    ...walkAll(garment).flatMap(({ seam, excess }) =>
      Math.abs(excess) > (was.get(seam.id) ?? 0) + 0.1 * Math.max(1, altered.outcomes.length)
        ? [`${seam.id} is ${excess} beyond its ease`]
        : [],
    ),
    ...altered.pieces.flatMap((report) => {
      const piece = garment.pieces.find(({ id }) => id === report.piece);
      if (!piece) return [];
      const put = report.puts.reduce((sum, { area }) => sum + area, 0);
      const off = report.areaBefore + put + report.areaTrued - pieceArea(piece);
      return Math.abs(off) > 0.01 ? [`${report.piece}: its areas are ${off} off`] : [];
    }),
  ];
};
