import { type Mark, moveMarks, pieceDiffers, type TextWidth } from '../draw/index.ts';
import { translation } from '../geometry/index.ts';
import { bad, good, type Result } from '../units/index.ts';
import { fill, formatsWords as words } from '../words/index.ts';
import { type Exchange, exchangeOf } from './exchange.ts';
import { paperSizes, type TileFrame, tileFrame } from './paper.ts';
import { coverPages } from './print-cover.ts';
import { sheetMap } from './print-map.ts';
import type { SheetRequest } from './print-request.ts';
import { layOut, overlayPiece, type PrintPiece, printPiece, type Sheet } from './print-sheet.ts';

/** What lies on which sheet, before anything is written into a file. */
export interface PrintPlan {
  readonly frame: TileFrame;
  readonly sheet: Sheet;
  /** What is told about the print: pages of its own before the pieces, or marks at the head of the first sheet. */
  readonly coverApart: readonly (readonly Mark[])[];
  readonly coverHere: readonly Mark[];
  /** Where sheets of an earlier print are exchanged. */
  readonly exchange: Exchange | null;
}

/** What is told about the print takes this width, on a large sheet too: that of the narrower home paper. */
const coverWidth = 194;
/** Round it, to the frame and to the pieces, mm. */
const coverInset = 6;
const insetCover = (marks: readonly Mark[]) => moveMarks(marks, translation({ x: coverInset, y: coverInset }));

/** Every piece of the garment, numbered as in the full list, and those of them that are asked for. */
const piecesAsked = (request: SheetRequest, textWidth: TextWidth) => {
  const all = request.garment.pieces.map((piece, index) => printPiece(piece, index + 1, request));
  if (request.only === undefined) return { all, asked: all };
  const changed = all.filter(({ piece, original }) => !original || pieceDiffers(original, piece));
  return {
    all,
    asked: request.only === 'changed' ? changed : changed.map((piece) => overlayPiece(piece, request, textWidth)),
  };
};

/** An earlier print laid as it was, and what has to be exchanged on it. */
const planExchange = (request: SheetRequest, frame: TileFrame, textWidth: TextWidth): Result<Exchange> => {
  const { printed, only: _only, original: _original, alterations: _alterations, cuts: _cuts, ...bare } = request;
  if (!printed || !frame.paper.coverApart) return bad('formats.no-exchange');
  const before: SheetRequest = { ...bare, ...printed };
  const laid = before.garment.pieces.map((piece, index) => printPiece(piece, index + 1, before));
  const sheet = layOut(laid, frame, { width: 0, height: 0 });
  const pieces = request.garment.pieces.map((piece, index) => printPiece(piece, index + 1, bare));
  const exchange = exchangeOf(request, pieces, { sheet, request: before }, frame, textWidth);
  return exchange.sheet.printed.length === 0 && exchange.gone.length === 0
    ? bad('formats.nothing-changed')
    : good(exchange);
};

/**
 * Lays the pieces of a request on its paper. Problems: `formats.nothing-to-print`, `formats.nothing-changed` where only
 * what changed is asked for, `formats.no-exchange` on paper that is not joined at home.
 */
export const planPrint = (request: SheetRequest, textWidth: TextWidth): Result<PrintPlan> => {
  if (request.garment.pieces.length === 0) return bad('formats.nothing-to-print');
  const frame = tileFrame(paperSizes[request.paper]);
  const apart = frame.paper.coverApart;
  if (request.printed) {
    const exchange = planExchange(request, frame, textWidth);
    if (!exchange.ok) return exchange;
    const { sheet } = exchange.value;
    const told = { ...whole(sheet.pieces), exchange: exchange.value };
    const cover = coverOf(request, frame, told, sheet, textWidth).map((page) => page.marks);
    return good({ frame, sheet, coverApart: cover, coverHere: [], exchange: exchange.value });
  }
  const { all, asked } = piecesAsked(request, textWidth);
  if (asked.length === 0) return bad('formats.nothing-changed');
  const told: Told = { ...whole(asked), left: all.filter((one) => !asked.some(({ number }) => number === one.number)) };
  const height = apart ? 0 : (coverOf(request, frame, told, null, textWidth)[0]?.height ?? 0);
  const reserved =
    height === 0 ? { width: 0, height: 0 } : { width: coverWidth + 2 * coverInset, height: height + 2 * coverInset };
  const sheet = layOut(asked, frame, reserved);
  const cover = coverOf(request, frame, told, sheet, textWidth).map((page) => page.marks);
  return good({
    frame,
    sheet,
    coverApart: apart ? cover : [],
    coverHere: apart ? [] : insetCover(cover[0] ?? []),
    exchange: null,
  });
};

