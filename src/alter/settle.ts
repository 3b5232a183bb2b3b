import type { AlterationStep, Garment } from '../pattern/index.ts';
import { bad, good, type Result } from '../units/index.ts';
import type { Alteration, Params } from './types.ts';

/** The alteration a step names, in the version it was made with. Problems `alter.unknown`, `alter.unknown-version`. */
export const alterationFor = (step: AlterationStep, catalogue: readonly Alteration[]): Result<Alteration> => {
  const versions = catalogue.filter(({ id }) => id === step.alteration);
  if (versions.length === 0) return bad('alter.unknown', { alteration: step.alteration });
  const found = versions.find(({ version }) => version === step.version);
  return found ? good(found) : bad('alter.unknown-version', { alteration: step.alteration, version: step.version });
};

/** Parameters as the alteration wants them: choices left out are the usual ones; amounts are numbers within limits. */
export const settledParams = (alteration: Alteration, garment: Garment, params: Params): Result<Params> => {
  const settled: Record<string, number | string> = {};
  for (const [name, parameter] of Object.entries(alteration.params)) {
    const given = params[name];
    if (parameter.unit === 'named') {
      const options = alteration.options?.(garment, name, { ...params, ...settled }) ?? [];
      const named = given ?? options[0];
      if (typeof named !== 'string' || !options.includes(named)) {
        return bad('alter.not-a-choice', { parameter: name, given: String(named ?? ''), choices: options.join(', ') });
      }
      settled[name] = named;
      continue;
    }
    if (parameter.unit === 'share' && given === undefined) {
      settled[name] = (parameter.usual[0] + parameter.usual[1]) / 2;
      continue;
    }
    if (parameter.unit === 'choice') {
      const here = alteration.options?.(garment, name, { ...params, ...settled }) ?? [];
      // A place this garment has not is refused by the alteration itself, in its own words; left out, it is one that is there.
      const usual = here.length > 0 && !here.includes(parameter.usual) ? here[0] : parameter.usual;
      const choice = given ?? usual;
      if (typeof choice !== 'string' || !parameter.choices.includes(choice)) {
        return bad('alter.not-a-choice', {
          parameter: name,
          given: String(choice),
          choices: parameter.choices.join(', '),
        });
      }
      settled[name] = choice;
    } else {
      if (typeof given !== 'number' || !Number.isFinite(given)) return bad('alter.not-an-amount', { parameter: name });
      if (given < parameter.min || given > parameter.max) {
        if (parameter.unit === 'share') return bad('alter.not-a-share', { parameter: name, given: String(given) });
        return bad('alter.out-of-range', {
          parameter: name,
          amount: { mm: given },
          least: { mm: parameter.min },
          most: { mm: parameter.max },
        });
      }
      settled[name] = given;
    }
  }
  return good(settled);
};
