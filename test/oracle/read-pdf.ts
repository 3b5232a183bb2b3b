import type { Spot, Stroke, Strokes } from './path.ts';

/**
 * Reads a printed pattern back from its PDF alone. Everything in millimetres, x right, y down, from a page's top left;
 * assembled: from the sheet's top left.
 */
export interface PdfLine {
  /** The optional-content layer it stands in; null for the sheet's own furniture. */
  readonly layer: string | null;
  readonly painted: 'stroke' | 'fill' | 'both';
  readonly width: number;
  readonly dash: readonly number[];
  /** Runs of straight strokes and cubics, as written. */
  readonly runs: readonly Strokes[];
  readonly closed: readonly boolean[];
  /** The rectangle outside of which nothing of it is seen; null for the whole page. */
  readonly clip: Box | null;
}

export interface PdfText {
  readonly layer: string | null;
  readonly text: string;
  readonly at: Spot;
  /** Em, mm. */
  readonly size: number;
  readonly clip: Box | null;
}

export interface PdfPage {
  readonly width: number;
  readonly height: number;
  readonly lines: readonly PdfLine[];
  readonly texts: readonly PdfText[];
}

export interface PdfPrint {
  readonly layers: readonly string[];
  /** What the file asks of the printing program: `None` is no scaling. */
  readonly printScaling: string | null;
  readonly fonts: number;
  readonly pages: readonly PdfPage[];
}

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

type Matrix = readonly [number, number, number, number, number, number];

const multiply = (m: Matrix, n: readonly number[]): Matrix => {
  const [a, b, c, d, e, f] = n as [number, number, number, number, number, number];
  return [
    m[0] * a + m[2] * b,
    m[1] * a + m[3] * b,
    m[0] * c + m[2] * d,
    m[1] * c + m[3] * d,
    m[0] * e + m[2] * f + m[4],
    m[1] * e + m[3] * f + m[5],
  ];
};

const apply = (m: Matrix, x: number, y: number): Spot => ({
  x: m[0] * x + m[2] * y + m[4],
  y: m[1] * x + m[3] * y + m[5],
});

const loadReader = async () => {
  // The reader draws nothing here, but it will not load without the name of a matrix.
  const host = globalThis as { DOMMatrix?: unknown };
  host.DOMMatrix ??= class {};
  return import('pdfjs-dist/legacy/build/pdf.mjs');
};

export const readPdf = async (bytes: Uint8Array): Promise<PdfPrint> => {
  const reader = await loadReader();
  const task = reader.getDocument({ data: bytes.slice(), verbosity: 0, useSystemFonts: false, disableFontFace: true });
  const document = await task.promise;
  const config = await document.getOptionalContentConfig({ intent: 'display' });
  const names = new Map<string, string>();
  for (const [id, group] of config as unknown as Iterable<[string, { name: string }]>) names.set(id, group.name);
  const preferences = (await document.getViewerPreferences()) as { PrintScaling?: string } | null;
  const pages: PdfPage[] = [];
  const fonts = new Set<string>();
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number);
    const list = await page.getOperatorList({ intent: 'display' });
    const [left, bottom, right, top] = page.view as [number, number, number, number];
    const toMm = (25.4 / 72) * page.userUnit;
    const base: Matrix = [toMm, 0, 0, -toMm, -left * toMm, top * toMm];
    const { lines, texts } = readOperators(reader.OPS, list, base, names, fonts);
    pages.push({ width: (right - left) * toMm, height: (top - bottom) * toMm, lines, texts });
  }
  await task.destroy();
  return { layers: [...names.values()], printScaling: preferences?.PrintScaling ?? null, fonts: fonts.size, pages };
};

interface State {
  readonly matrix: Matrix;
  readonly width: number;
  readonly dash: readonly number[];
  readonly clip: Box | null;
  readonly fontSize: number;
}

type Operators = Awaited<ReturnType<typeof loadReader>>['OPS'];

