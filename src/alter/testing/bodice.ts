import { line, type Point } from '../../geometry/index.ts';
import type { Garment, Piece } from '../../pattern/index.ts';
import { plainBack, plainFront, plainGarment } from '../../pattern/testing/bodice.ts';

const at = (x: number, y: number): Point => ({ x, y });

const bustPoint = at(95, 285);
const upper = at(240, 300);
/** As far from the bust point as the upper end, 30 below it. */
const lower = at(95 + Math.sqrt(145 ** 2 + 15 ** 2 - 45 ** 2), 330);
const below = Math.hypot(240 - lower.x, 600 - lower.y);

const bisector = (Math.atan2(15, 145) + Math.atan2(45, lower.x - 95)) / 2;

/** Distance at which the dart ends from the bust point, mm. */
export const setBack = 25;

/** The plain front with its dart drafted as a cutter would: rising to the bust point, which lies on the bust level. */
export const risingFront: Piece = {
  ...plainFront,
  runs: plainFront.runs.flatMap((run, i) => {
    if (i === 3) return [{ kind: 'edge' as const, edge: 'side', path: [line(at(240, 220), upper)] }];
    if (i === 4) return [{ kind: 'mouth' as const, dart: 'bust', path: [line(upper, lower)] }];
    return i === 5 ? [{ kind: 'edge' as const, edge: 'side', path: [line(lower, at(240, 600))] }] : [run];
  }),
  darts: [
    {
      id: 'bust',
      point: at(bustPoint.x + setBack * Math.cos(bisector), bustPoint.y + setBack * Math.sin(bisector)),
      aims: 'bust-point',
      pressed: 'after',
    },
  ],
  levels: [
    { id: 'bust', from: at(0, 285), to: at(240, 285) },
    { id: 'hip', from: at(0, 560), to: at(240 - ((240 - lower.x) * 40) / 270, 560) },
  ],
  landmarks: [{ id: 'bust-point', at: bustPoint }],
};

const hem = 220 + 80 + below;

/** Its back, the side seam as long. */
const risingBack: Piece = {
  ...plainBack,
  runs: plainBack.runs.map((run) => {
    if (run.kind !== 'edge') return run;
    if (run.edge === 'side') return { ...run, path: [line(at(240, 220), at(240, hem))] };
    if (run.edge === 'hem') return { ...run, path: [line(at(240, hem), at(0, hem))] };
    return run.edge === 'centre-back' ? { ...run, path: [line(at(0, hem), at(0, 20))] } : run;
  }),
};

export const risingGarment: Garment = { ...plainGarment, pieces: [risingFront, risingBack] };
