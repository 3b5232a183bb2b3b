import { describe, expect, it } from 'vitest';
import { housePatterns } from '../drafting/index.ts';
import { writeSvg } from '../formats/index.ts';
import { drawContactSheet } from './contact-sheet.ts';
import { drawFlatSketch } from './flat-sketch.ts';

/** Every view of every house pattern, drawn as it was: sizes beside one another, and as it lies flat. */
const shown = housePatterns.flatMap((house) =>
  house.views.map(({ id, name }) => ({ house, view: id, name: `${house.name}, ${name}` })),
);

describe.each(shown)('$house.id, $view', ({ house, view, name }) => {
  const pattern = house.pattern({ view });
  it('has its sizes on a contact sheet', async () => {
    const entries = pattern.sizes.map(({ id, garment }) => ({ id, label: `${house.name} ${id}`, garment }));
    const svg = writeSvg(drawContactSheet(entries, { unit: 'cm', columns: 2 }), { unit: 'mm' });
    await expect(svg).toMatchFileSnapshot(`golden/contact-${house.id}-${view}.svg`);
  });
  it('is sketched front and back', async () => {
    const garment = pattern.sizes[Math.floor((pattern.sizes.length - 1) / 2)]?.garment;
    if (!garment) throw new Error('no size');
    await expect(writeSvg(drawFlatSketch(house.sketch(garment, view), name), { unit: 'mm' })).toMatchFileSnapshot(
      `golden/sketch-${house.id}-${view}.svg`,
    );
  });
});
