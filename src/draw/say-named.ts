import { alterationCatalogue, type StepOutcome } from '../alter/index.ts';
import type { AlterationStep, Garment, Piece } from '../pattern/index.ts';
import type { Unit } from '../units/index.ts';
import { drawWords, fill, type NamedKind, sayStep } from '../words/index.ts';
import { sayId } from './say.ts';
import { lowerFirst, sayEdge, sayEdgeOf, sayOnPiece, saySeam } from './say-edge.ts';

/** Words alone, so the unit does not matter. */
const filled = (template: string, values: Readonly<Record<string, string>>): string => fill(template, values, 'cm');

/** What a piece carries, by its own id: `Front bust dart`, `Back neck facing, outer edge`. */
const sayOwn = (piece: Piece, of: NamedKind, id: string): string => {
  if (of === 'edge') return sayEdgeOf(piece, id);
  const plain = sayId(id).toLowerCase();
  if (of === 'dart') return sayOnPiece(piece, plain.endsWith(drawWords.dart) ? plain : `${plain} ${drawWords.dart}`);
  const notch = of === 'notch' ? piece.notches.find((one) => one.id === id) : undefined;
  if (!notch) return sayOnPiece(piece, plain);
  return filled(drawWords.notchOn, { edge: lowerFirst(sayEdgeOf(piece, notch.edge)), name: plain });
};

/** One of what a step may name by its id, as the trade names it; `piece/id` where it lies on a piece. Null where the garment has none. */
export const findNamed = (garment: Garment, of: NamedKind, id: string): string | null => {
  if (of === 'seam') {
    const seam = garment.seams.find((one) => one.id === id);
    return seam ? saySeam(garment, seam) : null;
  }
  const cut = id.indexOf('/');
  const piece = garment.pieces.find((one) => one.id === (cut < 0 ? id : id.slice(0, cut)));
  if (!piece) return null;
  return cut < 0 ? piece.name : sayOwn(piece, of, id.slice(cut + 1));
};

/** The same where it has to be said in any case: what no garment has is read off its id. */
export const sayNamed = (garment: Garment, of: NamedKind, id: string): string =>
  findNamed(garment, of, id) ?? (of === 'edge' ? sayEdge(id.split('/').at(-1) ?? id) : sayId(id.replaceAll('/', '-')));

/** A step with what it leaves to the garment filled in: of several darts the first is meant, and is then named. */
const withNames = (garment: Garment, step: AlterationStep): AlterationStep => {
  const alteration = alterationCatalogue.find(({ id, version }) => id === step.alteration && version === step.version);
  if (!alteration?.options || alteration.needs(garment) !== null) return step;
  let params = step.params;
  for (const [name, parameter] of Object.entries(alteration.params)) {
    if (parameter.unit !== 'named' || params[name] !== undefined) continue;
    const first = alteration.options(garment, name, params)[0];
    if (first !== undefined) params = { ...params, [name]: first };
  }
  return { ...step, params };
};

/** A step in words, done to the first of these garments; what it names is said as in the first that has it. */
export const sayStepOn = (garments: readonly Garment[], step: AlterationStep, unit: Unit): string =>
  sayStep(garments[0] ? withNames(garments[0], step) : step, unit, (of, id) => {
    for (const garment of garments) {
      const found = findNamed(garment, of, id);
      if (found !== null) return lowerFirst(found);
    }
    const said = id.replaceAll(/[/-]/g, ' ');
    return of === 'dart' && !said.endsWith(drawWords.dart) ? `${said} ${drawWords.dart}` : said;
  });

/** Every step that was done, in words, each as of the garment it was done to. */
export const sayOutcomes = (bought: Garment, outcomes: readonly StepOutcome[], unit: Unit): readonly string[] =>
  outcomes.map(({ step, applied }, place) =>
    // What the step moved or let go is on the garment before it, what it made on the one after.
    sayStepOn([outcomes[place - 1]?.applied.garment ?? bought, applied.garment], step, unit),
  );
