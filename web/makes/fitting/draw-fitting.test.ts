import { describe, expect, it } from 'vitest';
import { fittingViews, fittingZones, type Sign, zoneIds, zoneIsOn } from '../../../src/alter/index.ts';
import { completeMeasures } from '../../../src/body/index.ts';
import { housePattern } from '../../../src/drafting/index.ts';
import { type Mark, marksBounds } from '../../../src/draw/index.ts';
import { figureOf } from '../../wearers/body-outline.ts';
import { drawFitting } from './draw-fitting.ts';
import { spotsOf } from './places.ts';

const builds = [
  { stature: 1480, bustGirth: 760 },
  { stature: 1650 },
  { stature: 1820, bustGirth: 1300, hipGirth: 1350 },
];
const patternOf = (id: string) => {
  const pattern = housePattern(id)?.pattern();
  if (!pattern) throw new Error(`no ${id}`);
  return { kind: pattern.kind, garment: pattern.sizes[0]?.garment ?? { pieces: [], seams: [], girths: [] } };
};
const garments = ['blouse', 'skirt', 'trousers', 'shirt-dress'].map(patternOf);
const sign: Sign = { zone: 'bust', kind: 'taut', direction: 'rising', posture: 'standing', half: 'right', pinned: 12 };
const group = (marks: readonly Mark[], id: string) =>
  marks.find((mark): mark is Extract<Mark, { kind: 'group' }> => mark.kind === 'group' && mark.id === id);

describe('the drawing of a fitting', () => {
  it('has every place of the garment in one of its views, within what is shown, whatever the build', () => {
    for (const known of builds) {
      const { measures } = completeMeasures(known, 'women');
      for (const { kind, garment } of garments) {
        const drawn = fittingViews.flatMap((view) => {
          const drawing = drawFitting({
            measures,
            view,
            kind,
            garment,
            signs: [],
            picked: null,
            label: '',
            sayZone: (zone) => zone,
            sayPlace: (zone) => zone,
            sayPinned: String,
          });
          const { bounds, marks } = drawing;
          return marks.flatMap((mark) => {
            if (mark.kind !== 'group') return [];
            const box = marksBounds(mark.marks);
            expect(box && box.minY >= bounds.minY - 1 && box.maxY <= bounds.maxY + 1, `${kind} ${mark.id}`).toBe(true);
            expect(box && box.minX >= bounds.minX && box.maxX <= bounds.maxX, `${kind} ${mark.id}`).toBe(true);
            return [mark.id];
          });
        });
        expect(drawn.toSorted()).toEqual(zoneIds.filter((zone) => zoneIsOn(zone, kind, garment)).toSorted());
      }
    }
  });

  it('keeps places of one view apart, so that the middle of none lies under another', () => {
    for (const known of builds) {
      const f = figureOf(completeMeasures(known, 'women').measures);
      for (const { kind, garment } of garments) {
        for (const view of fittingViews) {
          const spots = spotsOf(f, view, kind, garment);
          for (const [place, a] of spots.entries())
            for (const b of spots.slice(place + 1))
              expect(Math.hypot(a.at.x - b.at.x, a.at.y - b.at.y), `${kind} ${a.zone} ${b.zone}`).toBeGreaterThan(35);
        }
      }
    }
  });

  it('draws a sign on the half it was seen on: her right lies to the left from the front, to the right from behind', () => {
    const { measures } = completeMeasures({ stature: 1650 }, 'women');
    const f = figureOf(measures);
    const { kind, garment } = garments[0] as (typeof garments)[number];
    const at = (view: 'front' | 'back', zone: Sign['zone']) =>
      spotsOf(f, view, kind, garment).find((spot) => spot.zone === zone && spot.half === 'right')?.at.x ?? 0;
    expect(at('front', 'bust')).toBeLessThan(0);
    expect(at('back', 'seat')).toBeGreaterThan(0);
    const drawing = drawFitting({
      measures,
      view: fittingZones.bust.views[0],
      kind,
      garment,
      signs: [sign],
      picked: null,
      label: '',
      sayZone: (zone) => zone,
      sayPlace: (zone) => zone,
      sayPinned: (mm) => `${mm} mm`,
    });
    const texts = group(drawing.marks, 'bust')?.marks.filter((mark) => mark.kind === 'text') ?? [];
    expect(texts.map((mark) => mark.kind === 'text' && [mark.text, mark.at.x < 0])).toEqual([['12 mm', true]]);
  });
});
