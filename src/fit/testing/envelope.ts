import type { Envelope, Figure, FinishedOf } from '../../pattern/index.ts';

const inch = 25.4;
const inches = (...figures: readonly number[]): readonly Figure[] => figures.map((figure) => figure * inch);
const row = (of: FinishedOf, view: string | null, figures: readonly Figure[]) => ({ of, label: of, view, figures });

/** A bought blouse known by its envelope alone: an invented house's, eight sizes, two views, printed in inches. */
export const harbourBlouse: Envelope = {
  format: 'easewright-envelope/1',
  name: 'Harbour blouse',
  house: 'Saltmarsh Patterns',
  number: '214',
  about: 'A blouse with a side bust dart; A with long sleeves, B with short ones.',
  for: 'women',
  kind: 'top',
  printedIn: 'inches',
  sizes: ['8', '10', '12', '14', '16', '18', '20', '22'],
  views: [
    { id: 'a', name: 'A', about: 'long sleeves' },
    { id: 'b', name: 'B', about: 'short sleeves' },
  ],
  body: [
    { measure: 'bustGirth', figures: inches(31.5, 32.5, 34, 36, 38, 40, 42, 44) },
    { measure: 'waistGirth', figures: inches(24, 25, 26.5, 28, 30, 32, 34, 37) },
    { measure: 'hipGirth', figures: inches(33.5, 34.5, 36, 38, 40, 42, 44, 46) },
    { measure: 'backWaistLength', figures: inches(15.75, 16, 16.25, 16.5, 16.75, 17, 17.25, 17.375) },
  ],
  finished: [
    row('bust', null, inches(34.75, 35.75, 37.25, 39.25, 41.25, 43.25, 45.25, 47.25)),
    row('hip', null, inches(36.5, 37.5, 39, 41, 43, 45, 47, 49)),
    row('back-length', 'a', inches(25, 25.25, 25.5, 25.75, 26, 26.25, 26.5, 26.75)),
    row('upper-arm', 'a', inches(12.5, 12.75, 13.25, 13.75, 14.5, 15.25, 16, 16.75)),
  ],
  clothNeeded: [
    {
      view: 'a',
      layer: 'shell',
      width: 45 * inch,
      nap: 'with',
      figures: inches(81, 81, 81, 85.5, 90, 90, 94.5, 94.5),
    },
    {
      view: 'a',
      layer: 'shell',
      width: 60 * inch,
      nap: 'with',
      figures: inches(58.5, 58.5, 58.5, 63, 63, 63, 67.5, 67.5),
    },
  ],
  notions: [{ view: null, text: 'six buttons, 12 mm' }],
  allowance: 15,
  draftedCup: null,
  draftedStature: 1650,
  cloth: { structure: 'woven', weight: [80, 160], stretch: 0, cloths: ['poplin', 'lawn'] },
  advice: '',
  flat: [],
  kept: [],
  owned: {
    form: 'paper',
    where: 'the blue box',
    cut: [],
    traced: [],
    copyAt: '',
    link: '',
    price: '',
    drafting: '',
    instructions: '',
  },
  photographs: [],
};
