import type { Envelope } from '../../pattern/index.ts';
import { swayBack } from '../back/sway-back.ts';
import { fullBust } from '../full-bust.ts';
import { lengthenShorten } from '../lengthen-shorten.ts';
import { fullUpperArm } from '../sleeve/full-upper-arm.ts';
import { smallBust } from '../small-bust.ts';
import type { Alteration, AmountParameter, ChoiceParameter, Parameter } from '../types.ts';
import { upperArmAmount } from './limits.ts';

/** An alteration there is a card for, and what a step of it asks: as an alteration of the catalogue asks it. */
export interface CardKind {
  readonly id: string;
  readonly version: number;
  readonly params: Readonly<Record<string, AmountParameter | ChoiceParameter>>;
}

/** A card is for the whole garment: it never asks which half of the body. */
const askedOnCard = (params: Readonly<Record<string, Parameter>>): CardKind['params'] =>
  Object.fromEntries(
    Object.entries(params).flatMap(([name, parameter]) =>
      name !== 'side' && (parameter.unit === 'mm' || parameter.unit === 'choice') ? [[name, parameter]] : [],
    ),
  );

const kindOf = ({ id, version, params }: Alteration): CardKind => ({ id, version, params: askedOnCard(params) });

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
  const sizes = (usual: string): ChoiceParameter => ({ unit: 'choice', choices: envelope.sizes, usual });
  return [
    ...[lengthenShorten, fullBust, smallBust].map(kindOf),
    { ...kindOf(fullUpperArm), params: { amount: upperArmAmount } },
    kindOf(swayBack),
    { id: 'blend', version: 1, params: { waist: sizes(size), hip: sizes(sizeBeside(envelope, size)) } },
  ];
};