/** What is told of a print: the pieces on it, those left out of it, and the earlier print it is for. */
interface Told {
  readonly pieces: readonly PrintPiece[];
  readonly left: readonly PrintPiece[];
  readonly exchange: Exchange | null;
}

const whole = (pieces: readonly PrintPiece[]): Told => ({ pieces, left: [], exchange: null });

const sizeFact = (request: SheetRequest) => fill(words.sizeFact, { size: request.size }, request.unit, request.locale);

/** The pattern, the size and the make, as every sheet names them. */
export const heading = (request: SheetRequest): string =>
  [request.title, sizeFact(request), ...(request.make === undefined ? [] : [request.make])].join(' · ');

/** Before the sheet is laid out its height is already right: neither the map nor the number of sheets changes it. */
const coverOf = (
  request: SheetRequest,
  frame: TileFrame,
  { pieces, left, exchange }: Told,
  sheet: Sheet | null,
  textWidth: TextWidth,
) => {
  const { unit, locale } = request;
  const say = (template: string, values: Readonly<Record<string, string>>) => fill(template, values, unit, locale);
  const count = sheet?.printed.length ?? 1;
  const apart = frame.paper.coverApart;
  const sheets =
    count === 1 ? (apart ? words.sheetApart : words.sheetHere) : apart ? words.sheetsApart : words.sheetsHere;
  return coverPages(
    {
      title: request.title,
      facts: [
        [
          sizeFact(request),
          ...(request.make === undefined ? [] : [say(words.makeFact, { make: request.make })]),
          ...(request.wearer === undefined ? [] : [say(words.wearerFact, { wearer: request.wearer })]),
        ].join(' · '),
        say(sheets, { count: `${count}`, paper: words.paper[request.paper] }),
        ...(exchange ? [words.exchangeFact] : request.only ? [words.onlyFact[request.only]] : []),
      ],
      notes: exchange ? exchangeNotes(exchange, say) : leftNotes(left, say),
      pieces: pieces.map((piece) => ({ number: piece.number, text: piece.entry })),
      alterations: (request.alterations ?? []).map((one) => one.text),
      joins: apart || count > 1,
      overlays: request.only === 'overlay' && !exchange,
      originals: request.original !== undefined && !exchange,
      map: (box, textSize) => {
        if (!sheet) return { marks: [], height: 0 };
        const step = { x: frame.stepX, y: frame.paper.roll ? Math.min(frame.stepY, sheet.length) : frame.stepY };
        const bold = exchange ? new Set(sheet.printed.map(({ name }) => name)) : null;
        return sheetMap(sheet.tiles, step, sheet.pieces, box, textSize, bold);
      },
    },
    apart ? frame.paper.width - 2 * frame.margin : coverWidth,
    apart ? frame.paper.height - 2 * frame.margin : null,
    textWidth,
  );
};

type SayTemplate = (template: string, values: Readonly<Record<string, string>>) => string;

const names = (of: readonly { readonly name: string }[]): string => of.map(({ name }) => name).join(', ');
const piecesNamed = (pieces: readonly PrintPiece[]): string => pieces.map(({ piece }) => piece.name).join(', ');

const leftNotes = (left: readonly PrintPiece[], say: SayTemplate): readonly string[] =>
  left.length === 0 ? [] : [say(words.unchanged, { pieces: piecesNamed(left) })];

/** Which sheets of the earlier print are exchanged, kept and taken out, and what lies on sheets of its own. */
const exchangeNotes = ({ sheet, gone, apart, stale }: Exchange, say: SayTemplate): readonly string[] => {
  const printed = new Set(sheet.printed);
  const kept = sheet.tiles.filter((tile) => !printed.has(tile));
  const lines: readonly (readonly [string, string])[] = [
    [words.exchangeThese, names(sheet.printed)],
    [words.exchangeKeep, names(kept)],
    [words.exchangeGone, names(gone)],
    [words.exchangeApart, piecesNamed(apart)],
    [words.exchangeStale, piecesNamed(stale)],
  ];
  return lines.flatMap(([template, what]) => (what === '' ? [] : [say(template, { what })]));
};
