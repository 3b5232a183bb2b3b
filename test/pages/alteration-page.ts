import { type Alteration, type Altered, applyAlterations, type Parameter, type Params } from '../../src/alter/index.ts';
import { type HousePattern, housePatterns } from '../../src/drafting/index.ts';
import {
  cutPlaces,
  type Drawing,
  drawBeforeAfter,
  drawSeamWalk,
  type Mark,
  markBounds,
  moveMarks,
  sayId,
  sayStepOn,
} from '../../src/draw/index.ts';
import { type Bounds, translation } from '../../src/geometry/index.ts';
import { type AlterationStep, type Garment, type Seam, walkAll, walkSeam } from '../../src/pattern/index.ts';
import { formatLength, formatPercent } from '../../src/units/index.ts';
import { type AlterationWords, alterWords } from '../../src/words/index.ts';
import { ledPieces, shownOn } from './shown-on.ts';

/** A page of docs/alterations as Markdown, every figure of it measured on a house pattern. */

/** An alteration done on the house pattern that shows it best. */
export interface Shown {
  readonly house: HousePattern;
  readonly view: string;
  readonly size: string;
  readonly garment: Garment;
  readonly step: AlterationStep;
  readonly altered: Altered;
  /** What was wrong with the garment before, where it is shown on one with a fault. */
  readonly fault?: string;
}

type Words = Readonly<Record<string, string>>;

const alterationWords: Readonly<Record<string, AlterationWords>> = alterWords.alterations;

const middleOf = <T>(list: readonly T[]): T | undefined => list[Math.floor((list.length - 1) / 2)];

/** Usual amounts, the one that shows best first. */
const amountsOf = ([low, high]: readonly [number, number]): readonly number[] => [
  high,
  Math.round(low + ((high - low) * 2) / 3),
  Math.round((low + high) / 2),
];

/** Everything a step may say, said: usual amounts, and the first of what the garment offers. */
const usualParams = (alteration: Alteration, garment: Garment, attempt: number): Params => {
  const params: Record<string, number | string> = {};
  for (const [name, parameter] of Object.entries(alteration.params)) {
    if (parameter.unit === 'mm') params[name] = amountsOf(parameter.usual)[attempt] ?? 0;
    if (parameter.unit === 'choice') params[name] = alteration.options?.(garment, name, params)[0] ?? parameter.usual;
    const [first] = parameter.unit === 'named' ? (alteration.options?.(garment, name, params) ?? []) : [];
    if (first !== undefined) params[name] = first;
  }
  return params;
};

/** Shown in the middle size of the pattern it shows best on, else of the first it can be done on, in the order of a wardrobe; null where there is none. */
export const shownBest = (alteration: Alteration): Shown | null => {
  const wish = shownOn[alteration.id] ?? {};
  const wished = housePatterns.filter(({ id }) => id === wish.house);
  for (const house of wished.length > 0 ? wished : housePatterns) {
    for (const { id: view } of house.views.filter(({ id }) => id === (wish.view ?? id))) {
      const size = middleOf(house.pattern({ view }).sizes);
      if (!size || alteration.needs(size.garment) !== null) continue;
      const garment = wish.fault?.made(size.garment) ?? size.garment;
      for (const attempt of [0, 1, 2]) {
        const params = { ...usualParams(alteration, garment, attempt), ...wish.params };
        const step = { id: 's1', alteration: alteration.id, version: alteration.version, on: true, params };
        const altered = applyAlterations(garment, [step], undefined, [alteration]);
        if (altered.refusal) continue;
        return { house, view, size: size.id, garment, step, altered, ...(wish.fault && { fault: wish.fault.said }) };
      }
    }
  }
  return null;
};

/** Em of the words of a picture, mm of the drawing, and how much heavier than at full scale its lines are. */
const textSize = 16;
export const pictureWeight = 3;

/** The seam that is sewn in another way now, where that is all that changed. */
const sewnAnew = ({ garment, altered }: Shown): Seam | undefined =>
  ledPieces(garment, altered).led.length > 0
    ? undefined
    : altered.garment.seams.find(
        (seam) => JSON.stringify(seam) !== JSON.stringify(garment.seams.find(({ id }) => id === seam.id)),
      );

/** A seam walked before and after, one under the other. */
const walkedTwice = (shown: Shown, seam: Seam): Drawing => {
  const walkIn = (garment: Garment) => {
    const one = garment.seams.find(({ id }) => id === seam.id) as Seam;
    return drawSeamWalk(walkSeam(garment, one), garment, { unit: 'cm', textSize, aspect: 3 });
  };
  const [above, below] = [walkIn(shown.garment), walkIn(shown.altered.garment)];
  const down = { x: above.bounds.minX - below.bounds.minX, y: above.bounds.maxY - below.bounds.minY + textSize };
  return {
    bounds: {
      ...above.bounds,
      maxX: Math.max(above.bounds.maxX, below.bounds.maxX + down.x),
      maxY: below.bounds.maxY + down.y,
    },
    label: `${above.label} ${below.label}`,
    marks: [...above.marks, ...moveMarks(below.marks, translation(down))],
  };
};

