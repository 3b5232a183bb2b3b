import { z } from 'zod';
import {
  type Envelope,
  type FinishedOf,
  type FlatPiece,
  finishedKinds,
  flatMeasureGuide,
} from '../../src/pattern/index.ts';

/** A piece as far as it has been measured. */
export type Measuring = { readonly [Part in keyof FlatPiece]: FlatPiece[Part] | (Part extends 'name' ? never : null) };

/** The pieces one would measure for it, by the usual construction, with the allowances the envelope states. */
export const firstPieces = (of: FinishedOf, envelope: Envelope): readonly Measuring[] => {
  const { pieces } = flatMeasureGuide(of, envelope.kind);
  const usual = pieces.map(({ name, times, leaveOut, tape }): Measuring => {
    // On the fold the centre has none, so a half of the body shows one allowance; elsewhere there is one at each end.
    const fold = times === 2 && tape[0][0] === 0;
    const within = envelope.allowance === null ? null : envelope.allowance * (fold ? 1 : 2);
    return { name, flat: null, allowances: leaveOut.includes('allowances') ? within : 0, takenOut: 0, times };
  });
  return usual.length > 0 ? usual : [{ name: '', flat: null, allowances: null, takenOut: 0, times: 1 }];
};

/** Pieces measured in full; null while one is not. One she gave no name goes by its number. */
export const whole = (
  pieces: readonly Measuring[],
  nameless: (number: number) => string,
): readonly FlatPiece[] | null => {
  const done = pieces.flatMap((piece, index) =>
    piece.flat === null || piece.times === null
      ? []
      : [
          {
            name: piece.name.trim() === '' ? nameless(index + 1) : piece.name,
            flat: piece.flat,
            times: piece.times,
            allowances: piece.allowances ?? 0,
            takenOut: piece.takenOut ?? 0,
          },
        ],
  );
  return done.length === pieces.length ? done : null;
};

/** A finished measurement being measured off the tissue. */
export interface Begun {
  readonly of: FinishedOf;
  readonly view: string | null;
  readonly size: string;
  readonly pieces?: readonly Measuring[];
  /** Taken up again from what was left unfinished: nothing she did just now, so the focus stays where it is. */
  readonly left?: boolean;
}

const length = z.number().min(0).nullable();

/** What a browser gives back of a measurement left unfinished. */
const leftSchema = z.object({
  of: z.enum(finishedKinds),
  view: z.string().nullable(),
  size: z.string(),
  pieces: z
    .array(
      z.object({
        name: z.string(),
        flat: length,
        allowances: length,
        takenOut: length,
        times: z.number().int().min(1).nullable(),
      }),
    )
    .min(1),
});

/** What was left half measured, where it still belongs to this envelope: its size and its view may be gone. */
export const begunIn = (draft: string, envelope: Envelope): Begun | null => {
  if (draft === '') return null;
  let json: unknown;
  try {
    json = JSON.parse(draft);
  } catch {
    return null;
  }
  const read = leftSchema.safeParse(json);
  if (!read.success) return null;
  const { view, size } = read.data;
  const known = envelope.sizes.includes(size) && (view === null || envelope.views.some(({ id }) => id === view));
  return known ? { ...read.data, left: true } : null;
};
