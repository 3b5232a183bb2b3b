import { describe, expect, it, test } from 'vitest';
import { sentence } from '../../words/index.ts';
import { blankEnvelope } from './document.ts';
import {
  type ChartOptions,
  type ChartRead,
  type Figure,
  newlyPlaced,
  placeAsked,
  readChart,
  readEnvelope,
  withChart,
} from './index.ts';

const inch = 25.4;
const read = (text: string, options: ChartOptions): ChartRead => {
  const chart = readChart(text, options);
  if (!chart.ok) throw new Error(`${chart.problem.code}: ${sentence(chart.problem, 'cm').message}`);
  return chart.value;
};
const round = (figure: Figure): unknown =>
  typeof figure === 'number' ? Math.round(figure) : (figure?.map(Math.round) ?? null);
const bodyOf = (chart: ChartRead): Readonly<Record<string, unknown>> =>
  Object.fromEntries(chart.body.map(({ measure, figures }) => [measure, figures.map(round)]));
const clothOf = (chart: ChartRead): readonly string[] =>
  chart.clothNeeded.map(
    ({ view, layer, width, nap, figures }) =>
      `${view ?? 'all'} ${layer} ${Math.round(width)} ${nap}: ${figures.map(round).join(' ')}`,
  );
const body = { kind: 'body', printedIn: 'cm' } as const;
const run = (count: number, from = 1): string => Array.from({ length: count }, (_, at) => at + from).join('\t');
const rows = (count: number, row: (at: number) => string): string =>
  Array.from({ length: count }, (_, at) => row(at + 1)).join('\n');

describe('one chart typed in many ways', () => {
  const expected = { bustGirth: [800, 840, 880], waistGirth: [625, 665, 705], hipGirth: [880, 920, 960] };
  it.each([
    ['tabs', 'Size\t8\t10\t12\nBust\t80\t84\t88\nWaist\t62.5\t66.5\t70.5\nHips\t88\t92\t96'],
    ['tabs with an empty head', '\t8\t10\t12\nBust\t80\t84\t88\nWaist\t62,5\t66,5\t70,5\nHips\t88\t92\t96\t'],
    ['semicolons and decimal commas', 'Size;8;10;12\nBust;80;84;88\nWaist;62,5;66,5;70,5\nHips;88;92;96'],
    [
      'bars in a frame',
      '| Size | 8 | 10 | 12 |\n|:--|--:|--:|--:|\n| Bust | 80 | 84 | 88 |\n| Waist | 62.5 | 66.5 | 70.5 |\n| Hip | 88 | 92 | 96 |',
    ],
    ['bars without a frame', 'Size | 8 | 10 | 12\nBust | 80 | 84 | 88\nWaist | 62.5 | 66.5 | 70.5\nHip | 88 | 92 | 96'],
    ['commas', 'Size,8,10,12\nBust,80,84,88\nWaist,62.5,66.5,70.5\nHip,88,92,96'],
    [
      'commas and quotation marks',
      '"Size","8","10","12"\n"Bust","80","84","88"\n"Waist","62,5","66,5","70,5"\n"Hip","88","92","96"',
    ],
    ['commas after a colon', 'Size: 8, 10, 12\nBust: 80, 84, 88\nWaist: 62.5, 66.5, 70.5\nHip: 88, 92, 96'],
    ['marks that lead to notes', 'Size\t8\t10\t12\nBust*\t80\t84\t88*\nWaist\t62.5\t66.5\t70.5 †\nHip\t88\t92\t96'],
    [
      'names with wide gaps in them',
      'Size      8    10    12\nFull  bust     80   84   88\nWaist     62.5   66.5   70.5\nHip      88   92   96',
    ],
    [
      'runs of spaces',
      'Size     8     10    12\nBust    80     84    88\nWaist   62,5   66,5  70,5\nFull hip  88   92    96',
    ],
    ['single spaces', 'Size 8 10 12\nBust 80 84 88\nWaist 62.5 66.5 70.5\nHip 88 92 96'],
    [
      'no-break spaces and right-to-left marks',
      '\u200fSize\u202b\u00a0\u00a08\u00a0\u00a010\u00a0\u00a012\u202c\nBust\u2003\u200380\u2003\u200384\u2003\u2003\u206688\u2069\nWaist\u00a0\u00a062.5\u00a0\u00a066.5\u00a0\u00a070.5\nHip\u00a0\u00a088\u00a0\u00a092\u00a0\u00a096\u200e',
    ],
    [
      'units beside the figures',
      'Size\t8\t10\t12\nBust\t80 cm\t84cm\t88 cm\nWaist\t625 mm\t665 mm\t705 mm\nHip\t88cm\t92cm\t96cm',
    ],
    [
      'units in the labels',
      'Size\t8\t10\t12\nBust (cm)\t80\t84\t88\nWaist, cm\t62.5\t66.5\t70.5\nHip – cm\t88\t92\t96',
    ],
    ['a column of units', 'Size\t\t8\t10\t12\nBust\tcm\t80\t84\t88\nWaist\tcm\t62.5\t66.5\t70.5\nHip\tcm\t88\t92\t96'],
    [
      'a title with the unit',
      'Body measurements in centimetres\n\nSize\t8\t10\t12\nBUST\t80\t84\t88\nWAIST\t62.5\t66.5\t70.5\nHIP\t88\t92\t96',
    ],
    ['the unit over the sizes', 'cm\t8\t10\t12\nBust\t80\t84\t88\nWaist\t62.5\t66.5\t70.5\nHip\t88\t92\t96'],
    ['sizes down the side', 'Size\tBust\tWaist\tHip\n8\t80\t62.5\t88\n10\t84\t66.5\t92\n12\t88\t70.5\t96'],
    ['largest size first', 'Size\t12\t10\t8\nBust\t88\t84\t80\nWaist\t70.5\t66.5\t62.5\nHip\t96\t92\t88'],
    [
      'lines ended as on other machines',
      'Size\t8\t10\t12\r\nBust\t80\t84\t88\r\nWaist\t62.5\t66.5\t70.5\rHip\t88\t92\t96',
    ],
  ])('with %s', (_, text) => {
    const chart = read(text, body);
    expect(bodyOf(chart)).toEqual(expected);
    expect(chart.sizes).toEqual(['8', '10', '12']);
    expect(chart.asked).toEqual([]);
  });
});

