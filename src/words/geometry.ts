import type { ProblemCatalogue } from './catalogue.ts';

export const geometryProblems: ProblemCatalogue = {
  'geometry.outline-empty': {
    message: 'The outline has no lines.',
    remedy: 'Draw the piece as one closed run of lines and curves.',
  },
  'geometry.outline-not-finite': {
    message: 'The outline has a point that is not a pair of numbers.',
    remedy: 'Give every point as two numbers in millimetres.',
  },
  'geometry.outline-broken': {
    message: 'The outline is broken {x} across and {y} down: a gap of {gap}.',
    remedy: 'Let every line begin exactly where the one before it ends.',
  },
  'geometry.outline-open': {
    message: 'The outline does not close: it ends {x} across and {y} down, {gap} from where it began.',
    remedy: 'Let the last line end exactly where the first begins.',
  },
  'geometry.outline-speck': {
    message: 'The outline has a line without length, {x} across and {y} down.',
    remedy: 'Leave it out and join its neighbours.',
  },
  'geometry.outline-crosses-itself': {
    message: 'The outline crosses itself {x} across and {y} down.',
    remedy: 'Redraw the lines that cross, or make the alteration that crosses them smaller.',
  },
  'geometry.outline-anticlockwise': {
    message: 'The outline runs anticlockwise.',
    remedy: 'List its lines in the other order, clockwise as seen with the piece face up.',
  },
  'geometry.outline-flat': {
    message: 'The outline encloses nothing.',
    remedy: 'Draw the piece as one closed run round its cloth.',
  },
  'geometry.svg-path': {
    message: 'The path cannot be read: found {found} at place {at}.',
    remedy: 'Write it as one run of M, L, C and Z with absolute coordinates in millimetres.',
  },
};

export const geometryWords = {} as const;
