import type { z } from 'zod';
import type { Problem } from '../units/index.ts';
import { fill, storeWords } from '../words/index.ts';
import type { DocumentKind } from './kind.ts';

type Issue = z.core.$ZodIssue;
type Step = PropertyKey;

const fieldNames: Readonly<Record<string, string>> = storeWords.fields;
const entryNames: Readonly<Record<string, string>> = storeWords.entries;
const { wants } = storeWords;

/** `sets.2.readings.0.mm` as she would say it: `the third set of measures, reading 1, the amount`. */
const whereIn = (path: readonly Step[]): string =>
  path
    .flatMap((step, place) => {
      const next = path[place + 1];
      if (typeof step === 'number') return [];
      const name = String(step);
      if (typeof next === 'number') return [fill(entryNames[name] ?? wants.entry, { name, count: next + 1 }, 'cm')];
      return [fieldNames[name] ?? fill(wants.field, { name }, 'cm')];
    })
    .join(', ');

const at = (value: unknown, path: readonly Step[]): unknown =>
  path.reduce<unknown>(
    (inner, step) =>
      typeof inner === 'object' && inner !== null ? (inner as Record<PropertyKey, unknown>)[step] : undefined,
    value,
  );

const typeWants: Readonly<Record<string, string>> = wants.types;
const tooSmall: Readonly<Record<string, string>> = wants.tooSmall;
const tooBig: Readonly<Record<string, string>> = wants.tooBig;
const ownRules: Readonly<Record<string, string>> = wants.rules;

const number = (value: number | bigint): number => Number(value);

const wanted = (issue: Issue, given: unknown): string => {
  if (given === undefined && (issue.code === 'invalid_type' || issue.code === 'invalid_value')) return wants.missing;
  switch (issue.code) {
    case 'invalid_type':
      return typeWants[issue.expected] ?? wants.unlike;
    case 'too_small':
      return fill(tooSmall[issue.origin] ?? wants.unlike, { least: number(issue.minimum) }, 'cm');
    case 'too_big':
      return fill(tooBig[issue.origin] ?? wants.unlike, { most: number(issue.maximum) }, 'cm');
    case 'invalid_value':
      return fill(wants.oneOf, { values: issue.values.map(String).join(', ') }, 'cm');
    case 'custom':
      return ownRules[issue.message] ?? wants.unlike;
    default:
      return wants.unlike;
  }
};

/**
 * A schema's complaint as a problem in her words. `field` is what is wrong, `wanted` completes the
 * sentence, and `path` names the field for a program that wants to point at it.
 */
export const problemFromIssue = (kind: DocumentKind, issue: Issue, body: unknown): Problem => {
  const kindName = storeWords.kinds[kind];
  if (issue.code === 'unrecognized_keys') {
    const path = [...issue.path, issue.keys[0] ?? ''];
    return {
      code: 'store.unknown-field',
      values: { kind: kindName, field: issue.keys.join(', '), path: path.map(String).join('.') },
    };
  }
  return {
    code: 'store.wrong-field',
    values: {
      kind: kindName,
      field: issue.path.length > 0 ? whereIn(issue.path) : wants.whole,
      wanted: wanted(issue, at(body, issue.path)),
      path: issue.path.map(String).join('.'),
    },
  };
};
