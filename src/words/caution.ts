import type { ProblemCatalogue } from './catalogue.ts';

export const cautionProblems: ProblemCatalogue = {};

/** Cautions that hold for more than one garment or work: short, and deferring to the law where it is sewn and worn. */
export const cautionWords = {
  law: 'Check the law and guidance where you live.',
  /** After EN 14682, safety of children's clothing: cords and drawstrings. */
  childCords:
    'No cords, drawstrings or ties at hood or neck: they catch and strangle. Under seven years of age there are to be none there at all, up to fourteen no free ends there, and nothing may trail below the hem (as EN 14682 has it). Check the law and guidance where you live.',
  smallParts:
    'Small parts are swallowed: set press studs through several layers and pull each hard before it is worn, above all for a child under three; no beads, bobbles or cord stops. Check the law and guidance where you live.',
  elastic:
    'Elastic must hold and not press: where it leaves a mark on the skin, let it out. It could stop the flow of blood.',
  coatedCloth:
    'Coated cloth lets no air through and melts or burns near flame: no sleeping clothes of it, and air the room when it is pressed, glued or taped, for it gives off fumes.',
} as const;
