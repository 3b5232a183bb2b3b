import type { Garment, Pattern } from '../../pattern/index.ts';

export const fittingViews = ['front', 'back', 'side'] as const;
export type FittingView = (typeof fittingViews)[number];

/** What of a garment covers a zone, which decides on which garments it can be seen. */
type Part = 'bodice' | 'sleeve' | 'legs' | 'below-waist' | 'every';

interface Zone {
  readonly views: readonly FittingView[];
  readonly part: Part;
}

/** Places a fitter looks at, from the neck down, front before back. */
export const fittingZones = {
  'neck-front': { views: ['front'], part: 'bodice' },
  shoulder: { views: ['front'], part: 'bodice' },
  'shoulder-point': { views: ['front'], part: 'bodice' },
  'armhole-front': { views: ['front'], part: 'bodice' },
  bust: { views: ['front'], part: 'bodice' },
  'dart-point': { views: ['front'], part: 'bodice' },
  waist: { views: ['front'], part: 'every' },
  abdomen: { views: ['front'], part: 'below-waist' },
  'crotch-front': { views: ['front'], part: 'legs' },
  thigh: { views: ['front'], part: 'legs' },
  knee: { views: ['front'], part: 'legs' },
  'hem-front': { views: ['front'], part: 'every' },
  'neck-back': { views: ['back'], part: 'bodice' },
  'upper-back': { views: ['back'], part: 'bodice' },
  'across-back': { views: ['back'], part: 'bodice' },
  'armhole-back': { views: ['back'], part: 'bodice' },
  'above-back-waist': { views: ['back'], part: 'every' },
  'waist-back': { views: ['back'], part: 'every' },
  seat: { views: ['back'], part: 'below-waist' },
  'below-seat': { views: ['back'], part: 'legs' },
  'hem-back': { views: ['back'], part: 'every' },
  'sleeve-head': { views: ['side'], part: 'sleeve' },
  'upper-arm': { views: ['side'], part: 'sleeve' },
  underarm: { views: ['side'], part: 'bodice' },
  elbow: { views: ['side'], part: 'sleeve' },
  sleeve: { views: ['side'], part: 'sleeve' },
  'sleeve-hem': { views: ['side'], part: 'sleeve' },
  hip: { views: ['side'], part: 'below-waist' },
  'side-seam': { views: ['side'], part: 'every' },
  'hem-side': { views: ['side'], part: 'every' },
} as const satisfies Readonly<Record<string, Zone>>;

export type ZoneId = keyof typeof fittingZones;

export const zoneIds = Object.keys(fittingZones) as readonly ZoneId[];

const kinds: readonly string[] = ['top', 'dress', 'jacket', 'coat', 'trousers', 'skirt'] satisfies Pattern['kind'][];

/** Whether there is such a kind of garment. */
export const isKnownKind = (kind: string): kind is Pattern['kind'] => kinds.includes(kind);

/** Whether a zone is covered by a kind of garment; by its pieces, where they are known. */
export const zoneIsOn = (zone: ZoneId, kind: Pattern['kind'], garment: Garment | null): boolean => {
  const { part }: Zone = fittingZones[zone];
  const lower = kind === 'trousers' || kind === 'skirt';
  switch (part) {
    case 'every':
      return true;
    case 'below-waist':
      return true;
    case 'legs':
      return kind === 'trousers';
    case 'bodice':
      return !lower;
    case 'sleeve':
      return !lower && (garment === null || garment.pieces.some(({ role }) => role === 'sleeve'));
  }
};
