import { describe, expect, it } from 'vitest';
import { rehearsalDress } from '../../demo/envelopes.ts';
import { readEnvelope } from '../../src/pattern/index.ts';
import { begunIn, firstPieces, whole } from './flat-pieces.ts';

const size = rehearsalDress.sizes[0] ?? '';
const numbered = (number: number) => `Piece ${number}`;

describe('pieces measured flat', () => {
  it('are kept once all of them are measured, a nameless one by its number', () => {
    const [first, ...others] = firstPieces('waist', rehearsalDress);
    if (!first) throw new Error('no piece');
    expect(whole([{ ...first, flat: 240 }, ...others], numbered)).toBeNull();
    const pieces = whole(
      [{ ...first, flat: 240 }, ...others.map((piece) => ({ ...piece, name: ' ', flat: 250 }))],
      numbered,
    );
    expect(pieces?.map(({ name }) => name)).toEqual([first.name, 'Piece 2']);
    const kept = { ...rehearsalDress, flat: [{ of: 'waist' as const, view: null, size, pieces: pieces ?? [] }] };
    expect(readEnvelope(kept)).toMatchObject({ ok: true });
  });
});

describe('a measurement left unfinished', () => {
  const left = { of: 'waist', view: 'A', size, pieces: firstPieces('waist', rehearsalDress) };
  it('is taken up again', () => {
    expect(begunIn(JSON.stringify(left), rehearsalDress)).toEqual({ ...left, left: true });
  });
  it.each<[string, string]>([
    ['none', ''],
    ['no JSON', '{'],
    ['of a size there is no more', JSON.stringify({ ...left, size: 'none' })],
    ['of a view there is no more', JSON.stringify({ ...left, view: 'Z' })],
    ['of what nobody measures', JSON.stringify({ ...left, of: 'nose' })],
    ['with pieces of another shape', JSON.stringify({ ...left, pieces: [{ name: 'Front', flat: '24' }] })],
  ])('is not when there is %s', (_, draft) => {
    expect(begunIn(draft, rehearsalDress)).toBeNull();
  });
});
