import { alterationWords, familyWords, wordsOfAll } from './alterations/index.ts';
import type { ProblemCatalogue } from './catalogue.ts';

export type { AlterationWords, NamedKind } from './alterations/index.ts';

/** What the alterations have to say when they cannot be done, and what they warn of. */
const generalProblems: ProblemCatalogue = {
  'alter.unknown': {
    message: 'There is no alteration called {alteration}.',
    remedy: 'Choose one from the catalogue, or take the step off the list.',
  },
  'alter.unknown-version': {
    message: 'This step was made with another version ({version}) of {alteration}.',
    remedy: 'Take the step off and add it again; the amount can stay as it was.',
  },
  'alter.not-a-choice': {
    message: '“{given}” is not one of the choices for {parameter}.',
    remedy: 'Choose one of {choices}.',
  },
  'alter.not-an-amount': {
    message: 'This step does not say how much.',
    remedy: 'Give it an amount in millimetres.',
  },
  'alter.not-one-sided': {
    message: 'This alteration is not done on one half of the body alone.',
    remedy: 'Do it on both halves.',
  },
  'alter.whole-piece-one-side': {
    message: '{piece} is cut as one whole piece and would have to be different right and left.',
    remedy: 'Do this on both halves, or choose an amount that leaves that piece as it is.',
  },
  'alter.halves-do-not-meet': {
    message:
      'The two halves of “{piece}” would be {by} different in length at the centre, so it could not be cut in one.',
    remedy: 'Do this on both halves, or give the piece a seam down its centre first.',
  },
  'alter.halves-other-pieces': {
    message: 'Done on one half only this would give the two halves different pieces.',
    remedy: 'Do it on both halves.',
  },
  'alter.level-lost': {
    message: 'So much would leave a level of the body off its piece, and its width could not be measured.',
    remedy: 'Choose a smaller amount.',
  },
  'alter.changes-nothing': {
    message: 'This step changes nothing.',
    remedy: 'Give it another amount, or take it off the list.',
  },
  'alter.band-has-no-room': {
    message: '{piece} cannot be made longer or shorter by {by} to follow: nowhere can it be cut clear across.',
    remedy: 'Choose a smaller amount, or draft that piece anew.',
  },
  'alter.not-traced': {
    message:
      '{piece} is no copy of the line it is sewn to ({by} longer or shorter), so it cannot be traced again from it.',
    remedy: 'Choose a smaller amount, or redraw that piece by hand.',
  },
  'alter.not-a-share': {
    message: '{given} is no share for {parameter}.',
    remedy: 'Give a number between 0 and 1 within what this alteration can do.',
  },
  'alter.does-not-hold': {
    message: 'At {where} it would be {by} off what has to hold ({what}).',
    remedy: 'Choose a smaller amount.',
  },
  'alter.out-of-range': {
    message: '{amount} is beyond what this alteration can do.',
    remedy: 'Choose an amount between {least} and {most}; for more, start from another size.',
  },
  'alter.no-card': {
    message: 'There is no card for {alteration}.',
    remedy:
      'Choose lengthen or shorten, full bust, small bust, full upper arm, sway back, or running the side seams into another size.',
  },
  'alter.cap-too-flat': {
    message: 'Widened by {amount} the cap of the sleeve would lie too flat for the armhole: it bears {most}.',
    remedy: 'Widen by less and let the underarm seams out for the rest, or lower the armhole instead.',
  },
  'alter.sway-on-fold': {
    message: '{piece} is cut on the fold, so its centre cannot swing out below the waist.',
    remedy: 'Give it a centre-back seam first, then shorten it there.',
  },
  'alter.no-generic': {
    message: 'None of our own patterns stands for this kind of garment ({kind}), so nothing can be drawn.',
    remedy: 'The words and amounts hold all the same.',
  },
  'alter.card-no-blend': {
    message: 'This step does not say which size the side seams run to.',
    remedy: 'Give another size of the pattern at one of {levels}.',
  },
  'alter.card-no-figures': {
    message: 'Neither a finished measurement nor the body chart gives the {level} of both size {size} and size {to}.',
    remedy: 'Enter that row of the chart, or measure the tissue flat in both sizes.',
  },
  'alter.no-piece': {
    message: 'This garment has no piece this alteration works on: {role}.',
    remedy: 'Choose another alteration, or a pattern with that piece.',
  },
  'alter.no-landmark': {
    message: '{piece} does not say where its {landmark} lies.',
    remedy: 'Mark it on the piece, then try again.',
  },
  'alter.no-side-dart': {
    message: '{piece} has no bust dart in its side seam, which this alteration works through.',
    remedy: 'Use a pattern with a side dart, or fit the bust by the starting size.',
  },
  'alter.no-centre': {
    message: 'From the bust point of “{piece}” a cut cannot reach the centre and the hem.',
    remedy: 'Look whether the bust point is marked in the right place.',
  },
  'alter.hinge-too-near': {
    message: 'The armhole of “{piece}” lies too near the bust point to swing the side out so far.',
    remedy: 'Choose a smaller amount, or start from a larger size.',
  },
  'alter.dart-used-up': {
    message: 'The bust dart of “{piece}” does not hold that much to take out.',
    remedy: 'Choose a smaller amount, or start from a smaller size.',
  },
  'alter.no-lengthen-line': {
    message: 'No piece has a place to lengthen or shorten there ({where}).',
    remedy: 'Choose another place, or draw a lengthening line on the pieces.',
  },
  'alter.no-room': {
    message:
      '{piece} cannot be shortened by {amount} there: what lies above and below, a dart or a level of the body, would be folded out or come too close together.',
    remedy: 'Shorten by less, or part of it at another place.',
  },
  'alter.grain-not-along': {
    message: 'The grain of “{piece}” does not run along its length, so its parts cannot slide along it.',
    remedy: 'Lengthen the other pieces, and redraft this one.',
  },
  'alter.cut-not-clear': {
    message: 'A level cut at that height does not go straight through “{piece}” from one edge to another.',
    remedy: 'Choose another place to cut.',
  },
  'alter.cut-not-through': {
    message: 'The cuts on “{piece}” do not divide it.',
    remedy: 'Let them end at different places of its outline.',
  },
  'alter.cut-too-short': {
    message: 'A cut on “{piece}” would have no length.',
    remedy: 'Look whether its marks lie where they should.',
  },
  'alter.cut-leaves-piece': {
    message: 'A cut would run outside “{piece}” between its ends.',
    remedy: 'Look whether its marks lie where they should; this shape may be too unusual for the alteration.',
  },
  'alter.cut-through-dart': {
    message: 'A cut on “{piece}” would go through its dart {dart}.',
    remedy: 'Move the dart first, or cut at another place.',
  },
  'alter.tears': {
    message: '{piece} would cross over itself: the amount tears the piece.',
    remedy: 'Choose a smaller amount.',
  },
  'alter.edge-changes': {
    message: 'The edge {where} would change its length by {by}, and it must not.',
    remedy: 'Choose a smaller amount.',
  },
  'alter.seam-does-not-walk': {
    message: 'The two sides of the seam {where} would no longer meet: they would be {by} apart.',
    remedy: 'Choose a smaller amount, or alter the piece it is sewn to as well.',
  },
  'alter.armhole-kinks': {
    message: 'The armhole would have a kink of {by} at the hinge, more than can be smoothed.',
    remedy: 'Choose a smaller amount.',
  },
  'alter.dart-legs-differ': {
    message: 'The legs of the bust dart would differ by {by}, so it would not fold flat.',
    remedy: 'Look whether the dart points at the bust point.',
  },
  'alter.width-off': {
    message: 'The width at the {where} level would be {by} off what was asked for.',
    remedy: 'Choose a smaller amount.',
  },
  'alter.width-changes': {
    message: 'The finished width at the {where} level would change by {by}; a change of length must leave it.',
    remedy: 'Change the length by less, or part of it at another place.',
  },
  'alter.grain-bends': {
    message: 'The grain of {where} would no longer be one straight line.',
    remedy: 'Choose another place to cut.',
  },
  'alter.split-dart': {
    message: '{piece}: a dart is now {intake} wide at its mouth, which makes a sharp point.',
    remedy: 'Move part of it to another edge, or let it go into gathers or tucks.',
  },
};

