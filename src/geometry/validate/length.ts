import { pathLength } from '../paths.ts';
import { tolerance } from '../tolerance.ts';
import type { Path } from '../types.ts';
import type { Verdict } from './verdict.ts';
import { chordSum, Findings, pointsAlong } from './verdict.ts';

/** Length by chords, twice as fine each time, and Richardson's extrapolation of the last two. */
export const lengthByChords = (path: Path): number =>
  path.reduce((sum, segment) => {
    if (segment.kind === 'line') return sum + chordSum([segment.from, segment.to]);
    const coarse = chordSum(pointsAlong([segment], 8192));
    const fine = chordSum(pointsAlong([segment], 16384));
    return sum + fine + (fine - coarse) / 3;
  }, 0);

/** `pathLength` against chords. */
export const validateLength = (path: Path): Verdict => {
  const findings = new Findings();
  findings.measure('length', pathLength(path) - lengthByChords(path), tolerance.length);
  return findings.verdict();
};
