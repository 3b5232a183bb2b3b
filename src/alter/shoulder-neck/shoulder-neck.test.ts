import { describe, expect, it } from 'vitest';
import { housePattern } from '../../drafting/index.ts';
import { distance, type Path, pathStart, startTangent } from '../../geometry/index.ts';
import {
  dartOf,
  edgeLength,
  edgeRuns,
  type Garment,
  landmarkOf,
  levelWidth,
  pieceOf,
  walkSeam,
} from '../../pattern/index.ts';
import { applyAlterations } from '../index.ts';
import type { Altered, Params } from '../types.ts';
import { shoulderNeckAlterations } from './index.ts';

const middle = (id: string, view?: string): Garment => {
  const sizes = housePattern(id)?.pattern(view ? { view } : {}).sizes ?? [];
  return (sizes[Math.floor(sizes.length / 2)] as (typeof sizes)[number]).garment;
};

const blouse = middle('blouse');
const shirtDress = middle('shirt-dress', 'knee');
const jacket = middle('jacket', 'collar');
const tee = middle('tee');

const altered = (garment: Garment, alteration: string, params: Params): Altered => {
  const done = applyAlterations(garment, [{ id: 's', alteration, version: 1, on: true, params }]);
  expect(done.refusal).toBeNull();
  return done;
};

const grew = (before: Garment, after: Garment, piece: string, edge: string): number =>
  edgeLength(pieceOf(after, piece), edge) - edgeLength(pieceOf(before, piece), edge);

const mark = (garment: Garment, piece: string, id: string) => {
  const at = landmarkOf(pieceOf(garment, piece), id);
  if (!at) throw new Error(`${piece} has no ${id}`);
  return at;
};

/** Radians by which what crosses a seam's ends turns there, before and after. */
const turns = (garment: Garment, seam: string): readonly number[] => {
  const found = garment.seams.find(({ id }) => id === seam);
  return found ? walkSeam(garment, found).ends.map(({ turn }) => turn) : [];
};

const twoDegrees = (2 * Math.PI) / 180;