describe('figures as printed', () => {
  it.each<[string, unknown]>([
    ['31 1/2', 800],
    ['31-1/2', 800],
    ['31½', 800],
    ['31 ½"', 800],
    ['31.5', 800],
    ['31,5', 800],
    ['31 1/2 in', 800],
    ['30–32', [762, 813]],
    ['30 - 32', [762, 813]],
    ['30 to 32', [762, 813]],
    ['30½ – 32½"', [775, 826]],
    ['-', null],
    ['—', null],
    ['n/a', null],
    ['', null],
  ])('%s', (cell, figure) => {
    expect(bodyOf(read(`Size\t8\t10\nBust\t${cell}\t40`, { kind: 'body', printedIn: 'inches' }))).toEqual({
      bustGirth: [figure, 1016],
    });
  });
});

describe('sizes', () => {
  it.each<[string, readonly string[]]>([
    ['Size XS S M L XL', ['XS', 'S', 'M', 'L', 'XL']],
    ['XS\tS\tM\tL\tXL\t1X\t5X', ['XS', 'S', 'M', 'L', 'XL', '1X', '5X']],
    ['Size  34  36  38  52', ['34', '36', '38', '52']],
    ['Sizes\t8-10\t12-14\t16-18', ['8-10', '12-14', '16-18']],
    ['Size\tS (8-10)\tM (12-14)', ['S (8-10)', 'M (12-14)']],
    ['Size\t8\t10\t8T\t10T', ['8', '10', '8T', '10T']],
    ['Size\t8 tall\t10 tall', ['8 tall', '10 tall']],
    ['Size\t2 years\t3 years', ['2 years', '3 years']],
    ['US\t8\t10', ['8', '10']],
  ])('%s', (head, sizes) => {
    const separator = head.includes('\t') ? '\t' : head.includes('  ') ? '  ' : ' ';
    const figures = sizes.map((_, at) => 80 + 4 * (at % (sizes.length > 3 && head.includes('8T') ? 2 : 60)));
    const chart = read(`${head}\n${['Bust', ...figures].join(separator)}`, body);
    expect(chart.sizes).toEqual(sizes);
  });

  it('known already, are taken for columns without a head', () => {
    const chart = read('Bust\t80\t84\nHip\t88\t92', { ...body, sizes: ['8', '10'] });
    expect(bodyOf(chart)).toEqual({ bustGirth: [800, 840], hipGirth: [880, 920] });
  });

  it('of another country beside them are passed over', () => {
    expect(read('Size\t8\t10\nEUR\t34\t36\nBust\t80\t84', body).sizes).toEqual(['8', '10']);
  });

  it('that are busts themselves do not swallow the row of the bust', () => {
    const chart = read('Size\t34\t36\nChest\t34\t36', { kind: 'body', printedIn: 'inches' });
    expect(bodyOf(chart)).toEqual({ bustGirth: [864, 914] });
  });

  it('of one only are allowed, and said', () => {
    const chart = read('Size\t12\nBust\t88', body);
    expect(chart.said.map(({ code }) => code)).toEqual(['envelope.one-size']);
  });
});

