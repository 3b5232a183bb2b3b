import { type FittingView, fittingZones, type Half, type ZoneId, zoneIds, zoneIsOn } from '../../../src/alter/index.ts';
import type { Point } from '../../../src/geometry/index.ts';
import type { Garment, Pattern } from '../../../src/pattern/index.ts';
import type { Figure } from '../../wearers/body-outline.ts';
import { armAt, depthsOf } from './profile.ts';

export type Kind = Pattern['kind'];

/** How far down a garment of a kind is taken to reach on the drawing. */
export const hemAt = (f: Figure, kind: Kind): number => {
  if (kind === 'trousers') return f.ankle - 20;
  if (kind === 'top' || kind === 'jacket') return f.hip + 20;
  return f.knee + 20;
};

/** Where a zone lies on her half that is drawn to the right, seen from its own view; on the middle where x is 0. */
const placeOf = (f: Figure, kind: Kind, zone: ZoneId): Point => {
  const p = (x: number, y: number): Point => ({ x, y });
  const { half, shoulder, neck } = f;
  const hem = hemAt(f, kind);
  const bust = f.at('bustSpan') / 2;
  const armhole = (f.nape + f.armhole.y) / 2 + 22;
  const blades = f.nape + f.at('armholeDepth') * 0.55;
  const leg = half.thigh * 0.58;
  const depths = depthsOf(f);
  const places: Readonly<Record<ZoneId, Point>> = {
    'neck-front': p(0, f.nape + 72),
    shoulder: p(neck.x + (shoulder.x - neck.x) * 0.2, neck.y + 26),
    'shoulder-point': p(shoulder.x + 4, shoulder.y + 6),
    'armhole-front': p(f.at('acrossFront') / 2 - 8, armhole + 8),
    bust: p(bust + 6, f.bust),
    'dart-point': p(half.bust - 22, f.bust + 66),
    waist: p(half.waist * 0.6, f.waist),
    abdomen: p(0, (f.waist + f.hip) / 2 + 8),
    'crotch-front': p(0, f.crotch - 40),
    thigh: p(leg, f.crotch + 90),
    knee: p(leg * 0.72, f.knee),
    'hem-front': p(kind === 'trousers' ? leg * 0.7 : 0, hem),
    'neck-back': p(0, f.nape + 6),
    'upper-back': p(half.bust * 0.42, blades - 20),
    'across-back': p(0, blades + 66),
    'armhole-back': p(f.at('acrossBack') / 2 - 8, armhole + 30),
    'above-back-waist': p(0, f.waist - 66),
    'waist-back': p(half.waist * 0.58, f.waist + 8),
    seat: p(half.hip * 0.46, f.hip - 14),
    'below-seat': p(leg, f.crotch + 52),
    'hem-back': p(kind === 'trousers' ? leg * 0.7 : 0, hem),
    'sleeve-head': p(-6, shoulder.y + 24),
    'upper-arm': armAt(f, 0.24),
    underarm: p(depths.bust[0] * 0.72, f.armhole.y + 34),
    elbow: armAt(f, 0.56),
    sleeve: armAt(f, 0.4),
    'sleeve-hem': armAt(f, 0.96),
    hip: p(depths.hip[1] * 0.62, f.hip),
    'side-seam': p(depths.waist[0] * 0.5, (f.waist + f.hip) / 2 + 6),
    'hem-side': p(kind === 'trousers' ? 0 : depths.hip[0] * 0.82, hem),
  };
  return places[zone];
};

export interface Spot {
  readonly zone: ZoneId;
  readonly at: Point;
  /** On which half of her it lies; both where it lies on the middle, and from the side, where only one is seen. */
  readonly half: Half;
}

/** The places that can be pressed in a view of a garment. Seen from the front her right lies to the left, from behind to the right. */
export const spotsOf = (f: Figure, view: FittingView, kind: Kind, garment: Garment): readonly Spot[] =>
  zoneIds
    .filter(
      (zone) => (fittingZones[zone].views as readonly FittingView[]).includes(view) && zoneIsOn(zone, kind, garment),
    )
    .flatMap((zone): readonly Spot[] => {
      const at = placeOf(f, kind, zone);
      if (at.x === 0 || view === 'side') return [{ zone, at, half: 'both' }];
      const [seenRight, seenLeft]: readonly Half[] = view === 'front' ? ['left', 'right'] : ['right', 'left'];
      return [
        { zone, at, half: seenRight as Half },
        { zone, at: { x: -at.x, y: at.y }, half: seenLeft as Half },
      ];
    });

/** From where to where the garment is looked at, mm from the crown: the rest of her is not needed to fit it. */
export const partShown = (f: Figure, kind: Kind): readonly [from: number, to: number] =>
  kind === 'trousers' || kind === 'skirt' ? [f.waist - 110, hemAt(f, kind) + 60] : [f.chin - 10, hemAt(f, kind) + 60];