describe('the neckline', () => {
  it('goes down at the centre by exactly the amount, square there, and keeps its shoulder end', () => {
    const { garment } = altered(blouse, 'neckline-depth', { where: 'front', amount: 20 });
    const [was, is] = [mark(blouse, 'front', 'centre-neck'), mark(garment, 'front', 'centre-neck')];
    expect(is.x).toBeCloseTo(was.x, 6);
    expect(is.y - was.y).toBeCloseTo(20, 6);
    expect(mark(garment, 'front', 'neck-point')).toEqual(mark(blouse, 'front', 'neck-point'));
    const neck = edgeRuns(pieceOf(garment, 'front'), 'neck')[0] as Path;
    expect(startTangent(neck).y).toBeCloseTo(0, 6);
    expect(grew(blouse, garment, 'front', 'centre-front')).toBeCloseTo(-20, 4);
    expect(grew(blouse, garment, 'front-facing', 'neck')).toBeCloseTo(grew(blouse, garment, 'front', 'neck'), 2);
    // The facing is as wide at the centre as it was.
    expect(grew(blouse, garment, 'front-facing', 'centre-front')).toBeCloseTo(0, 1);
  });

  it('takes what runs on over the stand with it, and collars with their under collars', () => {
    const { garment } = altered(jacket, 'neckline-depth', { where: 'front', amount: 15 });
    const stand = edgeRuns(pieceOf(garment, 'front'), 'neck-stand')[0] as Path;
    const before = edgeRuns(pieceOf(jacket, 'front'), 'neck-stand')[0] as Path;
    expect(pathStart(stand).y - pathStart(before).y).toBeCloseTo(15, 6);
    const longer = grew(jacket, garment, 'front', 'neck');
    expect(longer).toBeGreaterThan(5);
    for (const piece of ['collar', 'under-collar']) {
      expect(grew(jacket, garment, piece, 'neck-front')).toBeCloseTo(longer, 1);
      expect(grew(jacket, garment, piece, 'neck-back')).toBeCloseTo(0, 1);
    }
  });

  it('goes out along both shoulders by the amount', () => {
    const { garment } = altered(blouse, 'neckline-width', { amount: 10 });
    for (const piece of ['front', 'back']) {
      expect(distance(mark(blouse, piece, 'neck-point'), mark(garment, piece, 'neck-point'))).toBeCloseTo(10, 4);
      expect(grew(blouse, garment, piece, 'shoulder')).toBeCloseTo(-10, 4);
    }
    expect(mark(garment, 'front', 'centre-neck')).toEqual(mark(blouse, 'front', 'centre-neck'));
  });

  it('gives up a gape as a wedge that opens the bust dart by its angle', () => {
    const amount = 8;
    const { garment } = altered(blouse, 'neck-gape', { where: 'front', amount });
    expect(grew(blouse, garment, 'front', 'neck')).toBeCloseTo(-amount, 2);
    const [was, is] = [dartOf(pieceOf(blouse, 'front'), 'bust'), dartOf(pieceOf(garment, 'front'), 'bust')];
    expect(is.legLengths[0]).toBeCloseTo(is.legLengths[1], 4);
    // About the bust point the wedge turns by 2 asin(amount / 2r), r some 190 mm: the leg's end moves r′ times that.
    const bust = mark(blouse, 'front', 'bust-point');
    const out = distance(bust, was.legs[0]);
    const moved = distance(was.legs[0], is.legs[0]);
    expect(moved / out).toBeGreaterThan(amount / 230);
    expect(moved / out).toBeLessThan(amount / 160);
    for (const edge of ['shoulder', 'armhole', 'side']) expect(grew(blouse, garment, 'front', edge)).toBeCloseTo(0, 3);
    expect(levelWidth(pieceOf(garment, 'front'), 'bust')).toBeCloseTo(levelWidth(pieceOf(blouse, 'front'), 'bust'), 1);
  });

  it('gives up a gape at the back into the shoulder dart, or at a hinge where there is none', () => {
    const darted = altered(blouse, 'neck-gape', { where: 'back', amount: 6 }).garment;
    expect(grew(blouse, darted, 'back', 'neck')).toBeCloseTo(-6, 2);
    expect(grew(blouse, darted, 'back', 'shoulder')).toBeCloseTo(0, 3);
    expect(dartOf(pieceOf(darted, 'back'), 'shoulder').intake).toBeGreaterThan(
      dartOf(pieceOf(blouse, 'back'), 'shoulder').intake + 2,
    );
    const hinged = altered(tee, 'neck-gape', { where: 'back', amount: 6 }).garment;
    expect(grew(tee, hinged, 'back', 'neck')).toBeCloseTo(-6, 2);
    expect(grew(tee, hinged, 'back', 'armhole')).toBeCloseTo(0, 2);
    expect(grew(tee, hinged, 'back', 'shoulder')).toBeCloseTo(0, 3);
  });
});