describe('both units', () => {
  const expected = { bustGirth: [800, 840], hipGirth: [880, 920] };
  it.each([
    ['a row in each', 'Size\t8\t10\nBust (in)\t31½\t33\nBust (cm)\t80\t84\nHip (in)\t34⅝\t36¼\nHip (cm)\t88\t92'],
    ['a row in each, unnamed', 'Size\t8\t10\nBust (in)\t31½\t33\n(cm)\t80\t84\nHip (in)\t34⅝\t36¼\n(cm)\t88\t92'],
    ['a unit column', 'Size\t\t8\t10\nBust\tin\t31½\t33\n\tcm\t80\t84\nHip\tin\t34⅝\t36¼\n\tcm\t88\t92'],
    ['a passage for each', 'Size\t8\t10\nInches\nBust\t31½\t33\nHip\t34⅝\t36¼\nCentimetres\nBust\t80\t84\nHip\t88\t92'],
    ['brackets', 'Size\t8\t10\nBust\t31½" (80 cm)\t33" (84 cm)\nHip\t34⅝" (88 cm)\t36¼" (92 cm)'],
    ['a stroke, the units in the head', 'Inches (cm)\t8\t10\nBust\t31½/80\t33/84\nHip\t34⅝/88\t36¼/92'],
  ])('in %s: one is taken, the other checks it', (_, text) => {
    const chart = read(text, body);
    expect(bodyOf(chart)).toEqual(expected);
    expect(chart.said).toEqual([]);
    expect(bodyOf(read(text, { kind: 'body', printedIn: 'inches' })).bustGirth).toEqual([800, 838]);
  });

  it('may stand in a column without a head', () => {
    const text = '\t8\t10\nBust\tin\t31½\t33\n\tcm\t80\t84\nHip\tin\t34⅝\t36¼\n\tcm\t88\t92';
    expect(bodyOf(read(text, body))).toEqual(expected);
  });

  it('are said where they disagree', () => {
    const chart = read('Size\t8\t10\nBust (in)\t31½\t33\nBust (cm)\t80\t94', body);
    expect(chart.said).toMatchObject([{ code: 'envelope.units-disagree', values: { size: '10', taken: { mm: 940 } } }]);
  });
});

describe('labels', () => {
  it.each([
    ['Full bust', 'bustGirth'],
    ['Chest', 'bustGirth'],
    ['High bust', 'upperBustGirth'],
    ['Upper bust girth', 'upperBustGirth'],
    ['Waist circumference', 'waistGirth'],
    ['Nape to waist', 'backWaistLength'],
    ['Back waist length', 'backWaistLength'],
    ['Inside leg', 'insideLeg'],
    ['Inseam', 'insideLeg'],
    ['Height', 'stature'],
    ['Sleeve length', 'armLength'],
    ['Your bust measurement:', 'bustGirth'],
    ['Bust, in.', 'bustGirth'],
    ['Bust in inches', 'bustGirth'],
  ])('%s is %s', (label, measure) => {
    expect(read(`Size\t8\t10\n${label}\t80\t84`, body).body.map((row) => row.measure)).toEqual([measure]);
  });

  it.each(['Busk', 'Bust M', 'High hip', 'Finished bust', 'Bust dart', 'Taille'])('%s is asked about', (label) => {
    const chart = read(`Size\t8\t10\n${label}\t80\t84`, body);
    expect(chart.body).toEqual([]);
    expect(chart.asked).toEqual([{ label, view: null, figures: [800, 840] }]);
  });
});

