import type { Make } from '../src/make/index.ts';
import type { DocumentDraft } from '../src/store/index.ts';
import { jersey, poplin, viscose } from './cloths.ts';
import { rehearsalDress } from './envelopes.ts';
import { jory, runa } from './wearers.ts';

const concertBlouse: Make = {
  format: 'easewright-make/1',
  name: 'Blouse for the harvest concert',
  wearer: 'demo-runa',
  pattern: 'house:blouse',
  cloth: 'demo-poplin',
  size: '6',
  steps: [{ id: 'step-1', alteration: 'full-bust', version: 1, on: true, params: { amount: 20 } }],
  fold: 'lengthwise',
  gap: 2,
  paper: 'a4',
  state: 'planned',
  note: 'White above, black below, says the choir. Long sleeves: the church is cold.',
};

const boatyardTee: Make = {
  ...concertBlouse,
  name: 'Boatyard tee for Jory',
  wearer: 'demo-jory',
  pattern: 'house:tee-men',
  cloth: 'demo-jersey',
  size: null,
  steps: [],
  note: 'Long enough to stay tucked in.',
};

/** Sewn from an envelope alone: its pieces are not in the workroom. */
const springDress: Make = {
  ...concertBlouse,
  name: 'Dress for the spring rehearsals',
  pattern: 'demo-rehearsal-dress',
  view: 'A',
  cloth: 'demo-viscose',
  size: null,
  steps: [],
  note: 'View A, to wear on the ferry too.',
};

/**
 * The demo workroom: an amateur choir singer in a rainy harbour town, who sews concert clothes,
 * workwear and things for relatives. People, places and shops are invented. The same every time.
 */
export const demoDocuments = (): readonly DocumentDraft[] => [
  { id: 'demo-runa', kind: 'wearer', body: runa },
  { id: 'demo-jory', kind: 'wearer', body: jory },
  { id: 'demo-rehearsal-dress', kind: 'envelope', body: rehearsalDress },
  { id: 'demo-poplin', kind: 'cloth', body: poplin },
  { id: 'demo-viscose', kind: 'cloth', body: viscose },
  { id: 'demo-jersey', kind: 'cloth', body: jersey },
  { id: 'demo-boatyard-tee', kind: 'make', body: boatyardTee },
  { id: 'demo-spring-dress', kind: 'make', body: springDress },
  { id: 'demo-concert-blouse', kind: 'make', body: concertBlouse },
];
