import { pathBounds } from '../geometry/index.ts';
import { edgeLength, type Garment, levelWidth, pieceOf } from '../pattern/index.ts';
import type { ShapeCheck } from './shape-check.ts';
import {
  armholeHeight,
  capHeight,
  capHollow,
  cornerBetween,
  edgeBend,
  headEase,
  hollow,
  landmarkIn,
  meanOf,
  runOf,
  shoulderSlope,
  turnAcross,
} from './shape-garment.ts';
import { leastRadius } from './shape-measures.ts';
import { smooth, sources, square } from './shape-rules.ts';
import { band, stretchNeeded } from './tee-plan.ts';

const { block, sleeve, fitting, knit } = sources;

const length = (garment: Garment, piece: string, edge: string): number => edgeLength(pieceOf(garment, piece), edge);

/** The whole neckline, and the whole band along it. */
const neckline = (garment: Garment): number => 2 * (length(garment, 'front', 'neck') + length(garment, 'back', 'neck'));

const bandRound = (garment: Garment): number =>
  2 * (length(garment, 'neck-band', 'neck-front') + length(garment, 'neck-band', 'neck-back'));

const neckDepth = (garment: Garment, piece: string): number => {
  const { minY, maxY } = pathBounds(runOf(garment, piece, 'neck'));
  return maxY - minY;
};

const armholes = (garment: Garment): number => length(garment, 'front', 'armhole') + length(garment, 'back', 'armhole');

const standsOut = (garment: Garment, piece: 'front' | 'back'): number =>
  landmarkIn(garment, piece, 'shoulder-point').x - landmarkIn(garment, piece, `across-${piece}`).x;

/** How far the side is drawn in at the waist from the straight between underarm and hip. */
const drawnIn = (garment: Garment, piece: 'front' | 'back'): number => {
  const [underarm, waist, hip] = ['underarm', 'waist-side', 'hip-side'].map((id) => landmarkIn(garment, piece, id));
  if (!underarm || !waist || !hip) return Number.NaN;
  return underarm.x + ((hip.x - underarm.x) * (waist.y - underarm.y)) / (hip.y - underarm.y) - waist.x;
};

