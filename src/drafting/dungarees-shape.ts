import { pathBounds, pathEnd, pathStart } from '../geometry/index.ts';
import { edgeLength, type Garment, levelWidth, pieceOf } from '../pattern/index.ts';
import { dungareesWidths } from './dungarees-pieces.ts';
import type { DungareesView } from './dungarees-plan.ts';
import type { ShapeCheck } from './shape-check.ts';
import { cornerBetween, edgeBend, inDegrees, landmarkIn, runOf } from './shape-garment.ts';
import { apart, leastRadius } from './shape-measures.ts';
import { check, smooth, sources, square } from './shape-rules.ts';
import { legShape } from './trouser-shape.ts';

const { trousers, sewing, fitting, truing } = sources;

const length = (garment: Garment, piece: string, edge: string): number => edgeLength(pieceOf(garment, piece), edge);

const height = (garment: Garment, bib: string): number => -landmarkIn(garment, bib, 'centre-top').y;

/** Length of a strap to its buckle. */
const worn = (garment: Garment): number => {
  const buckle = pieceOf(garment, 'strap').lines.find(({ id }) => id === 'buckle');
  return buckle ? pathEnd(buckle.path).y : Number.NaN;
};

/** From crotch to shoulder and back: both crotch seams, both bibs at their centre, a strap. */
const torso = (garment: Garment): number =>
  length(garment, 'front', 'crotch') +
  length(garment, 'back', 'crotch') +
  height(garment, 'bib') +
  height(garment, 'back-bib') +
  worn(garment);

/** The sides opened, the waist lies flat with both openings spread. */
const opened = (garment: Garment): number =>
  2 * (length(garment, 'bib', 'waist') + length(garment, 'back-bib', 'waist')) +
  4 * length(garment, 'front', 'side-upper');

/** How far a pocket's place keeps from an edge of its piece. */
const clear = (garment: Garment, piece: string, edge: string): number => {
  const place = pieceOf(garment, piece).lines.find(({ id }) => id === 'pocket');
  return place ? apart(place.path, runOf(garment, piece, edge)).least : Number.NaN;
};

/** How far the side at the knee stands out from the straight between hip and hem: a leg that bows. */
const bows = (garment: Garment, half: 'front' | 'back'): number => {
  const [hip, knee] = [landmarkIn(garment, half, 'hip-side'), landmarkIn(garment, half, 'knee-side')];
  const hem = pathStart(runOf(garment, half, 'hem'));
  return knee.x - (hip.x + ((hem.x - hip.x) * (knee.y - hip.y)) / (hem.y - hip.y));
};

const full: readonly ShapeCheck[] = [
  check(
    'leg-bows',
    'The leg is wide at the knee and drawn in to the hem: its side bows out',
    trousers,
    'mm',
    [2, 80],
    (garment) => (bows(garment, 'front') + bows(garment, 'back')) / 2,
  ),
  check(
    'hem-over-knee',
    'The hem over the knee',
    trousers,
    'share',
    [0.6, 0.9],
    (garment) => length(garment, 'front', 'hem') / levelWidth(pieceOf(garment, 'front'), 'knee'),
  ),
];

const short: readonly ShapeCheck[] = [
  check(
    'hem-over-thigh',
    'The short leg’s hem over the thigh',
    trousers,
    'share',
    [0.8, 1.03],
    (garment) =>
      (length(garment, 'front', 'hem') + length(garment, 'back', 'hem')) /
      (levelWidth(pieceOf(garment, 'front'), 'thigh') + levelWidth(pieceOf(garment, 'back'), 'thigh')),
  ),
  check(
    'above-the-knee',
    'The short leg ends above the knee: crotch to hem over the inside leg',
    trousers,
    'share',
    [0.1, 0.35],
    (garment, body) =>
      (landmarkIn(garment, 'front', 'hem-centre').y - landmarkIn(garment, 'front', 'crotch-point').y) /
      (body.insideLeg ?? Number.NaN),
  ),
];

