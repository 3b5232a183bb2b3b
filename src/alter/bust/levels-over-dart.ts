import { applyToPoint, distance, intersectPaths, line, nearestOnPath, type Outline } from '../../geometry/index.ts';
import { closing, type DartShape, type Level, outlineOf, type Piece } from '../../pattern/index.ts';

const awayFrom = (outline: Outline, level: Level): number => nearestOnPath(outline, level.to).distance;

/** The leg a level that sets out from its beginning meets first; null where it passes the dart by. */
const firstLeg = ({ from, to }: Level, { point, legs }: DartShape): 0 | 1 | null => {
  const met = ([0, 1] as const).flatMap((which) =>
    intersectPaths([line(from, to)], [line(point, legs[which])]).map((crossing) => ({
      which,
      at: distance(from, crossing.point),
    })),
  );
  return met.toSorted((a, b) => a.at - b.at)[0]?.which ?? null;
};

/**
 * Levels of a piece once a dart is let go. A tape that went on over the closed dart now lies flat: where the part beyond it
 * had been swung aside, the level ends where that part carries its end, on the outline.
 */
export const levelsOverDart = (piece: Piece, dart: DartShape): readonly Level[] => {
  const outline = outlineOf(piece);
  return piece.levels.map((level) => {
    const leg = level.over ? null : firstLeg(level, dart);
    if (leg === null) return level;
    const carried = { ...level, to: applyToPoint(closing(dart, leg), level.to) };
    if (awayFrom(outline, carried) >= awayFrom(outline, level)) return level;
    return { ...carried, to: nearestOnPath(outline, carried.to).point };
  });
};
