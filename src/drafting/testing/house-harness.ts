import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { MeasureId, Measures } from '../../body/index.ts';
import { outlineArea, selfIntersections, tolerance } from '../../geometry/index.ts';
import {
  cutLine,
  edgeLength,
  finishedGirths,
  type Garment,
  notionsOf,
  outlineOf,
  type Pattern,
  readPattern,
  validateGarment,
  walkAll,
  writePattern,
} from '../../pattern/index.ts';
import { housePattern } from '../house.ts';
import { lookAtShape } from '../shape-check.ts';
import type { ChartSize, HousePattern } from '../types.ts';

/** What every house pattern has to show, whatever it is; each pattern's own test adds what is particular to it. */

export interface GrowthRule {
  /** Measure the chart is graded by. */
  readonly gradedBy: MeasureId;
  /** How far an edge may stray from even growth at one step beyond what the chart's whole mm explain, mm, by `piece.edge`. Each needs its reason beside it. */
  readonly strays?: Readonly<Record<string, number>>;
  /** Edges that may grow shorter as sizes grow, by `piece.edge`, with by how much at most a step, mm. */
  readonly shrinks?: Readonly<Record<string, number>>;
}

/** Every version of a pattern: each view in each cup. */
const versions = (house: HousePattern): readonly { view: string; cup?: number }[] =>
  house.views.flatMap(({ id }): { view: string; cup?: number }[] =>
    house.cups.length === 0 ? [{ view: id }] : house.cups.map((cup) => ({ view: id, cup })),
  );

export const shapeComplaints = (
  house: HousePattern,
  view: string,
  garment: Garment,
  body: Measures,
): readonly string[] =>
  lookAtShape(house.shape(view), garment, body)
    .filter(({ ok }) => !ok)
    .map(({ check, value, low, high }) => `${check} ${value.toFixed(2)} (${low}…${high})`);

/** Everything that keeps a drafted garment from being cut, as sentences for a failing test. */
export const garmentComplaints = (garment: Garment): readonly string[] => [
  ...validateGarment(garment).map(({ code, values }) => `${code} ${JSON.stringify(values)}`),
  ...walkAll(garment).flatMap(({ seam, meets, difference, notches }) => [
    ...(meets ? [] : [`${seam.id} does not walk: ${difference.toFixed(2)} of ${seam.easeMin}…${seam.easeMax}`]),
    ...notches
      .filter((notch) => !notch.meets)
      .map((notch) => `${seam.id}: notches do not meet ${JSON.stringify(notch)}`),
  ]),
  ...garment.pieces.flatMap((piece) => [
    ...(selfIntersections(outlineOf(piece)).length > 0 ? [`${piece.id} crosses itself`] : []),
    ...(selfIntersections(cutLine(piece)).length > 0 ? [`the cut line of ${piece.id} crosses itself`] : []),
  ]),
];

const bones = ({ pieces }: Garment) =>
  pieces.map((piece) => ({
    id: piece.id,
    runs: piece.runs.map((run) => [run.kind === 'edge' ? run.edge : run.dart, run.path.map(({ kind }) => kind).join()]),
    marks: [piece.edges, piece.notches, piece.darts, piece.levels, piece.landmarks, piece.lines].map((marks) =>
      marks.map(({ id }) => id),
    ),
  }));

/** Lengths of every edge, size by size, by `piece.edge`. */
const edgeLengths = (pattern: Pattern): ReadonlyMap<string, readonly number[]> =>
  new Map(
    (pattern.sizes[0]?.garment.pieces ?? []).flatMap((piece, which) =>
      piece.edges.map(
        (edge) =>
          [
            `${piece.id}.${edge.id}`,
            pattern.sizes.map(({ garment }) => {
              const same = garment.pieces[which];
              return same ? edgeLength(same, edge.id) : Number.NaN;
            }),
          ] as const,
      ),
    ),
  );

