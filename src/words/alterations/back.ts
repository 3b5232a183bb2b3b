import { byHalves, inAll } from './amounts.ts';
import type { FamilyWords } from './family.ts';

const amount = (params: Readonly<Record<string, unknown>>): number => Number(params['amount'] ?? 0);

export const backWords: FamilyWords = {
  alterations: {
    'sway-back': {
      name: 'Sway back',
      about:
        'Takes length out of the centre back at the waist, to nothing at the side. For a back hollow at the waist, where slack folds lie across above it.',
      caution: 'First look whether hips that are tight push the cloth up: then let those out instead.',
      source: 'Fitting manuals’ wedge for a sway back; the angle reckoned from the width of the back at the waist.',
      sentence: ({ params }, say) =>
        `sway back: ${say(amount(params))} shorter at the centre back, nothing at the side`,
      per: 'at the centre back',
    },
    'back-width': {
      name: 'Back broader or narrower',
      about:
        'Moves the armhole of the back out or in from the shoulder blades down, to nothing at the shoulder point and at the waist. For a back that strains across when the arms reach forward, or stands in folds along the armhole.',
      source: 'Fitting manuals’ chapters on broad and narrow backs.',
      sentence: (step, say) =>
        `back ${amount(step.params) < 0 ? 'narrower' : 'broader'} by ${say(Math.abs(amount(step.params)))}${byHalves(step, ' on each half', '')}${inAll(step, say, 2)}`,
      more: 'Broader',
      less: 'Narrower',
    },
    'round-back': {
      name: 'Round back',
      about:
        'Gives the back length over the shoulder blades at the centre, to nothing at the armhole. For a rounded back, where the collar stands off and the hem rides up behind.',
      source: 'Fitting manuals’ slash across the blades for a rounded back.',
      sentence: ({ params }, say) => `round back: ${say(amount(params))} longer at the centre back over the blades`,
      per: 'at the centre back',
    },
  },
  holds: {
    'side-stays': 'The side seams keep their lengths.',
    'back-waist':
      'The back is as wide at the waist as before, but for the few millimetres that blending the centre gives or takes.',
    'shoulder-stays': 'The shoulder keeps its length.',
    'armhole-fits': 'The armhole stays within the ease of the sleeve’s head.',
  },
  follows: { 'centre-back-curves': 'The centre back becomes a curve, so it needs its seam.' },
  held: {
    'across-grows': 'The back changes by the amount across',
    'centre-grows': 'The centre back grows by the amount',
  },
  changed: { 'centre-swings-out': 'Centre back swings out at the lower edge' },
  problems: {
    'alter.no-waist-on-back': {
      message: '{piece} does not say where its waist lies.',
      remedy: 'Mark the waist on it, then try again.',
    },
    'alter.no-centre-back-seam': {
      message: '{piece} is cut on the fold, and its centre would have to curve.',
      remedy: 'Give it a centre-back seam first.',
    },
    'alter.no-armhole-on-back': {
      message: 'This garment has no back with an armhole of its own below a shoulder.',
      remedy: 'On a raglan or a yoke alter those seams instead.',
    },
  },
};
