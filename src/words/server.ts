import type { ProblemCatalogue } from './catalogue.ts';

export const serverProblems: ProblemCatalogue = {
  'server.wrong-host': {
    message: 'This was asked for under a name that is not Easewright’s own: {host}.',
    remedy: 'Open the address that Easewright prints when it starts.',
  },
  'server.wrong-origin': {
    message: 'A page that is not Easewright’s own tried to change the workroom, and was refused.',
    remedy: 'Use the page at the address that Easewright prints when it starts. Nothing was changed.',
  },
  'server.too-large': {
    message: 'What was sent is larger than {most} MB, more than any document can be.',
    remedy: 'Send less. Nothing was stored, and what was stored before is untouched.',
  },
  'server.picture-too-heavy': {
    message: 'This photograph is larger than {most} MB.',
    remedy: 'Save it smaller, or take it again with less detail, and choose it once more. Nothing was stored.',
  },
  'server.picture-too-many-points': {
    message: 'This photograph has more than {most} million points, more than the workroom opens.',
    remedy: 'Save it smaller and choose it once more. Nothing was stored.',
  },
  'server.not-a-picture': {
    message: 'This is not a photograph that can be kept here.',
    remedy: 'Choose a JPEG, PNG or WebP picture. Nothing was stored.',
  },
  'server.picture-from-a-phone': {
    message: 'This photograph is in the form some phones save by themselves (HEIC), which cannot be opened here.',
    remedy:
      'Set the phone’s camera to save JPEG, or send yourself the picture as JPEG, and choose that. Nothing was stored.',
  },
  'server.picture-damaged': {
    message: 'This photograph is damaged: it could not be opened to its end.',
    remedy: 'Copy it from the camera or the phone again, and choose it once more. Nothing was stored.',
  },
  'server.no-picture-library': {
    message: 'The part of Easewright that opens photographs could not be loaded: {reason}',
    remedy: 'Run npm ci again. Everything but photographs goes on without it.',
  },
  'server.not-json': {
    message: 'What was sent could not be read: it is cut short, or is not JSON.',
    remedy: 'Send it again whole. Nothing was stored.',
  },
  'server.wrong-request': {
    message: 'The request is not one the workroom knows: {field} {wanted}.',
    remedy: 'Reload the page; it may belong to an older Easewright. Nothing was changed.',
  },
  'server.no-such-place': {
    message: 'There is nothing at {path}.',
    remedy: 'Go to the first page and on from there.',
  },
  'server.not-built': {
    message: 'The page has not been built yet.',
    remedy: 'Run npm start, or npm run build, and load this page again.',
  },
  'server.fault': {
    message: 'Something in Easewright itself went wrong, and the work was not done.',
    remedy: 'What was stored before is untouched. Try again; the terminal says more about the fault.',
  },
  'server.nothing-to-mend': {
    message: 'The workroom is open and whole, so no backup is put in its place.',
    remedy: 'To take back a change or a deletion, go back to an earlier state of that document.',
  },
  'server.stopping': {
    message: 'Easewright is being stopped.',
    remedy: 'Start it again to go on. What was stored is kept.',
  },
  'server.no-free-port': {
    message: 'No port from {first} to {last} is free on {host}.',
    remedy: 'Close another program, or choose a port with --port.',
  },
  'server.cannot-listen': {
    message: 'Easewright cannot be opened at {host}, port {port} ({detail}).',
    remedy: 'Choose another with --host and --port. Without them it opens on this machine only.',
  },
  'server.unreachable': {
    message: 'Easewright has the workroom open at {address} but does not answer.',
    remedy: 'Wait a moment and try again, or stop it and start it anew.',
  },
};

export const serverWords = {
  open: 'Easewright is open at {address}',
  keeps: 'It keeps its data in {folder}',
  elsewhere: 'Port {wanted} was taken, so it is at {port} this time.',
  everyone:
    'It can be reached by other machines at this address. Anyone who can reach it can read and change the workroom.',
  stopping: 'Stopping; all that was stored is kept.',
  backupFailed: 'No backup could be taken today: {message} {remedy}',
  /** The page shown while the workroom is damaged. */
  damaged: {
    title: 'The workroom is damaged',
    goBack: 'Go back to the backup of {backup}',
    mended: 'The workroom is whole again',
    kept: 'The damaged file is kept as {file}.',
    open: 'Open the workroom',
  },
  /** How `The request is not one the workroom knows: …` goes on. */
  fields: {
    choice: 'the choice',
    kind: 'the kind',
    revision: 'the state it was made from',
    body: 'the document',
    to: 'the state to go back to',
    request: 'the whole',
  },
  wants: {
    choice: 'should be demo or own',
    kind: 'should be one of: {kinds}',
    revision: 'should be a whole number from 1',
    body: 'should be there',
    to: 'should be a whole number from 1',
    takenAt: 'should be the moment of a backup',
    request: 'should be a group of fields',
  },
} as const;