describe('views and finished measurements', () => {
  const printed = { kind: 'finished', printedIn: 'inches' } as const;
  const rows = (chart: ChartRead): readonly string[] =>
    chart.finished.map(
      ({ of, view, figures }) =>
        `${view ?? 'all'} ${of} ${figures.map((figure) => Math.round((Number(figure) / inch) * 1000) / 1000).join(' ')}`,
    );
  const expected = [
    'A bust 36 37',
    'B bust 40 41',
    'all hem-width 60 61',
    'A back-length 25 25.25',
    'B back-length 27 27.25',
  ];
  it.each([
    [
      'headings',
      '\t8\t10\nWidth at lower edge\t60\t61\nView A\nFinished bust\t36\t37\nBack length\t25\t25¼\nView B\nFinished bust\t40\t41\nBack length\t27\t27¼',
    ],
    [
      'labels',
      'Size\t8\t10\nBust, View A\t36\t37\nBust, View B\t40\t41\nHem width\t60\t61\nView A back length\t25\t25¼\nBack length (view B)\t27\t27¼',
    ],
    [
      'a first column',
      'View\t\t8\t10\nA\tBust at finish\t36\t37\nA\tBack length\t25\t25¼\nB\tBust at finish\t40\t41\n\tBack length\t27\t27¼\nAll views\tHem sweep\t60\t61'.replaceAll(
        ' at finish',
        '',
      ),
    ],
  ])('by %s', (_, text) => {
    const chart = read(text, printed);
    const sorted = (list: readonly string[]) => [...list].sort();
    expect(sorted(rows(chart))).toEqual(sorted(expected));
    expect(chart.views.map(({ id }) => id)).toEqual(['A', 'B']);
  });

  it('known by other names are found by their letters', () => {
    const views = [
      { id: 'view-a', name: 'View A: long sleeve', about: '' },
      { id: 'short', name: 'B, short sleeve', about: '' },
    ];
    const chart = read('Size\t8\t10\nBust, View A\t36\t37\nBust B\t40\t41', { ...printed, views });
    expect(rows(chart)).toEqual(['short bust 40 41', 'view-a bust 36 37']);
    expect(chart.views).toEqual(views);
  });

  it('that share a row are each given it', () => {
    expect(rows(read('Size\t8\t10\nBust A, B\t36\t37\nBust, views C-D\t40\t41', printed))).toEqual([
      'A bust 36 37',
      'B bust 36 37',
      'C bust 40 41',
      'D bust 40 41',
    ]);
  });
});

