import { describe, expect, it } from 'vitest';
import { housePattern } from '../drafting/index.ts';
import { fitPattern } from '../fit/index.ts';
import { writeSvg } from '../formats/index.ts';
import type { Bounds } from '../geometry/index.ts';
import { type Layout, type LayoutProblem, layoutProblemFor } from '../lay/index.ts';
import { walkSeam } from '../pattern/index.ts';
import {
  type Drawing,
  drawBeforeAfter,
  drawContactSheet,
  drawEase,
  drawGarmentPieces,
  drawLayout,
  drawNest,
  drawPiece,
  drawSeamWalk,
  markBounds,
} from './index.ts';
import { sampleFront, sampleGarment } from './testing/garment.ts';

/** Drawings a person can page through: `golden/NAME.svg`, rounded to hundredths of a millimetre. Renew them with `vitest -u`. */
const golden = async (name: string, drawing: Drawing) => {
  await expect(writeSvg(drawing, { unit: 'mm', decimals: 2 })).toMatchFileSnapshot(`golden/${name}.svg`);
};

const sampleCloth = {
  format: 'easewright-cloth/1',
  name: 'Grey-blue poplin',
  structure: 'woven',
  fibres: 'cotton',
  weight: 120,
  width: 1120,
  length: 1900,
  stretchAcross: 0,
  stretchAlong: 0,
  oneWay: false,
  shrinkAlong: 0,
  shrinkAcross: 0,
  washed: true,
  colour: '#9fb7c9',
  terms: 'bought',
  from: '',
  note: '',
} as const;

const laid = (id: string, rotation: number, mirrored: boolean, x: number, y: number, opened = false) => ({
  id,
  rotation,
  mirrored,
  x,
  y,
  stretch: 0,
  opened,
});

/** Plans made by hand from one that was searched for, so that a better search changes no drawing. */
const layoutOnSingle: Layout = {
  stretches: [{ kind: 'single', from: 0, length: 1134, height: 1120 }],
  placed: [
    laid('front', 90, false, 634, 530, true),
    laid('sleeve', 270, false, 534, 376),
    laid('sleeve', 270, true, 534, 744),
    laid('front-facing', 270, false, 712, 595, true),
    laid('strip', 0, false, 6, 819),
  ],
  length: 1134,
  density: 57.4,
  spare: [],
};
const layoutOnFold: Layout = {
  stretches: [{ kind: 'folded', from: 0, length: 1095, height: 560 }],
  placed: [
    laid('front', 270, true, 460.5, 0),
    laid('sleeve', 90, false, 600, 184),
    laid('front-facing', 90, false, 359, 0),
    laid('strip', 0, false, 650, 346),
  ],
  length: 1095,
  density: 59.5,
  spare: [{ id: 'strip', copies: 1 }],
};

const problemOn = (fold: 'single' | 'lengthwise'): LayoutProblem => {
  const problem = layoutProblemFor(sampleGarment, sampleCloth, { fold, gap: 2 });
  if (!problem.ok) throw new Error(problem.problem.code);
  return problem.value;
};

const wider = {
  ...sampleGarment,
  pieces: sampleGarment.pieces.map((piece) =>
    piece.id !== 'front'
      ? piece
      : {
          ...piece,
          runs: piece.runs.map((run) => ({
            ...run,
            path: run.path.map((segment) => {
              const out = (p: { x: number; y: number }) => ({ x: p.x > 200 && p.y > 250 ? p.x + 20 : p.x, y: p.y });
              return segment.kind === 'line'
                ? { ...segment, from: out(segment.from), to: out(segment.to) }
                : {
                    ...segment,
                    from: out(segment.from),
                    control1: out(segment.control1),
                    control2: out(segment.control2),
                    to: out(segment.to),
                  };
            }),
          })),
        },
  ),
};

