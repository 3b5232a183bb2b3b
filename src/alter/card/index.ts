export { alterationCard, cardSteps } from './card.ts';
export { type CardKind, cardCatalogue } from './catalogue.ts';
export { type SaidCard, sayCard } from './say.ts';
export * from './types.ts';
