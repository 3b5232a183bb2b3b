import { describe, expect, it } from 'vitest';
import { alterationCatalogue } from '../src/alter/index.ts';
import { writeSvg } from '../src/formats/index.ts';
import {
  alterationDrawing,
  alterationIndex,
  alterationPage,
  pictureWeight,
  shownBest,
} from './pages/alteration-page.ts';

const folder = '../docs/alterations';
const shown = new Map(alterationCatalogue.map((alteration) => [alteration.id, shownBest(alteration)]));

describe.each(alterationCatalogue.map((alteration) => ({ id: alteration.id, alteration })))(
  'the page of $id in docs/alterations',
  ({ id, alteration }) => {
    it('is what the code says, with its picture', async () => {
      const best = shown.get(id) ?? null;
      await expect(alterationPage(alteration, best)).toMatchFileSnapshot(`${folder}/${id}.md`);
      if (!best) return;
      const svg = writeSvg(alterationDrawing(best), { unit: 'none', decimals: 1, weight: pictureWeight });
      await expect(svg).toMatchFileSnapshot(`${folder}/pictures/${id}.svg`);
    });
  },
);

it('the index of docs/alterations names every alteration', async () => {
  const pictured = new Set([...shown].flatMap(([id, best]) => (best ? [id] : [])));
  await expect(alterationIndex(alterationCatalogue, pictured)).toMatchFileSnapshot(`${folder}/README.md`);
});