/** What a cutter looks at before she would cut from the tee, by measuring the drafted pieces alone. */
export const teeShape: readonly ShapeCheck[] = [
  {
    id: 'shoulder-slope',
    about: 'Mean slope of front and back shoulder',
    source: block,
    unit: 'degrees',
    low: 12,
    high: 28,
    value: (garment) => meanOf(shoulderSlope(garment, 'front'), shoulderSlope(garment, 'back')),
  },
  {
    id: 'front-shoulder-steeper',
    about: 'The front shoulder slopes a little more than the back',
    source: block,
    unit: 'degrees',
    low: 0.5,
    high: 5,
    value: (garment) => shoulderSlope(garment, 'front') - shoulderSlope(garment, 'back'),
  },
  {
    id: 'front-armhole-hollower',
    about: 'The front armhole is hollowed deeper than the back',
    source: block,
    unit: 'share',
    low: 0.01,
    high: 0.2,
    value: (garment) => hollow(garment, 'front') - hollow(garment, 'back'),
  },
  {
    id: 'armholes-alike',
    about: 'From shoulder point to underarm both armholes are nearly as high: a knit block is balanced',
    source: knit,
    unit: 'mm',
    low: -10,
    high: 12,
    value: (garment) => armholeHeight(garment, 'back') - armholeHeight(garment, 'front'),
  },
  {
    id: 'armholes-as-long',
    about: 'The front armhole over the back: longer by no more than its hollow costs',
    source: knit,
    unit: 'share',
    low: 0.98,
    high: 1.1,
    value: (garment) => length(garment, 'front', 'armhole') / length(garment, 'back', 'armhole'),
  },
  {
    id: 'front-narrower-across',
    about: 'Across the front it is narrower than across the back',
    source: block,
    unit: 'mm',
    low: 4,
    high: 30,
    value: (garment) => landmarkIn(garment, 'back', 'across-back').x - landmarkIn(garment, 'front', 'across-front').x,
  },
  {
    id: 'shoulder-outside-across',
    about: 'The shoulder point stands outside both across lines',
    source: block,
    unit: 'mm',
    low: 5,
    high: 30,
    value: (garment) => Math.min(standsOut(garment, 'front'), standsOut(garment, 'back')),
  },
  square('armhole-square-front', 'front', 'shoulder', 'armhole'),
  square('armhole-square-back', 'back', 'shoulder', 'armhole'),
  smooth('armhole-over-shoulder', 'Front and back armhole run into one another over the shoulder', 'shoulder', 1),
  smooth('armhole-under-arm', 'Front and back armhole run into one another under the arm', 'side', 0),
  smooth('neck-over-shoulder', 'Front and back neckline run into one another over the shoulder', 'shoulder', 0),
  smooth('cap-under-arm', 'Both halves of the cap run into one another under the arm', 'underarm', 0),
  smooth('hem-over-side', 'The hem runs on across the side seam', 'side', 1),
  {
    id: 'sleeve-hem-over-seam',
    about: 'The sleeve hem turns little across its seam',
    source: sources.truing,
    unit: 'degrees',
    low: 0,
    high: 9,
    value: (garment) => turnAcross(garment, 'underarm', 1),
  },
  square('neck-square-front', 'front', 'centre-front', 'neck'),
  square('neck-square-back', 'back', 'centre-back', 'neck'),
  square('hem-square-front', 'front', 'hem', 'centre-front'),
  square('hem-square-back', 'back', 'hem', 'centre-back'),
  square('hem-square-side-front', 'front', 'side', 'hem'),
  square('hem-square-side-back', 'back', 'side', 'hem'),
  square('band-square', 'neck-band', 'inner-back', 'centre-back'),
  {
    id: 'neck-bends',
    about: 'No stray bend in either neckline',
    source: block,
    unit: 'count',
    low: 0,
    high: 0,
    value: (garment) => edgeBend(garment, 'front', 'neck') + edgeBend(garment, 'back', 'neck'),
  },
  {
    id: 'armhole-bends',
    about: 'At most one change of bend in an armhole',
    source: block,
    unit: 'count',
    low: 0,
    high: 1,
    value: (garment) => Math.max(edgeBend(garment, 'front', 'armhole'), edgeBend(garment, 'back', 'armhole')),
  },
  {
    id: 'armhole-open',
    about:
      'The radius of the tightest bend of either armhole: no hook at the shoulder, no pocket at the underarm, and wider than the allowance',
    source: block,
    unit: 'mm',
    low: 9,
    high: 80,
    value: (garment) =>
      Math.min(leastRadius(runOf(garment, 'front', 'armhole')), leastRadius(runOf(garment, 'back', 'armhole'))),
  },
  {
    id: 'side-bends',
    about: 'A side seam bends at most twice the other way: out of the underarm, and over the hip',
    source: block,
    unit: 'count',
    low: 0,
    high: 2,
    value: (garment) => Math.max(edgeBend(garment, 'front', 'side'), edgeBend(garment, 'back', 'side')),
  },
  {
    id: 'side-drawn-in',
    about:
      'The side is drawn in at the waist no more than a side seam alone can shape, nor bulges beyond the belly’s need',
    source: knit,
    unit: 'mm',
    low: -40,
    high: 28,
    value: (garment) => drawnIn(garment, 'front'),
  },
  {
    id: 'sides-alike',
    about: 'Front and back side seam are one curve: nothing is eased in, for there is no dart',
    source: knit,
    unit: 'mm',
    low: 0,
    high: 0.1,
    value: (garment) => Math.abs(drawnIn(garment, 'front') - drawnIn(garment, 'back')),
  },
  {
    id: 'front-fuller',
    about: 'The front is as wide at the bust as the back, or wider by what the bust stands out',
    source: block,
    unit: 'mm',
    low: -0.1,
    high: 10.1,
    value: (garment) => levelWidth(pieceOf(garment, 'front'), 'bust') - levelWidth(pieceOf(garment, 'back'), 'bust'),
  },
  {
    id: 'cap-top-smooth',
    about: 'Both halves of the cap are one curve at the top',
    source: sleeve,
    unit: 'degrees',
    low: 179.5,
    high: 180.5,
    value: (garment) => cornerBetween(garment, 'sleeve', 'cap-front', 'cap-back'),
  },
  {
    id: 'cap-height',
    about:
      'Cap height over the mean height of the armholes: shallower than a woven set-in sleeve’s, so that the arm lifts freely',
    source: knit,
    unit: 'share',
    low: 0.5,
    high: 0.71,
    value: (garment) => capHeight(garment) / meanOf(armholeHeight(garment, 'front'), armholeHeight(garment, 'back')),
  },
  {
    id: 'cap-bends',
    about: 'Each half of the cap changes from hollow to round once',
    source: sleeve,
    unit: 'count',
    low: 2,
    high: 2,
    value: (garment) => edgeBend(garment, 'sleeve', 'cap-front') + edgeBend(garment, 'sleeve', 'cap-back'),
  },
  {
    id: 'cap-front-hollower',
    about: 'The cap is a little hollower in front than behind',
    source: sleeve,
    unit: 'mm',
    low: 0.2,
    high: 8,
    value: (garment) => capHollow(garment, 'cap-front') - capHollow(garment, 'cap-back'),
  },
  {
    id: 'cap-evenly-shared',
    about: 'Front share of the sleeve at the underarm line',
    source: sleeve,
    unit: 'share',
    low: 0.46,
    high: 0.56,
    value: (garment) => {
      const top = landmarkIn(garment, 'sleeve', 'cap-top').x;
      const front = top - landmarkIn(garment, 'sleeve', 'underarm-front').x;
      return front / (front + landmarkIn(garment, 'sleeve', 'underarm-back').x - top);
    },
  },
  {
    id: 'head-ease',
    about: 'Sleeve-head ease of a knit, both armholes together',
    source: sleeve,
    unit: 'mm',
    low: 0,
    high: 12,
    value: headEase,
  },
  {
    id: 'underarm-seams',
    about: 'Both underarm seams of the sleeve are equal',
    source: sleeve,
    unit: 'mm',
    low: 0,
    high: 0.1,
    value: (garment) =>
      Math.abs(length(garment, 'sleeve', 'underarm-front') - length(garment, 'sleeve', 'underarm-back')),
  },
  {
    id: 'underarm-bends',
    about: 'No stray bend in the underarm seam',
    source: sleeve,
    unit: 'count',
    low: 0,
    high: 0,
    value: (garment) => edgeBend(garment, 'sleeve', 'underarm-front') + edgeBend(garment, 'sleeve', 'underarm-back'),
  },
  {
    id: 'sleeve-narrows',
    about: 'The sleeve hem over the sleeve at the upper arm: a little narrower, so that it does not wing',
    source: sleeve,
    unit: 'share',
    low: 0.92,
    high: 0.99,
    value: (garment) => length(garment, 'sleeve', 'hem') / levelWidth(pieceOf(garment, 'sleeve'), 'upper-arm'),
  },
  {
    id: 'sleeve-hem-clears',
    about: 'The sleeve hem less the upper arm, which it crosses at its fullest',
    source: fitting,
    unit: 'mm',
    low: 20,
    high: 120,
    value: (garment, body) => length(garment, 'sleeve', 'hem') - (body.upperArmGirth ?? 0),
  },
  {
    id: 'sleeve-short',
    about: 'Cap top to hem over the length of the arm: above the elbow',
    source: block,
    unit: 'share',
    low: 0.26,
    high: 0.42,
    value: (garment, body) =>
      (landmarkIn(garment, 'sleeve', 'hem-centre').y - landmarkIn(garment, 'sleeve', 'cap-top').y) /
      (body.armLength ?? 0),
  },
  {
    id: 'armhole-round',
    about: 'Armhole girth over bust girth',
    source: block,
    unit: 'share',
    low: 0.36,
    high: 0.53,
    value: (garment, body) => armholes(garment) / (body.bustGirth ?? 0),
  },
  {
    id: 'neck-deeper-in-front',
    about: 'Depth of the front neck over that of the back',
    source: block,
    unit: 'share',
    low: 2.5,
    high: 6,
    value: (garment) => neckDepth(garment, 'front') / neckDepth(garment, 'back'),
  },
  {
    id: 'neck-widths-alike',
    about: 'The back neck is as wide as the front or a little wider',
    source: block,
    unit: 'mm',
    low: 0,
    high: 8,
    value: (garment) => landmarkIn(garment, 'back', 'neck-point').x - landmarkIn(garment, 'front', 'neck-point').x,
  },
  {
    id: 'shoulder-left',
    about: 'Enough shoulder is left beside the neck for the tee to hang from',
    source: block,
    unit: 'mm',
    low: 70,
    high: 190,
    value: (garment) => length(garment, 'front', 'shoulder'),
  },
  {
    id: 'band-share',
    about: 'The neck band over the neckline it is stretched on to',
    source: knit,
    unit: 'share',
    low: band.least,
    high: band.most,
    value: (garment) => bandRound(garment) / neckline(garment),
  },
  {
    id: 'band-round-neck',
    about: 'The band, unstretched, over the base of the neck: it lies outside it',
    source: fitting,
    unit: 'share',
    low: 1,
    high: 1.8,
    value: (garment, body) => bandRound(garment) / (body.neckBaseGirth ?? 0),
  },
  {
    id: 'head-passes',
    about: 'The band stretched by what the cloth has to give, less the head: the narrowest ring the head goes through',
    source: 'every ring that must be passed: band × (1 + stretch) ≥ head girth',
    unit: 'mm',
    low: 0,
    high: 140,
    value: (garment, body) => bandRound(garment) * (1 + stretchNeeded) - (body.headGirth ?? 0),
  },
];
