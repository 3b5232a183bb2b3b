import type { ProblemCatalogue } from './catalogue.ts';

/** What can go wrong on the page itself. */
export const webProblems: ProblemCatalogue = {
  'web.named-gone': {
    message: '“{named}” is not there where this step stands in the list.',
    remedy: 'Choose another, or do this step earlier or later.',
  },
  'web.silent': {
    message: 'The workroom does not answer: the program that keeps it may have been stopped.',
    remedy: 'What you type is kept in this browser. Start the program again; the page carries on by itself.',
  },
  'web.name-missing': {
    message: 'Nothing stands here yet.',
    remedy: 'Write a name; the last one is kept until then.',
  },
  'web.not-a-date': {
    message: '“{text}” does not read as a day.',
    remedy: 'Write year, month and day: 2026-03-14.',
  },
  'web.cloth-width': {
    message: 'Cloth of that width is not woven or knitted: it lies between {low} and {high}.',
    remedy: 'Look at the unit and the decimal mark.',
  },
  'web.cloth-too-light': {
    message: '“{text}” is lighter than any cloth.',
    remedy: 'Look at the unit and the decimal mark; a fine lawn is about 70 g/m².',
  },
  'web.share-too-large': {
    message: '“{text}” is more than cloth does: {most} at most.',
    remedy: 'Write it as a percentage: 100 mm that become 96 mm have shrunk by 4 %.',
  },
  'web.amount-outside': {
    message: 'That is beyond what can be done here.',
    remedy: 'Write an amount between {least} and {most}.',
  },
  'web.worker-broken': {
    message: 'The work stopped for a fault of the program’s own.',
    remedy: 'Nothing you entered is lost. Start it again; if it stops again, load the page anew.',
  },
  'web.print-broken': {
    message: 'The sheets could not be made: {detail}.',
    remedy: 'Nothing you entered is lost. Try once more; if it fails again, load the page anew.',
  },
  'web.not-here': {
    message: 'There is nothing at this address.',
    remedy: 'It may have been taken away, or the address may have a slip in it. Go back to the table.',
  },
  'web.file-too-large': {
    message: 'The file “{name}” has {size} MB; a pattern has seldom more than one.',
    remedy: 'Choose the pattern’s own file, one that ends in .json. Nothing was stored.',
  },
  'web.page-not-loaded': {
    message: 'A part of the page could not be loaded.',
    remedy: 'The program may have been stopped or renewed. Load the page again; what you typed is kept.',
  },
  'web.fault': {
    message: 'The page met a fault of its own and stopped drawing this part.',
    remedy: 'What you typed is kept. Load the page again; if it happens again, the words below help whoever mends it.',
  },
};
