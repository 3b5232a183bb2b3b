import { backAndSleeveCauses } from './causes-back-sleeve.ts';
import { legCauses } from './causes-legs.ts';
import { lowerCauses } from './causes-lower.ts';
import { upperCauses } from './causes-upper.ts';
import { type Cause, type Direction, directions, type SignKind, signKinds } from './types.ts';
import type { ZoneId } from './zones.ts';

/** What a fitter knows, a row a cause. Causes that weigh the same stand in this order: bust and shoulders first, as one fits from the top. */
export const fittingCauses: readonly Cause[] = [...upperCauses, ...backAndSleeveCauses, ...lowerCauses, ...legCauses];

const speakingFor = (zone: ZoneId) =>
  fittingCauses.flatMap(({ evidence }) => evidence.filter((one) => one.zone === zone && one.weight > 0));

/** What can be seen at a zone that the table knows an answer to. */
export const kindsAt = (zone: ZoneId): readonly SignKind[] => {
  const known = speakingFor(zone);
  return signKinds.filter((kind) => known.some((one) => one.kind === kind));
};

/** How lines may run there that the table tells apart; none where it makes no difference. */
export const directionsAt = (zone: ZoneId, kind: SignKind): readonly Direction[] => {
  const known = speakingFor(zone).filter((one) => one.kind === kind);
  return directions.filter((direction) => known.some(({ along }) => along?.includes(direction)));
};