describe('cloth needed', () => {
  const inches = { kind: 'cloth', printedIn: 'inches' } as const;
  const metric = { kind: 'cloth', printedIn: 'cm' } as const;

  it('reads widths, nap, layers and views, in yards', () => {
    const text =
      'Size\t8\t10\nView A\n45" *\t2 1/4\t2 3/8 yd\n60"/150 cm **\t1 3/4\t1⅞\nLining 45"\t1\t1 1/8\nView B\n45" with nap\t3\t3¼\nContrast 60"\t½\t½';
    expect(clothOf(read(text, inches))).toEqual([
      'A shell 1143 without: 2057 2172',
      'A shell 1524 with: 1600 1715',
      'A lining 1143 without: 914 1029',
      'B shell 1143 with: 2743 2972',
      'B contrast 1524 without: 457 457',
    ]);
  });

  it('reads metres, and centimetres where they can be nothing else', () => {
    expect(clothOf(read('Size\t36\t38\nA 115 cm\t2,10\t2,20\nA 150 cm\t160\t170', metric))).toEqual([
      'A shell 1150 without: 2100 2200',
      'A shell 1500 without: 1600 1700',
    ]);
  });

  it('takes yards and metres of the same row for one, and checks', () => {
    const text = 'Size\t8\t10\n45" without nap\t2 1/4\t2 3/8\n115 cm without nap\t2.10\t2.20';
    expect(clothOf(read(text, inches))).toEqual(['all shell 1143 without: 2057 2172']);
    expect(clothOf(read(text, metric))).toEqual(['all shell 1150 without: 2100 2200']);
    expect(read(text, metric).said).toEqual([]);
  });

  it('heeds the chart’s own legend of its stars', () => {
    const chart = read('* with nap ** without nap\nSize\t8\t10\n45"*\t2\t2\n60"**\t1½\t1½\n54"*/**\t1¾\t1¾', inches);
    expect(chart.clothNeeded.map(({ nap }) => nap)).toEqual(['with', 'either', 'without']);
    expect(chart.said).toEqual([]);
    expect(read('Size\t8\t10\n45"*\t2\t2', inches).said.map(({ code }) => code)).toEqual(['envelope.stars-usual']);
  });

  it('heeds a legend at the foot of the chart as well', () => {
    const chart = read('Size\t8\t10\n45"*\t2\t2\n60"**\t1½\t1½\n*with nap, **without nap', inches);
    expect(chart.clothNeeded.map(({ nap }) => nap)).toEqual(['with', 'without']);
    expect(chart.said).toEqual([]);
  });

  it('takes a row of nothing but a width with the row above it', () => {
    expect(clothOf(read('Size 8 10\nView A 45" 2 1/4 2 1/2\n60" 1 1/2 1 3/4\nView B 45" 3 3', inches))).toEqual([
      'A shell 1143 without: 2057 2286',
      'A shell 1524 without: 1372 1600',
      'B shell 1143 without: 2743 2743',
    ]);
  });

  it('reads garments with their views, and marks that stand for the unit above', () => {
    const text =
      'Yardage\nSizes   8   10\nDress A, B  45"*   3 1/8   3 1/4 yds.\n   60"**   2 1/4   2 1/2   "\nContrast A  45"   3/8   3/8   "\n* without nap ** with nap';
    expect(clothOf(read(text, inches))).toEqual([
      'A shell 1143 without: 2858 2972',
      'A shell 1524 with: 2057 2286',
      'A contrast 1143 without: 343 343',
      'B shell 1143 without: 2858 2972',
      'B shell 1524 with: 2057 2286',
    ]);
    const centimetres = 'Size\t8\t10\t\nBust\t80\t84\tcm\nHip\t88\t92\t"';
    expect(bodyOf(read(centimetres, { kind: 'body' }))).toEqual({ bustGirth: [800, 840], hipGirth: [880, 920] });
  });

  it('reads columns of views and widths', () => {
    expect(
      clothOf(
        read(
          'View | Width | 8 | 10\nA, B | 115 cm | 2.1 | 2.2\n | 150 cm | 1.6 | 1.7\nInterfacing | 90 cm | 0,5 | 0,5',
          metric,
        ),
      ),
    ).toEqual(
      [
        'A shell 1150 without: 2100 2200',
        'A shell 1500 without: 1600 1700',
        'B shell 1150 without: 2100 2200',
        'B shell 1500 without: 1600 1700',
        'all interfacing 900 without: 500 500',
      ].sort((a, b) => (a.startsWith('all') ? -1 : b.startsWith('all') ? 1 : 0)),
    );
  });

  it.each(['body', 'finished'] as const)('asks whether a shoulder width of a %s chart is of one shoulder', (kind) => {
    const chart = read('Size\t8\t10\nShoulder width\t38\t39', { kind, printedIn: 'cm' });
    expect(chart.asked.map(({ label }) => label)).toEqual(['Shoulder width']);
  });

  it.each([
    ['tabs', 'Size\t8\t10\t12\n45" Fabric\t2\t2 1/8\t2 1/4\nInterfacing 20"\t3/4 yd'],
    ['tabs, no unit', 'Size\t8\t10\t12\n45" Fabric\t2\t2 1/8\t2 1/4\nInterfacing 20"\t¾'],
    ['a comma', 'Size\t8\t10\t12\n45" Fabric\t2\t2 1/8\t2 1/4\nInterfacing 20", ¾ yd'],
    ['spaces', 'Size 8 10 12\n45" Fabric 2 2 1/8 2 1/4\nInterfacing 20" 3/4 yd'],
    ['words', 'Size\t8\t10\t12\n45" Fabric\t2\t2 1/8\t2 1/4\nInterfacing 20": 3/4 yd for all sizes'],
  ])('takes one figure beside a layer for every size and says so (%s)', (_, text) => {
    const chart = read(text, { kind: 'cloth', printedIn: 'inches' });
    expect(chart.asked).toEqual([]);
    const row = chart.clothNeeded.find(({ layer }) => layer === 'interfacing');
    expect(row?.width).toBeCloseTo(20 * 25.4, 6);
    for (const figure of row?.figures ?? []) expect(figure).toBeCloseTo(0.75 * 914.4, 6);
    expect(row?.figures).toHaveLength(3);
    expect(chart.clothNeeded.find(({ layer }) => layer === 'shell')?.figures[1]).toBeCloseTo(2.125 * 914.4, 6);
    expect(chart.said.map(({ code }) => code)).toEqual(['envelope.one-for-all']);
  });

  it('takes no one figure of a width alone for every size: two may be missing', () => {
    const refused = readChart('Size\t8\t10\t12\n115 cm\t2.1\n150 cm\t1.6\t1.7\t1.8', metric);
    expect(refused).toMatchObject({ ok: false, problem: { code: 'envelope.gap' } });
  });

  it('asks about a row without a width', () => {
    const chart = read('Size\t8\t10\n115 cm\t2.1\t2.2\nElastic\t0.7 m\t0.8 m', metric);
    expect(chart.asked).toEqual([
      { label: 'Elastic', view: null, figures: [700, 800], cloth: { layer: 'shell', nap: 'without', width: null } },
    ]);
  });
});

