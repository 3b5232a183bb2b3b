import { describeMeasure, type MeasureId, measureIds } from '../../src/body/index.ts';
import type { HousePattern } from '../../src/drafting/index.ts';
import { sayCut, sayNotion } from '../../src/draw/index.ts';
import { finishedGirths, notionsOf, type Pattern } from '../../src/pattern/index.ts';
import { formatLength, formatPercent } from '../../src/units/index.ts';
import { fill, webHouseWords } from '../../src/words/index.ts';
import type { SizedAnswer } from './cloth-tables.ts';

/** A page of docs/patterns as Markdown, every figure of it computed. */

const cm = (mm: number): string => formatLength(mm, 'cm', { bare: true });

const table = (head: readonly string[], rows: readonly (readonly string[])[]): string =>
  [head, head.map(() => '---'), ...rows].map((row) => `| ${row.join(' | ')} |`).join('\n');

const levelName = (id: string): string => id.replaceAll('-', ' ');

const main: readonly MeasureId[] = [
  'stature',
  'bustGirth',
  'upperBustGirth',
  'waistGirth',
  'hipGirth',
  'backWaistLength',
  'armLength',
  'insideLeg',
];

const chart = (pattern: Pattern): string => {
  const shown = main.filter((id) => measureIds.includes(id) && pattern.sizes[0]?.body[id] !== undefined);
  return table(
    ['Size', ...shown.map((id) => describeMeasure(id).name)],
    pattern.sizes.map(({ id, body }) => [id, ...shown.map((measure) => cm(body[measure] ?? 0))]),
  );
};

const finished = (pattern: Pattern): string => {
  const levels = finishedGirths(pattern.sizes[0]?.garment ?? { pieces: [], seams: [], girths: [] });
  return table(
    ['Size', ...levels.map(({ level }) => levelName(level))],
    pattern.sizes.map(({ id, garment }) => [id, ...finishedGirths(garment).map((girth) => cm(girth.finished))]),
  );
};

const pieces = (pattern: Pattern): string =>
  table(
    ['Piece', 'Cut'],
    (pattern.sizes[0]?.garment.pieces ?? []).map((piece) => [piece.name, sayCut(piece, 'cm', 'en').join('; ')]),
  );

const cloth = (rows: readonly SizedAnswer[]): string => {
  const sizes = [...new Set(rows.map(({ size }) => size))];
  const kinds = [...new Set(rows.map(({ layer, width, oneWay }) => `${layer} ${width} ${oneWay}`))];
  return table(
    ['Layer', 'Width', 'Laid', ...sizes.map((size) => `Size ${size}`)],
    kinds.map((kind) => {
      const own = rows.filter(({ layer, width, oneWay }) => `${layer} ${width} ${oneWay}` === kind);
      const first = own[0];
      return [
        first ? webHouseWords.layer[first.layer] : '',
        cm(first?.width ?? 0),
        first?.oneWay ? webHouseWords.withNap.toLowerCase() : webHouseWords.eitherWay.toLowerCase(),
        ...sizes.map((size) => {
          const answer = own.find((one) => one.size === size);
          if (answer?.toBuyMetric) return `${(answer.toBuyMetric / 1000).toFixed(1)} m`;
          return answer?.refused === 'lay.wider-than-cloth' ? webHouseWords.tooNarrow : webHouseWords.noPlan;
        }),
      ];
    }),
  );
};

const notions = (house: HousePattern, pattern: Pattern): string => {
  const middle = pattern.sizes[Math.floor((pattern.sizes.length - 1) / 2)];
  if (!middle) return '';
  return notionsOf(middle.garment, house.notions(pattern.view?.id), middle.body)
    .map((notion) => `- ${sayNotion(notion, 'cm')}`)
    .join('\n');
};

export const patternPage = (house: HousePattern, tables: (view: string) => readonly SizedAnswer[]): string => {
  const first = house.pattern();
  const { cloth: advice } = first;
  const cups = house.cups.map((cup) => cm(cup)).join(', ');
  const views = house.views.flatMap(({ id, name, about }) => {
    const pattern = house.pattern({ view: id });
    const work = house
      .work(id)
      .map(({ do: doing, text }, index) => `${index + 1}. **${webHouseWords.doing[doing]}.** ${fill(text, {}, 'cm')}`);
    return [
      `## ${name}`,
      about,
      `![${house.name}, ${name}: front and back](pictures/sketch-${house.id}-${id}.svg)`,
      '### Pieces',
      pieces(pattern),
      `![Every piece in every size, one within the other](pictures/nest-${house.id}-${id}.svg)`,
      '### Finished measurements, cm',
      'Measured off the pieces: seams, darts and pleats closed, centre to centre.',
      finished(pattern),
      '### Cloth needed',
      'Laid out by the program on cloth folded lengthwise and washed, with enough to square the ends, up to the next 10 cm. Cloth that has not been washed takes more by what it shrinks.',
      cloth(tables(id)),
      `### Notions, size ${pattern.sizes[Math.floor((pattern.sizes.length - 1) / 2)]?.id}`,
      notions(house, pattern) || 'None.',
      '### Order of work',
      work.join('\n'),
    ];
  });
  const stretch = advice.stretch > 0 ? `, stretching at least ${formatPercent(advice.stretch, 'en')} across` : '';
  return `${[
    `# ${house.name}`,
    '<!-- Written by `npm run pattern-pages` from the code; changes made here are lost. -->',
    house.about,
    ...(house.cautions.length > 0 ? ['**Take care.**', ...house.cautions] : []),
    `Cloth: ${advice.structure}, ${advice.weight[0]} to ${advice.weight[1]} g/m²${stretch}; ${advice.cloths.join(', ')}.`,
    ...(cups
      ? [
          `Cups, as bust girth less upper bust girth: ${cups} cm. Figures below are for ${cm(first.draftedCup ?? 0)} cm.`,
        ]
      : []),
    '## Sizes',
    'The body each size is drafted for, cm.',
    chart(first),
    ...views,
    '## What a cutter looks at',
    'Checked in every size, every cup and on every surveyed body:',
    house
      .shape()
      .map(({ about, source }) => `- ${about} (${source}).`)
      .join('\n'),
  ].join('\n\n')}\n`;
};
