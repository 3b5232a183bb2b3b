import { add, normalize, pathLength, scale, subtract } from '../../geometry/index.ts';
import { good, type Result } from '../../units/index.ts';
import { held } from '../checks.ts';
import { easedField, type Field } from '../fields.ts';
import { follow } from '../follow.ts';
import { endPoint, isLining, other } from '../parts.ts';
import type { Drawn } from '../reshape.ts';
import { type Alteration, sideParameter } from '../types.ts';
import { warped } from '../warp.ts';
import { beginWork, finishWork, lengthNow, redrawEdges } from '../work.ts';
import { armholeChanges, headEase } from './account.ts';
import { upperReach } from './armhole-line.ts';
import { drawnAlong, endOf, lineOf, slidEnd } from './lines.ts';
import { type Armhole, armholesOf, chainsOf, needsShoulder, type Panel } from './upper.ts';

/** The upper end of an armhole moved out along the seam that meets it there; on a yoke, where both ends are shoulders, all of it. */
const outAt = (armhole: Armhole, by: number): Result<Drawn> => {
  const { piece, edges, reversed, top, foot, underarm } = armhole;
  const line = lineOf(piece, edges, reversed);
  if (!line.ok) return line;
  const topNow = slidEnd(piece, top.edge, top.end, by);
  if (!topNow.ok) return topNow;
  const out = subtract(endOf(topNow.value, top.end), endPoint(piece, top));
  const length = pathLength(line.value);
  if (underarm) {
    const field = easedField(0, upperReach(armhole, line.value), { by: out }, { by: { x: 0, y: 0 } });
    return good({ ...drawnAlong(piece, edges, reversed, warped(line.value, field)), [top.edge]: topNow.value });
  }
  const footNow = slidEnd(piece, foot.edge, foot.end, by);
  if (!footNow.ok) return footNow;
  const outBelow = subtract(endOf(footNow.value, foot.end), endPoint(piece, foot));
  const field: Field = easedField(0, length, { by: out }, { by: outBelow });
  return good({
    ...drawnAlong(piece, edges, reversed, warped(line.value, field)),
    [top.edge]: topNow.value,
    [foot.edge]: footNow.value,
  });
};

const lastPanel = (chain: readonly Panel[]): Panel => chain.at(-1) as Panel;

/**
 * Each shoulder wider by `amount` (negative: narrower), on front, back and yoke alike.
 *
 *      *----*--->*      the shoulder point slides out along the shoulder,
 *     /      \\    \\     the armhole runs from it into its old line
 *    |        |   |     at the notch
 *              `._`._
 *
 * The neckline, the side seam and the lower armhole stay. The armhole's length changes little; where the ease of the sleeve
 * head does not allow it the cap is fitted again. Source: broad and narrow shoulders in fitting manuals.
 */
export const shoulderWidth: Alteration = {
  id: 'shoulder-width',
  version: 1,
  family: 'shoulder-neck',
  params: { amount: { unit: 'mm', min: -40, max: 30, usual: [-15, 10] }, side: sideParameter },
  amount: 'amount',
  inAll: 2,
  needs: needsShoulder,
  handle: (garment, params) => {
    const chain = chainsOf(garment).find(([first]) => first?.side === 'front' && !first.lining);
    if (!chain) return null;
    const { piece, edge, inner } = lastPanel(chain);
    const from = endPoint(piece, { edge, end: other(inner) });
    const along = normalize(subtract(from, endPoint(piece, { edge, end: inner })));
    return { piece: piece.id, at: add(from, scale(along, Number(params['amount'] ?? 0))), perMillimetre: along };
  },
  reverse: (params) => ({ alteration: 'shoulder-width', params: { ...params, amount: -Number(params['amount']) } }),
  holds: ['neck', 'shoulder-grows', 'seam-walks'],
  follows: ['cap', 'lining-alike'],
  apply: (garment, params) => {
    const amount = Number(params['amount']);
    let work = beginWork(garment);
    const armholes = armholesOf(garment);
    for (const armhole of armholes) {
      const { piece } = armhole;
      const drawn = outAt(armhole, amount);
      if (!drawn.ok) return drawn;
      work = redrawEdges(work, piece.id, drawn.value, !isLining(piece));
    }
    const followed = follow(work);
    if (!followed.ok) return followed;
    const now = followed.value;
    return finishWork(now, {
      held: chainsOf(garment).map((chain) => {
        const { piece, edge } = lastPanel(chain);
        const grew = lengthNow(now, piece.id, edge) - now.tape.edge(piece, edge);
        return held('shoulder-grows', grew - amount, { piece: piece.id, edge });
      }),
      changes: [...armholeChanges(now, armholes), ...headEase(now)],
    });
  },
};