describe('what is refused, with row and size', () => {
  const inBody = (text: string): readonly [string, ChartOptions] => [text, body];
  it.each<[string, readonly [string, ChartOptions], string, object]>([
    ['nothing', inBody(' \n\u200f\n'), 'chart-empty', {}],
    ['a letter', inBody('Dear aunt,\nplease bring 3 yards of the blue cloth.\nYours'), 'no-sizes', {}],
    ['a shopping list', ['Milk\t2\nFlour\t1', { ...body, sizes: ['8', '10', '12', '14'] }], 'no-chart', {}],
    ['figures without sizes', inBody('Bust\t80\t84\nWaist\t62\t66'), 'no-sizes', {}],
    ['sizes without figures', inBody('Size\t8\t10\t12'), 'no-chart', {}],
    ['a size twice', inBody('Size\t8\t10\t10\nBust\t80\t84\t88'), 'size-twice', { size: '10' }],
    [
      'a missing cell',
      inBody('Size\t8\t10\t12\nBust\t80\t84\nHip\t88\t92\t96'),
      'gap',
      { row: 'Bust', found: 2, size: '12' },
    ],
    [
      'a missing cell between spaces',
      inBody('Size   8   10   12\nBust   80   84\nHip   88   92   96'),
      'gap',
      { row: 'Bust', size: '12' },
    ],
    [
      'a missing figure between single spaces',
      inBody('Size 8 10 12\nBust 80 84\nHip 88 92 96'),
      'gap',
      { row: 'Bust', found: 2, size: '12' },
    ],
    ['a row without figures', inBody('Size\t8\t10\nBust\nHip\t88\t92'), 'gap', { row: 'Bust', found: 0, size: '8' }],
    ['a figure too many', inBody('Size\t8\t10\nBust\t80\t84\t88'), 'too-many-figures', { row: 'Bust', found: 3 }],
    [
      'columns that cross',
      inBody('Size\t8\t10\t12\nBust\t80\t84\t88\nWaist\t62\t70\t66'),
      'crossing',
      { row: 'Waist', size: '12', before: '10' },
    ],
    ['a row that falls', inBody('Size\t8\t10\t12\nBust\t88\t84\t80'), 'crossing', { row: 'Bust', size: '10' }],
    [
      'tall sizes that cross',
      inBody('Size\t8\t10\t8T\t10T\nBust\t80\t84\t84\t80'),
      'crossing',
      { size: '10T', before: '8T' },
    ],
    ['10,000 columns', inBody(`Size\t${'8\t'.repeat(10_000)}\nBust\t${'80\t'.repeat(10_000)}`), 'chart-too-broad', {}],
    [
      '10,000 columns apart by spaces',
      inBody(`Size ${'8  '.repeat(10_000)}\nBust ${'80  '.repeat(10_000)}`),
      'chart-too-broad',
      {},
    ],
    ['a book', inBody('It was a dark night.\n'.repeat(5000)), 'chart-too-long', {}],
    ['inches and cm in one row', inBody('Size\t8\t10\nBust\t31.5 in\t84 cm'), 'mixed-units', { row: 'Bust' }],
    [
      'a label that contradicts its figures',
      inBody('Size\t8\t10\nBust (in)\t80 cm\t84 cm'),
      'mixed-units',
      { row: 'Bust' },
    ],
    ['no unit at all', ['Size\t8\t10\nBust\t31\t33', { kind: 'body' }], 'unit-unknown', { row: 'Bust' }],
    ['prices', inBody('Size\t8\t10\nBust\t£80\t£84'), 'price', { row: 'Bust', size: '8' }],
    ['one price', inBody('Size\t8\t10\nBust\t80\t84 €'), 'price', { row: 'Bust', size: '10' }],
    ['a row of prices', inBody('Size\t8\t10\nBust\t80\t84\nPrice\t12.50\t12.50'), 'price', { row: 'Price' }],
    ['powers of ten', inBody('Size\t8\t10\nBust\t80\t1e9'), 'not-a-figure', { row: 'Bust', size: '10', text: '1e9' }],
    ['two decimal marks', inBody('Size\t8\t10\nBust\t80\t84.1.2'), 'not-a-figure', { size: '10' }],
    ['a word among figures', inBody('Size\t8\t10\nBust\t80\tlots 9'), 'not-a-figure', { size: '10' }],
    ['a negative figure', inBody('Size\t8\t10\nBust\t80\t-84'), 'not-a-figure', { size: '10' }],
    ['a range that falls', inBody('Size\t8\t10\nBust\t80-76\t84'), 'not-a-figure', { size: '8' }],
    ['99999', inBody('Size\t8\t10\nBust\t80\t99999'), 'nonsense-figure', { size: '10' }],
    ['nothing for a girth', inBody('Size\t8\t10\nBust\t0\t84'), 'nonsense-figure', { size: '8' }],
    ['a row twice with other figures', inBody('Size\t8\t10\nBust\t80\t84\nChest\t81\t85'), 'row-twice', {}],
    [
      'other sizes than the pattern’s',
      ['Size\t8\t12\nBust\t80\t84', { ...body, sizes: ['8', '10'] }],
      'sizes-differ',
      { found: '8, 12' },
    ],
    [
      'cloth with a figure missing',
      ['Size 8 10 12\n45" 2 1/4 2 1/2', { kind: 'cloth', printedIn: 'inches' }],
      'row-unnamed',
      {},
    ],
    [
      'cloth under a width, with another width as a figure',
      ['Size 8 10 12\n45"\n60" 2 1/4 2 1/2', { kind: 'cloth', printedIn: 'inches' }],
      'width-among-lengths',
      { text: '60"' },
    ],
  ])('%s', (_, [text, options], code, values) => {
    const chart = readChart(text, options);
    expect(chart).toMatchObject({
      ok: false,
      problem: { code: `envelope.${code}`, ...(Object.keys(values).length > 0 ? { values } : {}) },
    });
    if (chart.ok) return;
    const { message, remedy } = sentence(chart.problem, 'cm');
    expect(`${message} ${remedy}`).not.toMatch(/[{}]/);
  });

  it('before a large paste can keep anyone waiting', () => {
    const began = process.cpuUsage();
    readChart(`Size\t${'8\t'.repeat(1_000_000)}`, body);
    readChart('Bust 1 - '.repeat(220), { ...body, sizes: Array.from({ length: 40 }, (_, at) => String(at)) });
    readChart(`Size 8 10\n${`${'a '.repeat(990)}\n`.repeat(29)}`, { kind: 'finished' });
    // Some ten times what it takes; processor time, so that a busy machine does not count.
    expect(process.cpuUsage(began).user / 1000).toBeLessThan(3000);
  });

  it('a line that is no row is left out, and said', () => {
    const chart = read('Size\t8\t10\nBust\t80\t84\nPrinted at the harbour press', body);
    expect(chart.said).toMatchObject([
      { code: 'envelope.line-left-out', values: { text: 'Printed at the harbour press' } },
    ]);
  });
});

