import type { ProblemCatalogue } from './catalogue.ts';

const makeRoom = 'Make room on the disk, then do it again. What was stored before is untouched.';
const otherData =
  'Close Easewright there first, or use that one. Another workroom can be opened beside it by giving its folder with --data.';

export const storeProblems: ProblemCatalogue = {
  'store.no-sqlite': {
    message: 'The part of Easewright that keeps your data could not be loaded: {reason}',
    remedy:
      'Run npm ci again. Where no ready-made part can be fetched it is compiled, which needs Python 3 and a C++ compiler: on Debian or Ubuntu sudo apt install build-essential python3, on macOS xcode-select --install, on Windows the C++ build tools.',
  },
  'store.in-use': { message: 'The workroom in {folder} is already open in another program.', remedy: otherData },
  'store.in-use-by': {
    message: 'The workroom in {folder} is already open: Easewright runs as process {process}.',
    remedy: otherData,
  },
  'store.in-use-at': {
    message: 'The workroom in {folder} is already open at {address} (process {process}).',
    remedy: otherData,
  },
  'store.lock-unusable': {
    message: 'The file {file}, which keeps a workroom from being opened twice, is not what it should be.',
    remedy: 'Make sure Easewright is not running, move that file away, and start again. It holds no data of yours.',
  },
  'store.disk-full': {
    message: 'The disk with {place} is full, so nothing was stored.',
    remedy: makeRoom,
  },
  'store.disk-fault': {
    message: 'The disk with {place} could not be read or written ({detail}).',
    remedy:
      'Check that the disk is connected and sound, then start Easewright again. What was stored before is untouched.',
  },
  'store.not-writable': {
    message: 'Easewright may not write in {place} ({detail}).',
    remedy: 'Give yourself the right to write in that folder, or choose another with --data.',
  },
  'store.busy': {
    message: 'Another program is using the data in {place} just now.',
    remedy: 'Close it, or wait until it has finished, and try again.',
  },
  'store.corrupt': {
    message: 'The data in {place} is damaged ({detail}).',
    remedy: 'Close Easewright and open it again: it then looks for the last good backup. Nothing is deleted.',
  },
  'store.damaged': {
    message: 'The data of the workroom in {place} is damaged ({detail}). There is a good backup of {backup}.',
    remedy:
      'Start Easewright (npm start) and open its page, which offers to go back to that backup. The damaged file is then kept beside it under a dated name; nothing is deleted.',
  },
  'store.damaged-no-backup': {
    message: 'The data of the workroom in {place} is damaged ({detail}), and there is no good backup in it.',
    remedy:
      'Nothing was changed. If you have a copy of the folder, open that with --data. Otherwise keep the file workroom.sqlite for someone who can recover SQLite files, and begin anew in another folder.',
  },
  'store.missing': {
    message:
      'The file workroom.sqlite has gone from {place}, though its backups are there. The last good one is of {backup}.',
    remedy:
      'Put the file back if you moved it. Otherwise start Easewright (npm start) and open its page, which offers to go back to that backup.',
  },
  'store.missing-no-backup': {
    message: 'The file workroom.sqlite has gone from {place}, but parts that belong to it are there.',
    remedy: 'Put the file back if you moved it. To begin anew, choose an empty folder with --data.',
  },
  'store.no-good-backup': {
    message: 'There is no good backup to go back to in {folder}.',
    remedy: 'Nothing was changed. If you have a copy of the folder, open that with --data.',
  },
  'store.not-a-workroom': {
    message: 'The file {file} is not a workroom of Easewright, though it has the name of one.',
    remedy: 'Choose another folder with --data. The file was left as it is.',
  },
  'store.newer': {
    message:
      'This workroom was last used with a newer Easewright: its data has version {version}, and this program knows up to {known}.',
    remedy: 'Use the newer program. The data was left as it is.',
  },
  'store.newer-document': {
    message:
      'This was written by a newer Easewright: {format} version {version}, and this program knows up to {known}.',
    remedy: 'Use the newer program. Nothing was changed.',
  },
  'store.not-a-document': {
    message: 'What was given is not a {kind} document.',
    remedy: 'Give one JSON object with the fields of a {kind}.',
  },
  'store.wrong-field': {
    message: 'In this {kind}, {field} {wanted}.',
    remedy: 'Change it and store again. What was stored before is untouched.',
  },
  'store.unknown-field': {
    message: 'This {kind} has a part that this version does not know: {field}.',
    remedy: 'Leave it out, or use the version of Easewright that wrote it. Nothing was changed.',
  },
  'store.no-such-document': {
    message: 'What was asked for is not in this workroom; it may have been taken away.',
    remedy: 'Look for it in the list again; it may belong to another workroom.',
  },
  'store.no-such-part': {
    message: 'This make names a {part} that is not in the workroom ({id}).',
    remedy: 'Choose a {part} that is there. Nothing was stored.',
  },
  'store.no-such-photograph': {
    message: 'There is no photograph with the mark {id} in this workroom.',
    remedy: 'It may have been taken away, or belong to another workroom. Choose one that is there.',
  },
  'store.conflict': {
    message: 'This was changed elsewhere since it was opened here: you have state {given}, and it is now at {current}.',
    remedy: 'Look at both and store the one you want. Neither is lost.',
  },
  'store.deleted': {
    message: 'This was deleted elsewhere since it was opened here.',
    remedy: 'Take the deletion back first, then store again.',
  },
  'store.one-settings': {
    message: 'The workroom already has its settings.',
    remedy: 'Change the ones that are there.',
  },
  'store.nothing-to-undo': {
    message: 'There is no earlier state to go back to.',
    remedy: 'It is as it was first stored.',
  },
  'store.no-such-revision': {
    message: 'There is no state {revision} of this to go back to.',
    remedy: 'Choose one from its history.',
  },
  'store.already-started': {
    message: 'This workroom has been started already.',
    remedy: 'Go on with it, or start another in a folder of its own with --data.',
  },
};

