import { describe, expect, it } from 'vitest';
import { type Drawing, drawPiece } from '../draw/index.ts';
import { sampleFront } from '../draw/testing/garment.ts';
import { pathToSvg } from '../geometry/index.ts';
import { cutLine } from '../pattern/index.ts';
import { inkStyles } from './ink-style.ts';
import { writeSvg } from './svg.ts';

describe('SVG', () => {
  const drawing = drawPiece(sampleFront, { unit: 'cm', size: '42' });

  it('has its true size in millimetres', () => {
    const svg = writeSvg(drawing, { unit: 'mm' });
    const [, width, boxWidth] = /width="([\d.]+)mm".*viewBox="[-\d.]+ [-\d.]+ ([\d.]+)/.exec(svg) ?? [];
    expect(width).toBe(boxWidth);
    expect(Number(width)).toBeCloseTo(drawing.bounds.maxX - drawing.bounds.minX, 3);
    expect(writeSvg(drawing, { unit: 'none' })).not.toContain('width="');
  });

  it('writes lines as they are, cubics as cubics', () => {
    expect(writeSvg(drawing, { unit: 'mm', decimals: 6 })).toContain(pathToSvg(cutLine(sampleFront), 6));
  });

  it('leaves out layers not asked for, and the style of inks no longer used', () => {
    const svg = writeSvg(drawing, { unit: 'mm', layers: ['seam'] });
    expect([...svg.matchAll(/data-layer="(\w+)"/g)].map(([, layer]) => layer)).toEqual(['seam']);
    expect(svg).not.toContain('.grain');
  });

  it('escapes what a name may hold', () => {
    const odd: Drawing = {
      bounds: { minX: 0, minY: 0, maxX: 10, maxY: 10 },
      label: 'A < B & "C"',
      marks: [
        { kind: 'text', layer: 'words', ink: 'mark', at: { x: 0, y: 5 }, text: '<b>\u0007&', size: 4, anchor: 'start' },
      ],
    };
    const svg = writeSvg(odd);
    expect(svg).toContain('&lt;b&gt;\ufffd&amp;</text>');
    expect(svg).toContain('aria-label="A &lt; B &amp; &quot;C&quot;"');
  });
});

describe('pictures that are looked at small', () => {
  it('have heavier lines, with the same lie', () => {
    const drawing: Drawing = {
      bounds: { minX: 0, minY: 0, maxX: 10, maxY: 10 },
      label: 'a line',
      marks: [
        {
          kind: 'path',
          layer: 'seam',
          ink: 'original',
          paths: [[{ kind: 'line', from: { x: 1, y: 2 }, to: { x: 3, y: 4 } }]],
        },
      ],
    };
    const [plain, heavy] = [writeSvg(drawing), writeSvg(drawing, { unit: 'mm', weight: 3 })];
    expect(plain).toContain('stroke-width: 0.3; stroke-dasharray: 0.5 1.1;');
    expect(heavy).toContain('stroke-width: 0.9; stroke-dasharray: 1.5 3.3;');
    const lines = (svg: string) => svg.split('\n').filter((line) => line.startsWith('<path'));
    expect(lines(heavy)).toEqual(lines(plain));
  });
});

describe('inks', () => {
  it('are told apart in black: no two that are drawn have the same weight and dash but those told by their form', () => {
    // Grain has heads, a mark is short, cloth is filled; a body and a dimension never stand on the same paper.
    const told = ['cut', 'seam', 'mark', 'fold', 'level', 'original', 'changed', 'selvage'] as const;
    const looks = told.map((ink) => `${inkStyles[ink].width} ${inkStyles[ink].dash.join(' ')}`);
    expect(new Set(looks).size).toBe(told.length);
    expect(inkStyles.cut.width).toBeGreaterThanOrEqual(2 * inkStyles.seam.width);
    expect(inkStyles.changed.dash.length).toBeGreaterThan(inkStyles.original.dash.length);
  });
});
