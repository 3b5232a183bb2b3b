import type { Garment } from '../pattern/index.ts';
import { bad, type Result } from '../units/index.ts';
import { settledParams } from './settle.ts';
import type { Alteration, Applied, Params } from './types.ts';

/** The problem there is when something does not hold. */
const notHeld: Readonly<Record<string, string>> = {
  'edge-length': 'alter.edge-changes',
  'centre-drop': 'alter.edge-changes',
  'seam-walks': 'alter.seam-does-not-walk',
  'armhole-smooth': 'alter.armhole-kinks',
  'dart-legs': 'alter.dart-legs-differ',
  'dart-angle': 'alter.dart-legs-differ',
  'width-grows': 'alter.width-off',
  'width-kept': 'alter.width-changes',
  'grain-straight': 'alter.grain-bends',
};

/** One alteration applied and everything it holds checked: what does not hold is a problem. */
export const applyOne = (alteration: Alteration, garment: Garment, params: Params): Result<Applied> => {
  const lacking = alteration.needs(garment);
  if (lacking) return { ok: false, problem: lacking };
  const settled = settledParams(alteration, garment, params);
  if (!settled.ok) return settled;
  const applied = alteration.apply(garment, settled.value);
  if (!applied.ok) return applied;
  const broken = applied.value.held.find(({ ok }) => !ok);
  if (!broken) return applied;
  const where = broken.seam ?? broken.edge ?? broken.level ?? broken.piece ?? '';
  return bad(notHeld[broken.what] ?? 'alter.does-not-hold', {
    what: broken.what,
    where,
    by: { mm: Math.abs(broken.by) },
  });
};