/** The pieces an alteration is about, large; those that only follow are told in words. */
export const alterationDrawing = (shown: Shown): Drawing => {
  const { garment, altered } = shown;
  const seam = sewnAnew(shown);
  if (seam) return walkedTwice(shown, seam);
  const { led } = ledPieces(garment, altered);
  return withoutRest(
    drawBeforeAfter(garment, altered.garment, {
      unit: 'cm',
      changedOnly: true,
      ...(led.length > 0 && { only: led }),
      textSize,
      cuts: cutPlaces(garment, altered),
    }),
  );
};

/** What is left in sight below the lowest thing that changed, mm, and how much more there has to be for the rest to be cut off. */
const leftBelow = 200;
const leastCutOff = 150;

const redBounds = (marks: readonly Mark[]): readonly Bounds[] =>
  marks.flatMap((mark) => {
    if (mark.kind === 'group') return redBounds(mark.marks);
    const bounds = mark.ink === 'changed' ? markBounds(mark) : null;
    return bounds ? [bounds] : [];
  });

/** A long piece that changed at its top alone is drawn down to a little below that, as in a book; what is written under it goes to the caption. */
const withoutRest = (drawing: Drawing): Drawing => {
  const lowest = Math.max(...redBounds(drawing.marks).map(({ maxY }) => maxY)) + leftBelow;
  if (drawing.bounds.maxY - lowest < leastCutOff) return drawing;
  return {
    ...drawing,
    bounds: { ...drawing.bounds, maxY: lowest },
    marks: drawing.marks.filter(({ kind }) => kind === 'group'),
  };
};

const both = (mm: number): string =>
  `${formatLength(mm, 'cm', { purpose: 'amount' })} (${formatLength(mm, 'in', { purpose: 'amount' })})`;

const rangeSaid = (low: number, high: number): string => `${both(low)} to ${both(high)}`;

/** A parameter as asked for: what is usual, as much in all, and what is possible. */
const asked = (alteration: Alteration, name: string, parameter: Parameter, choices: Words): readonly string[] => {
  if (parameter.unit === 'mm') {
    const [low, high] = parameter.usual;
    const times = name === alteration.amount ? alteration.inAll : 1;
    const inAll = times === 1 ? '' : rangeSaid(low * times, high * times);
    return [rangeSaid(low, high), inAll, rangeSaid(parameter.min, parameter.max)];
  }
  if (parameter.unit === 'share')
    return [`${formatPercent(parameter.usual[0], 'en')} to ${formatPercent(parameter.usual[1], 'en')}`, '', ''];
  if (parameter.unit === 'choice')
    return [parameter.choices.map((choice) => (choices[choice] ?? choice).toLowerCase()).join('; '), '', ''];
  return [`one of the garment’s: ${parameter.of}`, '', ''];
};

const table = (head: readonly string[], rows: readonly (readonly string[])[]): string =>
  [head, head.map(() => '---'), ...rows].map((row) => `| ${row.join(' | ')} |`).join('\n');

const bullets = (ids: readonly string[], words: Words): string => ids.map((id) => `- ${words[id] ?? id}`).join('\n');

const figure = (mm: number): string => `${mm.toFixed(2).replace(/^-0\.00$/, '0.00')} mm`;

/** The furthest each kind of thing was off, of all places it was measured at. */
const heldTable = ({ altered }: Shown): string => {
  const worst = new Map<string, { by: number; count: number }>();
  for (const { what, by } of altered.held) {
    const known = worst.get(what) ?? { by: 0, count: 0 };
    worst.set(what, { by: Math.max(known.by, Math.abs(by)), count: known.count + 1 });
  }
  const words: Words = alterWords.held;
  return table(
    ['What', 'Measured at', 'Furthest off'],
    [...worst].map(([what, { by, count }]) => [words[what] ?? what, `${count}`, figure(by)]),
  );
};

const seamTable = ({ garment, altered }: Shown): string => {
  const before = new Map(walkAll(garment).map((walk) => [walk.seam.id, walk]));
  const rows = walkAll(altered.garment).flatMap((walk) => {
    const was = before.get(walk.seam.id);
    const same = was && Math.abs(was.lengthA - walk.lengthA) < 0.05 && Math.abs(was.lengthB - walk.lengthB) < 0.05;
    return same ? [] : [[sayId(walk.seam.id), was ? figure(was.difference) : '—', figure(walk.difference)]];
  });
  return rows.length === 0 ? 'No seam changes its length.' : table(['Seam', 'Ease before', 'Ease after'], rows);
};

const changeTable = ({ altered }: Shown): string => {
  const words: Words = alterWords.changed;
  return table(
    ['What changed', 'Where', 'By', 'Now'],
    altered.outcomes.flatMap(({ applied }) =>
      applied.changes.map(({ what, piece, edge, level, by, now }) => [
        words[what] ?? what,
        [piece, edge, level].flatMap((id) => (id ? [sayId(id)] : [])).join(', '),
        figure(by),
        figure(now),
      ]),
    ),
  );
};