export const storeWords = {
  workrooms: { own: 'My workroom', demo: 'Demo workroom' },
  kinds: {
    wearer: 'wearer',
    pattern: 'pattern',
    envelope: 'envelope',
    cloth: 'cloth',
    make: 'make',
    settings: 'settings',
  },
  /** Fields of documents as a person knows them. */
  fields: {
    format: 'the name and version of its format',
    name: 'the name',
    note: 'the note',
    comparedWith: 'whom the measures are compared with',
    sets: 'the sets of measures',
    date: 'the date',
    waistAt: 'where the waist was taken',
    readings: 'the readings',
    measure: 'which measure it is',
    side: 'the side',
    mm: 'the amount in millimetres',
    written: 'the amount as written',
    structure: 'the structure',
    fibres: 'the fibres',
    weight: 'the weight in grams a square metre',
    width: 'the width in millimetres',
    length: 'the length in millimetres',
    stretchAcross: 'the stretch across, as a share of 1',
    stretchAlong: 'the stretch along, as a share of 1',
    shrinkAcross: 'the shrinkage across, as a share of 1',
    shrinkAlong: 'the shrinkage along, as a share of 1',
    oneWay: 'whether it is laid one way',
    washed: 'whether it has been washed',
    colour: 'the colour',
    terms: 'the terms it came on',
    from: 'where it came from',
    wearer: 'the wearer',
    pattern: 'the pattern',
    cloth: 'the cloth',
    size: 'the starting size',
    steps: 'the alteration list',
    alteration: 'the name of the alteration',
    version: 'the version',
    on: 'whether it is switched on',
    params: 'the amounts',
    fold: 'how the cloth is folded',
    gap: 'the gap between pieces in millimetres',
    paper: 'the paper',
    state: 'how far it is',
    unit: 'the unit',
    onTheTable: 'the make on the table',
    page: 'what the page remembers',
    id: 'its mark',
  },
  /** One entry of a list within a document. */
  entries: { sets: 'set of measures {count}', readings: 'reading {count}', steps: 'alteration {count}' },
  /** How the sentence `In this cloth, the width …` goes on. */
  wants: {
    missing: 'is missing',
    unlike: 'is not written in a way that can be understood',
    whole: 'the whole',
    field: '“{name}”',
    entry: '“{name}” entry {count}',
    oneOf: 'should be one of: {values}',
    types: {
      string: 'should be words',
      number: 'should be a number',
      int: 'should be a whole number',
      boolean: 'should be true or false',
      array: 'should be a list',
      object: 'should be a group of fields',
      record: 'should be a group of fields',
    },
    tooSmall: {
      number: 'should be at least {least}',
      int: 'should be at least {least}',
      string: 'should not be empty',
      array: 'should have at least {least} entries',
    },
    tooBig: {
      number: 'should be at most {most}',
      int: 'should be at most {most}',
      string: 'should be at most {most} letters long',
      array: 'should have at most {most} entries',
    },
    rules: { 'same-id-twice': 'has the same mark twice' },
  },
} as const;
