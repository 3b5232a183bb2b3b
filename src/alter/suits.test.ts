import { describe, expect, it } from 'vitest';
import { housePattern } from '../drafting/index.ts';
import type { Garment } from '../pattern/index.ts';
import { alterationCatalogue } from './catalogue.ts';
import { suits } from './suits.ts';

const offeredFor = (id: string): readonly string[] => {
  const garment = housePattern(id)?.pattern().sizes[4]?.garment as Garment;
  return alterationCatalogue.filter((alteration) => suits(alteration, garment)).map((alteration) => alteration.id);
};

describe('which alterations suit a garment', () => {
  it('offers bust alterations only where a dart in the front shapes the bust', () => {
    expect(offeredFor('blouse')).toEqual(expect.arrayContaining(['full-bust', 'small-bust', 'lengthen-shorten']));
    for (const id of ['dungarees', 'skirt', 'trousers', 'jacket']) {
      expect(
        offeredFor(id).filter((one) => one.endsWith('-bust')),
        id,
      ).toEqual([]);
      expect(offeredFor(id), id).toContain('lengthen-shorten');
    }
  });
});
