import { describeMeasure, type MeasureId } from '../../src/body/index.ts';
import {
  circle,
  type Drawing,
  drawingOf,
  estimatedTextWidth,
  filledMark,
  groupMark,
  type Mark,
  pathMark,
  rectangle,
  stroke,
  textMark,
} from '../../src/draw/index.ts';
import { type Envelope, type Figure, figureMm } from '../../src/pattern/index.ts';
import { formatLength } from '../../src/units/index.ts';
import { envelopePageWords, fill } from '../../src/words/index.ts';
import { locale } from '../app/settings.tsx';
import { unitOf, writeFigure } from './figures.ts';
import { finishedName, viewName } from './row-words.ts';

const words = envelopePageWords.picture;

/** A chart is a note on the table: an em of its words, mm. */
const em = 10;

/** Ems across, ems down a row, and how many rows there is room for. On a phone, fewer and closer, without the figures, which stand in the words. */
interface Layout {
  readonly across: number;
  readonly down: number;
  readonly line: number;
  readonly most: number;
  readonly figures: boolean;
}

const layouts = {
  wide: { across: 58, down: 7.4, line: 4.1, most: 12, figures: true },
  narrow: { across: 23, down: 5.2, line: 3.8, most: 3, figures: false },
} as const satisfies Record<string, Layout>;

/** What of a chart is drawn: for which table, and around which row, where not all have room. */
export interface ChartPicture {
  readonly narrow: boolean;
  readonly row: number;
}

/** One measure through the sizes, and where one person's own stands among them. */
export interface ChartStrip {
  readonly id: string;
  readonly name: string;
  readonly figures: readonly Figure[];
  /** The wearer's own, mm; null where it was not measured. */
  readonly own: number | null;
}

/** Which sizes a body measure lies between, in words. */
const placeAmong = (sizes: readonly string[], figures: readonly Figure[], own: number): string => {
  const known = figures.flatMap((figure, index) => {
    const mm = figureMm(figure);
    return mm === null ? [] : [{ mm, size: sizes[index] ?? '' }];
  });
  const first = known[0];
  const last = known.at(-1);
  if (!first || !last) return '';
  const near = known.find(({ mm }) => Math.abs(mm - own) < 1);
  if (near) return fill(words.at, { a: near.size }, 'cm');
  if (own < first.mm) return fill(words.below, { a: first.size }, 'cm');
  if (own > last.mm) return fill(words.above, { a: last.size }, 'cm');
  const upper = known.findIndex(({ mm }) => mm > own);
  return fill(words.between, { a: known[upper - 1]?.size ?? '', b: known[upper]?.size ?? '' }, 'cm');
};

interface Scale {
  readonly place: (mm: number) => number;
}

/** A strip's own scale: from its least to its greatest figure, her own among them, over the whole breadth. */
const scaleOf = ({ figures, own }: ChartStrip, across: number): Scale | null => {
  const all = [
    ...figures.flatMap((figure) => (figure === null ? [] : [figure].flat())),
    ...(own === null ? [] : [own]),
  ];
  if (all.length === 0) return null;
  const [low, high] = [Math.min(...all), Math.max(...all)];
  const room = across - 4;
  return { place: (mm) => (high > low ? (2 + (room * (mm - low)) / (high - low)) * em : (across / 2) * em) };
};

interface StripWords {
  readonly write: (figure: Figure) => string;
  readonly say: (mm: number) => string;
}

/** Words along a line, each left out where one before it takes its room. */
const spread = (
  entries: readonly { readonly x: number; readonly text: string }[],
  y: number,
  size: number,
  weight: 'regular' | 'bold',
): readonly Mark[] => {
  let end = -Infinity;
  return entries.flatMap(({ x, text }) => {
    const width = estimatedTextWidth(text, size, weight);
    if (x - width / 2 < end + size * 0.35) return [];
    end = x + width / 2;
    return [textMark('words', 'mark', { x, y }, text, size, { anchor: 'middle', weight })];
  });
};

