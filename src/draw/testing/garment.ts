import type { Path, Point, Segment } from '../../geometry/index.ts';
import type { Garment, Piece, Run } from '../../pattern/index.ts';

/** A small garment made by hand for the tests of what is drawn and printed: round numbers, every kind of mark. */
const at = (x: number, y: number): Point => ({ x, y });
const straight = (from: Point, to: Point): Path => [{ kind: 'line', from, to }];
const curve = (...p: readonly Point[]): Path => {
  const segments: Segment[] = [];
  for (let i = 0; i + 3 < p.length; i += 3) {
    segments.push({
      kind: 'cubic',
      from: p[i] as Point,
      control1: p[i + 1] as Point,
      control2: p[i + 2] as Point,
      to: p[i + 3] as Point,
    });
  }
  return segments;
};
const edge = (name: string, path: Path): Run => ({ kind: 'edge', edge: name, path });

export const sampleFront: Piece = {
  id: 'front',
  name: 'Front',
  role: 'front',
  cut: [{ layer: 'shell', count: 1, mirrored: false }],
  runs: [
    edge('neck', curve(at(0, 82), at(38, 82), at(68, 50), at(72, 0))),
    edge('shoulder', straight(at(72, 0), at(188, 42))),
    edge('armhole', curve(at(188, 42), at(166, 130), at(176, 196), at(248, 214))),
    edge('side', straight(at(248, 214), at(246, 262))),
    { kind: 'mouth', dart: 'bust', path: straight(at(246, 262), at(245, 292)) },
    edge('side', curve(at(245, 292), at(240, 380), at(246, 440), at(256, 590))),
    edge('hem', curve(at(256, 590), at(170, 601), at(90, 604), at(0, 604))),
    edge('centre-front', straight(at(0, 604), at(0, 82))),
  ],
  edges: [
    { id: 'neck', finish: 'seam', allowance: 10 },
    { id: 'shoulder', finish: 'seam', allowance: 15 },
    { id: 'armhole', finish: 'seam', allowance: 15 },
    { id: 'side', finish: 'seam', allowance: 15 },
    { id: 'hem', finish: 'hem', allowance: 30 },
    { id: 'centre-front', finish: 'fold', allowance: 0 },
  ],
  darts: [{ id: 'bust', point: at(130, 250), aims: 'bust-point', pressed: 'after' }],
  notches: [
    { id: 'armhole-front', edge: 'armhole', at: 0.55, strokes: 1 },
    { id: 'waist', edge: 'side', at: 0.45, strokes: 1 },
  ],
  grain: { from: at(60, 160), to: at(60, 480) },
  levels: [
    { id: 'bust', from: at(0, 244), to: at(247, 244) },
    { id: 'waist', from: at(0, 400), to: at(243, 400) },
  ],
  landmarks: [{ id: 'bust-point', at: at(100, 244) }],
  lines: [{ id: 'lengthen', kind: 'lengthen-or-shorten', path: straight(at(0, 350), at(242, 350)) }],
};

export const sampleSleeve: Piece = {
  id: 'sleeve',
  name: 'Sleeve',
  role: 'sleeve',
  cut: [{ layer: 'shell', count: 2, mirrored: true }],
  runs: [
    edge('cap', [
      ...curve(at(0, 140), at(60, 130), at(80, 0), at(175, 0)),
      ...curve(at(175, 0), at(270, 0), at(300, 120), at(360, 140)),
    ]),
    edge('underarm-front', straight(at(360, 140), at(320, 560))),
    edge('wrist', straight(at(320, 560), at(40, 560))),
    edge('underarm-back', straight(at(40, 560), at(0, 140))),
  ],
  edges: [
    { id: 'cap', finish: 'seam', allowance: 15 },
    { id: 'underarm-front', finish: 'seam', allowance: 15 },
    { id: 'wrist', finish: 'hem', allowance: 40 },
    { id: 'underarm-back', finish: 'seam', allowance: 15 },
  ],
  darts: [],
  notches: [
    { id: 'cap-back', edge: 'cap', at: 0.28, strokes: 2 },
    { id: 'cap-top', edge: 'cap', at: 0.5, strokes: 1 },
    { id: 'cap-front', edge: 'cap', at: 0.7, strokes: 1 },
  ],
  grain: { from: at(180, 120), to: at(180, 480) },
  levels: [
    { id: 'upper-arm', from: at(360, 140), to: at(0, 140) },
    { id: 'elbow', from: at(340, 350), to: at(20, 350) },
  ],
  landmarks: [],
  lines: [],
};

export const sampleFacing: Piece = {
  id: 'front-facing',
  name: 'Front neck facing',
  role: 'front-facing',
  cut: [
    { layer: 'shell', count: 1, mirrored: false },
    { layer: 'interfacing', count: 1, mirrored: false },
  ],
  runs: [
    edge('neck', curve(at(0, 82), at(38, 82), at(68, 50), at(72, 0))),
    edge('shoulder', straight(at(72, 0), at(119, 17))),
    edge('outer', curve(at(119, 17), at(116, 92), at(64, 142), at(0, 142))),
    edge('centre-front', straight(at(0, 142), at(0, 82))),
  ],
  edges: [
    { id: 'neck', finish: 'seam', allowance: 10 },
    { id: 'shoulder', finish: 'seam', allowance: 15 },
    { id: 'outer', finish: 'raw', allowance: 0 },
    { id: 'centre-front', finish: 'fold', allowance: 0 },
  ],
  darts: [],
  notches: [],
  grain: { from: at(14, 92), to: at(14, 134) },
  levels: [],
  landmarks: [],
  lines: [],
};

export const sampleStrip: Piece = {
  id: 'strip',
  name: 'Neck strip',
  role: 'other',
  cut: [{ layer: 'shell', count: 1, mirrored: false }],
  runs: [
    edge('top', straight(at(0, 0), at(420, 0))),
    edge('right', straight(at(420, 0), at(420, 24))),
    edge('bottom', straight(at(420, 24), at(0, 24))),
    edge('left', straight(at(0, 24), at(0, 0))),
  ],
  edges: ['top', 'right', 'bottom', 'left'].map((id) => ({ id, finish: 'seam', allowance: 6 }) as const),
  darts: [],
  notches: [{ id: 'middle', edge: 'top', at: 0.5, strokes: 1 }],
  grain: { from: at(150, 12), to: at(190, 12) },
  levels: [],
  landmarks: [],
  lines: [],
};

export const sampleGarment: Garment = {
  pieces: [sampleFront, sampleSleeve, sampleFacing, sampleStrip],
  seams: [
    {
      id: 'neck-facing',
      a: { piece: 'front', edge: 'neck', reversed: false },
      b: { piece: 'front-facing', edge: 'neck', reversed: false },
      easeMin: 0,
      easeMax: 0,
      how: 'plain',
      notches: [],
    },
    {
      id: 'armhole',
      a: { piece: 'sleeve', edge: 'cap', reversed: true },
      b: { piece: 'front', edge: 'armhole', reversed: false },
      easeMin: 15,
      easeMax: 35,
      how: 'eased',
      notches: [['cap-front', 'armhole-front']],
    },
  ],
  girths: [],
};