/** What a cutter looks at before she would cut from the dungarees. */
export const dungareesShape = (view: DungareesView): readonly ShapeCheck[] => [
  ...legShape({
    crotch: [25, 85],
    rise: [12, 70],
    thigh: [45, 135],
    hemTurn: view === 'full' ? 25 : 20,
    toKnee: view === 'full',
  }),
  ...(view === 'full' ? full : short),
  check(
    'waist-ease',
    'The waist less the body’s: it hangs free',
    fitting,
    'mm',
    [55, 320],
    (garment, body) =>
      2 * (levelWidth(pieceOf(garment, 'bib'), 'waist') + levelWidth(pieceOf(garment, 'back-bib'), 'waist')) -
      (body.waistGirth ?? Number.NaN),
  ),
  check(
    'hip-passes',
    'The waist with both sides opened less the hip that has to pass it',
    'every ring that must be passed: waist + twice each opening ≥ hip girth + 20',
    'mm',
    [20, 1400],
    (garment, body) => opened(garment) - (body.hipGirth ?? Number.NaN),
  ),
  check(
    'opens-below-hip',
    'The sides open to below the hip',
    sewing,
    'mm',
    [4, 100],
    (garment) => pathEnd(runOf(garment, 'front', 'side-upper')).y - landmarkIn(garment, 'front', 'hip-side').y,
  ),
  check(
    'bib-above-bust',
    'The bib reaches above the bust point',
    sewing,
    'mm',
    [30, 160],
    (garment, body) =>
      height(garment, 'bib') - ((body.frontWaistLength ?? Number.NaN) - (body.bustDepth ?? Number.NaN)),
  ),
  check(
    'bib-below-neck',
    'The bib over the front waist length: it ends below the collar bone',
    sewing,
    'share',
    [0.4, 0.72],
    (garment, body) => height(garment, 'bib') / (body.frontWaistLength ?? Number.NaN),
  ),
  check(
    'bib-between-arms',
    'The bib’s top over the across front: it lies between the arms',
    sewing,
    'share',
    [0.5, 0.88],
    (garment, body) => (2 * landmarkIn(garment, 'bib', 'bib-corner').x) / (body.acrossFront ?? Number.NaN),
  ),
  check(
    'bib-narrows',
    'The bib’s top over its waist',
    sewing,
    'share',
    [0.25, 0.82],
    (garment) => landmarkIn(garment, 'bib', 'bib-corner').x / length(garment, 'bib', 'waist'),
  ),
  check(
    'back-bib-lower',
    'The back bib is lower than the front’s',
    sewing,
    'mm',
    [10, 160],
    (garment) => height(garment, 'bib') - height(garment, 'back-bib'),
  ),
  check('bib-curves', 'The bibs’ sides are hollowed all the way', sewing, 'count', [0, 0], (garment) =>
    Math.max(edgeBend(garment, 'bib', 'curve'), edgeBend(garment, 'back-bib', 'curve')),
  ),
  check('bib-curves-open', 'Radius of the tightest bend of a bib’s side', sewing, 'mm', [14, 400], (garment) =>
    Math.min(leastRadius(runOf(garment, 'bib', 'curve')), leastRadius(runOf(garment, 'back-bib', 'curve'))),
  ),
  square('bib-square', 'bib', 'waist', 'centre'),
  square('bib-top-square', 'bib', 'centre', 'top'),
  square('bib-side-square', 'bib', 'side', 'waist'),
  square('back-bib-side-square', 'back-bib', 'side', 'waist'),
  smooth('side-runs-on', 'The side runs on from bib to leg across the waist', 'bib-waist', 1),
  smooth('back-side-runs-on', 'The side runs on from back bib to leg across the waist', 'back-bib-waist', 1),
  check('strap-meets-bib', 'The strap is as wide as its place on the back bib', truing, 'mm', [0, 0.1], (garment) =>
    Math.abs(length(garment, 'back-bib', 'strap') - dungareesWidths.strap),
  ),
  check(
    'strap-spare',
    'What a strap has left to be let out',
    sewing,
    'mm',
    [60, 130],
    (garment) => length(garment, 'strap', 'right') - worn(garment),
  ),
  check(
    'torso-ease',
    'Crotch to shoulder and back, less the body’s crotch length, front and back waist length: what bending and sitting take, of it the shoulder’s slope gives back some',
    fitting,
    'mm',
    [25, 130],
    (garment, body) =>
      torso(garment) -
      ((body.crotchLength ?? Number.NaN) +
        (body.frontWaistLength ?? Number.NaN) +
        (body.backWaistLength ?? Number.NaN) +
        0.054 * (body.neckBaseGirth ?? Number.NaN) -
        0.9 * (body.shoulderDrop ?? Number.NaN)),
  ),
  check(
    'facing-copies-side',
    'The facing’s side is the front’s',
    truing,
    'mm',
    [0, 0.01],
    (garment) => apart(runOf(garment, 'side-facing', 'side'), runOf(garment, 'front', 'side-upper')).most,
  ),
  check(
    'hip-pocket-clear',
    'The hip pocket keeps clear of the opening and its facing',
    sewing,
    'mm',
    [28, 140],
    (garment) => clear(garment, 'front', 'side-upper'),
  ),
  check('hip-pocket-off-crotch', 'The hip pocket keeps clear of the centre', sewing, 'mm', [18, 140], (garment) =>
    clear(garment, 'front', 'crotch'),
  ),
  check('back-pocket-clear', 'The back pocket keeps clear of side and seat', sewing, 'mm', [20, 160], (garment) =>
    Math.min(clear(garment, 'back', 'side-upper'), clear(garment, 'back', 'crotch')),
  ),
  check(
    'bib-pocket-on-bib',
    'The bib pocket ends above the waist and lies within the bib',
    sewing,
    'mm',
    [8, 140],
    (garment) => Math.min(clear(garment, 'bib', 'waist'), clear(garment, 'bib', 'curve')),
  ),
  check('mouth-wide', 'A hand passes the hip pocket’s mouth', sewing, 'mm', [110, 230], (garment) =>
    length(garment, 'hip-pocket', 'mouth'),
  ),
  check('mouth-slants', 'The hip pocket’s mouth falls towards the side', sewing, 'degrees', [12, 25], (garment) => {
    const mouth = runOf(garment, 'hip-pocket', 'mouth');
    const [from, to] = [pathStart(mouth), pathEnd(mouth)];
    return inDegrees(Math.atan2(to.y - from.y, to.x - from.x));
  }),
  check('curve-corner', 'The bib’s side meets its curve without a spike', sewing, 'degrees', [90, 130], (garment) =>
    cornerBetween(garment, 'bib', 'curve', 'side'),
  ),
  check(
    'underlap-as-long',
    'The underlap is as long as the back’s opening and the back bib’s side',
    truing,
    'mm',
    [0, 0.1],
    (garment) => {
      const { minY, maxY } = pathBounds(pieceOf(garment, 'side-underlap').runs.flatMap(({ path }) => path));
      return Math.abs(maxY - minY - length(garment, 'back', 'side-upper') - length(garment, 'back-bib', 'side'));
    },
  ),
];