const growthComplaints = (pattern: Pattern, { gradedBy, strays = {}, shrinks = {} }: GrowthRule): readonly string[] => {
  const key = pattern.sizes.map(({ body }) => body[gradedBy] ?? Number.NaN);
  const whole = (key.at(-1) ?? 0) - (key[0] ?? 0);
  return [...edgeLengths(pattern)].flatMap(([edge, lengths]) => {
    const mean = ((lengths.at(-1) ?? 0) - (lengths[0] ?? 0)) / whole;
    return lengths.slice(1).flatMap((mm, i) => {
      const step = (key[i + 1] ?? 0) - (key[i] ?? 0);
      const grown = mm - (lengths[i] ?? 0);
      const off = Math.abs(grown - mean * step);
      // The chart is in whole mm, and several of its measures meet in one edge.
      const allowed = 2 + 0.2 * Math.abs(mean) * step + (strays[edge] ?? 0);
      return [
        ...(off > allowed
          ? [`${edge} grows ${grown.toFixed(1)} at size ${i + 2}, evenly ${(mean * step).toFixed(1)}`]
          : []),
        ...(grown < -0.3 - (shrinks[edge] ?? 0) ? [`${edge} shrinks by ${(-grown).toFixed(1)} at size ${i + 2}`] : []),
      ];
    });
  });
};

/** Runs what every house pattern must show, for each of its views and cups. */
export const describeHousePattern = (house: HousePattern, growth: GrowthRule): void => {
  describe.each(versions(house))(`${house.id}, $view, cup $cup`, ({ view, cup }) => {
    const pattern = house.pattern({ view, ...(cup === undefined ? {} : { cup }) });

    it('is a house pattern with nine sizes or more, its words complete', () => {
      expect(housePattern(house.id)).toBe(house);
      expect(pattern.sizes.length).toBeGreaterThanOrEqual(9);
      for (const said of [house.name, house.about, ...house.views.flatMap(({ name, about }) => [name, about])]) {
        expect(said).not.toBe('');
      }
      for (const { name } of pattern.sizes[0]?.garment.pieces ?? []) expect(name).toBeTruthy();
      const work = house.work(view).map((step) => step.do);
      expect(work.length).toBeGreaterThanOrEqual(6);
      expect(work).toContain('press');
      expect(work).toContain('try-on');
    });

    it('is drafted in every size of its chart: valid, walking, without crossing itself', () => {
      const complaints = pattern.sizes.flatMap(({ id, garment }) =>
        garmentComplaints(garment).map((complaint) => `${id}: ${complaint}`),
      );
      expect(complaints).toEqual([]);
    });

    it('has the finished girths it states, in every size', () => {
      for (const { id, body, garment } of pattern.sizes) {
        const ease = house.ease(body, { view });
        if (!ease.ok) throw new Error(ease.problem.code);
        const girths = finishedGirths(garment);
        expect(girths.length).toBeGreaterThan(0);
        for (const { level, measure, finished } of girths) {
          expect(ease.value[level], level).toBeDefined();
          const stated = (body[measure] ?? 0) + (ease.value[level] ?? Number.NaN);
          expect(Math.abs(finished - stated), `${id} ${level}`).toBeLessThanOrEqual(tolerance.girth);
        }
      }
    });

    it('looks as a cutter would draw it, in every size', () => {
      expect(house.shape(view).length).toBeGreaterThanOrEqual(12);
      for (const { source } of house.shape(view)) expect(source).not.toBe('');
      const complaints = pattern.sizes.flatMap(({ id, body, garment }) =>
        shapeComplaints(house, view, garment, body).map((complaint) => `${id}: ${complaint}`),
      );
      expect(complaints).toEqual([]);
    });

    it('has the same edges, curves, notches, darts, levels and landmarks in every size', () => {
      const first = bones(pattern.sizes[0]?.garment as Garment);
      for (const { garment } of pattern.sizes) expect(bones(garment)).toEqual(first);
    });

    it('grows evenly: what an edge gains is much the same from size to size', () => {
      expect(growthComplaints(pattern, growth)).toEqual([]);
    });

    it('reads back whole, and says what to buy', () => {
      const written = JSON.parse(JSON.stringify(writePattern(pattern)));
      const read = readPattern(written);
      if (!read.ok) throw new Error(JSON.stringify(read.problem));
      expect(JSON.parse(JSON.stringify(writePattern(read.value)))).toEqual(written);
      for (const { garment, body } of pattern.sizes) {
        for (const { count, length } of notionsOf(garment, house.notions(view), body)) {
          expect(count).toBeGreaterThan(0);
          if (length !== undefined) expect(length).toBeGreaterThan(0);
        }
      }
    });

    it('is sketched front and back', () => {
      const sketch = house.sketch(pattern.sizes[4]?.garment as Garment, view);
      for (const shapes of [sketch.front, sketch.back]) {
        expect(shapes.length).toBeGreaterThan(0);
        for (const { outline } of shapes) expect(Math.abs(outlineArea(outline))).toBeGreaterThan(100);
      }
    });
  });
};