const areaTable = ({ altered }: Shown): string =>
  table(
    ['Piece', 'Put in, cm²', 'Moved by truing, cm²', 'Now, cm²'],
    altered.outcomes.flatMap(({ applied }) =>
      applied.pieces.map(({ piece, puts, areaTrued, areaAfter }) => [
        sayId(piece),
        ...[puts.reduce((sum, { area }) => sum + area, 0), areaTrued, areaAfter].map((area) =>
          (area / 100).toFixed(1).replace(/^-0\.0$/, '0.0'),
        ),
      ]),
    ),
  );

/** What the picture shows: on which pattern, what was done, what each line is, and what it leaves out. */
const caption = (shown: Shown, name: string): string => {
  // One from outside the house has no sentence in it.
  const { garment, altered, step } = shown;
  const said = step.alteration in alterationWords ? sayStepOn([garment, altered.garment], step, 'cm') : name;
  const { led, followed } = ledPieces(garment, altered);
  const cuts = cutPlaces(garment, altered).filter(({ piece }) => led.includes(piece));
  const signs = [
    ...(sewnAnew(shown) ? [] : ['Grey dots: as it was. Red: what changed']),
    ...(cuts.length > 0 ? [', and where it is cut'] : []),
    ...(cuts.some(({ hinge }) => hinge) ? ['; a ring is a hinge'] : []),
  ].join('');
  const sentences = [
    `${shown.house.name}, size ${shown.size}: ${said}.`,
    shown.fault ?? '',
    led.length > 0 ? 'Amounts written beside an edge are for one piece, as drawn.' : '',
    signs === '' ? 'Above: the seam as found. Below: as it is sewn now.' : `${signs}.`,
    followed.length > 0 ? `Changed with it and not drawn: ${followed.join(', ').toLowerCase()}.` : '',
  ];
  return sentences.filter((sentence) => sentence !== '').join(' ');
};

/** The words of an alteration; one from outside the house brings its own. */
export const alterationPage = (
  alteration: Alteration,
  shown: Shown | null,
  words: AlterationWords | undefined = alterationWords[alteration.id],
): string => {
  if (!words) throw new Error(`no words for ${alteration.id}`);
  const names: Words = { ...alterWords.parameters, ...words.parameters };
  const choices: Words = { ...alterWords.choices, ...words.choices };
  const forPatterns = housePatterns.filter((house) =>
    house.views.some(({ id }) => {
      const size = middleOf(house.pattern({ view: id }).sizes);
      return size && alteration.needs(size.garment) === null;
    }),
  );
  const drawn = shown
    ? [
        `![${words.name} on ${shown.house.name}: before and after](pictures/${alteration.id}.svg)`,
        caption(shown, words.name),
        '## Measured here',
        heldTable(shown),
        changeTable(shown),
        '### Area inside the seam line',
        areaTable(shown),
        '### Seams',
        seamTable(shown),
      ]
    : ['None of our own patterns shows this alteration.'];
  const [picture, said, ...measured] = drawn;
  return `${[
    `# ${words.name}`,
    '<!-- Written by `npm run alteration-pages` from the code; changes made here are lost. -->',
    words.about,
    picture,
    ...(said ? [said] : []),
    ...(words.caution ? [`**Take care.** ${words.caution}`] : []),
    '## What is asked',
    table(
      ['', 'Usual', 'In all', 'Possible'],
      Object.entries(alteration.params).map(([name, parameter]) => [
        names[name] ?? name,
        ...asked(alteration, name, parameter, choices),
      ]),
    ),
    ...(alteration.holds.length > 0 ? ['## What holds', bullets(alteration.holds, alterWords.holds)] : []),
    ...(alteration.follows.length > 0 ? ['## What follows', bullets(alteration.follows, alterWords.follows)] : []),
    ...measured,
    '## For',
    forPatterns.map((house) => `[${house.name}](../patterns/${house.id}.md)`).join(', ') || 'No pattern of our own.',
    ...(words.source ? [`Source: ${words.source}`] : []),
    `Named \`${alteration.id}\`, version ${alteration.version}, in alteration lists.`,
  ].join('\n\n')}\n`;
};

/** The index of the pages, by family, in the order a fitter works. */
export const alterationIndex = (catalogue: readonly Alteration[], pictured: ReadonlySet<string>): string => {
  const families = alterWords.families as Words;
  const sections = [...new Set(catalogue.map(({ family }) => family))].flatMap((family) => [
    `## ${families[family] ?? family}`,
    table(
      ['', 'Alteration', 'What for'],
      catalogue
        .filter((one) => one.family === family)
        .map(({ id }) => [
          pictured.has(id) ? `<img src="pictures/${id}.svg" width="160" alt="">` : '',
          `[${alterationWords[id]?.name ?? id}](${id}.md)`,
          alterationWords[id]?.about ?? '',
        ]),
    ),
  ]);
  return `${[
    '# Alterations',
    '<!-- Written by `npm run alteration-pages` from the code; changes made here are lost. -->',
    'Every alteration there is, with a picture of it done on one of our own patterns. How they work, and how to add one: [alterations](../alterations.md).',
    ...sections,
  ].join('\n\n')}\n`;
};