describe('the shoulder', () => {
  it('is longer by the amount on front, back and yoke, and the armhole keeps its lower part', () => {
    const { garment } = altered(shirtDress, 'shoulder-width', { amount: -12 });
    expect(grew(shirtDress, garment, 'front', 'shoulder')).toBeCloseTo(-12, 4);
    expect(grew(shirtDress, garment, 'yoke', 'front')).toBeCloseTo(-12, 4);
    expect(grew(shirtDress, garment, 'yoke', 'back')).toBeCloseTo(-12, 4);
    expect(grew(shirtDress, garment, 'back', 'yoke')).toBeCloseTo(-12, 4);
    for (const piece of ['front', 'back']) {
      expect(mark(garment, piece, 'underarm')).toEqual(mark(shirtDress, piece, 'underarm'));
    }
  });

  it('rises at its point with the whole armhole, and keeps its length', () => {
    for (const amount of [-10, 10]) {
      const { garment } = altered(blouse, 'shoulder-slope', { amount });
      for (const piece of ['front', 'back']) {
        const [was, is] = [mark(blouse, piece, 'shoulder-point'), mark(garment, piece, 'shoulder-point')];
        expect(was.y - is.y).toBeCloseTo(amount, 2);
        expect(grew(blouse, garment, piece, 'shoulder')).toBeCloseTo(0, 3);
        expect(grew(blouse, garment, piece, 'neck')).toBeCloseTo(0, 2);
        expect(grew(blouse, garment, piece, 'armhole')).toBeCloseTo(0, 2);
        expect(grew(blouse, garment, piece, 'side')).toBeCloseTo(amount, 2);
      }
      turns(garment, 'shoulder').forEach((turn, i) => {
        expect(Math.abs(turn)).toBeLessThanOrEqual(Math.abs(turns(blouse, 'shoulder')[i] as number) + twoDegrees);
      });
      const dart = dartOf(pieceOf(garment, 'back'), 'shoulder');
      expect(dart.legLengths[0]).toBeCloseTo(dart.legLengths[1], 4);
      expect(dart.intake).toBeCloseTo(dartOf(pieceOf(blouse, 'back'), 'shoulder').intake, 4);
    }
  });

  it('comes forward: the front loses what the back gains, and the cap with them', () => {
    const { garment } = altered(blouse, 'forward-shoulder', { amount: 10 });
    expect(grew(blouse, garment, 'front', 'armhole')).toBeCloseTo(-10, 2);
    expect(grew(blouse, garment, 'back', 'armhole')).toBeCloseTo(10, 2);
    expect(grew(blouse, garment, 'sleeve', 'cap-front')).toBeCloseTo(-10, 2);
    expect(grew(blouse, garment, 'sleeve', 'cap-back')).toBeCloseTo(10, 2);
    for (const piece of ['front', 'back']) {
      expect(grew(blouse, garment, piece, 'shoulder')).toBeCloseTo(0, 3);
      expect(grew(blouse, garment, piece, 'neck')).toBeCloseTo(0, 6);
    }
    turns(garment, 'shoulder').forEach((turn, i) => {
      expect(Math.abs(turn - (turns(blouse, 'shoulder')[i] as number))).toBeLessThanOrEqual(twoDegrees);
    });
  });

  it('over a princess line bends nowhere, and the lining follows its shell', () => {
    for (const [alteration, amount] of [
      ['shoulder-slope', -12],
      ['forward-shoulder', 12],
    ] as const) {
      const { garment } = altered(jacket, alteration, { amount });
      for (const seam of ['princess-front', 'princess-back', 'lining-princess-front', 'lining-princess-back']) {
        turns(garment, seam).forEach((turn, i) => {
          expect(Math.abs(turn)).toBeLessThanOrEqual(Math.abs(turns(jacket, seam)[i] as number) + twoDegrees);
        });
      }
      for (const piece of ['side-front', 'side-back']) {
        const [shell, lining] = [
          edgeRuns(pieceOf(garment, piece), 'shoulder')[0] as Path,
          edgeRuns(pieceOf(garment, `lining-${piece}`), 'shoulder')[0] as Path,
        ];
        expect(distance(pathStart(shell), pathStart(lining))).toBeLessThan(0.5);
      }
    }
  });
});