describe('putting a chart into an envelope', () => {
  const chart = read('Size\t8\t10\nBust\t80\t84\nHigh hip\t84\t88', body);

  it('takes its sizes when it is still empty, and what was asked once it is answered', () => {
    const answered = placeAsked(chart, 0, { as: 'body', measure: 'abdomenGirth' });
    if (!answered.ok) throw new Error(answered.problem.code);
    const envelope = withChart(blankEnvelope({ name: 'Smock' }), answered.value);
    if (!envelope.ok) throw new Error(envelope.problem.code);
    expect(envelope.value.sizes).toEqual(['8', '10']);
    expect(envelope.value.body.map(({ measure }) => measure)).toEqual(['bustGirth', 'abdomenGirth']);
    expect(readEnvelope(envelope.value).ok).toBe(true);
    const again = withChart(envelope.value, read('Size\t8\t10\nBust\t82\t86', body));
    expect(again.ok && again.value.body.map(({ figures }) => figures)).toEqual([
      [820, 860],
      [840, 880],
    ]);
    expect(withChart(envelope.value, read('Size\t8\t12\nBust\t82\t86', body))).toMatchObject({
      ok: false,
      problem: { code: 'envelope.sizes-differ' },
    });
  });

  it('puts an answered row in beside what was corrected meanwhile', () => {
    const first = withChart(blankEnvelope({ name: 'Smock' }), { ...chart, asked: [] });
    const answered = placeAsked(chart, 0, { as: 'body', measure: 'abdomenGirth' });
    if (!first.ok || !answered.ok) throw new Error('not put in');
    const corrected = { ...first.value, body: [{ measure: 'bustGirth' as const, figures: [805, 845] }] };
    const then = withChart(corrected, newlyPlaced(chart, answered.value));
    expect(then.ok && then.value.body.map(({ figures }) => figures)).toEqual([
      [805, 845],
      [840, 880],
    ]);
  });

  it.each<[string, string, ChartOptions]>([
    ['60 sizes', `Size\t${run(61)}\nBust\t${run(61, 30)}`, body],
    ['26 views', `Size\t8\n${rows(27, (at) => `View ${at}, Bust\t80`)}`, { kind: 'finished', printedIn: 'cm' }],
    ['300 rows', `Size\t8\n${rows(301, (at) => `Strap ${at}x\t80`)}`, { kind: 'finished', printedIn: 'cm' }],
  ])('refuses a chart with which it would hold over %s, which could not be stored', (_, text, options) => {
    expect(withChart(blankEnvelope({ name: 'Smock' }), read(text, options))).toMatchObject({
      ok: false,
      problem: { code: 'envelope.chart-too-much' },
    });
  });

  it('stores a row that has a sentence for its name under the beginning of it', () => {
    const long = read(`Size\t8\n${'loop of the drawcord '.repeat(40)}\t80`, { kind: 'finished', printedIn: 'cm' });
    const envelope = withChart(blankEnvelope({ name: 'Smock' }), long);
    expect(envelope.ok && readEnvelope(envelope.value).ok).toBe(true);
  });

  it('refuses answers that fit nothing', () => {
    expect(placeAsked(chart, 3, { as: 'left-out' })).toMatchObject({
      ok: false,
      problem: { code: 'envelope.answer-place' },
    });
    expect(placeAsked(chart, 0, { as: 'finished', of: 'hip' })).toMatchObject({
      ok: false,
      problem: { code: 'envelope.answer-kind' },
    });
    expect(placeAsked(chart, 0, { as: 'body', measure: 'bustGirth' })).toMatchObject({
      ok: false,
      problem: { code: 'envelope.row-twice' },
    });
    expect(placeAsked(chart, 0, { as: 'left-out' })).toMatchObject({ ok: true, value: { asked: [] } });
  });

  test('keeps unanswered finished rows under their printed words', () => {
    const finished = read('Size\t8\t10\nCollar stand\t40\t41', { kind: 'finished', printedIn: 'cm' });
    const envelope = withChart(blankEnvelope({ name: 'Smock' }), finished);
    expect(envelope.ok && envelope.value.finished).toMatchObject([{ of: 'other', label: 'Collar stand' }]);
  });
});
