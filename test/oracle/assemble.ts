import type { Spot, Stroke, Strokes } from './path.ts';
import { spotAt } from './path.ts';
import { type Box, boxOf, type PdfLine, type PdfPage, type PdfPrint } from './read-pdf.ts';

/** A sheet of paper that has been found to be a tile: where it belongs, read from what is printed on it. */
export interface FoundTile {
  readonly name: string;
  readonly column: number;
  readonly row: number;
  /** The frame on the page. */
  readonly frame: Box;
  /** Add to a place on the page to have it on the sheet. */
  readonly offset: Spot;
  readonly page: PdfPage;
}

export interface FoundLine {
  readonly layer: string;
  readonly run: Strokes;
  readonly closed: boolean;
  readonly width: number;
  readonly dash: readonly number[];
  /** Parts of the sheet on which it is printed. */
  readonly seenIn: readonly Box[];
}

export interface Assembled {
  readonly tiles: readonly FoundTile[];
  readonly lines: readonly FoundLine[];
  /** Everything that keeps the sheets from being joined, or a line from being one line across them. */
  readonly complaints: readonly string[];
}

const columnNumber = (letters: string): number =>
  [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;

/** A rectangle of four straight strokes, with its box. */
export const rectanglesOf = (page: PdfPage): readonly Box[] =>
  page.lines
    .filter((line) => line.layer === null && line.painted === 'stroke')
    .flatMap((line) =>
      line.runs.filter((run, index) => line.closed[index] && run.length === 4 && run.every(isSquareOn)),
    )
    .map((run) => boxOf([run]));

const isSquareOn = (stroke: Stroke): boolean => {
  const [from, to] = [stroke.points[0], stroke.points[stroke.points.length - 1] as Spot];
  return stroke.points.length === 2 && (Math.abs(from.x - to.x) < 1e-3 || Math.abs(from.y - to.y) < 1e-3);
};

/** The side lengths a test square of this many mm was printed with; null where there is none. */
export const testSquare = (
  print: PdfPrint,
  side: number,
): { readonly width: number; readonly height: number } | null => {
  const page = print.pages[0];
  if (!page) return null;
  // A wrong scale is what is looked for, so squares up to a twentieth off are still taken for it.
  const square = rectanglesOf(page)
    .map((box) => ({ width: box.right - box.left, height: box.bottom - box.top }))
    .filter(({ width, height }) => Math.abs(width - height) < side / 100 && Math.abs(width - side) < side / 20)
    .sort((a, b) => Math.abs(a.width - side) - Math.abs(b.width - side))[0];
  return square ?? null;
};

/** Complaints about the scale of a print; empty when both squares measure what they say, and no printer is asked to scale. */
export const judgeScale = (print: PdfPrint): readonly string[] => {
  const found: string[] = [];
  for (const [side, words] of [
    [100, '100 mm'],
    [101.6, '4 inches'],
  ] as const) {
    if (!print.pages[0]?.texts.some((text) => text.text === words)) found.push(`no square is marked “${words}”`);
    const square = testSquare(print, side);
    if (!square) found.push(`there is no test square of ${side} mm`);
    else if (Math.abs(square.width - side) > 0.1 || Math.abs(square.height - side) > 0.1) {
      found.push(`the square of ${side} mm measures ${square.width.toFixed(2)} × ${square.height.toFixed(2)}`);
    }
  }
  if (print.printScaling !== 'None') found.push('the file lets the printing program scale it');
  return found;
};

/** The step from sheet to sheet as the header says it: `184 × 265 mm`. */
const stepOn = (page: PdfPage): { x: number; y: number } | null => {
  for (const { text } of page.texts) {
    const match = /(\d+(?:\.\d+)?) × (\d+(?:\.\d+)?) mm/.exec(text);
    if (match) return { x: Number(match[1]), y: Number(match[2]) };
  }
  return null;
};

const findTile = (page: PdfPage): FoundTile | null => {
  const step = stepOn(page);
  const named = page.texts.map(({ text }) => /^([A-Z]+)(\d+)$/.exec(text)).find((match) => match !== null);
  if (!step || !named) return null;
  const frame = rectanglesOf(page).find(
    (box) => Math.abs(box.right - box.left - step.x) < 0.06 && Math.abs(box.bottom - box.top - step.y) < 0.06,
  );
  if (!frame) return null;
  const [column, row] = [columnNumber(named[1] as string), Number(named[2]) - 1];
  return {
    name: named[0],
    column,
    row,
    frame,
    offset: { x: column * step.x - frame.left, y: row * step.y - frame.top },
    page,
  };
};

const moved = (run: Strokes, by: Spot): Strokes =>
  run.map((stroke) => ({
    points: stroke.points.map((spot) => ({ x: spot.x + by.x, y: spot.y + by.y })) as unknown as Stroke['points'],
  })) as Strokes;

/** Two tiles' prints of one line lie this close, mm: far under what is judged, far over rounding in the file. */
const sameLine = 0.005;

/**
 * Joins the sheets by name and frame. A line printed on several sheets must be the very same line on each, and every
 * bit of it must be printed on at least one.
 */
export const assemble = (print: PdfPrint): Assembled => {
  const tiles = print.pages.map(findTile).filter((tile) => tile !== null);
  const complaints: string[] = [];
  const names = new Set<string>();
  for (const tile of tiles) {
    if (names.has(tile.name)) complaints.push(`two sheets are called ${tile.name}`);
    names.add(tile.name);
  }
  const found: (FoundLine & { seenIn: Box[] })[] = [];
  for (const tile of tiles) {
    for (const line of tile.page.lines) {
      if (line.layer === null || line.painted !== 'stroke') continue;
      line.runs.forEach((run, index) => {
        addLine(found, line, moved(run, tile.offset), line.closed[index] as boolean, windowOf(line, tile));
      });
    }
  }
  for (const line of found) {
    if (line.layer !== 'cut' && line.layer !== 'seam') continue;
    const missing = unseen(line.run, line.seenIn);
    if (missing)
      complaints.push(`a line of ${line.layer} is on no sheet at ${missing.x.toFixed(1)}, ${missing.y.toFixed(1)}`);
  }
  return { tiles, lines: found, complaints: [...complaints, ...judgeJoints(tiles)] };
};

const windowOf = (line: PdfLine, tile: FoundTile): Box => {
  const box = line.clip ?? { left: 0, top: 0, right: tile.page.width, bottom: tile.page.height };
  const { x, y } = tile.offset;
  return { left: box.left + x, top: box.top + y, right: box.right + x, bottom: box.bottom + y };
};

const addLine = (
  found: (FoundLine & { seenIn: Box[] })[],
  line: PdfLine,
  run: Strokes,
  closed: boolean,
  window: Box,
): void => {
  const same = found.find((one) => one.layer === line.layer && one.closed === closed && matches(one.run, run));
  if (same) same.seenIn.push(window);
  else found.push({ layer: line.layer as string, run, closed, width: line.width, dash: line.dash, seenIn: [window] });
};

const matches = (a: Strokes, b: Strokes): boolean =>
  a.length === b.length &&
  a.every((stroke, index) => {
    const other = b[index] as Stroke;
    return (
      stroke.points.length === other.points.length &&
      stroke.points.every((spot, i) => {
        const twin = other.points[i] as Spot;
        return Math.hypot(spot.x - twin.x, spot.y - twin.y) < sameLine;
      })
    );
  });

/** The first place along a line that no window shows. */
const unseen = (run: Strokes, windows: readonly Box[]): Spot | null => {
  for (const stroke of run) {
    for (let i = 0; i <= 200; i += 1) {
      const spot = spotAt(stroke, i / 200);
      const seen = windows.some(
        (box) =>
          spot.x >= box.left - 1e-6 &&
          spot.x <= box.right + 1e-6 &&
          spot.y >= box.top - 1e-6 &&
          spot.y <= box.bottom + 1e-6,
      );
      if (!seen) return spot;
    }
  }
  return null;
};

/** Each pair of neighbours must carry one and the same sign at their joint, and no other pair that sign. */
const judgeJoints = (tiles: readonly FoundTile[]): readonly string[] => {
  const complaints: string[] = [];
  const signs = new Map(tiles.map((tile) => [tile, signsOf(tile)]));
  const uses = new Map<string, number>();
  for (const set of signs.values()) for (const sign of set) uses.set(sign, (uses.get(sign) ?? 0) + 1);
  for (const tile of tiles) {
    for (const [column, row, kind] of [
      [tile.column + 1, tile.row, /^\d+$/],
      [tile.column, tile.row + 1, /^[a-z]+$/],
    ] as const) {
      const next = tiles.find((other) => other.column === column && other.row === row);
      if (!next) continue;
      const shared = [...(signs.get(tile) ?? [])].filter((sign) => kind.test(sign) && signs.get(next)?.has(sign));
      if (shared.length !== 1) complaints.push(`${tile.name} and ${next.name} share ${shared.length} signs`);
      else if (uses.get(shared[0] as string) !== 2) complaints.push(`the sign ${shared[0]} is on other sheets too`);
    }
  }
  return complaints;
};

/** Greatest distance from points along one run to another, mm; both ways. */
export const farthestApart = (a: Strokes, b: Strokes): number => Math.max(oneWay(a, b), oneWay(b, a));

const oneWay = (from: Strokes, to: Strokes): number => {
  const chords = polyline(to, 64);
  return Math.max(...polyline(from, 16).map((spot) => distanceTo(spot, chords)));
};

const polyline = (run: Strokes, pieces: number): readonly Spot[] => {
  const first = run[0];
  if (!first) return [];
  return [
    first.points[0],
    ...run.flatMap((stroke) => {
      const count = stroke.points.length === 2 ? 1 : pieces;
      return Array.from({ length: count }, (_, i) => spotAt(stroke, (i + 1) / count));
    }),
  ];
};

const distanceTo = (spot: Spot, chords: readonly Spot[]): number => {
  let best = Number.POSITIVE_INFINITY;
  for (let i = 0; i + 1 < chords.length; i += 1) {
    const [a, b] = [chords[i] as Spot, chords[i + 1] as Spot];
    const [dx, dy] = [b.x - a.x, b.y - a.y];
    const size = dx * dx + dy * dy;
    const t = size === 0 ? 0 : Math.min(1, Math.max(0, ((spot.x - a.x) * dx + (spot.y - a.y) * dy) / size));
    best = Math.min(best, Math.hypot(spot.x - a.x - t * dx, spot.y - a.y - t * dy));
  }
  return best;
};

/**
 * Complaints about how printed pieces differ from what they should be. Each expected closed run (in the piece's own
 * coordinates) must be printed once in the layer, moved as a whole, with no point more than `within` mm off.
 */
export const judgeRuns = (
  assembled: Assembled,
  layer: string,
  expected: readonly { readonly name: string; readonly run: Strokes }[],
  within: number,
): readonly string[] => {
  const printed = assembled.lines.filter((line) => line.layer === layer && line.closed);
  const complaints: string[] = [];
  if (printed.length !== expected.length)
    complaints.push(`${layer}: ${printed.length} printed, ${expected.length} expected`);
  const used = new Set<FoundLine>();
  for (const { name, run } of expected) {
    const box = boxOf([run]);
    const best = printed
      .filter((line) => !used.has(line))
      .map((line) => {
        const other = boxOf([line.run]);
        const by = { x: other.left - box.left, y: other.top - box.top };
        return { line, apart: farthestApart(line.run, moved(run, by)) };
      })
      .sort((a, b) => a.apart - b.apart)[0];
    if (!best) complaints.push(`${layer}: ${name} is not printed`);
    else {
      used.add(best.line);
      if (best.apart > within) complaints.push(`${layer}: ${name} is ${best.apart.toFixed(3)} mm off`);
    }
  }
  return complaints;
};

/** Signs that stand beside a ring on the frame's own line: nothing else on the sheet is a sign. */
const signsOf = (tile: FoundTile): ReadonlySet<string> => {
  const { frame } = tile;
  const centres = tile.page.lines
    .filter((line) => line.layer === null)
    .flatMap((line) => line.runs.filter((run) => run.length === 4 && run.every((stroke) => stroke.points.length === 4)))
    .map((run) => boxOf([run]))
    .map((box) => ({ x: (box.left + box.right) / 2, y: (box.top + box.bottom) / 2 }))
    .filter(
      ({ x, y }) =>
        Math.min(Math.abs(x - frame.left), Math.abs(x - frame.right)) < 0.01 ||
        Math.min(Math.abs(y - frame.top), Math.abs(y - frame.bottom)) < 0.01,
    );
  const beside = (spot: Spot) => centres.some((centre) => Math.hypot(centre.x - spot.x, centre.y - spot.y) < 14);
  return new Set(
    tile.page.texts
      .filter(({ layer, text, at }) => layer === null && /^(\d+|[a-z]{1,2})$/.test(text) && beside(at))
      .map(({ text }) => text),
  );
};
