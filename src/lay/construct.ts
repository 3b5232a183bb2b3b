import { Arrangement } from './arrangement.ts';
import type { Random } from './random.ts';
import type { Shape, Table } from './table.ts';

/**
 * A first plan, bottom-left: bulky copies first, each slid along the strip on many rows to the first free
 * place, the one that ends soonest taken (after Baker, Coffman, Rivest 1980; Hopper and Turton 2001).
 * A slide jumps by the depth of the worst overlap, which cannot leap over a free place, but by no less
 * than a thousandth of the cloth's width, so that gliding along an edge comes to an end.
 */
export function* construct(table: Table, random: Random): Generator<void, Arrangement> {
  const total = table.copies.reduce((sum, item) => {
    const widths = Array.from(table.shapesOf[item] as Int32Array, (s) => (table.shapes[s] as Shape).width);
    return sum + Math.min(...widths) + 2 * table.fields.clearance;
  }, 0);
  const arrangement = new Arrangement(table, total);
  const order = Int32Array.from(table.copies.keys());
  order.sort((a, b) => {
    const [ia, ib] = [table.copies[a] as number, table.copies[b] as number];
    return (table.bulk[ib] as number) - (table.bulk[ia] as number) || a - b;
  });
  const placed: number[] = [];
  const rows = 12;
  const leastJump = table.strip.height / 1000;
  for (const copy of order) {
    const item = table.copies[copy] as number;
    const onFold = table.strip.items[item]?.onFold === true;
    let best = { end: Infinity, shape: -1, x: 0, y: 0 };
    for (const shape of table.shapesOf[item] as Int32Array) {
      const { width, height } = table.shapes[shape] as Shape;
      const most = table.strip.height - height;
      if (most < 0) continue;
      for (let row = 0; row < rows; row++) {
        const y = onFold ? 0 : row === 0 ? 0 : row === 1 ? most : random.next() * most;
        let x = 0;
        while (x + width < best.end) {
          const deepest = arrangement.deepest(placed, shape, x, y);
          if (deepest <= table.allowed) {
            best = { end: x + width, shape, x, y };
            break;
          }
          x += Math.max(deepest, leastJump);
        }
        if (onFold) break;
      }
    }
    if (best.shape < 0) throw new Error('A copy found no place on an endless strip');
    arrangement.place(copy, best.shape, best.x, best.y);
    placed.push(copy);
    yield;
  }
  arrangement.length = arrangement.usedLength();
  arrangement.measureAll();
  return arrangement;
}
