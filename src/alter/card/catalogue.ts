import type { Envelope } from '../../pattern/index.ts';
import { alterationCatalogue } from '../catalogue.ts';
import type { Alteration, Parameter } from '../types.ts';
import { swayBackAmount, upperArmAmount } from './limits.ts';

/** An alteration there is a card for, and what a step of it asks: as an alteration of the catalogue asks it. */
export type CardKind = Pick<Alteration, 'id' | 'version' | 'params'>;

/** The size next to a size, larger where there is one: where a blend is begun from. */
const sizeBeside = ({ sizes }: Envelope, size: string): string => {
  const at = sizes.indexOf(size);
  return sizes[at + 1] ?? sizes[at - 1] ?? size;
};

/**
 * Every alteration there is a card for, of a size of an envelope. A blend runs to another size at a level, or stays in
 * its own there: choosing the size itself.
 */
export const cardCatalogue = (envelope: Envelope, size: string): readonly CardKind[] => {
  const sizes = (usual: string): Parameter => ({ unit: 'choice', choices: envelope.sizes, usual });
  return [
    ...alterationCatalogue.map(({ id, version, params }) => ({ id, version, params })),
    { id: 'full-upper-arm', version: 1, params: { amount: upperArmAmount } },
    { id: 'sway-back', version: 1, params: { amount: swayBackAmount } },
    { id: 'blend', version: 1, params: { waist: sizes(size), hip: sizes(sizeBeside(envelope, size)) } },
  ];
};
