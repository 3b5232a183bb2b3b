import { type Alteration, type Altered, applyAlterations, type Parameter, type Params } from '../../src/alter/index.ts';
import { type HousePattern, housePatterns } from '../../src/drafting/index.ts';
import { cutPlaces, type Drawing, drawBeforeAfter, sayId } from '../../src/draw/index.ts';
import { type AlterationStep, type Garment, walkAll } from '../../src/pattern/index.ts';
import { formatLength, formatPercent } from '../../src/units/index.ts';
import { type AlterationWords, alterWords } from '../../src/words/index.ts';

/** A page of docs/alterations as Markdown, every figure of it measured on a house pattern. */

/** An alteration done on the house pattern that shows it best. */
export interface Shown {
  readonly house: HousePattern;
  readonly view: string;
  readonly size: string;
  readonly garment: Garment;
  readonly step: AlterationStep;
  readonly altered: Altered;
}

type Words = Readonly<Record<string, string>>;

const alterationWords: Readonly<Record<string, AlterationWords>> = alterWords.alterations;

const middleOf = <T>(list: readonly T[]): T | undefined => list[Math.floor((list.length - 1) / 2)];

/** A usual amount that shows: the middle of the range, or two thirds of its end where the middle is next to nothing. */
const usualOf = ([low, high]: readonly [number, number]): number => {
  const middle = (low + high) / 2;
  return Math.abs(middle) < (high - low) / 4 ? (high * 2) / 3 : middle;
};

const usualParams = (alteration: Alteration): Params =>
  Object.fromEntries(
    Object.entries(alteration.params).flatMap(([name, parameter]) =>
      parameter.unit === 'mm' ? [[name, Math.round(usualOf(parameter.usual))]] : [],
    ),
  );

/** Shown in the middle size of the first house pattern it can be done on, in the order of a wardrobe; null where there is none. */
export const shownBest = (alteration: Alteration): Shown | null => {
  const step = {
    id: 's1',
    alteration: alteration.id,
    version: alteration.version,
    on: true,
    params: usualParams(alteration),
  };
  for (const house of housePatterns) {
    for (const { id: view } of house.views) {
      const size = middleOf(house.pattern({ view }).sizes);
      if (!size || alteration.needs(size.garment) !== null) continue;
      const altered = applyAlterations(size.garment, [step], undefined, [alteration]);
      if (!altered.refusal) return { house, view, size: size.id, garment: size.garment, step, altered };
    }
  }
  return null;
};

export const alterationDrawing = ({ garment, altered }: Shown): Drawing =>
  drawBeforeAfter(garment, altered.garment, {
    unit: 'cm',
    changedOnly: true,
    textSize: 16,
    cuts: cutPlaces(garment, altered),
  });

const both = (mm: number): string =>
  `${formatLength(mm, 'cm', { purpose: 'amount' })} (${formatLength(mm, 'in', { purpose: 'amount' })})`;

const rangeOf = (parameter: Parameter, choices: Words): string => {
  if (parameter.unit === 'mm')
    return `${both(parameter.usual[0])} to ${both(parameter.usual[1])}; at most ${both(parameter.min)} to ${both(parameter.max)}`;
  if (parameter.unit === 'share')
    return `${formatPercent(parameter.usual[0], 'en')} to ${formatPercent(parameter.usual[1], 'en')}`;
  if (parameter.unit === 'choice')
    return parameter.choices.map((choice) => (choices[choice] ?? choice).toLowerCase()).join('; ');
  return `one of the garment’s: ${parameter.of}`;
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
        ...[puts.reduce((sum, { area }) => sum + area, 0), areaTrued, areaAfter].map((area) => (area / 100).toFixed(1)),
      ]),
    ),
  );

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
        `${shown.house.name}, size ${shown.size}${Object.entries(shown.step.params)
          .map(([name, value]) => `; ${(names[name] ?? name).toLowerCase()}: ${both(Number(value))}`)
          .join('')}. Grey: as bought. Red: what changed, and where the pieces are cut; a ring is a hinge.`,
        '## Measured here',
        heldTable(shown),
        changeTable(shown),
        '### Area inside the seam line',
        areaTable(shown),
        '### Seams',
        seamTable(shown),
      ]
    : ['None of our own patterns shows this alteration.'];
  const [picture, caption, ...measured] = drawn;
  return `${[
    `# ${words.name}`,
    '<!-- Written by `npm run alteration-pages` from the code; changes made here are lost. -->',
    words.about,
    picture,
    ...(caption ? [caption] : []),
    ...(words.caution ? [`**Take care.** ${words.caution}`] : []),
    '## What is asked',
    table(
      ['', 'Usual'],
      Object.entries(alteration.params).map(([name, parameter]) => [names[name] ?? name, rangeOf(parameter, choices)]),
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
