import { expect, test } from 'vitest';
import { type Body, bringUp, type Format } from './format.ts';
import { codeOf, valueIn } from './testing/workroom.ts';

/** A format that has changed twice: a name was split, then lengths went from centimetres to millimetres. */
const ribbon: Format = {
  name: 'ribbon',
  steps: [
    ({ title, ...rest }): Body => ({ ...rest, format: 'ribbon/2', name: title }),
    (body): Body => ({ ...body, format: 'ribbon/3', length: (body.length as number) * 10 }),
  ],
};

test.each([
  [{ format: 'ribbon/1', title: 'Grosgrain', length: 150 }],
  [{ format: 'ribbon/2', name: 'Grosgrain', length: 150 }],
  [{ format: 'ribbon/3', name: 'Grosgrain', length: 1500 }],
])('%j is brought up to the newest version', (body) => {
  const before = structuredClone(body);
  expect(valueIn(bringUp(ribbon, body))).toEqual({ format: 'ribbon/3', name: 'Grosgrain', length: 1500 });
  expect(body).toEqual(before);
});

test('one from a newer program is refused', () => {
  expect(codeOf(bringUp(ribbon, { format: 'ribbon/4' }))).toBe('store.newer-document');
});

test.each([[{ format: 'lace/1' }], [{ format: 'ribbon/one' }], [{ format: 'ribbon/0' }], [{}], [{ format: 3 }]])(
  '%j is left for the schema to refuse',
  (body) => {
    expect(valueIn(bringUp(ribbon, body))).toEqual(body);
  },
);
