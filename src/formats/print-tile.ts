import { circle, type Mark, pathMark, rectangle, stroke, type TextWidth, textMark } from '../draw/index.ts';
import type { Point } from '../geometry/index.ts';
import type { TileFrame } from './paper.ts';
import type { Joint, Tile } from './tiles.ts';

/** 10 point. */
const textSize = 3.53;
const nameSize = 6;
const ringRadius = 4;

/** Tells whether a box on the virtual sheet (centre, half its sides) is clear of lines and words. */
export type IsClear = (centre: Point, halfWidth: number, halfHeight: number) => boolean;

/**
 * What a sheet carries besides the pattern, in millimetres on the virtual sheet: its frame, its header, its name in a
 * clear corner, and a ring with its sign at each joint. The frame is where this tile's part begins and ends; beyond
 * it to the right and below lies the strip that the neighbours are laid over.
 */
export const tileFurniture = (
  tile: Tile,
  joints: readonly Joint[],
  frame: TileFrame,
  tileHeight: number,
  header: string,
  textWidth: TextWidth,
  isClear: IsClear,
  isClearAtJoints: IsClear,
): { readonly window: readonly Mark[]; readonly header: readonly Mark[] } => {
  const left = tile.column * frame.stepX;
  const top = tile.row * frame.stepY;
  const nameWidth = textWidth(tile.name, nameSize, 'bold');
  const corner = cornerFor(left, top, frame.stepX, tileHeight, nameWidth, isClear);
  return {
    window: [
      pathMark('words', 'faint', rectangle(left, top, frame.stepX, tileHeight)),
      textMark('words', 'mark', corner, tile.name, nameSize, { weight: 'bold' }),
      ...joints.flatMap((joint) => jointMarks(joint, tile, frame, tileHeight, textWidth, isClearAtJoints)),
    ],
    header: headerMarks(tile.name, header, left, top - 2.2, frame.stepX + frame.overlap, textWidth),
  };
};

/** The name stands in the first corner where nothing is drawn; in the upper left where all are taken. */
const cornerFor = (
  left: number,
  top: number,
  width: number,
  height: number,
  nameWidth: number,
  isClear: IsClear,
): Point => {
  const inset = 4;
  const xs = [left + inset, left + width - inset - nameWidth];
  const baselines = [top + inset + nameSize * 0.75, top + height - inset];
  const corners = baselines.flatMap((y) => xs.map((x) => ({ x, y })));
  const clear = corners.find(({ x, y }) =>
    isClear({ x: x + nameWidth / 2, y: y - nameSize * 0.35 }, nameWidth / 2 + 1, nameSize * 0.5 + 1),
  );
  return clear ?? (corners[0] as Point);
};

const headerMarks = (
  name: string,
  text: string,
  x: number,
  y: number,
  width: number,
  textWidth: TextWidth,
): readonly Mark[] => {
  const nameWidth = textWidth(name, textSize, 'bold') + textSize;
  let shown = text;
  while (shown.length > 1 && textWidth(shown, textSize, 'regular') > width - nameWidth)
    shown = `${shown.slice(0, -2)}…`;
  return [
    textMark('words', 'mark', { x, y }, name, textSize, { weight: 'bold' }),
    textMark('words', 'mark', { x: x + nameWidth, y }, shown, textSize),
  ];
};

/** How far along a joint its ring may stand; the middle first. */
const shares = [0.5, 0.45, 0.55, 0.4, 0.6, 0.35, 0.65, 0.3, 0.7, 0.25, 0.75, 0.2, 0.8, 0.15, 0.85, 0.1, 0.9];

const jointMarks = (
  joint: Joint,
  tile: Tile,
  frame: TileFrame,
  tileHeight: number,
  textWidth: TextWidth,
  isClear: IsClear,
): readonly Mark[] => {
  const down = joint.runs === 'down';
  const x = joint.second.column * frame.stepX;
  const y = joint.second.row * frame.stepY;
  const points = shares.map((share) => (down ? { x, y: y + share * tileHeight } : { x: x + share * frame.stepX, y }));
  const reach = ringRadius + textSize * 1.6;
  const centre =
    points.find((p) => isClear(p, down ? reach : ringRadius + 1, down ? ringRadius + 1 : reach)) ??
    (points[0] as Point);
  // Before the joint on the first sheet, beyond it on the second: laid together, the sign stands on both sides of the ring.
  const side = tile.name === joint.first.name ? -1 : 1;
  const away = side * (ringRadius + 1.2);
  const width = textWidth(joint.sign, textSize, 'bold');
  const at = down
    ? { x: centre.x + away - (side < 0 ? width : 0), y: centre.y + textSize * 0.3 }
    : { x: centre.x - width / 2, y: centre.y + away + (side < 0 ? 0 : textSize * 0.65) };
  return [jointRing(centre, down), textMark('words', 'mark', at, joint.sign, textSize, { weight: 'bold' })];
};

/** Two rings, one in the other, and a stroke across the joint: no mark of the trade's looks like it. */
const jointRing = (centre: Point, down: boolean): Mark => {
  const across = down ? { x: ringRadius, y: 0 } : { x: 0, y: ringRadius };
  return pathMark(
    'words',
    'mark',
    circle(centre, ringRadius),
    circle(centre, ringRadius / 2),
    stroke({ x: centre.x - across.x, y: centre.y - across.y }, { x: centre.x + across.x, y: centre.y + across.y }),
  );
};