const readOperators = (
  OPS: Operators,
  list: { readonly fnArray: readonly number[]; readonly argsArray: readonly unknown[] },
  base: Matrix,
  names: ReadonlyMap<string, string>,
  fonts: Set<string>,
): { lines: PdfLine[]; texts: PdfText[] } => {
  const lines: PdfLine[] = [];
  const texts: PdfText[] = [];
  const kept: State[] = [];
  const contents: (string | null)[] = [];
  let state: State = { matrix: base, width: 1, dash: [], clip: null, fontSize: 0 };
  let textMatrix: Matrix = [1, 0, 0, 1, 0, 0];
  let clips = false;
  const layer = () => contents.findLast((name) => name !== null) ?? null;
  list.fnArray.forEach((operator, index) => {
    const args = (list.argsArray[index] ?? []) as readonly unknown[];
    const numbers = args as readonly number[];
    const scale = Math.sqrt(Math.abs(state.matrix[0] * state.matrix[3] - state.matrix[1] * state.matrix[2]));
    switch (operator) {
      case OPS.save:
        kept.push(state);
        break;
      case OPS.restore:
        state = kept.pop() ?? state;
        break;
      case OPS.transform:
        state = { ...state, matrix: multiply(state.matrix, numbers) };
        break;
      case OPS.setLineWidth:
        state = { ...state, width: (numbers[0] as number) * scale };
        break;
      case OPS.setDash:
        state = { ...state, dash: (args[0] as number[]).map((one) => one * scale) };
        break;
      case OPS.beginMarkedContentProps: {
        const about = args[1] as { type?: string; id?: string } | null;
        contents.push(args[0] === 'OC' && about?.id ? (names.get(about.id) ?? about.id) : null);
        break;
      }
      case OPS.beginMarkedContent:
        contents.push(null);
        break;
      case OPS.endMarkedContent:
        contents.pop();
        break;
      case OPS.clip:
      case OPS.eoClip:
        clips = true;
        break;
      case OPS.constructPath: {
        const [paint, [data]] = args as [number, [Float32Array | null]];
        const { runs, closed } = readPath(data ? [...data] : [], state.matrix);
        if (clips) {
          state = { ...state, clip: meeting(state.clip, boxOf(runs)) };
          clips = false;
        }
        const painted = paintedBy(OPS, paint);
        if (painted && runs.length > 0) {
          const { width, dash, clip } = state;
          lines.push({ layer: layer(), painted, width, dash, runs, closed, clip });
        }
        break;
      }
      case OPS.setFont:
        fonts.add(String(args[0]));
        state = { ...state, fontSize: numbers[1] as number };
        break;
      case OPS.beginText:
        textMatrix = [1, 0, 0, 1, 0, 0];
        break;
      case OPS.setTextMatrix: {
        const matrix = (Array.isArray(args[0]) || ArrayBuffer.isView(args[0]) ? args[0] : args) as ArrayLike<number>;
        textMatrix = multiply([1, 0, 0, 1, 0, 0], Array.from(matrix));
        break;
      }
      case OPS.showText: {
        const glyphs = args[0] as readonly ({ unicode?: string } | number)[];
        const text = glyphs.map((glyph) => (typeof glyph === 'number' ? '' : (glyph.unicode ?? ''))).join('');
        const whole = multiply(state.matrix, textMatrix);
        const size = state.fontSize * Math.hypot(whole[2], whole[3]);
        texts.push({ layer: layer(), text, at: apply(whole, 0, 0), size, clip: state.clip });
        break;
      }
    }
  });
  return { lines, texts };
};

const paintedBy = (OPS: Operators, paint: number): PdfLine['painted'] | null => {
  if (paint === OPS.stroke || paint === OPS.closeStroke) return 'stroke';
  if (paint === OPS.fill || paint === OPS.eoFill) return 'fill';
  if ([OPS.fillStroke, OPS.eoFillStroke, OPS.closeFillStroke, OPS.closeEOFillStroke].includes(paint)) return 'both';
  return null;
};

/** The reader's path data: 0 x y begins, 1 draws straight, 2 a cubic, 3 a quadratic, 4 closes. */
const readPath = (data: readonly number[], matrix: Matrix): { runs: Strokes[]; closed: boolean[] } => {
  const runs: Stroke[][] = [];
  const closed: boolean[] = [];
  let start: Spot = { x: 0, y: 0 };
  let at = start;
  let place = 0;
  const spot = (): Spot => {
    const [x, y] = [data[place++] as number, data[place++] as number];
    return apply(matrix, x, y);
  };
  const push = (stroke: Stroke) => runs[runs.length - 1]?.push(stroke);
  while (place < data.length) {
    const code = data[place++];
    if (code === 0) {
      start = at = spot();
      runs.push([]);
      closed.push(false);
    } else if (code === 1) {
      const to = spot();
      push({ points: [at, to] });
      at = to;
    } else if (code === 2) {
      const [first, second, to] = [spot(), spot(), spot()];
      push({ points: [at, first, second, to] });
      at = to;
    } else if (code === 3) {
      const [middle, to] = [spot(), spot()];
      const toward = (from: Spot): Spot => ({
        x: from.x + (2 / 3) * (middle.x - from.x),
        y: from.y + (2 / 3) * (middle.y - from.y),
      });
      push({ points: [at, toward(at), toward(to), to] });
      at = to;
    } else if (code === 4) {
      if (at.x !== start.x || at.y !== start.y) push({ points: [at, start] });
      closed[closed.length - 1] = true;
      at = start;
    } else throw new Error(`A path of the page cannot be read: code ${code}`);
  }
  const kept = runs
    .map((run, index) => ({ run, closed: closed[index] as boolean }))
    .filter(({ run }) => run.length > 0);
  return { runs: kept.map(({ run }) => run), closed: kept.map((one) => one.closed) };
};

export const boxOf = (runs: readonly Strokes[]): Box => {
  const spots = runs.flatMap((run) => run.flatMap((stroke) => stroke.points as readonly Spot[]));
  const xs = spots.map((spot) => spot.x);
  const ys = spots.map((spot) => spot.y);
  return { left: Math.min(...xs), top: Math.min(...ys), right: Math.max(...xs), bottom: Math.max(...ys) };
};

const meeting = (a: Box | null, b: Box): Box =>
  a
    ? {
        left: Math.max(a.left, b.left),
        top: Math.max(a.top, b.top),
        right: Math.min(a.right, b.right),
        bottom: Math.min(a.bottom, b.bottom),
      }
    : b;
