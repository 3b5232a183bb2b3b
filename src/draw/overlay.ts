import {
  type Bounds,
  type Path,
  type Point,
  pathBounds,
  pathLength,
  pathPointAtLength,
  unionOfBounds,
} from '../geometry/index.ts';
import { cutLine, type Piece } from '../pattern/index.ts';
import { formatLength, type Unit } from '../units/index.ts';
import { drawWords, fill } from '../words/index.ts';
import { clipPath } from './clip-path.ts';
import type { CutPlace } from './cut-place.ts';
import { inkDiffering, lineMarks } from './ink-differs.ts';
import { circle, pathMark, rectangle, stroke, type TextWidth, textMark } from './marks.ts';
import { originalMarks } from './piece.ts';
import { registerPoints } from './register-points.ts';
import { roomForWords } from './room-for-words.ts';
import type { Mark, PathMark } from './types.ts';

export interface OverlayOptions {
  readonly unit: Unit;
  readonly locale?: string;
  readonly textWidth: TextWidth;
  /** Em of the words, mm. */
  readonly textSize: number;
  /** What is written on it under the piece's name: the pattern, and each alteration with its amounts. */
  readonly notes: readonly string[];
  /** Where the piece was cut. */
  readonly cuts: readonly CutPlace[];
}

/** A piece of paper to lay on the tissue, in the piece's own coordinates. */
export interface Overlay {
  readonly box: Bounds;
  readonly marks: readonly Mark[];
  /** Places to lay it by: three or more, or none where it is the whole piece anew. */
  readonly registers: readonly Point[];
}

/** Beyond what changed, and round the middle of a register mark, mm. */
const roundChange = 25;
const roundRegister = 16;
const registerReach = 7;
/** Within the frame, mm. */
const inset = 5;

const grown = (box: Bounds, by: number): Bounds => ({
  minX: box.minX - by,
  minY: box.minY - by,
  maxX: box.maxX + by,
  maxY: box.maxY + by,
});

const meeting = (a: Bounds, b: Bounds): Bounds => ({
  minX: Math.max(a.minX, b.minX),
  minY: Math.max(a.minY, b.minY),
  maxX: Math.min(a.maxX, b.maxX),
  maxY: Math.min(a.maxY, b.maxY),
});

const boundsOf = (paths: readonly Path[]): Bounds | null =>
  paths
    .filter((path) => path.length > 0)
    .map(pathBounds)
    .reduce<Bounds | null>((all, one) => (all ? unionOfBounds(all, one) : one), null);

const boxPath = (box: Bounds): Path => rectangle(box.minX, box.minY, box.maxX - box.minX, box.maxY - box.minY);

/** A square stood on its corner with a cross through it: no mark of the trade's and no joint of sheets looks like it. */
const registerMark = (at: Point): Mark => {
  const r = registerReach * 0.7;
  const corners = [
    { x: at.x, y: at.y - r },
    { x: at.x + r, y: at.y },
    { x: at.x, y: at.y + r },
    { x: at.x - r, y: at.y },
  ];
  const sides = corners.map((corner, index) => stroke(corner, corners[(index + 1) % 4] as Point));
  return pathMark(
    'marks',
    'mark',
    sides.flat(),
    stroke({ x: at.x - registerReach, y: at.y }, { x: at.x + registerReach, y: at.y }),
    stroke({ x: at.x, y: at.y - registerReach }, { x: at.x, y: at.y + registerReach }),
  );
};

const clipped = (mark: PathMark, box: Bounds): readonly PathMark[] => {
  if (mark.filled) {
    const whole = mark.paths.filter((path) => {
      const { minX, minY, maxX, maxY } = pathBounds(path);
      return minX >= box.minX && maxX <= box.maxX && minY >= box.minY && maxY <= box.maxY;
    });
    return whole.length > 0 ? [{ ...mark, paths: whole }] : [];
  }
  const paths = mark.paths.flatMap((path) => clipPath(path, box));
  return paths.length > 0 ? [{ ...mark, paths }] : [];
};

