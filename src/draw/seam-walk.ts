import { add, type Path, type Point, scale, subtract } from '../geometry/index.ts';
import { type Garment, pieceOf, pointAlongSide, type SeamWalk } from '../pattern/index.ts';
import { formatLength, type Unit } from '../units/index.ts';
import { drawWords, fill } from '../words/index.ts';
import { drawingOf, groupMark, pathMark, stroke, textMark } from './marks.ts';
import { isWrittenAsNothing, sayId } from './say.ts';
import type { Drawing, Mark } from './types.ts';

export interface SeamWalkOptions {
  readonly unit: Unit;
  readonly locale?: string;
  readonly textSize?: number;
}

/** A place along the walk, and the direction away from the piece that is laid on. */
interface Step {
  readonly point: Point;
  readonly tangent: Point;
}

/** Between points of a rolled edge, mm: a picture only, never a pattern's line. */
const rollStep = 2;

/**
 * One edge laid along the other as they are walked: side b drawn as it lies in its piece, side a rolled off along it,
 * just beside it. Notches that meet stand across both; what is left over, or missing, is in red pencil.
 */
export const drawSeamWalk = (walk: SeamWalk, garment: Garment, options: SeamWalkOptions): Drawing => {
  const { unit, locale = 'en' } = options;
  const b = pieceOf(garment, walk.seam.b.piece);
  const along = (mm: number): Step => {
    const within = Math.min(Math.max(mm, 0), walk.lengthB);
    const step = pointAlongSide(b, walk.seam.b, within);
    // Past the mate's end what is left over runs straight on.
    return { ...step, point: add(step.point, scale(step.tangent, mm - within)) };
  };
  const turn = levelTurn(along(0).point, along(walk.lengthB).point);
  const level = (step: Step): Step => ({
    point: turn(step.point),
    tangent: subtract(turn(add(step.point, step.tangent)), turn(step.point)),
  });
  const at = (mm: number) => level(along(mm));
  // The piece lies to the right of its outline's travel; its mate is laid on the other side.
  const outward = (step: Step): Point =>
    scale({ x: step.tangent.y, y: -step.tangent.x }, walk.seam.b.reversed ? -1 : 1);
  const size = options.textSize ?? Math.max(6, walk.lengthB / 28);
  const gap = size * 0.8;
  const beside = (mm: number, off: number): Point => add(at(mm).point, scale(outward(at(mm)), off));

  const rolled = (from: number, to: number, off: number): Path => {
    const count = Math.max(1, Math.ceil((to - from) / rollStep));
    return Array.from({ length: count }, (_, i) => ({
      kind: 'line' as const,
      from: beside(from + ((to - from) * i) / count, off),
      to: beside(from + ((to - from) * (i + 1)) / count, off),
    }));
  };
  const shared = Math.min(walk.lengthA, walk.lengthB);
  const red = walk.meets ? 'dimension' : 'changed';
  const marks: Mark[] = [
    pathMark('seam', 'seam', rolled(0, walk.lengthB, 0)),
    pathMark('seam', 'seam', rolled(0, shared, gap)),
    pathMark('marks', 'dimension', ...[0, shared].map((mm) => stroke(beside(mm, -gap * 0.3), beside(mm, gap * 1.3)))),
  ];
  if (walk.lengthA > shared)
    marks.push(pathMark('marks', red, rolled(shared, walk.lengthA, gap)), ...endTick(beside, walk.lengthA, gap));
  if (walk.lengthB > shared)
    marks.push(pathMark('marks', red, rolled(shared, walk.lengthB, gap)), ...endTick(beside, walk.lengthB, gap));
  for (const notch of walk.notches) {
    const [p, q] = [beside(notch.atB, -gap * 0.5), beside(notch.atB, 0)];
    const [r, s] = [beside(notch.atA, gap), beside(notch.atA, gap * 1.5)];
    marks.push(
      pathMark('marks', 'mark', stroke(p, q), stroke(r, s)),
      pathMark('marks', notch.meets ? 'dimension' : 'changed', stroke(q, r)),
    );
    if (!notch.meets) {
      const text = fill(drawWords.notchApart, { amount: fine(notch.apart, unit, locale) }, unit, locale);
      marks.push(textMark('words', 'changed', beside(notch.atA, gap * 2.4), text, size * 0.8, { anchor: 'middle' }));
    }
  }
  const verdict = sayWalk(walk, unit, locale);
  const names = [walk.seam.a, walk.seam.b].map((side) =>
    fill(drawWords.edgeOfPiece, { edge: sayId(side.edge), piece: pieceOf(garment, side.piece).name }, unit, locale),
  ) as [string, string];
  const lengths = [walk.lengthA, walk.lengthB].map((mm) => formatLength(mm, unit, { purpose: 'amount', locale })) as [
    string,
    string,
  ];
  const drawing = drawingOf('', marks, 0);
  const { minX, minY, maxY } = drawing.bounds;
  // The name of each edge stands on its own side, whichever way up the walk came to lie.
  const aAbove = outward(at(walk.lengthB / 2)).y < 0;
  const [upper, lower] = aAbove ? [0, 1] : [1, 0];
  const words = [
    textMark('words', 'mark', { x: minX, y: minY - size * 2.2 }, verdict, size * 1.15, { weight: 'bold' }),
    textMark('words', 'mark', { x: minX, y: minY - size * 0.8 }, `${names[upper]} · ${lengths[upper]}`, size),
    textMark('words', 'mark', { x: minX, y: maxY + size * 1.5 }, `${names[lower]} · ${lengths[lower]}`, size),
  ];
  const missed = walk.notches.filter((notch) => !notch.meets).length;
  const notches =
    walk.notches.length === 0
      ? drawWords.noNotches
      : missed === 0
        ? drawWords.notchesMeet
        : fill(drawWords.notchesMiss, { count: missed }, unit, locale);
  const label = fill(drawWords.walkLabel, { a: names[0], b: names[1], verdict, notches }, unit, locale);
  return drawingOf(label, [groupMark(walk.seam.id, label, [...marks, ...words])], size);
};

