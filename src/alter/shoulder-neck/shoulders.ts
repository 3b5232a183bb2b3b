import type { Garment, Piece } from '../../pattern/index.ts';
import { good, type Result } from '../../units/index.ts';
import { endPoint, isLining, other } from '../parts.ts';
import { type Drawn, reshape } from '../reshape.ts';
import type { Handle } from '../types.ts';
import { pieceNow, type Work, withPiece } from '../work.ts';
import { type SwungPanel, swungShoulder } from './swing.ts';
import { type Armhole, type Chain, chainsOf, type Panel } from './upper.ts';

export const lastOf = (chain: Chain): Panel => chain.at(-1) as Panel;

/** The armhole at a shoulder's outer end. */
export const armholeAt = (armholes: readonly Armhole[], { piece, outerMeets }: Panel): Armhole | null =>
  armholes.find((one) => one.piece.id === piece.id && one.edges.includes(outerMeets.edge)) ?? null;

/** Chains with those of the shell first, each lining's told with the chain of the shell it lies under. */
export const paired = (
  chains: readonly Chain[],
): readonly { readonly chain: Chain; readonly shell: Chain | null }[] => {
  const shells = chains.filter(([first]) => first?.lining === false);
  const shellOf = (chain: Chain): Chain | null =>
    shells.find((one) => one[0]?.side === chain[0]?.side && one.length === chain.length) ?? null;
  return [
    ...shells.map((chain) => ({ chain, shell: null })),
    ...chains.filter((chain) => !shells.includes(chain)).map((chain) => ({ chain, shell: shellOf(chain) })),
  ];
};

/** A chain swung, a lining's with the motion of its shell. */
export const swungPair = (
  { chain, shell }: { readonly chain: Chain; readonly shell: Chain | null },
  down: number,
): Result<readonly SwungPanel[]> => {
  const above = shell ? swungShoulder(shell, down) : null;
  if (above && !above.ok) return above;
  return swungShoulder(chain, down, above?.value[0]);
};

/** A piece drawn anew and its other marks set right; linings are not led, so that what is traced on them still follows. */
export const redrawn = (work: Work, id: string, drawn: Drawn, adjust: (before: Piece, after: Piece) => Piece): Work => {
  const before = pieceNow(work, id);
  const { piece, puts } = reshape(before, drawn);
  const adjusted = adjust(before, piece);
  return withPiece(work, { piece: adjusted, untrued: adjusted, puts, cuts: [] }, !isLining(before));
};

/** Work done on one thing after another, stopping at the first problem. */
export const inTurn = <T>(
  work: Work,
  things: readonly T[],
  each: (work: Work, thing: T) => Result<Work>,
): Result<Work> => things.reduce<Result<Work>>((done, thing) => (done.ok ? each(done.value, thing) : done), good(work));

/**
 * Where the shoulder point of the front lies when the shoulder has swung so far down (negative: up) about the neck point,
 * and where it goes for each millimetre of the amount, which swings it up (−1) or down (1).
 */
export const swungHandle = (garment: Garment, down: number, times: 1 | -1): Handle | null => {
  const chain = chainsOf(garment).find(([first]) => first?.side === 'front' && !first.lining);
  const [first] = chain ?? [];
  if (!chain || !first) return null;
  const last = lastOf(chain);
  const neck = endPoint(first.piece, { edge: first.edge, end: first.inner });
  const point = endPoint(last.piece, { edge: last.edge, end: other(last.inner) });
  const y = point.y + down - neck.y;
  const size = Math.hypot(point.x - neck.x, point.y - neck.y);
  if (Math.abs(y) >= size) return null;
  const x = Math.sign(point.x - neck.x) * Math.sqrt(size * size - y * y);
  return {
    piece: last.piece.id,
    at: { x: neck.x + x, y: neck.y + y },
    perMillimetre: { x: (-times * y) / x, y: times },
  };
};
