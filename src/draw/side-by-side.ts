import type { Bounds, Point } from '../geometry/index.ts';

/** Gap between papers on a table, as a share of the tallest. */
const gapShare = 0.06;

interface Stack {
  readonly members: readonly number[];
  readonly width: number;
  readonly height: number;
}

/**
 * Where to lay boxes side by side like papers on a table: in the order given, small ones stacked beside large ones,
 * in as many rows as come nearest to `aspect` (width over height). Gives what to add to each box's own coordinates.
 */
export const sideBySide = (boxes: readonly Bounds[], aspect: number): readonly Point[] => {
  if (boxes.length === 0) return [];
  const width = (index: number) => (boxes[index] as Bounds).maxX - (boxes[index] as Bounds).minX;
  const height = (index: number) => (boxes[index] as Bounds).maxY - (boxes[index] as Bounds).minY;
  const tallest = Math.max(...boxes.map((_, index) => height(index)));
  const gap = gapShare * tallest;
  const stacks = stackUp(boxes.length, width, height, tallest, gap);
  const candidates = stacks.map((_, rows) => inRows(stacks, rows + 1, gap));
  const off = (rows: readonly (readonly Stack[])[]) => {
    const { width: wide, height: high } = sizeOf(rows, gap);
    return Math.abs(Math.log(wide / high / aspect));
  };
  const rows = candidates.reduce((best, one) => (off(one) < off(best) ? one : best));
  const places: Point[] = [];
  let top = 0;
  for (const row of rows) {
    let left = 0;
    for (const stack of row) {
      let y = top;
      for (const index of stack.members) {
        const box = boxes[index] as Bounds;
        places[index] = { x: left - box.minX, y: y - box.minY };
        y += height(index) + gap;
      }
      left += stack.width + gap;
    }
    top += Math.max(...row.map((stack) => stack.height)) + gap;
  }
  return places;
};

/** A box goes under the one before it while the two together are no taller than the tallest and much of a width. */
const stackUp = (
  count: number,
  width: (index: number) => number,
  height: (index: number) => number,
  tallest: number,
  gap: number,
): readonly Stack[] => {
  const stacks: Stack[] = [];
  for (let index = 0; index < count; index += 1) {
    const last = stacks[stacks.length - 1];
    const fits = last && last.height + gap + height(index) <= tallest && width(index) <= last.width * 1.6;
    if (last && fits) {
      stacks[stacks.length - 1] = {
        members: [...last.members, index],
        width: Math.max(last.width, width(index)),
        height: last.height + gap + height(index),
      };
    } else stacks.push({ members: [index], width: width(index), height: height(index) });
  }
  return stacks;
};

/** Stacks shared out over rows of about the same width, their order kept. */
const inRows = (stacks: readonly Stack[], count: number, gap: number): readonly (readonly Stack[])[] => {
  const total = stacks.reduce((sum, stack) => sum + stack.width + gap, 0);
  const rows: Stack[][] = [[]];
  let used = 0;
  for (const stack of stacks) {
    const row = rows[rows.length - 1] as Stack[];
    const middle = used + (stack.width + gap) / 2;
    if (row.length > 0 && rows.length < count && middle > (total * rows.length) / count) rows.push([stack]);
    else row.push(stack);
    used += stack.width + gap;
  }
  return rows;
};

const sizeOf = (rows: readonly (readonly Stack[])[], gap: number): { width: number; height: number } => ({
  width: Math.max(...rows.map((row) => row.reduce((sum, stack) => sum + stack.width + gap, 0))),
  height: rows.reduce((sum, row) => sum + Math.max(...row.map((stack) => stack.height)) + gap, 0),
});