const endTick = (beside: (mm: number, off: number) => Point, mm: number, gap: number): Mark[] => [
  pathMark('marks', 'dimension', stroke(beside(mm, gap * 0.4), beside(mm, gap * 1.6))),
];

/** Turns and moves so that the walk starts at 0, 0 and ends level with it, to the right. */
const levelTurn = (start: Point, end: Point): ((p: Point) => Point) => {
  const size = Math.hypot(end.x - start.x, end.y - start.y);
  const [cos, sin] = size === 0 ? [1, 0] : [(end.x - start.x) / size, (end.y - start.y) / size];
  return (p) => {
    const [x, y] = [p.x - start.x, p.y - start.y];
    return { x: x * cos + y * sin, y: y * cos - x * sin };
  };
};

const fine = (mm: number, unit: Unit, locale: string): string =>
  formatLength(Math.abs(mm), unit, { purpose: 'fine', locale });

/** `meets, with 1.8 cm eased in`, `does not meet: 4.0 mm too long`. */
export const sayWalk = (walk: SeamWalk, unit: Unit, locale = 'en'): string => {
  const say = (template: string, amount: string) => fill(template, { amount }, unit, locale);
  if (!walk.meets)
    return say(walk.excess > 0 ? drawWords.tooLong : drawWords.tooShort, fine(walk.excess, unit, locale));
  const amount = formatLength(Math.abs(walk.difference), unit, { purpose: 'amount', locale });
  if (walk.seam.how === 'plain' || isWrittenAsNothing(amount)) return drawWords.meets;
  if (walk.difference < 0) return say(drawWords.meetsStretched, amount);
  return say(walk.seam.how === 'gathered' ? drawWords.meetsGathered : drawWords.meetsEased, amount);
};
