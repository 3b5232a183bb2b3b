import { byHalves, inAll } from './amounts.ts';
import type { FamilyWords } from './family.ts';

const amount = (params: Readonly<Record<string, unknown>>): number => Number(params['amount'] ?? 0);

const places: Readonly<Record<string, string>> = { waist: 'at the waist', hip: 'at the hip', hem: 'at the hem' };

export const widthWords: FamilyWords = {
  alterations: {
    blend: {
      name: 'Run the sides into another size',
      about:
        'Draws the side seams from the starting size into another at waist or hip. For a waist or hip of another size than the shoulders.',
      source: 'What every manual of fitting says of running one size into another.',
    },
    'run-sides': {
      name: 'Side seams let out or taken in',
      about:
        'Moves the side seams out or in at waist, hip or hem, front and back alike, and runs them to nothing at the levels above and below. For a waist or hip of another size than the rest.',
      caution: 'From the hip on everything that hangs below moves along.',
      source: 'What every manual of fitting says of letting out and taking in at the side seams.',
      sentence: (step, say) =>
        `${byHalves(step, 'side seams', 'side seam')} ${amount(step.params) < 0 ? 'taken in' : 'let out'} ${places[String(step.params['where'])] ?? ''} by ${say(Math.abs(amount(step.params)))} on each edge${inAll(step, say, 4)}`,
      more: 'Let out',
      less: 'Take in',
    },
    'dart-intake': {
      name: 'Dart deeper or shallower',
      about:
        'Makes a dart at the waist take in more or less, half on each side; its point stays. For a waist smaller or larger than the pattern’s for the same hips.',
      source: 'Fitting manuals on taking in and letting out at the waist darts.',
      sentence: (step, say, name) => {
        const dart = step.params['dart'];
        const said = typeof dart === 'string' ? `the ${name('dart', dart)}` : 'dart';
        const way = amount(step.params) < 0 ? 'shallower' : 'deeper';
        return `${said} ${way} by ${say(Math.abs(amount(step.params)))}${byHalves(step, ' on each half', '')}${inAll(step, say, 2)}`;
      },
      more: 'Deeper',
      less: 'Shallower',
    },
    abdomen: {
      name: 'Waist higher or lower at centre front',
      about:
        'Raises the waist of the front at the centre, to nothing at the side, so that it is long enough over the abdomen and the hem hangs level; or lowers it where the abdomen is hollow.',
      source: 'Fitting manuals on the hem that rides up at the front of a skirt or trousers.',
      sentence: ({ params }, say) =>
        `waist ${amount(params) < 0 ? 'lowered' : 'raised'} by ${say(Math.abs(amount(params)))} at the centre front, to nothing at the side`,
      per: 'at the centre front',
      more: 'Raise',
      less: 'Lower',
    },
    seat: {
      name: 'Waist higher or lower at centre back',
      about:
        'Raises the waist of the back at the centre, to nothing at the side, for a full seat; or lowers it for a flat one or a sway back.',
      source: 'Fitting manuals on the hem that rides up, or drops, at the back of a skirt or trousers.',
      sentence: ({ params }, say) =>
        `waist ${amount(params) < 0 ? 'lowered' : 'raised'} by ${say(Math.abs(amount(params)))} at the centre back, to nothing at the side`,
      per: 'at the centre back',
      more: 'Raise',
      less: 'Lower',
    },
    flare: {
      name: 'Flare added or taken out',
      about:
        'Spreads front and back from nothing at the waist to the amount at the hem, or folds it out. Front and back alike, so that the side seams hang at the same angle to the grain.',
      caution:
        'Long wide hems trail: keep them clear of flames, stairs and machines. For a child’s nightwear check the law and guidance where you live.',
      source: 'Slash and spread, as pattern-cutting manuals have it for flared skirts.',
      sentence: (step, say) =>
        `flare ${amount(step.params) < 0 ? 'taken out' : 'added'}: ${say(Math.abs(amount(step.params)))} at the hem of ${byHalves(step, 'each half of front and back', 'front and back')}${inAll(step, say, 4)}`,
    },
  },
  choices: { waist: 'At the waist', hip: 'At the hip', hem: 'At the hem' },
  holds: {
    'underarm-stays': 'The underarm stays where it was, so the armhole is as before.',
    'width-grows-here': 'Every piece changes by the amount at that level.',
    'dart-point': 'The dart’s point stays where it was.',
    'waist-stays': 'The waist edge keeps its length.',
    'side-stays': 'The side seams keep their lengths.',
    'sides-alike': 'The side edges that meet lie at the same angle to the grain.',
  },
  follows: {
    waistband: 'A waistband is made as much longer or shorter.',
    pockets: 'Pockets in the side are traced again.',
  },
  held: {
    'edge-shrinks': 'The edge is shorter by what the dart takes in',
    'dart-point': 'The dart’s point stays',
    'sides-alike': 'Sides at the same angle to the grain',
  },
  problems: {
    'alter.no-side-seams': {
      message: 'This garment has no side seams between a front and a back.',
      remedy: 'Choose another alteration.',
    },
    'alter.no-side-there': {
      message: 'No piece has a side seam at that level ({where}).',
      remedy: 'Choose another level.',
    },
    'alter.no-shaping-dart': {
      message: 'This garment has no dart at the waist that could take in more or less.',
      remedy: 'Take the side seams in or let them out instead.',
    },
    'alter.no-edge-beside-dart': {
      message:
        'Beside this dart on “{piece}” there is not so much of the edge left: only {room} to its corner or the next dart.',
      remedy: 'Take the dart in by less, or share the amount between two darts.',
    },
    'alter.dart-closed': {
      message: 'The dart of “{piece}” takes in {intake} only, and would be closed.',
      remedy: 'Choose a smaller amount.',
    },
    'alter.wide-dart': {
      message: 'The dart of “{piece}” now takes in {intake}, which makes a sharp point.',
      remedy: 'Share it between two darts.',
    },
    'alter.tucks-deeper': {
      message: 'Fold the tucks of “{piece}” deeper by {by} altogether on each half.',
      remedy: 'Mark it beside the tuck lines.',
    },
    'alter.tucks-shallower': {
      message: 'Fold the tucks of “{piece}” less deep by {by} altogether on each half.',
      remedy: 'Mark it beside the tuck lines.',
    },
    'alter.sides-hang-apart': {
      message: 'The side edges of front and back now lie {degrees} degrees apart to the grain.',
      remedy: 'Share the flare so that they differ by no more than 3, or the side seam will twist.',
    },
    'alter.no-waist-edge': {
      message: 'This garment has no {role} that hangs from the waist.',
      remedy: 'Use this on skirts and trousers.',
    },
    'alter.no-hanging-piece': {
      message: 'This garment has no piece that hangs from the waist to a hem.',
      remedy: 'Use this on skirts and dresses with a seam at the waist.',
    },
  },
};