/** Inks by whose moving a place counts as changed; a level or the grain moves along with the paper round it. */
const telling: ReadonlySet<PathMark['ink']> = new Set(['cut', 'seam', 'mark']);

const whatChanged = (before: Piece, after: Piece): Bounds | null => {
  const tells = (piece: Piece) => lineMarks(piece).filter(({ ink }) => telling.has(ink));
  const { now, was } = inkDiffering(tells(after), tells(before));
  return boundsOf([...now, ...was]);
};

interface Laid {
  readonly box: Bounds;
  readonly registers: readonly Point[];
}

const layOut = (before: Piece | undefined, after: Piece, cuts: readonly CutPlace[]): Laid => {
  const whole = (): Bounds => {
    const box = pathBounds(cutLine(after));
    return grown(before ? unionOfBounds(box, pathBounds(cutLine(before))) : box, inset);
  };
  const changed = before ? whatChanged(before, after) : null;
  if (!before || !changed) return { box: whole(), registers: [] };
  const cut = boundsOf(cuts.map(({ path }) => path));
  const region = cut ? unionOfBounds(changed, cut) : changed;
  const registers = registerPoints(before, after, region);
  if (registers.length === 0) return { box: whole(), registers };
  const round = registers.map((p) => grown({ minX: p.x, minY: p.y, maxX: p.x, maxY: p.y }, roundRegister));
  const wanted = round.reduce(unionOfBounds, grown(region, roundChange));
  // Beyond the piece there is nothing to see: only paper would be wasted.
  const most = round.reduce(unionOfBounds, whole());
  return { box: meeting(wanted, most), registers };
};

const sayAmount = (place: CutPlace, unit: Unit, locale: string): string => {
  const step = String(place.step);
  if (place.amount === null) return fill(drawWords.cutOnly, { step }, unit, locale);
  const amount = formatLength(Math.abs(place.amount), unit, { purpose: 'amount', locale });
  const template = place.amount < 0 ? drawWords.cutTakenOut : place.hinge ? drawWords.cutOpened : drawWords.cutPutIn;
  return fill(template, { step, amount }, unit, locale);
};

/** Full-scale print of what changed on a piece, to lay on the tissue: the new lines, the old, and where it was cut. */
export const drawOverlay = (before: Piece | undefined, after: Piece, options: OverlayOptions): Overlay => {
  const { unit, locale = 'en', textSize: size, textWidth, cuts } = options;
  const { box, registers } = layOut(before, after, cuts);
  const lines: readonly PathMark[] = [...(before ? originalMarks(before) : []), ...lineMarks(after)].flatMap((mark) =>
    clipped(mark, box),
  );
  const red = cuts.flatMap((cut) => clipPath(cut.path, box));
  const hinges = cuts.flatMap(({ hinge }) => (hinge ? [circle(hinge, hingeRadius)] : []));
  const marks: Mark[] = [
    pathMark('words', 'faint', boxPath(box)),
    ...lines,
    ...(red.length > 0 ? [pathMark('marks', 'changed', ...red)] : []),
    ...(hinges.length > 0 ? [pathMark('marks', 'mark', ...hinges)] : []),
    ...registers.map(registerMark),
  ];
  const room = roomForWords(boxPath(box), [
    ...marks.flatMap((mark) => (mark.kind === 'path' && mark.ink !== 'faint' ? [...mark.paths] : [])),
  ]);
  const words: Mark[] = [];
  const put = (text: string, near: Point, em: number, weight: 'regular' | 'bold' = 'regular') => {
    const [width, height] = [textWidth(text, em, weight) + em * 0.6, em * 1.2];
    const centre = room.find(width, height, near, 'lines');
    if (!centre) return;
    room.take(centre, width, height);
    words.push(
      textMark('words', 'mark', { x: centre.x, y: centre.y + em * 0.28 }, text, em, { anchor: 'middle', weight }),
    );
  };
  const said = new Set<string>();
  for (const cut of cuts) {
    const text = sayAmount(cut, unit, locale);
    const middle = pathPointAtLength(cut.path, pathLength(cut.path) / 2);
    const key = `${text} ${Math.round(middle.x / 40)} ${Math.round(middle.y / 40)}`;
    if (said.has(key) || (cut.amount === null && cuts.length > mostNamed)) continue;
    said.add(key);
    put(text, middle, size);
    if (cut.hinge) put(fill(drawWords.hingeHere, { step: String(cut.step) }, unit, locale), cut.hinge, size);
  }
  registers.forEach((at, index) => {
    const number = String(index + 1);
    put(fill(drawWords.registerHere, { number }, unit, locale), { x: at.x, y: at.y + registerReach * 1.4 }, size);
  });
  const title = textBlock(after, registers.length > 0, box, options, room);
  const all = unionOfBounds(box, title.bounds);
  return {
    box: all,
    registers,
    marks: [
      ...marks,
      ...words,
      ...title.marks,
      ...(all.maxY > box.maxY ? [pathMark('words', 'faint', boxPath(all))] : []),
    ],
  };
};

