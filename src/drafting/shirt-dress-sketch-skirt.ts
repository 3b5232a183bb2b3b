import {
  applyToPath,
  cubic,
  distance,
  lerp,
  line,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  pathPointAtLength,
  pathStart,
  polyline,
  reversePath,
} from '../geometry/index.ts';
import type { Garment } from '../pattern/index.ts';
import { runOf } from './shape-garment.ts';
import { mirrored } from './shirt-dress-sketch-parts.ts';
import type { SketchLine, SketchShape } from './sketch.ts';

type Half = 'front' | 'back';

/** Of a gathered skirt's fullness over what it is gathered to, the share that is seen spread: the rest lies in its folds. */
const spread = { skirt: 0.5, tier: 0.3 } as const;

/** Short lines that stand for gathers beside a seam, each of another length; `down` mm, negative above the seam. */
export const gatherLines = (from: Point, to: Point, slant: number, down: number): readonly SketchLine[] => {
  const count = Math.max(2, Math.round(distance(from, to) / 17));
  return Array.from({ length: count }, (_, i): SketchLine => {
    const share = (i + 0.5) / count;
    const top = lerp(from, to, share);
    // Five lengths in an order that does not read as a row.
    const long = down * (0.35 + 0.13 * ((i * 3) % 5));
    return { kind: 'gathers', path: polyline([top, { x: top.x + slant * share * long, y: top.y + long }]) };
  });
};

/** How far a full hem sags below its ends, mm. */
const sag = 8;

/** The lower edge of a skirt as it hangs, from the side to the centre. */
const hangingHem = (from: Point, to: Point): Path => [
  cubic(from, { x: lerp(from, to, 0.35).x, y: to.y }, { x: lerp(from, to, 0.7).x, y: to.y }, to),
];

/** Bars across the side seam where a pocket's mouth begins and ends. */
const pocketEnds = (garment: Garment, side: Path[number]): readonly SketchLine[] => {
  const above = pathLength(runOf(garment, 'skirt-front', 'side-above'));
  const mouth = pathLength(runOf(garment, 'skirt-front', 'pocket'));
  return [above, above + mouth].map((mm): SketchLine => {
    const { x, y } = pathPointAtLength([side], mm);
    return {
      kind: 'stitching',
      path: polyline([
        { x: x - 12, y },
        { x: x - 1, y },
      ]),
    };
  });
};

/** Both halves where the piece lies on a fold; a pair where it does not. */
const shape = (id: string, half: Half, outline: Path, lines: readonly SketchLine[]): SketchShape => {
  if (half === 'front')
    return { id, outline: [...outline, line(pathEnd(outline), pathStart(outline))], lines, bothSides: true };
  return {
    id,
    outline: [...outline, ...mirrored(reversePath(outline))],
    lines: [...lines, ...lines.map((one) => ({ ...one, path: mirrored(one.path) }))],
    bothSides: false,
  };
};

/** Waistband, skirt and tier of one half, hanging from the bodice's lower edge at a height. */
export const drawnSkirt = (garment: Garment, half: Half, waist: number, tier: boolean): readonly SketchShape[] => {
  const top = runOf(garment, `waist-${half}`, 'top');
  const depth = pathLength(runOf(garment, `waist-${half}`, 'side'));
  const [from, to] = [pathStart(top).x, pathEnd(top).x];
  const skirtTop = waist + depth;
  const band = shape(
    `waist-${half}`,
    half,
    polyline([
      { x: from, y: waist },
      { x: to, y: waist },
      { x: to, y: skirtTop },
      { x: from, y: skirtTop },
    ]),
    [],
  );
  const sideLength = pathLength(runOf(garment, `skirt-${half}`, half === 'front' ? 'stand' : 'centre-back'));
  const hem = runOf(garment, `skirt-${half}`, tier ? 'tier' : 'hem');
  const hemX = to + spread.skirt * (pathStart(hem).x - to);
  const skirtHem = skirtTop + sideLength;
  const low: Point = { x: hemX, y: skirtHem - (tier ? 0 : sag) };
  const centre: Point = { x: from, y: skirtHem };
  const side = cubic(
    { x: to, y: skirtTop },
    { x: to + 0.25 * (hemX - to), y: skirtTop + 0.18 * sideLength },
    { x: hemX - 0.12 * (hemX - to), y: skirtTop + 0.6 * sideLength },
    low,
  );
  const stitchedAt = (y: number, x: number): SketchLine => ({
    kind: 'stitching',
    path: applyToPath({ a: 1, b: 0, c: 0, d: 1, e: 0, f: -22 }, hangingHem({ x, y: y - sag }, { x: from, y })),
  });
  const skirt = shape(
    `skirt-${half}`,
    half,
    [
      line({ x: from, y: skirtTop }, { x: to, y: skirtTop }),
      side,
      ...(tier ? [line(low, centre)] : hangingHem(low, centre)),
    ],
    [
      ...gatherLines({ x: from, y: skirtTop }, { x: to, y: skirtTop }, 0.16, 130),
      ...pocketEnds(garment, side),
      ...(tier ? [] : [stitchedAt(skirtHem, hemX)]),
    ],
  );
  if (!tier) return [skirt, band];
  const height = pathLength(runOf(garment, `tier-${half}`, 'side'));
  const tierX = hemX + spread.tier * (pathEnd(runOf(garment, `tier-${half}`, 'top')).x - hemX);
  const hemY = skirtHem + height;
  const tierLow: Point = { x: tierX, y: hemY - sag };
  const tierShape = shape(
    `tier-${half}`,
    half,
    [
      line({ x: from, y: skirtHem }, { x: hemX, y: skirtHem }),
      cubic(
        { x: hemX, y: skirtHem },
        { x: hemX + 0.3 * (tierX - hemX), y: skirtHem + 0.16 * height },
        { x: tierX - 0.12 * (tierX - hemX), y: skirtHem + 0.6 * height },
        tierLow,
      ),
      ...hangingHem(tierLow, { x: from, y: hemY }),
    ],
    [...gatherLines({ x: from, y: skirtHem }, { x: hemX, y: skirtHem }, 0.2, 120), stitchedAt(hemY, tierX)],
  );
  return [tierShape, skirt, band];
};
