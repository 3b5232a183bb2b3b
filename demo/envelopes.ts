import type { ClothRow, Envelope, Figure, FinishedOf } from '../src/pattern/index.ts';
import { parseLength } from '../src/units/index.ts';

const length = (written: string): number => {
  const mm = parseLength(written, 'in');
  if (!mm.ok) throw new Error(`the demo workroom has a figure that is none: ${written}`);
  return mm.value;
};

/** A row as it stands on the envelope: `32 | 34 | 36-36 1/2 | –`. */
const figures = (row: string, unit: 'in' | 'yd' = 'in'): readonly Figure[] =>
  row.split('|').map((cell): Figure => {
    const [low, high] = cell.split('-').map((part) => part.trim());
    if (!low || low === '–') return null;
    return high ? [length(`${low} ${unit}`), length(`${high} ${unit}`)] : length(`${low} ${unit}`);
  });

const finished = (of: FinishedOf, label: string, view: string | null, row: string) => ({
  of,
  label,
  view,
  figures: figures(row),
});

const cloth = (view: string | null, layer: ClothRow['layer'], width: string, row: string): ClothRow => ({
  view,
  layer,
  width: length(width),
  nap: layer === 'shell' ? 'either' : 'without',
  figures: figures(row, 'yd'),
});

/** A bought dress known by its envelope: three views, printed in inches, drafted for less bust than Runa has. */
export const rehearsalDress: Envelope = {
  format: 'easewright-envelope/1',
  name: 'Rehearsal dress',
  house: 'Halyard Lane Pattern Room',
  number: '41',
  about: 'A dress or blouse with a bust dart from the side, set-in sleeves and a zip at the back.',
  for: 'women',
  kind: 'dress',
  printedIn: 'inches',
  sizes: ['8', '10', '12', '14', '16', '18', '20', '22'],
  views: [
    { id: 'A', name: 'View A', about: 'To the knee, short sleeves.' },
    { id: 'B', name: 'View B', about: 'To the calf, long sleeves with a cuff.' },
    { id: 'C', name: 'View C', about: 'A blouse to wear outside, long sleeves.' },
  ],
  body: [
    { measure: 'bustGirth', figures: figures('32 | 34 | 36 | 38 | 40 | 42 | 44 | 46') },
    { measure: 'waistGirth', figures: figures('25 | 27 | 29 | 31 | 33 | 35 | 37 | 39') },
    { measure: 'hipGirth', figures: figures('34 1/2 | 36 1/2 | 38 1/2 | 40 1/2 | 42 1/2 | 44 1/2 | 46 1/2 | 48 1/2') },
    {
      measure: 'backWaistLength',
      figures: figures('15 3/4 | 16 | 16 1/4 | 16 1/2 | 16 3/4 | 17 | 17 1/4 | 17 1/2'),
    },
  ],
  finished: [
    finished('bust', 'Bust', null, '35 1/2 | 37 1/2 | 39 1/2 | 41 1/2 | 43 1/2 | 45 1/2 | 47 1/2 | 49 1/2'),
    finished('waist', 'Waist', null, '28 1/4 | 30 1/4 | 32 1/4 | 34 1/4 | 36 1/4 | 38 1/4 | 40 1/4 | 42 1/4'),
    finished('hip', 'Hip', 'A', '39 1/2 | 41 1/2 | 43 1/2 | 45 1/2 | 47 1/2 | 49 1/2 | 51 1/2 | 53 1/2'),
    finished('hip', 'Hip', 'B', '39 1/2 | 41 1/2 | 43 1/2 | 45 1/2 | 47 1/2 | 49 1/2 | 51 1/2 | 53 1/2'),
    finished('hip', 'Hip', 'C', '37 1/2 | 39 1/2 | 41 1/2 | 43 1/2 | 45 1/2 | 47 1/2 | 49 1/2 | 51 1/2'),
    finished('hem-width', 'Width at hem', 'A', '58 | 60 | 62 | 64 | 66 | 68 | 70 | 72'),
    finished('hem-width', 'Width at hem', 'B', '64 | 66 | 68 | 70 | 72 | 74 | 76 | 78'),
    finished('back-length', 'Back length', 'A', '39 1/2 | 39 3/4 | 40 | 40 1/4 | 40 1/2 | 40 3/4 | 41 | 41 1/4'),
    finished('back-length', 'Back length', 'B', '47 1/2 | 47 3/4 | 48 | 48 1/4 | 48 1/2 | 48 3/4 | 49 | 49 1/4'),
    finished('back-length', 'Back length', 'C', '25 | 25 1/4 | 25 1/2 | 25 3/4 | 26 | 26 1/4 | 26 1/2 | 26 3/4'),
  ],
  clothNeeded: [
    cloth('A', 'shell', '45 in', '2 3/4 | 2 3/4 | 2 7/8 | 3 | 3 1/8 | 3 1/4 | 3 1/4 | 3 3/8'),
    cloth('A', 'shell', '60 in', '2 1/8 | 2 1/8 | 2 1/4 | 2 1/4 | 2 3/8 | 2 1/2 | 2 1/2 | 2 5/8'),
    cloth('B', 'shell', '45 in', '3 5/8 | 3 5/8 | 3 3/4 | 3 7/8 | 4 | 4 1/8 | 4 1/4 | 4 3/8'),
    cloth('B', 'shell', '60 in', '2 5/8 | 2 5/8 | 2 3/4 | 2 7/8 | 3 | 3 | 3 1/8 | 3 1/4'),
    cloth('C', 'shell', '45 in', '2 | 2 | 2 1/8 | 2 1/8 | 2 1/4 | 2 3/8 | 2 3/8 | 2 1/2'),
    cloth('C', 'shell', '60 in', '1 1/2 | 1 1/2 | 1 5/8 | 1 5/8 | 1 3/4 | 1 3/4 | 1 7/8 | 1 7/8'),
    cloth(null, 'interfacing', '20 in', '5/8 | 5/8 | 5/8 | 5/8 | 3/4 | 3/4 | 3/4 | 3/4'),
  ],
  notions: [
    { view: null, text: 'Thread; a hook and eye' },
    { view: 'A', text: 'Zip 20 in' },
    { view: 'B', text: 'Zip 20 in; two buttons ½ in' },
    { view: 'C', text: 'Zip 14 in; two buttons ½ in' },
  ],
  allowance: length('5/8 in'),
  draftedCup: length('2 in'),
  draftedStature: length('5 ft 6 in'),
  cloth: { structure: 'woven', weight: [90, 220], stretch: 0, cloths: ['poplin', 'viscose', 'crepe', 'soft wool'] },
  advice: 'No allowance has been made for matching stripes. For a one-way print follow the lengths for nap.',
  flat: [
    {
      of: 'upper-arm',
      view: null,
      size: '14',
      pieces: [{ name: 'Sleeve', flat: length('16 1/2 in'), allowances: length('1 1/4 in'), takenOut: 0, times: 1 }],
    },
  ],
  kept: [],
  owned: {
    form: 'paper',
    where: 'The biscuit tin under the window',
    cut: [],
    traced: ['14'],
    copyAt: 'Rolled in the tube behind the door, view A',
    link: '',
    price: '12 crowns, at the choir’s jumble sale',
    drafting: 'Shoulders run broad; Oda says so too.',
    instructions: 'Sets the zip before the back seam is closed. Good drawings.',
  },
  photographs: [],
};