/** Round a hinge, mm. */
const hingeRadius = 2.2;
/** Where more lines were cut than this, those at which nothing is put in go without a word. */
const mostNamed = 2;

/** The piece's name and what is told of it: within the frame where there is room, else on a strip below it. */
const textBlock = (
  piece: Piece,
  registered: boolean,
  box: Bounds,
  { notes, textSize: size, textWidth, unit, locale = 'en' }: OverlayOptions,
  room: ReturnType<typeof roomForWords>,
): { readonly marks: readonly Mark[]; readonly bounds: Bounds } => {
  const how = registered ? drawWords.overlayLay : drawWords.overlayWhole;
  const texts = [fill(drawWords.overlayOf, { name: piece.name }, unit, locale), ...notes, how];
  const widthFor = (wide: number) => Math.min(wide, box.maxX - box.minX - 2 * inset);
  const leading = size * 1.3;
  const linesIn = (width: number) =>
    texts.flatMap((text, index) =>
      wrapped(text, width, (part) => textWidth(part, size, index === 0 ? 'bold' : 'regular')).map((part) => ({
        part,
        weight: index === 0 ? ('bold' as const) : ('regular' as const),
      })),
    );
  const marksAt = (left: number, top: number, lines: ReturnType<typeof linesIn>): readonly Mark[] =>
    lines.map(({ part, weight }, index) =>
      textMark('words', 'mark', { x: left, y: top + size * 0.9 + index * leading }, part, size, { weight }),
    );
  for (const wide of [90, 70, 55]) {
    const lines = linesIn(widthFor(wide));
    const [width, height] = [
      Math.max(...lines.map(({ part, weight }) => textWidth(part, size, weight))) + size,
      lines.length * leading + size,
    ];
    const centre = room.find(width, height, { x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 }, 'lines');
    if (centre) {
      return { marks: marksAt(centre.x - width / 2 + size / 2, centre.y - height / 2 + size / 2, lines), bounds: box };
    }
  }
  const strip = Math.max(box.maxX - box.minX, leastStrip);
  const lines = linesIn(strip - 2 * inset);
  const bounds = {
    minX: box.minX,
    minY: box.maxY,
    maxX: box.minX + strip,
    maxY: box.maxY + lines.length * leading + size,
  };
  return { marks: marksAt(box.minX + inset, box.maxY + size / 2, lines), bounds };
};

/** A strip of words below an overlay is no narrower than this, mm. */
const leastStrip = 70;

const wrapped = (text: string, width: number, widthOf: (text: string) => number): readonly string[] => {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && widthOf(longer) > width) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  return [...lines, line];
};
