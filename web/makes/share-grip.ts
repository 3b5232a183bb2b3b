import type { ShareParameter } from '../../src/alter/index.ts';
import { leftHalfOf, sayNamed } from '../../src/draw/index.ts';
import { edgeLength, pieceOf, pointOnEdge, tangentOnEdge } from '../../src/pattern/index.ts';
import { fill, webWords } from '../../src/words/index.ts';
import type { Grip } from '../parts/table/laid.ts';
import { alterationName } from './alteration-words.ts';
import type { GripAsked } from './grip.ts';
import { alterationOf } from './steps.ts';

const words = webWords.make.alterations;

/** The parameter that says how far along an edge, in every alteration that asks it. */
export const alongEdge = 'at';

/** How far along an edge something is put, as a point of that edge that can be dragged; null where a step asks no such thing. */
export const shareGripOf = ({ step, before, told, placeOf, say, onMove }: GripAsked): Grip | null => {
  const alteration = alterationOf(step);
  const parameter = alteration?.params[alongEdge];
  if (!step.on || !alteration || parameter?.unit !== 'share' || alteration.needs(before) !== null) return null;
  const found = Object.entries(alteration.params).find(([, one]) => one.unit === 'named' && one.of === 'edge');
  const name = found?.[0];
  if (name === undefined) return null;
  const options = alteration.options?.(before, name, step.params) ?? [];
  const id =
    options.find((one) => one === step.params[name]) ?? (step.params[name] === undefined ? options[0] : undefined);
  if (id === undefined) return null;
  const share = shareOf(step.params[alongEdge], parameter);
  const [pieceId, edge] = [id.slice(0, id.indexOf('/')), id.slice(id.indexOf('/') + 1)];
  const piece = pieceOf(before, pieceId);
  const along = edgeLength(piece, edge);
  const [at, tangent] = [pointOnEdge(piece, edge, share), tangentOnEdge(piece, edge, share)];
  const left = step.params['side'] === 'left' ? leftHalfOf(pieceId, told, before) : null;
  const place = placeOf(left?.piece ?? pieceId);
  if (!place) return null;
  const percent = say.words(words.shareSaid, { percent: Math.round(share * 100) });
  return {
    label: fill(words.gripAlong, { alteration: alterationName(step.alteration) }, say.unit),
    at: { x: (left ? 2 * left.atX - at.x : at.x) + place.x, y: at.y + place.y },
    perMillimetre: { x: (left ? -1 : 1) * tangent.x * along, y: tangent.y * along },
    amount: share,
    least: parameter.min,
    most: parameter.max,
    stop: 0.01,
    said: say.words(words.shareAlong, { share: percent, edge: sayNamed(before, 'edge', id) }),
    figure: percent,
    onMove,
  };
};

const shareOf = (given: unknown, { usual }: ShareParameter): number =>
  typeof given === 'number' ? given : (usual[0] + usual[1]) / 2;
