import { byHalves, howMuch, inAll, isLess } from './amounts.ts';
import type { FamilyWords, SayNamed, SpokenStep } from './family.ts';

/** The dart a step is about; where the garment has one only, the step need not say. */
const dartOf = ({ params }: SpokenStep, name: SayNamed): string =>
  typeof params['dart'] === 'string' ? name('dart', params['dart']) : 'dart';

export const bustWords: FamilyWords = {
  alterations: {
    'full-bust': {
      name: 'Full bust',
      about:
        'Gives each front more width and length over the bust and a deeper side dart; neck, shoulder, armhole and side seam stay as they are. For a fuller bust than the pattern was drafted for.',
      caution: 'Over a prosthesis fit each half by itself, and follow the wearer and her clinician rather than a rule.',
      source:
        'Fitting manuals’ slash-and-spread alteration for a full bust, its angles reckoned out instead of measured off the paper.',
      sentence: (step, say) =>
        `full bust: ${say(howMuch(step))} more${byHalves(step, ' on each half of the front', '')}${inAll(step, say, 2)}`,
    },
    'small-bust': {
      name: 'Small bust',
      about:
        'Takes width and length out of each front over the bust and makes the side dart shallower; neck, shoulder, armhole and side seam stay as they are. For a smaller bust than the pattern was drafted for.',
      caution:
        'Over a prosthesis, or without one, fit each half by itself, and follow the wearer and her clinician rather than a rule.',
      source:
        'Fitting manuals’ alteration for a small bust: that for a full one turned about, parts lapped where they would spread.',
      sentence: (step, say) =>
        `small bust: ${say(howMuch(step))} less${byHalves(step, ' on each half of the front', '')}${inAll(step, say, 2)}`,
    },
    'move-dart': {
      name: 'Move a dart',
      about:
        'Swings a dart, or part of it, into another edge of the same piece: from the side to the hem, the shoulder, the neck or the armhole. What it takes in stays the same.',
      source:
        'The pivot of pattern-cutting manuals: a dart is closed about the point it aims at and opens where the piece is cut.',
      sentence: (step, _say, name) => {
        const { to, share } = step.params;
        const part = typeof share === 'number' && share < 1 ? `${Math.round(share * 100)} % of the ` : 'the ';
        return `${part}${dartOf(step, name)} moved to ${typeof to === 'string' ? `the ${name('edge', to)}` : 'another edge'}`;
      },
    },
    'dart-to': {
      name: 'Dart let go into gathers, tucks or ease',
      about:
        'Leaves a dart unstitched: what it took in is gathered, laid in tucks or eased into the seam it opens in; at a hem it hangs as fullness.',
      source: 'Pattern-cutting manuals’ equivalents of a dart: gathers, tucks and ease that take up the same.',
      sentence: (step, _say, name) => `the ${dartOf(step, name)} let go into ${String(step.params['as'] ?? 'gathers')}`,
    },
    'shorten-dart': {
      name: 'Dart shorter or longer',
      about:
        'Draws the point of a dart back, or on; its mouth stays. For a dart that ends on the fullest point, or far short of it.',
      source:
        'Fitting manuals’ habit: a dart ends 2 to 4 cm short of the fullest point at the side, 1 to 2.5 cm at the waist.',
      sentence: (step, say, name) =>
        `the ${dartOf(step, name)} ${isLess(step) ? 'longer' : 'shorter'} by ${say(howMuch(step))}${byHalves(step, ' on each half', '')}`,
      more: 'Shorter',
      less: 'Longer',
    },
  },
  parameters: { to: 'To which edge', at: 'How far along it', share: 'How much of it', as: 'Into' },
  choices: { gathers: 'Gathers', tucks: 'Tucks', ease: 'Ease' },
  holds: {
    'dart-angle-kept': 'The new dart takes in the same angle.',
    'edges-closed': 'Every edge keeps its length, darts closed.',
    'other-edges': 'The other edges keep their lengths.',
  },
  follows: {
    notches: 'Notches go along with the parts they lie on.',
    'gathered-in': 'The seam is sewn with as much more gathered, tucked or eased in.',
  },
  changed: {
    'dart-opens': 'The new dart’s intake',
    'dart-let-go': 'What the dart took in is let go',
    'dart-length': 'Length of the dart',
  },
  problems: {
    'alter.no-dart': {
      message: 'This garment has no dart.',
      remedy: 'Choose another alteration.',
    },
    'alter.dart-on-other-piece': {
      message: 'A dart of “{piece}” can only be moved to an edge of the same piece.',
      remedy: 'Choose one of its edges.',
    },
    'alter.dart-at-corner': {
      message: 'The dart of “{piece}” opens at a corner, where two edges meet.',
      remedy: 'Move it into one of the edges first.',
    },
    'alter.dart-hangs': {
      message: 'The edge of “{piece}” is sewn to nothing there: {intake} hang as fullness.',
      remedy: 'Gather it into a band, or leave it to hang.',
    },
    'alter.too-much-ease': {
      message: '{by} is more than can be eased into the seam of “{piece}” without puckers.',
      remedy: 'Gather it or lay it in tucks.',
    },
    'alter.dart-too-short': {
      message: 'The dart of “{piece}” would be shorter than {least}, and pucker.',
      remedy: 'Choose a smaller amount.',
    },
  },
};
