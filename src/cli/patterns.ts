import { type HouseChoice, type HousePattern, housePattern, housePatterns } from '../drafting/index.ts';
import {
  type AlterationStep,
  type Pattern,
  readAlterationList,
  readPatternText,
  type Size,
  sizeOf,
} from '../pattern/index.ts';
import { bad, good, type Result } from '../units/index.ts';
import type { Arguments } from './arguments.ts';
import { readJsonFile, readTextFile } from './files.ts';

/** `--view` and `--cup` of a house pattern, where they are given. */
export const readHouseChoice = (house: HousePattern, given: Arguments): Result<HouseChoice> => {
  const view = given.text('view');
  const cup = given.text('cup');
  if (view !== undefined && !house.views.some((one) => one.id === view)) {
    const views = house.views.map((one) => one.id).join(', ');
    return bad('drafting.no-such-view', { view, pattern: house.name, views });
  }
  if (cup !== undefined && !house.cups.includes(Number(cup))) {
    return bad('cli.choice', { option: 'cup', written: cup, choices: house.cups.join(', ') || '—' });
  }
  return good({ ...(view === undefined ? {} : { view }), ...(cup === undefined ? {} : { cup: Number(cup) }) });
};

/** A pattern a person named: a house pattern's id, in the view and cup given, or a pattern document's file. */
export const readNamedPattern = async (name: string, given: Arguments): Promise<Result<Pattern>> => {
  const house = housePattern(name);
  if (house) {
    const choice = readHouseChoice(house, given);
    return choice.ok ? good(house.pattern(choice.value)) : choice;
  }
  if (!name.toLowerCase().endsWith('.json')) {
    return bad('cli.no-pattern', { pattern: name, patterns: housePatterns.map((pattern) => pattern.id).join(', ') });
  }
  const asked = (['view', 'cup'] as const).find((option) => given.text(option) !== undefined);
  if (asked !== undefined) return bad('cli.only-house', { option: asked, file: name });
  const text = await readTextFile(name);
  return text.ok ? readPatternText(text.value) : text;
};

/** The steps of an alteration list's file, which must be for this pattern; none where no file is named. */
export const readSteps = async (
  pattern: Pattern,
  file: string | undefined,
): Promise<Result<readonly AlterationStep[]>> => {
  if (file === undefined) return good([]);
  const json = await readJsonFile(file);
  return json.ok ? stepsFor(pattern, json.value) : json;
};

/** As `readSteps`, from a list that was read already. */
export const readStepsText = (pattern: Pattern, text: string): Result<readonly AlterationStep[]> => {
  try {
    return stepsFor(pattern, JSON.parse(text));
  } catch {
    return bad('cli.file-not-json', { file: text.slice(0, 40) });
  }
};

const stepsFor = (pattern: Pattern, json: unknown): Result<readonly AlterationStep[]> => {
  const list = readAlterationList(json);
  if (!list.ok) return list;
  if (list.value.pattern !== pattern.id) {
    return bad('cli.list-for-another', { meant: list.value.pattern, pattern: pattern.id });
  }
  return good(list.value.steps);
};

export interface ChosenGarment {
  readonly pattern: Pattern;
  readonly size: Size;
  readonly steps: readonly AlterationStep[];
}

/** Pattern, size and alteration list as three words of a command name them. */
export const readChosen = async (
  name: string,
  size: string,
  alterations: string | undefined,
  given: Arguments,
): Promise<Result<ChosenGarment>> => {
  const pattern = await readNamedPattern(name, given);
  if (!pattern.ok) return pattern;
  const found = sizeOf(pattern.value, size);
  if (!found.ok) return found;
  const steps = await readSteps(pattern.value, alterations);
  return steps.ok ? good({ pattern: pattern.value, size: found.value, steps: steps.value }) : steps;
};
