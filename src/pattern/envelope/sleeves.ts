import { chartWords } from '../../words/index.ts';
import type { Envelope } from './types.ts';

const escaped = chartWords.sleeveless.map((words) => words.replaceAll(' ', String.raw`[\s-]+`)).join('|');
const sleeveless = new RegExp(String.raw`(?<!\p{L})(?:${escaped})(?!\p{L})`, 'iu');

/**
 * Whether a view (null: the one garment, or what holds for all of them) is without sleeves: as she has said of it, else
 * as the words by which it is known say. All views together are only where each of them is.
 */
export const isSleeveless = (envelope: Envelope, view: string | null): boolean => {
  if (view === null && envelope.views.length > 0) return envelope.views.every(({ id }) => isSleeveless(envelope, id));
  const one = envelope.views.find(({ id }) => id === view);
  if (one?.sleeves !== undefined) return !one.sleeves;
  return sleeveless.test(one ? `${one.name} ${one.about}` : `${envelope.name} ${envelope.about}`);
};
