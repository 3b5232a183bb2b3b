import { describe, expect, it } from 'vitest';
import type { Measures } from '../body/index.ts';
import { type Cubic, pathStart, pathToSvg, tolerance } from '../geometry/index.ts';
import {
  cutLine,
  edgeLength,
  edgeOf,
  finishedGirths,
  type Garment,
  notionsOf,
  outlineOf,
  type Piece,
  pieceOf,
  validateGarment,
  walkAll,
} from '../pattern/index.ts';
import { sentence } from '../words/index.ts';
import { childrenChart } from './chart-children.ts';
import { raincoat } from './raincoat.ts';
import { describeHousePattern, shapeComplaints } from './testing/house-harness.ts';
import { bent, changedPiece } from './testing/spoiled.ts';

const child = childrenChart[4]?.body as Required<Measures>;

const drafted = (body: Measures, view = 'lined', ease = {}): Garment => {
  const garment = raincoat.draft(body, { view, ease });
  if (!garment.ok) throw new Error(garment.problem.code);
  return garment.value;
};

const length = (garment: Garment, piece: string, edge: string): number => edgeLength(pieceOf(garment, piece), edge);

describe('the children’s chart', () => {
  it('runs from 86 to 152 by stature in twelve sizes, every measure known and none shrinking', () => {
    expect(childrenChart.map(({ id }) => id)).toEqual([
      '86',
      '92',
      '98',
      '104',
      '110',
      '116',
      '122',
      '128',
      '134',
      '140',
      '146',
      '152',
    ]);
    for (const { id, body } of childrenChart) expect(body.stature).toBe(10 * Number(id));
    childrenChart.slice(1).forEach(({ body }, i) => {
      const smaller = childrenChart[i]?.body as Required<Measures>;
      for (const [measure, mm] of Object.entries(body)) {
        expect(mm, measure).toBeGreaterThan(smaller[measure as keyof Measures]);
      }
    });
  });
});

describeHousePattern(raincoat, { gradedBy: 'stature' });

