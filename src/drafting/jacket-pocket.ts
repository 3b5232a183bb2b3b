import { cubic, lerp, line, type Path, type Point, pathEnd, pathStart, reversePath } from '../geometry/index.ts';
import type { InnerLine, Piece } from '../pattern/index.ts';
import type { JacketDraft } from './jacket-fit.ts';
import { closeRuns, edge, edgeRun, lining, shell, straightRun } from './pieces.ts';
import { fallAt } from './princess.ts';

/** The patch pocket, mm: its mouth's width and how much of that lies on the centre front, its depth, and what it keeps clear of. */
const pocket = {
  mouth: 128,
  onFront: 46,
  depth: 128,
  belowWaist: 0.43,
  fromButtons: 30,
  fromSide: 22,
  fromHem: 24,
} as const;

/** How far the lower corners are rounded off, mm. */
const rounded = 20;

/** Share of a corner's reach at which a cubic's handles draw a quarter round. */
const quarter = 0.55;

interface PocketPlace {
  readonly top: number;
  readonly low: number;
  /** From the princess seam inward on the centre front and outward on the side front, at the mouth. */
  readonly inward: number;
  readonly outward: number;
}

/** Where the pocket lies: over the front princess seam, between waist and hem, clear of buttonholes and side seam. */
const pocketPlace = ({ plan, body }: JacketDraft): PocketPlace => {
  const top = plan.waistLevel + pocket.belowWaist * (plan.hipLevel - plan.waistLevel);
  const low = Math.min(top + pocket.depth, plan.hemLevel - pocket.fromHem);
  const front = fallAt(body.front.princess, top).x;
  const inner = fallAt(body.sideFront.princess, top).x;
  const side = fallAt(body.sideFront.side, top).x;
  const inward = Math.min(pocket.onFront, front - pocket.fromButtons);
  return { top, low, inward, outward: Math.min(pocket.mouth - inward, side - inner - pocket.fromSide) };
};

/** Half of the pocket's line on a panel, from the seam along the mouth, down along the grain and back to the seam, its corner rounded. */
const halfLine = (seamTop: Point, seamLow: Point, x: number): Path => {
  const inward = Math.sign(seamLow.x - x);
  const corner: Point = { x, y: seamLow.y };
  const above: Point = { x, y: corner.y - rounded };
  const beside: Point = { x: x + inward * rounded, y: corner.y };
  return [
    line(seamTop, { x, y: seamTop.y }),
    line({ x, y: seamTop.y }, above),
    cubic(above, lerp(above, corner, quarter), lerp(beside, corner, quarter), beside),
    line(beside, seamLow),
  ];
};

/** The pocket's place on the centre front and on the side front. */
export const pocketLines = (draft: JacketDraft): { readonly front: InnerLine; readonly sideFront: InnerLine } => {
  const { top, low, inward, outward } = pocketPlace(draft);
  const on = (princess: JacketDraft['body']['front']['princess'], by: number): InnerLine => {
    const seam = fallAt(princess, top);
    return { id: 'pocket', kind: 'placement', path: halfLine(seam, fallAt(princess, low), seam.x + by) };
  };
  const { body } = draft;
  return { front: on(body.front.princess, -inward), sideFront: on(body.sideFront.princess, outward) };
};

/**
 * The patch pocket: both parts of its place laid together at the seam, which is a little wider at the bottom as the
 * body is. The mouth's allowance is turned in as its facing; the lining is cut by the same piece.
 */
export const pocketPiece = (draft: JacketDraft): Piece => {
  const { front, sideFront } = pocketLines(draft);
  const { top, low } = pocketPlace(draft);
  const [left, right] = [front.path, sideFront.path];
  // On each panel the line is measured from the seam's own place at the mouth and at the bottom; here both meet on x = 0.
  const laid = (path: Path): Path => {
    const [atTop, atLow] = [pathStart(path).x, pathEnd(path).x];
    const reach = (path[0] as Path[number]).to.x - atTop;
    const wide = (path[1] as Path[number]).to.x - atLow;
    return halfFrom(reach, wide, top, low);
  };
  const [leftHalf, rightHalf] = [laid(left), laid(right)];
  const start = pathStart(leftHalf);
  const end = pathStart(rightHalf);
  return {
    id: 'pocket',
    name: 'Patch pocket',
    role: 'pocket',
    cut: [shell(2, true), lining(2, true)],
    runs: closeRuns([
      straightRun('mouth', start, end),
      edgeRun('outer', rightHalf),
      edgeRun('inner', reversePath(leftHalf)),
    ]),
    edges: [edge('mouth', 'hem', 30), edge('outer', 'seam', 10), edge('inner', 'seam', 10)],
    darts: [],
    notches: [{ id: 'middle', edge: 'mouth', at: -start.x / (end.x - start.x), strokes: 1 }],
    grain: { from: { x: 0, y: top + 15 }, to: { x: 0, y: low - 15 } },
    levels: [],
    landmarks: [],
    lines: [],
  };
};

/** From the mouth's end down to the middle of the bottom: so wide at the mouth and, slanting, so wide below. */
const halfFrom = (reach: number, wide: number, top: number, low: number): Path => {
  const corner: Point = { x: wide, y: low };
  const mouth: Point = { x: reach, y: top };
  const above = lerp(corner, mouth, rounded / (low - top));
  const beside: Point = { x: wide - Math.sign(wide) * rounded, y: low };
  return [
    line(mouth, above),
    cubic(above, lerp(above, corner, quarter), lerp(beside, corner, quarter), beside),
    line(beside, { x: 0, y: low }),
  ];
};
