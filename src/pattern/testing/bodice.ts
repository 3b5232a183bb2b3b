import { cubic, line, type Path, type Point } from '../../geometry/index.ts';
import type { Garment, Piece, Run } from '../types.ts';

const at = (x: number, y: number): Point => ({ x, y });
const edge = (id: string, path: Path): Run => ({ kind: 'edge', edge: id, path });

/** A front on the fold with a dart in its side, small enough to reckon by hand: straight edges but for neck and armhole. */
export const plainFront: Piece = {
  id: 'front',
  name: 'Front',
  role: 'front',
  cut: [{ layer: 'shell', count: 1, mirrored: false }],
  runs: [
    edge('neck', [cubic(at(0, 80), at(40, 80), at(70, 40), at(70, 0))]),
    edge('shoulder', [line(at(70, 0), at(180, 40))]),
    edge('armhole', [cubic(at(180, 40), at(165, 120), at(170, 200), at(240, 220))]),
    edge('side', [line(at(240, 220), at(240, 270))]),
    { kind: 'mouth', dart: 'bust', path: [line(at(240, 270), at(240, 300))] },
    edge('side', [line(at(240, 300), at(240, 600))]),
    edge('hem', [line(at(240, 600), at(0, 600))]),
    edge('centre-front', [line(at(0, 600), at(0, 80))]),
  ],
  edges: [
    { id: 'neck', finish: 'seam', allowance: 10 },
    { id: 'shoulder', finish: 'seam', allowance: 15 },
    { id: 'armhole', finish: 'seam', allowance: 15 },
    { id: 'side', finish: 'seam', allowance: 15 },
    { id: 'hem', finish: 'hem', allowance: 30 },
    { id: 'centre-front', finish: 'fold', allowance: 0 },
  ],
  darts: [{ id: 'bust', point: at(120, 285), aims: 'bust-point', pressed: 'after' }],
  notches: [
    { id: 'armhole-front', edge: 'armhole', at: 0.5, strokes: 1 },
    { id: 'side-waist', edge: 'side', at: 0.5, strokes: 1 },
  ],
  grain: { from: at(40, 150), to: at(40, 550) },
  levels: [
    { id: 'bust', from: at(0, 240), to: at(240, 240) },
    { id: 'in-dart', from: at(0, 280), to: at(240, 280) },
    { id: 'hip', from: at(0, 560), to: at(240, 560) },
  ],
  landmarks: [{ id: 'bust-point', at: at(95, 285) }],
  lines: [],
};

export const plainBack: Piece = {
  ...plainFront,
  id: 'back',
  name: 'Back',
  role: 'back',
  runs: [
    edge('neck', [cubic(at(0, 20), at(40, 20), at(70, 15), at(70, 0))]),
    edge('shoulder', [line(at(70, 0), at(180, 40))]),
    edge('armhole', [cubic(at(180, 40), at(175, 120), at(180, 210), at(240, 220))]),
    edge('side', [line(at(240, 220), at(240, 570))]),
    edge('hem', [line(at(240, 570), at(0, 570))]),
    edge('centre-back', [line(at(0, 570), at(0, 20))]),
  ],
  edges: plainFront.edges.map((one) => (one.id === 'centre-front' ? { ...one, id: 'centre-back' } : one)),
  darts: [],
  notches: [{ id: 'side-waist', edge: 'side', at: 0.5, strokes: 1 }],
  levels: [
    { id: 'bust', from: at(0, 240), to: at(240, 240) },
    { id: 'hip', from: at(0, 530), to: at(240, 530) },
  ],
  landmarks: [],
};

export const plainGarment: Garment = {
  pieces: [plainFront, plainBack],
  seams: [
    {
      id: 'shoulder',
      a: { piece: 'front', edge: 'shoulder', reversed: false },
      b: { piece: 'back', edge: 'shoulder', reversed: false },
      easeMin: 0,
      easeMax: 0,
      how: 'plain',
      notches: [],
    },
    {
      id: 'side',
      a: { piece: 'front', edge: 'side', reversed: false },
      b: { piece: 'back', edge: 'side', reversed: false },
      easeMin: 0,
      easeMax: 0,
      how: 'plain',
      notches: [['side-waist', 'side-waist']],
    },
  ],
  girths: [
    {
      level: 'bust',
      measure: 'bustGirth',
      around: 'body',
      pieces: [
        { piece: 'front', factor: 2 },
        { piece: 'back', factor: 2 },
      ],
    },
  ],
};
