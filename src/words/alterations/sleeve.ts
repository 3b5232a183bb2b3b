import { byHalves } from './amounts.ts';
import type { FamilyWords } from './family.ts';

const amount = (params: Readonly<Record<string, unknown>>): number => Number(params['amount'] ?? 0);

export const sleeveWords: FamilyWords = {
  alterations: {
    'full-upper-arm': {
      name: 'Full upper arm',
      about:
        'Gives each sleeve more width round the upper arm; cap, underarm seams and wrist keep their lengths. For an arm fuller at the top than the sleeve, or, the other way, a thin one.',
      caution:
        'The cap becomes lower. Where it may fall no further, let the underarm and side seams out instead. Round an arm that is swollen or braced, follow the wearer and their clinician.',
      source:
        'Fitting manuals’ slash-and-spread alteration of the upper arm, in four quarters hinged at the underarm; how far cap and wrist draw together is reckoned out.',
      sentence: (step, say) =>
        `${amount(step.params) < 0 ? 'thin' : 'full'} upper arm: ${say(Math.abs(amount(step.params)))} ${amount(step.params) < 0 ? 'less' : 'more'} ${byHalves(step, 'round each arm', 'round the arm')}`,
      per: 'round each arm',
      perOne: 'round the arm',
    },
    'sleeve-hem': {
      name: 'Sleeve hem wider or narrower',
      about:
        'Spreads each sleeve from nothing at the cap to the amount at the hem, or takes it in. For a flared sleeve, a wider wrist, or one gathered into its cuff.',
      caution:
        'Wide hems trail: keep them clear of flames and machines. For a child’s nightwear check the law and guidance where you live.',
      source: 'The flared sleeve of pattern-cutting manuals.',
      sentence: (step, say) =>
        `sleeve hem ${amount(step.params) < 0 ? 'narrower' : 'wider'} by ${say(Math.abs(amount(step.params)))}${byHalves(step, ' on each sleeve', '')}`,
      per: 'on each sleeve',
      perOne: 'on the sleeve',
      more: 'Wider',
      less: 'Narrower',
    },
    'sleeve-head': {
      name: 'Gathered sleeve head',
      about:
        'Spreads each sleeve from nothing at the hem to the amount at the cap, which is raised and gathered into the same armhole.',
      source: 'The gathered sleeve head of pattern-cutting manuals, raised by a quarter of what is gathered.',
      sentence: (step, say) =>
        `sleeve head fuller by ${say(amount(step.params))}${byHalves(step, ' on each sleeve', '')}, gathered in`,
      per: 'on each sleeve',
      perOne: 'on the sleeve',
    },
  },
  holds: {
    cap: 'The cap keeps its length, so it fits the armhole as before.',
    'sleeve-seams': 'The seams along the sleeve keep their lengths.',
    wrist: 'Hem or wrist keeps its length.',
    'upper-arm-grows': 'Each sleeve changes by the amount round the upper arm.',
    'cap-grows': 'The cap grows by the amount, and by a little for its rise.',
  },
  follows: {
    'cap-falls': 'The cap becomes lower.',
    'sleeve-shorter': 'The sleeve becomes a little shorter: lengthen it below the elbow if it should not.',
    lining: 'The lining is altered alike.',
    'gathered-into-cuff': 'Where the hem is sewn into a cuff, what it gained is gathered in.',
    'gathered-into-armhole': 'What the cap gained is gathered into the armhole.',
  },
  held: {
    'hem-grows': 'The hem changes by the amount',
    'cap-grows': 'The cap grows by the amount',
  },
  changed: {
    'cap-height': 'Height of the cap',
    'sleeve-length': 'Length down the middle of the sleeve',
    'head-ease': 'Sleeve-head ease',
  },
  problems: {
    'alter.no-set-in-sleeve': {
      message: 'This garment has no set-in sleeve with a cap of its own.',
      remedy: 'Use this on a sleeve that is set into an armhole; a raglan sleeve is widened in its own seams.',
    },
    'alter.sleeve-in-two': {
      message: 'The sleeve is in two parts, and this spreads a sleeve of one.',
      remedy: 'Widen it in its seams instead.',
    },
  },
};
