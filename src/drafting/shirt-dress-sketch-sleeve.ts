import { add, distance, lerp, type Path, type Point, pathLength, pathStart, polyline } from '../geometry/index.ts';
import { edgeLength, type Garment, pieceOf } from '../pattern/index.ts';
import { landmarkIn, runOf } from './shape-garment.ts';
import { stitching, topstitch } from './shirt-dress-sketch-parts.ts';
import { hangFrom, type SketchLine, type SketchShape, sketchButton, sleeveHem } from './sketch.ts';

/** How steeply sleeves hang, radians below the level: a long one nearly down, a short one standing out. */
const hang = { long: 0.98, short: 0.45 } as const;

interface Cuff {
  readonly width: number;
  readonly depth: number;
}

/** A sleeve hung from an armhole, with its cuff or hem. */
export const sleeveShapes = (
  garment: Garment,
  half: 'front' | 'back',
  armhole: Path,
  long: boolean,
): readonly SketchShape[] => {
  const sleeve = pieceOf(garment, 'sleeve');
  const low = runOf(garment, 'sleeve', long ? 'wrist' : 'hem');
  const cuff: Cuff | null = long
    ? {
        width: edgeLength(pieceOf(garment, 'cuff'), 'wrist') / 2,
        depth: edgeLength(pieceOf(garment, 'cuff'), 'end'),
      }
    : null;
  const length = pathStart(low).y - landmarkIn(garment, 'sleeve', 'cap-top').y;
  const { outline, at } = hangFrom(
    armhole,
    {
      length,
      // Pleated into its cuff, a sleeve is hardly wider than it where it is sewn on.
      hem: cuff ? 1.12 * cuff.width : pathLength(low) / 2,
      below: edgeLength(sleeve, 'underarm-front'),
    },
    cuff ? hang.long : hang.short,
  );
  const hung: SketchShape = {
    id: `sleeve-${half}`,
    outline,
    lines: cuff
      ? [
          ...[0.3, 0.5].map(
            (across): SketchLine => ({ kind: 'gathers', path: polyline([at(across, 1), at(across, 0.88)]) }),
          ),
          ...(half === 'back' ? [{ kind: 'seam' as const, path: polyline([at(0.68, 1), at(0.68, 0.8)]) }] : []),
        ]
      : [sleeveHem(at, 25 / length)],
    bothSides: true,
  };
  if (!cuff) return [hung];
  const wrist = (across: number, down: number): Point => {
    const [outer, inner] = [at(0, 1), at(1, 1)];
    const inset = 0.06 + 0.88 * across;
    const middle = lerp(outer, inner, inset);
    return add(middle, {
      x: (-(inner.y - outer.y) / distance(outer, inner)) * -down,
      y: ((inner.x - outer.x) / distance(outer, inner)) * -down,
    });
  };
  const band: SketchShape = {
    id: `cuff-${half}`,
    outline: polyline([wrist(0, 0), wrist(1, 0), wrist(1, cuff.depth), wrist(0, cuff.depth)], true),
    lines: [
      stitching(polyline([wrist(0, cuff.depth - topstitch), wrist(1, cuff.depth - topstitch)])),
      ...(half === 'back' ? [sketchButton(wrist(0.72, cuff.depth / 2), 11)] : []),
    ],
    bothSides: true,
  };
  return [hung, band];
};