export const alterProblems: ProblemCatalogue = Object.assign(
  {},
  generalProblems,
  ...familyWords.map(({ problems }) => problems ?? {}),
);

/** What a person reads of the alterations: names, what each is for, its parameters, what it holds and changes. */
export const alterWords = {
  alterations: alterationWords,
  families: {
    length: 'Length',
    bust: 'Bust and darts',
    'shoulder-neck': 'Shoulders, neck and armholes',
    back: 'Back',
    sleeve: 'Sleeves',
    width: 'Waist, hip and flare',
    legs: 'Crotch and legs',
    structure: 'Seams, linings, pockets, fastenings',
    seams: 'Mending a seam',
  },
  parameters: wordsOfAll('parameters', {
    side: 'On which half',
    dart: 'Which dart',
    amount: 'Amount, each piece',
    waist: 'At the waist, to size',
    hip: 'At the hip, to size',
    where: 'Where',
  }),
  choices: wordsOfAll('choices', {
    both: 'Both halves alike',
    right: 'The right half only',
    left: 'The left half only',
    'above-waist': 'Above the waist',
    'below-waist': 'Below the waist',
    rise: 'In the rise, above the hip',
    leg: 'In the leg, below the knee',
    sleeve: 'In the sleeve, below the elbow',
  }),
  holds: wordsOfAll('holds', {
    neck: 'The neckline keeps its length.',
    shoulder: 'The shoulder keeps its length.',
    armhole: 'The armhole keeps its length and stays smooth.',
    side: 'The side seam keeps its length, its dart closed.',
    'dart-legs': 'The legs of the dart are equal.',
    'dart-angle': 'The dart opens by the angle the side swung.',
    'width-grows': 'Each front changes by the amount at the bust and everywhere below.',
    'seam-walks': 'Every seam still meets.',
    'end-widths': 'Edges that are not cut keep their length.',
    'width-kept': 'Finished widths at bust, waist and hip stay.',
    'grain-straight': 'The grain stays one line.',
    'edge-length': 'Edges that are not cut keep their length.',
  }),
  follows: wordsOfAll('follows', {
    'centre-facing': 'What is sewn to the centre front drops with it.',
    hem: 'The hem is redrawn over the width put in.',
    levels: 'Waist, hip and the other levels move along.',
    mates: 'Every piece that carries the level is cut at the same place.',
    facings: 'Facings and linings that reach it follow.',
    'zip-length': 'A zip that ends below it has to be as much longer or shorter.',
  }),
  held: wordsOfAll('held', {
    'edge-length': 'Length kept',
    'seam-walks': 'Seam meets',
    'notches-meet': 'Notches meet',
    'armhole-smooth': 'Armhole smooth',
    'dart-legs': 'Dart legs equal',
    'dart-angle': 'The dart opens by the angle the side swung',
    'centre-drop': 'The centre front grows by what the swing gives it',
    'width-grows': 'Width as asked',
    'width-kept': 'Finished width kept',
    'grain-straight': 'Grain one line',
  }),
  changed: wordsOfAll('changed', {
    'edge-length': 'Length along the edge',
    'dart-intake': 'Intake of the bust dart',
    'dart-gone': 'The bust dart is used up',
    girth: 'Finished girth',
    'zip-length': 'Length of the zip',
  }),
};
