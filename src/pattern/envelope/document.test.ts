import { readFileSync } from 'node:fs';
import { describe, expect, it, test } from 'vitest';
import { sentence } from '../../words/index.ts';
import { blankEnvelope, chartBodies, type Envelope, finishedOf, readEnvelope, writeEnvelope } from './index.ts';
import { choirBlouse } from './testing/envelopes.ts';

test('what is written is read back as it was', () => {
  const written = JSON.parse(JSON.stringify(writeEnvelope(choirBlouse)));
  expect(readEnvelope(written)).toEqual({ ok: true, value: choirBlouse });
});

test('a blank envelope passes the door', () => {
  const blank = blankEnvelope({ name: 'Net-loft smock' });
  expect(readEnvelope(blank)).toEqual({ ok: true, value: blank });
});

const changed = (change: Partial<Envelope>): unknown => ({ ...choirBlouse, ...change });

describe('the door', () => {
  it.each<[string, unknown, string]>([
    ['no document', null, 'envelope.not-an-envelope'],
    ['a list', [], 'envelope.not-an-envelope'],
    ['a pattern', { format: 'easewright-pattern/1' }, 'envelope.unknown-version'],
    ['a newer version', { ...choirBlouse, format: 'easewright-envelope/2' }, 'envelope.unknown-version'],
    ['an unknown field', { ...choirBlouse, colour: 'red' }, 'envelope.field'],
    ['no name', changed({ name: '' }), 'envelope.field'],
    ['no sizes', changed({ sizes: [] }), 'envelope.field'],
    ['10,000 sizes', changed({ sizes: Array.from({ length: 10_000 }, (_, at) => String(at)) }), 'envelope.field'],
    ['a size twice', changed({ sizes: ['8', '10', '12', '14', '14 '] }), 'envelope.size-twice'],
    ['a figure too few', changed({ body: [{ measure: 'bustGirth', figures: [800, 840] }] }), 'envelope.figures-count'],
    [
      'a negative figure',
      changed({ body: [{ measure: 'bustGirth', figures: [800, -840, 1, 1, 1] }] }),
      'envelope.field',
    ],
    [
      'a figure that is no number',
      changed({ body: [{ measure: 'bustGirth', figures: [Number.NaN, 1, 1, 1, 1] }] }),
      'envelope.field',
    ],
    [
      'a range that falls',
      changed({ body: [{ measure: 'hipGirth', figures: [[900, 880], 1, 1, 1, 1] }] }),
      'envelope.range-reversed',
    ],
    [
      'a measure twice',
      changed({ body: [...choirBlouse.body, ...choirBlouse.body.slice(0, 1)] }),
      'envelope.measure-twice',
    ],
    ['a view that is not there', changed({ notions: [{ view: 'C', text: '5 buttons' }] }), 'envelope.view-missing'],
    [
      'a view twice',
      changed({ views: [...choirBlouse.views, ...choirBlouse.views.slice(0, 1)] }),
      'envelope.view-twice',
    ],
    [
      'a size cut that is not there',
      changed({ owned: { ...choirBlouse.owned, cut: ['18'] } }),
      'envelope.size-missing',
    ],
    [
      'a width in metres',
      changed({ clothNeeded: [{ ...choirBlouse.clothNeeded[0], width: 1.15 } as never] }),
      'envelope.field',
    ],
    [
      'a weight that ends before it begins',
      changed({ cloth: { ...choirBlouse.cloth, weight: [200, 100] } }),
      'envelope.weight-reversed',
    ],
  ])('refuses %s', (_, json, code) => {
    const read = readEnvelope(json);
    expect(read).toMatchObject({ ok: false, problem: { code } });
    if (!read.ok) expect(sentence(read.problem, 'cm').message).not.toMatch(/\{/);
  });
});

describe('figures', () => {
  it('gives a body for each size, middles of ranges, and the stature it is drafted for', () => {
    const envelope: Envelope = {
      ...choirBlouse,
      draftedStature: 1680,
      body: [
        { measure: 'bustGirth', figures: [[800, 840], 880, null, 960, 1000] },
        { measure: 'waistGirth', figures: [600, 640, 680, 720, 760] },
      ],
    };
    expect(chartBodies(envelope).slice(0, 3)).toEqual([
      { id: '8', body: { stature: 1680, bustGirth: 820, waistGirth: 600 } },
      { id: '10', body: { stature: 1680, bustGirth: 880, waistGirth: 640 } },
      { id: '12', body: { stature: 1680, waistGirth: 680 } },
    ]);
  });

  it('takes the view’s own printed figure, then one for all views, then the tissue measured flat', () => {
    const piece = { name: 'Back', flat: 300, allowances: 30, takenOut: 0, times: 2 };
    const envelope: Envelope = {
      ...choirBlouse,
      finished: [
        { of: 'bust', label: 'Bust', view: null, figures: [900, 940, null, 1020, 1060] },
        { of: 'bust', label: 'Bust', view: 'A', figures: [1000, null, null, null, null] },
      ],
      flat: [
        { of: 'bust', view: null, size: '12', pieces: [piece, { ...piece, name: 'Front', flat: 330, takenOut: 20 }] },
      ],
    };
    expect(finishedOf(envelope, '8', 'A', 'bust')).toEqual({ mm: 1000, from: 'printed' });
    expect(finishedOf(envelope, '10', 'A', 'bust')).toEqual({ mm: 940, from: 'printed' });
    expect(finishedOf(envelope, '8', 'B', 'bust')).toEqual({ mm: 900, from: 'printed' });
    expect(finishedOf(envelope, '12', 'A', 'bust')).toEqual({ mm: 270 * 2 + 280 * 2, from: 'measured-flat' });
    expect(finishedOf(envelope, '12', 'A', 'waist')).toBeNull();
    expect(finishedOf(envelope, '20', 'A', 'bust')).toBeNull();
  });
});

test('the document shown in docs/envelopes.md passes the door', () => {
  const shown = /```json\n(.*?)```/s.exec(readFileSync('docs/envelopes.md', 'utf8'))?.[1] ?? '';
  expect(readEnvelope(JSON.parse(shown))).toMatchObject({ ok: true });
});
