import { pathLength } from '../geometry/index.ts';
import type { Seam } from '../pattern/index.ts';
import { bandOnto, type KnitBandFrame } from './knit-bands.ts';
import { side } from './seams.ts';
import type { SweatshirtDraft } from './sweatshirt-fit.ts';
import { sweatAllowances } from './sweatshirt-pieces.ts';
import { bands, type SweatshirtView } from './sweatshirt-plan.ts';

/** What the bands are stretched on to, mm: half the neck and hem, the whole of a sleeve's. */
const edgesOf = ({ front, back, sleeve, body, plan }: SweatshirtDraft) => ({
  front: pathLength(front.neck),
  sleeve: pathLength(sleeve.neckFront) + pathLength(sleeve.neckBack),
  back: pathLength(back.neck),
  hemFront: body.front.side[2].to.x,
  hemBack: body.back.side[2].to.x,
  cuff: plan.sleeve.hem,
});

/** The bands of a view. */
export const sweatBands = (draft: SweatshirtDraft, view: SweatshirtView): readonly KnitBandFrame[] => {
  const edges = edgesOf(draft);
  const common = { count: 1, onFold: true, allowance: sweatAllowances.seam } as const;
  const neck: KnitBandFrame = {
    ...common,
    id: 'neck-band',
    name: 'Neck band',
    role: 'neck-band',
    width: bands.neck.width,
    sections: [
      { id: 'neck-front', length: bands.neck.share * edges.front },
      { id: 'neck-sleeve', length: bands.neck.share * edges.sleeve },
      { id: 'neck-back', length: bands.neck.share * edges.back },
    ],
  };
  const hem: KnitBandFrame = {
    ...common,
    id: 'hem-band',
    name: 'Hem band',
    role: 'other',
    width: bands.hem.width,
    sections: [
      { id: 'hem-front', length: bands.hem.share * edges.hemFront },
      { id: 'hem-back', length: bands.hem.share * edges.hemBack },
    ],
  };
  const cuff: KnitBandFrame = {
    ...common,
    id: 'cuff',
    name: 'Cuff',
    role: 'cuff',
    width: bands.cuff.width,
    count: 2,
    onFold: false,
    sections: [{ id: 'sleeve', length: bands.cuff.share * edges.cuff }],
  };
  return view === 'three-quarter' ? [neck, hem] : [neck, hem, cuff];
};

/** How the bands are stretched on, front to front, sleeve to sleeve, back to back. */
export const sweatBandSeams = (draft: SweatshirtDraft, view: SweatshirtView): readonly Seam[] => {
  const edges = edgesOf(draft);
  return [
    bandOnto('band-front', side('neck-band', 'neck-front', true), side('front', 'neck'), edges.front, bands.neck, [
      ['neck-front', 'neck-front'],
    ]),
    bandOnto('band-sleeve', side('neck-band', 'neck-sleeve', true), side('sleeve', 'neck'), edges.sleeve, bands.neck),
    bandOnto('band-back', side('neck-band', 'neck-back'), side('back', 'neck'), edges.back, bands.neck, [
      ['neck-back', 'neck-back'],
    ]),
    bandOnto('hem-front', side('hem-band', 'hem-front'), side('front', 'hem'), edges.hemFront, bands.hem, [
      ['hem-front', 'hem-front'],
    ]),
    bandOnto('hem-back', side('hem-band', 'hem-back', true), side('back', 'hem'), edges.hemBack, bands.hem, [
      ['hem-back', 'hem-back'],
    ]),
    ...(view === 'three-quarter'
      ? []
      : [bandOnto('cuff', side('cuff', 'sleeve'), side('sleeve', 'hem'), edges.cuff, bands.cuff, [['sleeve', 'hem']])]),
  ];
};
