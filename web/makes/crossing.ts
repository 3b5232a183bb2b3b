/** Up to so much, radians (half a degree), any hand draws straight on. */
const straightOn = Math.PI / 360;

/** A crossing line that turns by more than this, radians (20°), has a corner there on purpose. */
const onPurpose = Math.PI / 9;

export type Crossing = 'smooth' | 'turns' | 'corner';

/** How the line that runs across the end of a seam goes on from one piece to the other; `turn` in radians. */
export const crossingOf = (turn: number): Crossing => {
  const by = Math.abs(turn);
  return by <= straightOn ? 'smooth' : by <= onPurpose ? 'turns' : 'corner';
};