const drawStrip = (
  strip: ChartStrip,
  sizes: readonly string[],
  top: number,
  { write, say }: StripWords,
  { across, line, figures }: Layout,
): readonly Mark[] => {
  const scale = scaleOf(strip, across);
  if (!scale) return [];
  const y = top + line * em;
  const placed = strip.figures.flatMap((figure, index) => {
    const mm = figureMm(figure);
    return mm === null ? [] : [{ x: scale.place(mm), figure, size: sizes[index] ?? '' }];
  });
  const ranges = placed.flatMap(({ figure }) =>
    typeof figure === 'number' || figure === null
      ? []
      : [rectangle(scale.place(figure[0]), y - em * 0.35, scale.place(figure[1]) - scale.place(figure[0]), em * 0.7)],
  );
  const dots = placed.map(({ x }) => circle({ x, y }, em * 0.32));
  const ends = placed.map(({ x }) => x);
  const own =
    strip.own === null
      ? []
      : [
          pathMark(
            'body',
            'body',
            stroke({ x: scale.place(strip.own), y: y - em * 0.95 }, { x: scale.place(strip.own), y: y + em * 0.95 }),
          ),
        ];
  const ownWords =
    strip.own === null
      ? []
      : [
          textMark(
            'body',
            'body',
            { x: across * em, y: top + em },
            figures
              ? `${say(strip.own)}, ${placeAmong(sizes, strip.figures, strip.own)}`
              : placeAmong(sizes, strip.figures, strip.own),
            em,
            { anchor: 'end' },
          ),
        ];
  const label = `${strip.name}: ${placed.map(({ size, figure }) => `${size} ${write(figure)}`).join(', ')}`;
  return [
    groupMark(`strip-${strip.id}`, label, [
      textMark('words', 'mark', { x: 0, y: top + em }, strip.name, em * 1.1, { weight: 'bold' }),
      ...ownWords,
      pathMark('marks', 'faint', stroke({ x: Math.min(...ends), y }, { x: Math.max(...ends), y })),
      ...ranges.flatMap((range) => [filledMark('marks', 'paper', range), pathMark('marks', 'mark', range)]),
      ...dots.flatMap((dot) => [filledMark('marks', 'paper', dot), pathMark('marks', 'mark', dot)]),
      ...spread(
        placed.map(({ x, size }) => ({ x, text: size })),
        y - em * 1.1,
        em * 0.95,
        'bold',
      ),
      ...spread(
        figures ? placed.map(({ x, figure }) => ({ x, text: write(figure) })) : [],
        y + em * 1.9,
        em * 0.9,
        'regular',
      ),
      ...own,
    ]),
  ];
};

const drawStrips = (
  envelope: Envelope,
  strips: readonly ChartStrip[],
  label: string,
  picture: ChartPicture,
): Drawing | null => {
  const layout: Layout = picture.narrow ? layouts.narrow : layouts.wide;
  const first = Math.max(0, Math.min(picture.row - 1, strips.length - layout.most));
  const shown = strips.slice(first, first + layout.most).filter((strip) => scaleOf(strip, layout.across) !== null);
  if (shown.length === 0) return null;
  const unit = unitOf(envelope);
  const said: StripWords = {
    write: (figure) => writeFigure(figure, unit, 'measure'),
    say: (mm) => formatLength(mm, unit, { locale }),
  };
  const marks = shown.flatMap((strip, index) =>
    drawStrip(strip, envelope.sizes, index * layout.down * em, said, layout),
  );
  return drawingOf(label, marks, em);
};

interface Body {
  readonly name: string;
  readonly measures: Readonly<Partial<Record<MeasureId, number>>>;
}

/** The body chart as a picture: each measure on a line of its own, uneven growth seen at once, with one wearer's body on it in blue. */
export const drawBodyChart = (envelope: Envelope, wearer: Body | null, picture: ChartPicture): Drawing | null =>
  drawStrips(
    envelope,
    envelope.body.map(({ measure, figures }) => ({
      id: measure,
      name: describeMeasure(measure).name,
      figures,
      own: wearer?.measures[measure] ?? null,
    })),
    wearer
      ? fill(words.bodyWith, { name: envelope.name, wearer: wearer.name }, 'cm')
      : fill(words.body, { name: envelope.name }, 'cm'),
    picture,
  );

/** The body measure a finished one goes round, so that her own can be set against it. */
const goesRound: Readonly<Record<string, MeasureId>> = {
  bust: 'bustGirth',
  waist: 'waistGirth',
  hip: 'hipGirth',
  'upper-arm': 'upperArmGirth',
  thigh: 'thighGirth',
  knee: 'kneeGirth',
  'across-back': 'acrossBack',
};

/** Finished measurements as a picture, with her own body under them where a measurement goes round one. */
export const drawFinishedChart = (envelope: Envelope, wearer: Body | null, picture: ChartPicture): Drawing | null =>
  drawStrips(
    envelope,
    envelope.finished.map((row, index) => {
      const measure = goesRound[row.of];
      const name = row.of === 'other' ? row.label : finishedName(row.of);
      return {
        id: `${index}`,
        name: envelope.views.length > 0 ? `${name}, ${viewName(envelope, row.view)}` : name,
        figures: row.figures,
        own: measure ? (wearer?.measures[measure] ?? null) : null,
      };
    }),
    wearer
      ? fill(words.finishedWith, { name: envelope.name, wearer: wearer.name }, 'cm')
      : fill(words.finished, { name: envelope.name }, 'cm'),
    picture,
  );
