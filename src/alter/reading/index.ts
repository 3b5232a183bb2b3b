export { directionsAt, fittingCauses, kindsAt } from './causes.ts';
export { type FittingContext, readFitting } from './read.ts';
export { signSchema } from './schema.ts';
export * from './types.ts';
export { type FittingView, fittingViews, fittingZones, type ZoneId, zoneIds, zoneIsOn } from './zones.ts';
