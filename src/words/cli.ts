import type { ProblemCatalogue } from './catalogue.ts';

export const cliProblems: ProblemCatalogue = {
  'cli.command': {
    message: 'There is no command “{command}”.',
    remedy: 'The commands are {commands}; `easewright help` says what each does.',
  },
  'cli.option': {
    message: 'The command could not be understood: {what}.',
    remedy: '`easewright help` lists what each command takes.',
  },
  'cli.usage': {
    message: 'Something is missing from the command.',
    remedy: 'It is written: easewright {usage}',
  },
  'cli.number': {
    message: 'The option --{option} takes a number from {low} to {high}, not “{written}”.',
    remedy: 'Give it such a number, or leave it out.',
  },
  'cli.choice': {
    message: 'The option --{option} cannot be “{written}”.',
    remedy: 'It takes one of: {choices}.',
  },
  'cli.only-house': {
    message: 'The option --{option} is for house patterns; {file} holds one view in one cup.',
    remedy: 'Leave the option out, or name a house pattern by its id.',
  },
  'cli.file-missing': { message: 'There is no file {file}.', remedy: 'Check its name and where it lies.' },
  'cli.file-unreadable': {
    message: 'The file {file} cannot be read ({why}).',
    remedy: 'Check that it is a file and that you may read it.',
  },
  'cli.file-too-large': {
    message: 'The file {file} is {megabytes} MB: far larger than anything this program reads.',
    remedy: 'Check that it is the file you meant. Nothing was read or stored.',
  },
  'cli.file-not-json': {
    message: 'The file {file} is not JSON, or it was cut short.',
    remedy: 'Fetch or copy it again.',
  },
  'cli.file-unwritable': {
    message: 'The file {file} cannot be written ({why}).',
    remedy: 'Check that its folder is there and that you may write to it.',
  },
  'cli.disk-full': {
    message: 'There is no room left on the disk for {file}.',
    remedy: 'Make room and try again; nothing half-written was left behind.',
  },
  'cli.no-pattern': {
    message: 'There is no pattern “{pattern}”.',
    remedy: 'Name a house pattern ({patterns}) or a pattern document (a file ending in .json).',
  },
  'cli.list-for-another': {
    message: 'The alteration list is for the pattern {meant}, not for {pattern}.',
    remedy: 'Choose the list that belongs to this pattern, or change the pattern it names.',
  },
  'cli.no-bodies': {
    message: 'The file of bodies {file} has no rows.',
    remedy: 'It needs a line of column names, then a line for each body.',
  },
  'cli.not-a-demo': {
    message: 'The folder {folder} holds a workroom of somebody’s own, not the demo.',
    remedy: 'Give the demo a folder of its own with --data.',
  },
  'cli.wearer-unknown': {
    message: 'There is no wearer called “{name}” in this workroom.',
    remedy: 'Wearers here: {names}.',
  },
  'cli.measure-unknown': {
    message: 'There is no measure called “{measure}”.',
    remedy: 'The measures are {measures}.',
  },
};

export const cliWords = {
  fault: 'Something went wrong inside the program; this is a fault of ours, not of what you gave.',
  help: `Easewright: the workroom of a home dressmaker.

In the browser
  easewright serve [--data DIR] [--port N] [--host ADDRESS] [--no-open]   open the workroom
  easewright demo  [--data DIR] [--port N] [--no-open]                    look round the demo workroom

Wearers (in the workroom; --data DIR chooses another)
  easewright wearer list
  easewright wearer add NAME
  easewright wearer measure NAME MEASURE=READING …      bustGirth="38 1/2 in" hipGirth=102cm
  easewright wearer show NAME

Patterns
  easewright pattern list --json
  easewright pattern draft ID (--bodies FILE.csv --survey women|men|children | --size S | --wearer NAME) [--pieces] --json
  easewright pattern export ID [--out FILE.json]
  easewright pattern check FILE.json
  easewright pattern import FILE.json                   keep it in the workroom

The job   (PATTERN is a house pattern's id or a pattern document's file)
  easewright fit PATTERN (--bodies FILE.csv --survey women|men | --wearer NAME) [--cloth FILE.json] --json
  easewright alteration catalogue --json
  easewright alter PATTERN --size S (--alterations FILE.json | --lists FILE.jsonl) --json
  easewright lay FILE.json [--seconds N] [--workers N] [--seed N] --json
  easewright lay PATTERN --size S --width LENGTH [--length LENGTH] [--fold single|lengthwise] [--one-way]
                 [--alterations FILE.json] [--seconds N] --json
  easewright print PATTERN --size S [--alterations FILE.json] --paper a4|letter|a0|roll36 --out FILE.pdf
                   [--only changed|overlay|summary|sheets] [--printed FILE.json]

Answers are JSON on stdout, one object or one object a line; what is said beside them goes to stderr.
Lengths are mm. Exit 0: done; 2: something was wrong with what was given; 1: a fault of ours.
EASEWRIGHT_UNIT=in makes sentences speak in inches.`,
} as const;
