import type { Cloth } from '../src/cloth/index.ts';

/** For the concert blouse; bought, not yet washed. */
export const poplin: Cloth = {
  format: 'easewright-cloth/1',
  name: 'White poplin',
  structure: 'woven',
  fibres: 'cotton 100 %',
  weight: 118,
  width: 1480,
  length: 2400,
  stretchAcross: 0,
  stretchAlong: 0,
  oneWay: false,
  shrinkAlong: 0.035,
  shrinkAcross: 0.01,
  washed: false,
  colour: '#f6f3ea',
  terms: 'bought',
  from: 'The stall by the fish steps',
  note: 'Creases; press damp.',
};

/** A soft printed cloth that must all lie one way. */
export const viscose: Cloth = {
  format: 'easewright-cloth/1',
  name: 'Rain-green viscose with gulls',
  structure: 'woven',
  fibres: 'viscose 100 %',
  weight: 105,
  width: 1400,
  length: 1900,
  stretchAcross: 0,
  stretchAlong: 0,
  oneWay: true,
  shrinkAlong: 0.06,
  shrinkAcross: 0.02,
  washed: false,
  colour: '#2f5d4e',
  terms: 'given',
  from: 'Oda, from her own shelf',
  note: 'The gulls all fly one way up.',
};

/** For tees; washed once already, so that it shrinks no more to speak of. */
export const jersey: Cloth = {
  format: 'easewright-cloth/1',
  name: 'Slate jersey',
  structure: 'knit',
  fibres: 'cotton 95 %, elastane 5 %',
  weight: 190,
  width: 1600,
  length: 1500,
  stretchAcross: 0.5,
  stretchAlong: 0.3,
  oneWay: true,
  shrinkAlong: 0,
  shrinkAcross: 0,
  washed: true,
  colour: '#4d5964',
  terms: 'bought',
  from: 'The mill shop up the fjord',
  note: 'Edges curl; use the walking foot.',
};