describe('the raincoat', () => {
  it('is roomy over a pullover: 200 of ease at the bust for the smallest, 260 for the largest', () => {
    const eases = childrenChart.map(({ body }) => {
      const girth = finishedGirths(drafted(body)).find(({ level }) => level === 'bust');
      return (girth?.finished ?? 0) - (body.bustGirth ?? 0);
    });
    expect(eases[0]).toBeCloseTo(200, 1);
    expect(eases.at(-1)).toBeCloseTo(260, 1);
  });

  it('sews the hood to the neck: its edges are the necklines’ own lengths', () => {
    for (const { body } of childrenChart) {
      const garment = drafted(body);
      expect(length(garment, 'hood-side', 'neck-front')).toBeCloseTo(length(garment, 'front', 'neck'), 3);
      expect(length(garment, 'hood-side', 'neck-back')).toBeCloseTo(length(garment, 'back', 'neck'), 3);
      expect(length(garment, 'hood-centre', 'neck')).toBeCloseTo(length(garment, 'back', 'neck-centre'), 3);
      expect(length(garment, 'hood-centre', 'top')).toBeCloseTo(length(garment, 'hood-side', 'top'), 6);
    }
  });

  it('has a hood that goes by the head: deeper for a larger one, higher for a longer one', () => {
    const at = (garment: Garment, id: string) =>
      pieceOf(garment, 'hood-side').landmarks.find((mark) => mark.id === id)?.at ?? { x: Number.NaN, y: Number.NaN };
    const depth = (garment: Garment) => at(garment, 'hood-back').x - at(garment, 'visor').x;
    const height = (garment: Garment) => at(garment, 'neck-point').y - at(garment, 'crown').y;
    const usual = drafted(child);
    expect(depth(drafted({ ...child, headGirth: child.headGirth + 30 })) - depth(usual)).toBeGreaterThan(8);
    expect(height(drafted({ ...child, napeHeight: child.napeHeight - 15 })) - height(usual)).toBeCloseTo(15, 0);
  });

  it('gives the sleeve a hem to grow by: two sizes longer when let down', () => {
    const [smaller, larger] = [childrenChart[4]?.body.armLength ?? 0, childrenChart[6]?.body.armLength ?? 0];
    const hem = edgeOf(pieceOf(drafted(child), 'sleeve'), 'hem').allowance;
    expect(hem - 20).toBeGreaterThanOrEqual(larger - smaller - 1);
    // Turned back it lies on the sleeve: below the fold the cut line is the sleeve's own, mirrored.
    const sleeve = pieceOf(drafted(child), 'sleeve');
    const widths = cutLine(sleeve).map(({ to }) => to);
    const lowest = Math.max(...widths.map(({ y }) => y));
    const fold = length(drafted(child), 'sleeve', 'hem');
    const below = widths.filter(({ y }) => Math.abs(y - lowest) < 0.5).map(({ x }) => x);
    expect(Math.max(...below) - Math.min(...below)).toBeGreaterThan(fold);
  });

  it('lines the sleeve with a hem that lets down as far', () => {
    const garment = drafted(child);
    const hem = (piece: string) => edgeOf(pieceOf(garment, piece), 'hem')?.allowance ?? Number.NaN;
    expect(hem('lining-sleeve')).toBe(hem('sleeve'));
  });

  it('marks both halves of every stud, and they meet when the coat is closed', () => {
    for (const { body } of childrenChart) {
      const garment = drafted(body);
      const at = (piece: string, id: string) => {
        const found = pieceOf(garment, piece).lines.find((one) => one.id === id);
        if (!found) throw new Error(`${piece} has no ${id}`);
        return pathStart(found.path);
      };
      const neck = outlineOf(pieceOf(garment, 'front')).at(-1)?.to as { y: number };
      const placket = at('placket', 'press-studs');
      const front = at('front', 'press-studs');
      expect(front.x).toBeCloseTo(placket.x, 6);
      expect(front.y - neck.y).toBeCloseTo(placket.y, 6);
      const flap = at('pocket-flap', 'press-stud');
      const pocket = at('pocket', 'press-stud');
      const [onFlap, onPocket] = [at('front', 'pocket-flap'), at('front', 'pocket')];
      // The placement of the pocket begins at its right upper corner.
      const left = onPocket.x - edgeLength(pieceOf(garment, 'pocket'), 'top');
      expect(onFlap.x + flap.x).toBeCloseTo(left + pocket.x, 6);
      expect(onFlap.y + flap.y).toBeCloseTo(onPocket.y + pocket.y, 6);
    }
  });

  it('widens for hips wider than its A, and for shoulders broader than its chest', () => {
    const ease = (body: Measures) => {
      const stated = raincoat.ease(body);
      if (!stated.ok) throw new Error(stated.problem.code);
      return stated.value;
    };
    expect(ease({ ...child, hipGirth: 900 }).hip).toBeCloseTo(120, 6);
    expect(ease({ ...child, hipGirth: 1150 }).bust ?? 0).toBeGreaterThan((ease(child).bust ?? 0) + 20);
    const broad = { ...child, bustGirth: 500, shoulderLength: 110 };
    expect(ease(broad).bust ?? 0).toBeGreaterThan((ease(child).bust ?? 0) + 40);
    expect(length(drafted(broad), 'front', 'shoulder')).toBeGreaterThan(110);
  });

  it('lines what it says it lines: the unlined view is the same coat without', () => {
    const [unlined, lined] = [drafted(child, 'unlined'), drafted(child, 'lined')];
    const runsOf = (garment: Garment) => garment.pieces.map(({ id, runs }) => [id, runs] as const);
    expect(runsOf(lined).filter(([id]) => !id.startsWith('lining-'))).toEqual(runsOf(unlined));
    const layers = (garment: Garment) => garment.pieces.flatMap(({ cut }) => cut.map(({ layer }) => layer));
    expect(layers(unlined)).not.toContain('lining');
    expect(layers(lined)).toContain('lining');
    for (const edge of ['armhole', 'shoulder']) {
      const pieces = ['front', 'back'].map((id) => [length(lined, id, edge), length(lined, `lining-${id}`, edge)]);
      if (edge === 'armhole') for (const [coat, lining] of pieces) expect(lining).toBe(coat);
      else for (const [coat = 0, lining = 0] of pieces) expect(lining).toBeLessThan(coat);
    }
  });

  it('has no cord, and says why', () => {
    for (const view of ['unlined', 'lined']) {
      const bought = raincoat.notions(view).map(({ what }) => what);
      expect(bought).not.toContain('cord-stop');
      expect(bought).toContain('elastic');
      expect(bought).toContain('open-ended-zip');
      expect(bought).toContain('press-stud');
    }
    const said = raincoat.cautions.join(' ');
    for (const word of [/cord/i, /EN 14682/, /seven/, /fourteen/, /below the hem/, /small parts/i, /under three/]) {
      expect(said).toMatch(word);
    }
    expect(said).toMatch(/Check the law and guidance where you live/);
  });

  it('buys a zip that ends above the hem, studs no further than 90 apart, and elastic shorter than its run', () => {
    for (const { body } of childrenChart) {
      const garment = drafted(body);
      const bought = new Map(notionsOf(garment, raincoat.notions('lined'), body).map((one) => [one.what, one]));
      const front = length(garment, 'front', 'centre-front');
      const zip = bought.get('open-ended-zip')?.length ?? 0;
      expect(zip).toBeLessThan(front - 10);
      expect(zip).toBeGreaterThan(front - 30);
      const studs = (bought.get('press-stud')?.count ?? 0) - 2;
      expect(front / (studs - 1)).toBeLessThanOrEqual(90);
      const opening = 2 * 0.58 * length(garment, 'hood-side', 'opening');
      expect(bought.get('elastic')?.length ?? 0).toBeLessThan(opening);
    }
  });

  it('follows ease that is asked for', () => {
    for (const ease of [
      { bust: 150, hip: 160, 'upper-arm': 90 },
      { bust: 300, hip: 420, 'upper-arm': 150 },
    ]) {
      const garment = drafted(child, 'lined', ease);
      expect(validateGarment(garment)).toEqual([]);
      for (const { level, measure, finished } of finishedGirths(garment)) {
        const wished = (ease as Record<string, number>)[level] ?? Number.NaN;
        expect(Math.abs(finished - child[measure] - wished), level).toBeLessThan(tolerance.girth);
      }
    }
  });

  it('is drafted from a stature alone, and from that and a girth or two', () => {
    for (const few of [{ stature: 1130 }, { stature: 1130, bustGirth: 640, hipGirth: 700 }]) {
      const garment = drafted(few);
      expect(validateGarment(garment)).toEqual([]);
      expect(walkAll(garment).filter(({ meets }) => !meets)).toEqual([]);
    }
  });

  it('refuses what cannot be drafted, each with a sentence', () => {
    const refused = (body: Measures, ease = {}, view = 'lined') => {
      const result = raincoat.draft(body, { ease, view });
      if (result.ok) throw new Error('drafted');
      expect(sentence(result.problem, 'cm').message, result.problem.code).not.toMatch(/no words for it|[{]/);
      return result.problem.code;
    };
    expect(refused({ bustGirth: 600 })).toBe('drafting.no-measure');
    expect(refused({ stature: 1700 })).toBe('body.not-a-childs-stature');
    expect(refused({ stature: 116 })).toBe('body.impossible');
    expect(refused({ ...child, bustGirth: Number.NaN })).toBe('body.impossible');
    expect(refused({ ...child, backWaistLength: 160 })).toBe('drafting.levels-too-close');
    expect(refused({ ...child, upperArmGirth: 480 })).toBe('drafting.cap-cannot-fit');
    expect(refused({ ...child, headGirth: 650, neckBaseGirth: 165 })).toBe('drafting.hood-cannot-fit');
    expect(refused(child, { bust: 60 })).toBe('drafting.ease-impossible');
    expect(refused(child, { waist: 200 })).toBe('drafting.no-such-level');
    expect(refused(child, {}, 'quilted')).toBe('drafting.no-such-view');
  });

  it('is drawn as it was, size 110', async () => {
    const places: Readonly<Record<string, readonly [number, number]>> = {
      front: [30, 60],
      back: [320, 60],
      sleeve: [800, 110],
      'hood-side': [1090, 330],
      'hood-centre': [1310, 40],
      'front-facing': [30, 700],
      'back-facing': [160, 700],
      placket: [300, 700],
      pocket: [420, 700],
      'pocket-flap': [420, 900],
      'lining-front': [600, 700],
      'lining-back': [860, 700],
      'lining-sleeve': [1270, 760],
    };
    const lines = drafted(child).pieces.flatMap((piece) => [
      `<g id="${piece.id}" transform="translate(${places[piece.id]?.join(' ')})">`,
      `<path d="${pathToSvg(cutLine(piece), 1)}"/>`,
      `<path d="${pathToSvg(outlineOf(piece), 1)}"/>`,
      '</g>',
    ]);
    const svg = [
      '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 1460 1260" fill="none" stroke="black">',
      ...lines,
      '</svg>',
      '',
    ].join('\n');
    await expect(svg).toMatchFileSnapshot('golden/raincoat-110.svg');
  });
});

describe('the raincoat’s shape checks', () => {
  const whole = drafted(child);
  const changed = (id: string, change: (piece: Piece) => Piece): Garment => changedPiece(whole, id, change);
  const found = (garment: Garment, body: Measures = child) =>
    shapeComplaints(raincoat, 'lined', garment, body).join('; ');

  it.each([
    ['a neckline that comes to a point', 'front', 'neck', 0, 'control1', 0, 8, /neck-square-front/],
    ['necklines that do not run on', 'back', 'neck', 0, 'control2', 6, 0, /neck-over-shoulder/],
    ['an armhole askew to the shoulder', 'front', 'armhole', 0, 'control1', 8, 0, /armhole-square-front/],
    ['armholes that do not run on under the arm', 'back', 'armhole', 1, 'control2', 0, 12, /armhole-under-arm/],
    ['an armhole with a pocket under the arm', 'back', 'armhole', 1, 'control2', -40, 0, /armhole-(open|bends)/],
    ['a hem that droops at the side', 'front', 'hem', 0, 'control1', 0, 20, /hem-(over-side|square-side-front)/],
    ['a cap that is not level at its top', 'sleeve', 'cap-front', 1, 'control2', 0, 6, /cap-top-smooth/],
    ['a cap with a wave in it', 'sleeve', 'cap-back', 0, 'control1', 0, 120, /cap-bends/],
    ['underarm seams that differ', 'sleeve', 'underarm-front', 0, 'control1', 8, 0, /underarm-seams/],
    ['a visor with a corner at its seam', 'hood-side', 'opening', 0, 'control2', 30, 0, /visor-over-seam/],
    ['a nape with a corner at its seam', 'hood-side', 'neck-back', 0, 'control1', 0, 8, /nape-over-seam/],
    ['a visor that comes to a point', 'hood-centre', 'opening', 0, 'control1', 0, 12, /visor-square/],
    ['a wave over the crown', 'hood-side', 'top', 0, 'control2', 0, 30, /hood-bends/],
    ['an opening with a wave in it', 'hood-side', 'opening', 0, 'control1', 60, 0, /opening-bends/],
    ['a wave in the hood’s neck', 'hood-side', 'neck-front', 0, 'control2', 0, -30, /hood-neck-bends|hood-corner/],
    ['facings that do not run on', 'back-facing', 'outer', 0, 'control1', 20, 0, /facing-over-shoulder/],
  ] as const)('see %s', (_, piece, edge, which, handle, x, y, complaint) => {
    expect(found(whole)).toBe('');
    expect(found(changed(piece, bent(edge, which, handle, x, y)))).toMatch(complaint);
  });

  it('see a child the coat does not go over', () => {
    expect(found(whole, { ...child, bustGirth: child.bustGirth + 40 })).toMatch(/bust-ease/);
    expect(found(whole, { ...child, hipGirth: child.hipGirth + 200 })).toMatch(/hip-ease/);
    expect(found(whole, { ...child, upperArmGirth: child.upperArmGirth + 50 })).toMatch(/arm-ease/);
    expect(found(whole, { ...child, handGirth: child.handGirth + 60 })).toMatch(/hand-passes/);
    expect(found(whole, { ...child, headGirth: child.headGirth + 80 })).toMatch(/hood-depth.*strip-breadth/);
    expect(found(whole, { ...child, napeHeight: child.napeHeight - 60 })).toMatch(/hood-height/);
    // A hood made for a head so much taller falls over this child’s eyes.
    expect(found(whole, { ...child, napeHeight: child.napeHeight + 40 })).toMatch(/hood-turns/);
    expect(found(whole, { ...child, neckBaseGirth: child.neckBaseGirth + 40 })).toMatch(/neck-opened/);
    expect(found(whole, { ...child, armLength: child.armLength + 40 })).toMatch(/sleeve-reaches/);
    expect(found(whole, { ...child, kneeHeight: child.kneeHeight + 90 })).toMatch(/to-mid-thigh/);
    expect(found(whole, { ...child, acrossBack: child.acrossBack + 60 })).toMatch(/roomy-across/);
    expect(found(whole, { ...child, shoulderLength: child.shoulderLength + 40 })).toMatch(/shoulder-dropped/);
  });

  it('see a pocket over the hem, a shallow sleeve hem, a lining as long as the coat', () => {
    const lowered = changed('front', (piece) => ({
      ...piece,
      lines: piece.lines.map((one) => ({
        ...one,
        path: one.path.map((segment) => ({
          ...segment,
          from: { ...segment.from, y: segment.from.y + 90 },
          to: { ...segment.to, y: segment.to.y + 90 },
          ...(segment.kind === 'cubic'
            ? {
                control1: { ...segment.control1, y: segment.control1.y + 90 },
                control2: { ...segment.control2, y: segment.control2.y + 90 },
              }
            : {}),
        })) as Cubic[],
      })),
    }));
    expect(found(lowered)).toMatch(/pocket-below-waist.*pocket-above-hem/);
    const shallow = changed('sleeve', (piece) => ({
      ...piece,
      edges: piece.edges.map((one) => (one.id === 'hem' ? { ...one, allowance: 25 } : one)),
    }));
    expect(found(shallow)).toMatch(/hem-turns-back/);
    const long = changed('lining-front', () => ({ ...pieceOf(whole, 'front'), id: 'lining-front' }));
    expect(found({ ...long, seams: long.seams.filter(({ id }) => !id.startsWith('lining-facing')) })).toMatch(
      /lining-shorter/,
    );
  });
});
