import { blankEnvelope } from '../document.ts';
import type { Envelope } from '../types.ts';

const inch = 25.4;
const inches = (...figures: readonly number[]): readonly number[] => figures.map((figure) => figure * inch);
const metres = (...figures: readonly number[]): readonly number[] => figures.map((figure) => figure * 1000);

/** A bought choir blouse, printed in inches, with nothing doubtful on it. */
export const choirBlouse: Envelope = {
  ...blankEnvelope({ name: 'Choir blouse', printedIn: 'inches', sizes: ['8', '10', '12', '14', '16'] }),
  house: 'Lantern Loft patterns',
  number: '214',
  views: [
    { id: 'A', name: 'View A', about: 'Long sleeve' },
    { id: 'B', name: 'View B', about: 'Short sleeve' },
  ],
  body: [
    { measure: 'bustGirth', figures: inches(31.5, 32.5, 34, 36, 38) },
    { measure: 'upperBustGirth', figures: inches(29.5, 30.5, 32, 34, 36) },
    { measure: 'waistGirth', figures: inches(24, 25, 26.5, 28, 30) },
    { measure: 'hipGirth', figures: inches(33.5, 34.5, 36, 38, 40) },
    { measure: 'backWaistLength', figures: inches(15.75, 16, 16.25, 16.5, 16.75) },
  ],
  finished: [
    { of: 'bust', label: 'Bust', view: null, figures: inches(35, 36, 37.5, 39.5, 41.5) },
    { of: 'back-length', label: 'Back length', view: 'A', figures: inches(25, 25.25, 25.5, 25.75, 26) },
  ],
  clothNeeded: [
    { view: 'A', layer: 'shell', width: 1150, nap: 'without', figures: metres(2.1, 2.1, 2.2, 2.3, 2.4) },
    { view: 'A', layer: 'shell', width: 1150, nap: 'with', figures: metres(2.2, 2.2, 2.3, 2.4, 2.5) },
    { view: 'A', layer: 'shell', width: 1500, nap: 'without', figures: metres(1.6, 1.6, 1.7, 1.8, 1.8) },
  ],
  draftedCup: 2 * inch,
  allowance: 15,
};

/** The same with one figure of a body row changed, mm. */
export const withBody = (row: number, size: number, mm: number): Envelope => ({
  ...choirBlouse,
  body: choirBlouse.body.map((one, at) =>
    at === row ? { ...one, figures: one.figures.map((figure, place) => (place === size ? mm : figure)) } : one,
  ),
});
