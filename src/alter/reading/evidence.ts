import type { Evidence, SignKind } from './types.ts';
import type { ZoneId } from './zones.ts';

type How = Pick<Evidence, 'along' | 'posture' | 'pin'>;

/** A sign that speaks for a cause. 3: the sign it is known by; 2: goes with it; 1: is often seen with it. */
export const sees = (zone: ZoneId, kind: SignKind, weight: number, how: How = {}): Evidence => ({
  zone,
  kind,
  weight,
  ...how,
});

/** A sign that speaks against a cause. */
export const against = (zone: ZoneId, kind: SignKind, weight: number, how: How = {}): Evidence =>
  sees(zone, kind, -weight, how);
