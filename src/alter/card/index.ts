export { alterationCard, cardSteps } from './card.ts';
export { type SaidCard, sayCard } from './say.ts';
export * from './types.ts';
