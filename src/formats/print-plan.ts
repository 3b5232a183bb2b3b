import { type Mark, moveMarks, type TextWidth } from '../draw/index.ts';
import { translation } from '../geometry/index.ts';
import { fill, formatsWords as words } from '../words/index.ts';
import { paperSizes, type TileFrame, tileFrame } from './paper.ts';
import { coverPages } from './print-cover.ts';
import { sheetMap } from './print-map.ts';
import type { SheetRequest } from './print-request.ts';
import { layOut, type PrintPiece, printPiece, type Sheet } from './print-sheet.ts';

/** What lies on which sheet, before anything is written into a file. */
export interface PrintPlan {
  readonly frame: TileFrame;
  readonly sheet: Sheet;
  /** What is told about the print: pages of its own before the pieces, or marks at the head of the first sheet. */
  readonly coverApart: readonly (readonly Mark[])[];
  readonly coverHere: readonly Mark[];
}

/** What is told about the print takes this width, on a large sheet too: that of the narrower home paper. */
const coverWidth = 194;
/** Round it, to the frame and to the pieces, mm. */
const coverInset = 6;
const insetCover = (marks: readonly Mark[]) => moveMarks(marks, translation({ x: coverInset, y: coverInset }));

/** Lays the pieces of a request on its paper. */
export const planPrint = (request: SheetRequest, textWidth: TextWidth): PrintPlan => {
  const frame = tileFrame(paperSizes[request.paper]);
  const apart = frame.paper.coverApart;
  const pieces = request.garment.pieces.map((piece, index) => printPiece(piece, index + 1, request));
  const height = apart ? 0 : (coverOf(request, frame, pieces, null, textWidth)[0]?.height ?? 0);
  const reserved =
    height === 0 ? { width: 0, height: 0 } : { width: coverWidth + 2 * coverInset, height: height + 2 * coverInset };
  const sheet = layOut(pieces, frame, reserved);
  const cover = coverOf(request, frame, pieces, sheet, textWidth).map((page) => page.marks);
  return {
    frame,
    sheet,
    coverApart: apart ? cover : [],
    coverHere: apart ? [] : insetCover(cover[0] ?? []),
  };
};

const sizeFact = (request: SheetRequest) => fill(words.sizeFact, { size: request.size }, request.unit, request.locale);

/** The pattern, the size and the make, as every sheet names them. */
export const heading = (request: SheetRequest): string =>
  [request.title, sizeFact(request), ...(request.make === undefined ? [] : [request.make])].join(' · ');

/** Before the sheet is laid out its height is already right: neither the map nor the number of sheets changes it. */
const coverOf = (
  request: SheetRequest,
  frame: TileFrame,
  pieces: readonly PrintPiece[],
  sheet: Sheet | null,
  textWidth: TextWidth,
) => {
  const { unit, locale } = request;
  const say = (template: string, values: Readonly<Record<string, string>>) => fill(template, values, unit, locale);
  const count = sheet?.tiles.length ?? 1;
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
      ],
      pieces: pieces.map((piece) => ({ number: piece.number, text: piece.entry })),
      alterations: (request.alterations ?? []).map((one) => one.text),
      joins: apart || count > 1,
      originals: request.original !== undefined,
      map: (box, textSize) => {
        if (!sheet) return { marks: [], height: 0 };
        const step = { x: frame.stepX, y: frame.paper.roll ? Math.min(frame.stepY, sheet.length) : frame.stepY };
        return sheetMap(sheet.tiles, step, sheet.pieces, box, textSize);
      },
    },
    apart ? frame.paper.width - 2 * frame.margin : coverWidth,
    apart ? frame.paper.height - 2 * frame.margin : null,
    textWidth,
  );
};
