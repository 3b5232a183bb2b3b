import { bad, good, type Result } from '../../src/units/index.ts';

/** A name: anything but nothing, as long as a document lets it be. */
export const readName = (text: string): Result<string> =>
  text.trim() === '' ? bad('web.name-missing') : good(text.slice(0, 200));