/** Bodies whose every measure strays by itself from some size, by at most this share. */
export const strayingBodies = (sizes: readonly ChartSize[], spread: number): fc.Arbitrary<Measures> => {
  const ids = Object.keys(sizes[0]?.body ?? {}) as MeasureId[];
  return fc
    .tuple(
      fc.constantFrom(...sizes),
      fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: ids.length, maxLength: ids.length }),
    )
    .map(
      ([{ body }, strays]): Measures =>
        Object.fromEntries(ids.map((id, i) => [id, (body[id] ?? 0) * (1 + spread * (strays[i] ?? 0))])),
    );
};

/**
 * Drafting bodies nobody planned for: those straying a little are drafted and sound, those straying far are
 * drafted soundly or refused with a reason.
 *
 * @param little share by which measures may stray, each by itself, and still be drafted without fail
 */
export const describeDraftingAnybody = (house: HousePattern, sizes: readonly ChartSize[], little = 0.1): void => {
  const fresh = Number(process.env['EASEWRIGHT_SEED'] ?? Date.now() % 2 ** 31);
  console.log(`${house.id} properties: fresh seed ${fresh}`);
  const view = fc.constantFrom(...house.views.map(({ id }) => id));
  for (const seed of [20261, fresh]) {
    describe(`drafting ${house.id} with seed ${seed}`, () => {
      it('drafts every body whose measures stray a little, each by itself, with the girths stated', () => {
        fc.assert(
          fc.property(strayingBodies(sizes, little), view, (body, asked) => {
            const garment = house.draft(body, { view: asked });
            const ease = house.ease(body, { view: asked });
            if (!garment.ok) throw new Error(`refused: ${JSON.stringify(garment.problem)}`);
            if (!ease.ok) throw new Error('refused its ease');
            expect(validateGarment(garment.value)).toEqual([]);
            expect(walkAll(garment.value).filter(({ meets }) => !meets)).toEqual([]);
            for (const { level, measure, finished } of finishedGirths(garment.value)) {
              const stated = (body[measure] ?? 0) + (ease.value[level] ?? Number.NaN);
              expect(Math.abs(finished - stated)).toBeLessThan(tolerance.girth);
            }
            for (const piece of garment.value.pieces) {
              expect(selfIntersections(outlineOf(piece))).toEqual([]);
              expect(outlineArea(outlineOf(piece))).toBeGreaterThan(0);
            }
          }),
          { seed, numRuns: 60 },
        );
      });
      it('drafts or refuses anything else, and never a garment that is not sound', () => {
        fc.assert(
          fc.property(strayingBodies(sizes, 0.4), view, (body, asked) => {
            const garment = house.draft(body, { view: asked });
            if (garment.ok) expect(validateGarment(garment.value)).toEqual([]);
            else expect(garment.problem.code).toMatch(/^(drafting|body)\./);
          }),
          { seed, numRuns: 120 },
        );
      });
    });
  }
};
