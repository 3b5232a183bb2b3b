import { describe, expect, it } from 'vitest';
import { housePatterns } from '../src/drafting/index.ts';
import { drawFlatSketch, drawNest } from '../src/draw/index.ts';
import { writeSvg } from '../src/formats/index.ts';
import { keepTable, keptTable, layOut } from './pages/cloth-tables.ts';
import { patternPage } from './pages/pattern-page.ts';

/** `npm run pattern-pages` sets it: tables of cloth needed are then laid out anew; `missing`: only those there are none of. */
const anew = process.env['EASEWRIGHT_LAY_ANEW'];
const folder = '../docs/patterns';

describe.each(housePatterns.map((house) => ({ id: house.id, house })))(
  'the page of $id in docs/patterns',
  ({ id, house }) => {
    it('is what the code says', async () => {
      for (const view of house.views) {
        if (anew === '1' || (anew === 'missing' && keptTable(house, view.id).length === 0))
          await keepTable(house, view.id);
      }
      await expect(patternPage(house, (view) => keptTable(house, view))).toMatchFileSnapshot(`${folder}/${id}.md`);
    }, 600_000);

    it.each(house.views.map((view) => view.id))('shows the view %s as it is drafted', async (view) => {
      const pattern = house.pattern({ view });
      const middle = pattern.sizes[Math.floor((pattern.sizes.length - 1) / 2)];
      if (!middle) throw new Error('no size');
      const sketch = writeSvg(drawFlatSketch(house.sketch(middle.garment, view), house.name), { unit: 'none' });
      await expect(sketch).toMatchFileSnapshot(`${folder}/pictures/sketch-${id}-${view}.svg`);
      const nest = writeSvg(drawNest(pattern, { unit: 'cm', size: middle.id }), { unit: 'none', decimals: 0 });
      await expect(nest).toMatchFileSnapshot(`${folder}/pictures/nest-${id}-${view}.svg`);
    });

    it('states the cloth that laying it out anew takes', async () => {
      const view = house.views[0]?.id ?? '';
      const middle = house.chart[Math.floor((house.chart.length - 1) / 2)]?.id ?? '';
      const kept = keptTable(house, view).filter(({ size }) => size === middle);
      expect(kept.length).toBeGreaterThan(0);
      expect(JSON.parse(JSON.stringify(await layOut(house, view, middle)))).toEqual(kept);
    });
  },
);