describe('drawings, as golden files', () => {
  it('a piece', () =>
    golden('piece', drawPiece(sampleFront, { unit: 'cm', size: '42', notes: ['For the Advent concert'] })));

  it('a piece over the piece as bought', () =>
    golden('piece-original', drawPiece(wider.pieces[0] ?? sampleFront, { unit: 'in', original: sampleFront })));

  it('the pieces of a garment', () =>
    golden('garment', drawGarmentPieces(sampleGarment, { unit: 'cm', size: '42', textSize: 12 })));

  it('before and after', () =>
    golden('before-after', drawBeforeAfter(sampleGarment, wider, { unit: 'cm', changedOnly: true })));

  it('a seam walked that meets', () => {
    const seam = sampleGarment.seams[0];
    if (!seam) throw new Error('the sample has no seam');
    return golden('seam-meets', drawSeamWalk(walkSeam(sampleGarment, seam), sampleGarment, { unit: 'cm' }));
  });

  it('a seam walked that does not meet', () => {
    const seam = sampleGarment.seams[1];
    if (!seam) throw new Error('the sample has one seam');
    return golden('seam-too-long', drawSeamWalk(walkSeam(sampleGarment, seam), sampleGarment, { unit: 'in' }));
  });

  it('a contact sheet', () =>
    golden(
      'contact-sheet',
      drawContactSheet(
        [
          { id: 'a', label: 'as drafted', garment: sampleGarment },
          { id: 'b', label: 'wider at the side', garment: wider },
          { id: 'c', label: 'not drafted: no bust girth', garment: null },
        ],
        { unit: 'cm' },
      ),
    ));

  it('a cutting layout on single cloth', () =>
    golden(
      'layout-single',
      drawLayout(problemOn('single'), layoutOnSingle, {
        unit: 'cm',
        garment: sampleGarment,
        colour: sampleCloth.colour,
      }),
    ));

  it('a cutting layout on folded cloth', () =>
    golden(
      'layout-folded',
      drawLayout(problemOn('lengthwise'), layoutOnFold, {
        unit: 'in',
        garment: sampleGarment,
        colour: sampleCloth.colour,
      }),
    ));

  it('a nest and an ease chart of a house pattern', async () => {
    const pattern = housePattern('blouse')?.pattern();
    if (!pattern) throw new Error('no blouse');
    const drawing = drawNest(pattern, { unit: 'cm', size: pattern.sizes[3]?.id ?? '' });
    // A nest of a drafted pattern changes with every better draft, so its shape is told here and not its lines.
    expect(drawing.marks).toHaveLength(pattern.sizes[0]?.garment.pieces.length ?? 0);
    for (const group of drawing.marks) {
      if (group.kind !== 'group') throw new Error('a nest is made of groups');
      expect(group.marks.filter((mark) => mark.kind === 'path' && mark.layer === 'cut' && !mark.filled)).toHaveLength(
        pattern.sizes.length,
      );
    }
    const fit = fitPattern({
      pattern,
      measures: { bustGirth: 980, upperBustGirth: 890, waistGirth: 800, hipGirth: 1010 },
    });
    if (!fit.ok) throw new Error(fit.problem.code);
    const ease = drawEase(fit.value, { unit: 'cm' });
    const levels = new Set(fit.value.sizes.flatMap((size) => size.cells.map((cell) => cell.level)));
    expect(ease.marks.filter((mark) => mark.kind === 'group')).toHaveLength(levels.size);
    for (const level of levels) expect(ease.label.toLowerCase()).toContain(level.replaceAll('-', ' '));
    // On a phone no words stand over words or over a bar.
    const onPhone = drawEase(fit.value, { unit: 'in', narrow: true });
    const boxes = onPhone.marks.flatMap((mark) =>
      mark.kind === 'group'
        ? mark.marks.flatMap((one) =>
            one.kind === 'text' || (one.kind === 'path' && one.filled) ? [markBounds(one) as Bounds] : [],
          )
        : [],
    );
    const words = onPhone.marks.flatMap((mark) =>
      mark.kind === 'group'
        ? mark.marks.flatMap((one) => (one.kind === 'text' ? [markBounds(one) as Bounds] : []))
        : [],
    );
    expect(words).toHaveLength(2 * levels.size);
    const over = (a: Bounds, b: Bounds) => a.minX < b.maxX && b.minX < a.maxX && a.minY < b.maxY && b.minY < a.maxY;
    for (const word of words) expect(boxes.filter((box) => over(box, word))).toHaveLength(1);
  });
});
