import { checkMeasure, type MeasureId, measureIds, type Reading, type Wearer } from '../../body/index.ts';
import { bad, formatLength, good, parseLength, type Result } from '../../units/index.ts';
import { bodyWords } from '../../words/index.ts';
import { type Arguments, readArguments } from '../arguments.ts';
import { type ExitCode, printJson, refuse, type Terminal, withValue } from '../terminal.ts';
import { findWearer, measuresOfWearer, withWorkroom } from '../workroom.ts';

const optionKinds = { json: 'flag', data: 'string', survey: 'string' } as const;

const newWearer = (name: string, comparedWith: Wearer['comparedWith']): Wearer => ({
  format: 'easewright-wearer/1',
  name,
  comparedWith,
  sets: [],
  note: '',
});

const list = async (given: Arguments, terminal: Terminal): Promise<ExitCode> =>
  withValue(terminal, await withWorkroom(given.text('data'), (door) => door.list({ kind: 'wearer' })), (documents) => {
    printJson(
      terminal,
      documents.map(({ id, body }) => ({
        id,
        name: (body as unknown as Wearer).name,
        sets: (body as unknown as Wearer).sets.length,
      })),
    );
    return 0;
  });

const add = async (given: Arguments, terminal: Terminal): Promise<ExitCode> => {
  const name = given.words.slice(1).join(' ').trim();
  const survey = given.text('survey') ?? 'women';
  if (name === '')
    return refuse(terminal, bad('cli.usage', { usage: 'wearer add NAME [--survey women|men|none]' }).problem);
  if (survey !== 'women' && survey !== 'men' && survey !== 'none') {
    return refuse(
      terminal,
      bad('cli.choice', { option: 'survey', written: survey, choices: 'women, men, none' }).problem,
    );
  }
  const body = newWearer(name, survey === 'none' ? null : survey);
  return withValue(
    terminal,
    await withWorkroom(given.text('data'), (door) => door.create('wearer', body)),
    ({ id }) => {
      printJson(terminal, { id, name });
      return 0;
    },
  );
};

const isMeasure = (name: string): name is MeasureId => (measureIds as readonly string[]).includes(name);

/** Reads `bustGirth=38 1/2 in`; a bare number is in the terminal's own unit. */
const readReading = (word: string, terminal: Terminal): Result<Reading> => {
  const [name = '', ...rest] = word.split('=');
  const written = rest.join('=').trim();
  if (!isMeasure(name)) return bad('cli.measure-unknown', { measure: name, measures: measureIds.join(', ') });
  const length = parseLength(written, terminal.unit);
  if (!length.ok) return length;
  const possible = checkMeasure(name, length.value);
  return possible.ok ? good({ measure: name, side: 'both', mm: possible.value, written }) : possible;
};

const measure = async (given: Arguments, terminal: Terminal): Promise<ExitCode> => {
  const [, name = '', ...words] = given.words;
  if (name === '' || words.length === 0) {
    return refuse(terminal, bad('cli.usage', { usage: 'wearer measure NAME MEASURE=READING …' }).problem);
  }
  const readings: Reading[] = [];
  for (const word of words) {
    const reading = readReading(word, terminal);
    if (!reading.ok) return refuse(terminal, reading.problem);
    readings.push(reading.value);
  }
  const date = new Date().toISOString().slice(0, 10);
  const saved = await withWorkroom(given.text('data'), async (door) => {
    const found = await findWearer(door, name);
    if (!found.ok) return found;
    const { document, wearer } = found.value;
    const today = wearer.sets.find((set) => set.date === date);
    const set = today ?? {
      id: `set-${wearer.sets.length + 1}`,
      date,
      waistAt: 'narrowest' as const,
      readings: [],
      note: '',
    };
    const grown = { ...set, readings: [...set.readings, ...readings] };
    const sets = today ? wearer.sets.map((one) => (one === today ? grown : one)) : [...wearer.sets, grown];
    return door.update(document.id, document.revision, { ...wearer, sets });
  });
  return withValue(terminal, saved, () => {
    printJson(terminal, { name, date, measures: Object.fromEntries(readings.map((one) => [one.measure, one.mm])) });
    return 0;
  });
};

const show = async (given: Arguments, terminal: Terminal): Promise<ExitCode> => {
  const name = given.words.slice(1).join(' ');
  return withValue(terminal, await measuresOfWearer(given.text('data'), name), ({ measures, estimated }) => {
    if (given.flag('json')) {
      printJson(terminal, { name, measures, estimated });
      return 0;
    }
    for (const id of measureIds) {
      const value = measures[id];
      if (value === undefined) continue;
      const about = estimated.includes(id) ? '  (estimated)' : '';
      terminal.print(`${bodyWords.measures[id].name}: ${formatLength(value, terminal.unit)}${about}`);
    }
    return 0;
  });
};

/** `easewright wearer list | add | measure | show`. */
export const wearerCommand = async (argv: readonly string[], terminal: Terminal): Promise<ExitCode> =>
  withValue(terminal, readArguments(argv, optionKinds), (given) => {
    switch (given.words[0]) {
      case 'list':
        return list(given, terminal);
      case 'add':
        return add(given, terminal);
      case 'measure':
        return measure(given, terminal);
      case 'show':
        return show(given, terminal);
      default:
        return refuse(terminal, bad('cli.usage', { usage: 'wearer list | add | measure | show' }).problem);
    }
  });
