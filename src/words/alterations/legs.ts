import { byHalves } from './amounts.ts';
import type { FamilyWords } from './family.ts';

type Params = Readonly<Record<string, unknown>>;
const amount = (params: Params): number => Number(params['amount'] ?? 0);
const where = (params: Params): string => String(params['where'] ?? 'back');

export const legsWords: FamilyWords = {
  alterations: {
    'crotch-length': {
      name: 'Crotch longer or shorter',
      about:
        'Opens a wedge at the hip from the crotch seam to nothing at the side, front or back, or folds it out. For taut lines that fall from the crotch; or, folded out at the back, for slack below a flat seat.',
      caution: 'Try on sitting as well as standing before you settle it.',
      source:
        'The crotch wedge of fitting manuals; need is the body’s length through the legs and its ease, less the length of the seam, front and back apart.',
      sentence: ({ params }, say) =>
        `${where(params)} crotch ${amount(params) < 0 ? 'shorter' : 'longer'} by ${say(Math.abs(amount(params)))} at the seam, nothing at the side`,
      per: 'at the crotch seam',
      more: 'Longer',
      less: 'Shorter',
    },
    'crotch-point': {
      name: 'Crotch point out or in',
      about:
        'Moves the crotch point of front or back out or in; the inside leg runs back to the knee and keeps its length. For thighs fuller or thinner on the inside, or a seat that is deeper or flatter from front to back.',
      source: 'Fitting manuals on the crotch point, for full or thin inner thighs and a deep or flat seat.',
      sentence: (step, say) =>
        `${where(step.params)} crotch point ${amount(step.params) < 0 ? 'in' : 'out'} by ${say(Math.abs(amount(step.params)))} ${byHalves(step, 'on each leg', 'on the leg')}`,
      more: 'Out',
      less: 'In',
    },
    'crotch-curve': {
      name: 'Crotch curve deeper or flatter',
      about:
        'Scoops the crotch seam of front or back deeper, or makes it flatter: where the curve leaves the straight of the seam it lies so much lower or higher, evenly less towards the crotch point; both its ends stay. For a low or full seat, or cloth that bags under a flat one.',
      source: 'Fitting manuals on scooping the crotch for a full or low seat.',
      sentence: ({ params }, say) =>
        `${where(params)} crotch curve ${amount(params) < 0 ? 'flatter' : 'deeper'} by ${say(Math.abs(amount(params)))}`,
      per: 'on each leg',
      perOne: 'on the leg',
      more: 'Deeper',
      less: 'Flatter',
    },
    'leg-width': {
      name: 'Leg wider or narrower',
      about:
        'Widens or narrows front and back of each leg alike at the knee or the hem, half in the side seam and half in the inside leg, so that grain and crease stay in the middle.',
      caution: 'Wide hems trail and catch on steps and pedals; a narrow one has to pass the heel.',
      source: 'Pattern-cutting manuals on the widths of trouser legs.',
      sentence: (step, say) =>
        `${byHalves(step, 'legs', 'leg')} ${amount(step.params) < 0 ? 'narrower' : 'wider'} at the ${where(step.params)} by ${say(Math.abs(amount(step.params)))} on each piece, ${say(Math.abs(amount(step.params)), 2)} ${byHalves(step, 'round each leg', 'round it')}`,
      more: 'Wider',
      less: 'Narrower',
      per: 'on each piece, {twice} round each leg',
      perOne: 'on each piece, {twice} round the leg',
    },
  },
  choices: { front: 'On the front', back: 'On the back', knee: 'At the knee', hem: 'At the hem' },
  holds: {
    'sides-stay': 'The side seams keep their lengths.',
    'inside-leg-stays': 'The inside leg keeps its length.',
    'crotch-stays': 'The crotch seam stays as it was.',
  },
  follows: {
    'crotch-grows': 'The crotch seam becomes longer or shorter.',
    'thigh-grows': 'The thigh becomes wider or narrower by as much.',
  },
  held: {
    'crotch-grows': 'The crotch seam grows by the amount',
  },
  problems: {
    'alter.no-legs': {
      message: 'This garment has no legs whose pieces say where the crotch point lies.',
      remedy: 'Use this on trousers and dungarees, or mark the crotch point on the pieces.',
    },
    'alter.crotch-bends': {
      message: 'Where front and back meet at the inside leg the crotch seam now bends by {degrees}° on “{piece}”.',
      remedy:
        'Scoop by less, or lay both legs together at the inside leg and draw the crotch seam on smoothly across it.',
    },
    'alter.no-leg-there': {
      message: 'The legs do not reach so far down ({where}).',
      remedy: 'Choose the hem.',
    },
  },
};