describe('the armhole', () => {
  it('goes down the side seam by the amount, and the sleeve is fitted with the ease it had', () => {
    const { garment } = altered(blouse, 'armhole-depth', { amount: 15 });
    for (const [piece, cap] of [
      ['front', 'cap-front'],
      ['back', 'cap-back'],
    ] as const) {
      expect(grew(blouse, garment, piece, 'side')).toBeCloseTo(-15, 3);
      expect(grew(blouse, garment, 'sleeve', cap)).toBeCloseTo(grew(blouse, garment, piece, 'armhole'), 1);
    }
    const sleeve = pieceOf(garment, 'sleeve');
    expect(edgeLength(sleeve, 'underarm-front')).toBeCloseTo(edgeLength(sleeve, 'underarm-back'), 1);
    expect(grew(blouse, garment, 'sleeve', 'hem')).toBeCloseTo(0, 6);
    // The underarm still runs smoothly from front to back, and under the sleeve.
    for (const seam of ['side', 'underarm']) {
      turns(garment, seam).forEach((turn, i) => {
        expect(Math.abs(turn - (turns(blouse, seam)[i] as number))).toBeLessThanOrEqual(twoDegrees);
      });
    }
  });

  it('of a sleeve in two parts moves only the under sleeve, and the level of the upper arm with it', () => {
    const { garment } = altered(jacket, 'armhole-depth', { amount: 15 });
    expect(pieceOf(garment, 'sleeve').runs).toBe(pieceOf(jacket, 'sleeve').runs);
    for (const [piece, cap] of [
      ['side-front', 'cap-front'],
      ['side-back', 'cap-back'],
    ] as const) {
      const longer = grew(jacket, garment, piece, 'armhole-under');
      expect(grew(jacket, garment, 'under-sleeve', cap)).toBeCloseTo(longer, 1);
    }
    const width = (of: Garment): number =>
      levelWidth(pieceOf(of, 'sleeve'), 'upper-arm') + levelWidth(pieceOf(of, 'under-sleeve'), 'upper-arm');
    expect(Math.abs(width(garment) - width(jacket))).toBeLessThan(3);
  });

  it('gives up a gape in front, and the cap gives it up with it', () => {
    for (const [garment, front, edge] of [
      [blouse, 'front', 'armhole'],
      [jacket, 'side-front', 'armhole'],
    ] as const) {
      const done = altered(garment, 'armhole-gape', { amount: 8 });
      expect(grew(garment, done.garment, front, edge)).toBeCloseTo(-8, 2);
      expect(grew(garment, done.garment, 'sleeve', 'cap-front')).toBeCloseTo(-8, 1);
      expect(grew(garment, done.garment, front, 'shoulder')).toBeCloseTo(0, 3);
    }
  });
});

describe('the point that is dragged', () => {
  it('lies where it comes to lie, and goes where it says for each millimetre', () => {
    const landmarks: Readonly<Record<string, string>> = {
      'neckline-depth': 'centre-neck',
      'neckline-width': 'neck-point',
      'neck-gape': 'neck-point',
      'shoulder-width': 'shoulder-point',
      'shoulder-slope': 'shoulder-point',
      'forward-shoulder': 'shoulder-point',
      'armhole-depth': 'underarm',
      'armhole-gape': 'underarm',
    };
    for (const alteration of shoulderNeckAlterations) {
      const params = alteration.params['where'] ? { where: 'front', amount: 6 } : { amount: 6 };
      const handle = alteration.handle?.(blouse, params);
      const more = alteration.handle?.(blouse, { ...params, amount: 7 });
      const is = mark(altered(blouse, alteration.id, params).garment, 'front', landmarks[alteration.id] as string);
      expect(handle, alteration.id).not.toBeNull();
      if (!handle || !more) continue;
      // Shoulders keep their lengths and curves their fairness: within a millimetre the point is where it says.
      expect(distance(handle.at, is), alteration.id).toBeLessThan(1);
      const step = { x: more.at.x - handle.at.x, y: more.at.y - handle.at.y };
      expect(Math.hypot(step.x - handle.perMillimetre.x, step.y - handle.perMillimetre.y)).toBeLessThan(0.02);
    }
  });
});

describe('what a garment needs', () => {
  const raglan = middle('sweatshirt', 'long');
  const skirt = middle('skirt', 'knee');
  it('is a seam over the shoulder, a neckline, an armhole, shaping over the bust', () => {
    const code = (garment: Garment, alteration: string): string | undefined =>
      applyAlterations(garment, [{ id: 's', alteration, version: 1, on: true, params: { amount: 5 } }]).refusal?.problem
        .code;
    expect(code(raglan, 'shoulder-width')).toBe('alter.no-shoulder-seam');
    expect(code(raglan, 'forward-shoulder')).toBe('alter.no-shoulder-seam');
    expect(code(raglan, 'neckline-depth')).toBeUndefined();
    expect(code(skirt, 'neckline-depth')).toBe('alter.no-neckline');
    expect(code(skirt, 'armhole-depth')).toBe('alter.no-armhole');
    expect(code(tee, 'armhole-gape')).toBe('alter.no-bust-shaping');
  });

  it('is room: a neckline is not raised above its shoulder', () => {
    const refused = applyAlterations(blouse, [
      { id: 's', alteration: 'neckline-depth', version: 1, on: true, params: { where: 'back', amount: -25 } },
    ]).refusal;
    expect(refused?.problem.code).toBe('alter.neck-too-flat');
    expect(refused?.largest?.amount).toBeLessThan(-8);
  });
});
