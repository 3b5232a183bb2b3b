import type { FittingView, Half, Sign, ZoneId } from '../../../src/alter/index.ts';
import type { Measures } from '../../../src/body/index.ts';
import { circle, clipPath, type Drawing, groupMark, type Mark, pathMark, textMark } from '../../../src/draw/index.ts';
import { applyToPath, mirrorX } from '../../../src/geometry/index.ts';
import type { Garment } from '../../../src/pattern/index.ts';
import { figureOf, halfOutline } from '../../wearers/body-outline.ts';
import { type Kind, partShown, type Spot, spotsOf } from './places.ts';
import { profileOutline } from './profile.ts';
import { strokesOf } from './strokes.ts';

/** Radius of what can be pressed, mm on the body. */
const pressed = 35;

export interface FittingAsked {
  /** Whole measures of the wearer, mm; see completeMeasures. */
  readonly measures: Measures;
  readonly view: FittingView;
  readonly kind: Kind;
  readonly garment: Garment;
  readonly signs: readonly Sign[];
  /** The place in hand, whose name is written at it; null while nothing is being marked. */
  readonly picked: ZoneId | null;
  readonly sayPlace: (zone: ZoneId) => string;
  readonly label: string;
  readonly sayZone: (zone: ZoneId, signs: readonly Sign[]) => string;
  readonly sayPinned: (mm: number) => string;
  /** Em of the words, mm; larger where the whole body is seen small. */
  readonly textSize?: number;
}

const isOn = (spot: Spot, half: Half): boolean => spot.half === 'both' || half === 'both' || half === spot.half;

const spotMarks = (
  spot: Spot,
  { signs, view, picked, sayPlace, sayPinned, textSize = 24 }: FittingAsked,
): readonly Mark[] => {
  const here = signs.filter((sign) => sign.zone === spot.zone && isOn(spot, sign.half));
  const outward = spot.at.x < 0 ? -1 : 1;
  const pins = here.flatMap(({ pinned }) => (pinned === null ? [] : [sayPinned(pinned)]));
  return [
    pathMark('marks', 'faint', circle(spot.at, pressed)),
    ...here.map((sign) => strokesOf(sign, spot.at, outward)),
    // The name stands once, on the half drawn to the right or on the middle.
    ...(spot.zone === picked && (spot.at.x >= 0 || view === 'side')
      ? [
          textMark(
            'words',
            'mark',
            { x: spot.at.x, y: spot.at.y - pressed - textSize / 2 },
            sayPlace(spot.zone),
            textSize,
            {
              anchor: 'middle',
              weight: 'bold',
            },
          ),
        ]
      : []),
    ...(pins.length > 0
      ? [
          textMark(
            'words',
            'mark',
            { x: spot.at.x, y: spot.at.y + pressed + textSize * 1.2 },
            pins.join(', '),
            textSize,
            {
              anchor: 'middle',
              weight: 'bold',
            },
          ),
        ]
      : []),
  ];
};

/**
 * The wearer's own body in one view, with every place that can be pressed, and at each what was seen there: taut cloth in
 * straight lines, slack cloth in folds, what was pinned written at it. Throws where a measure the figure needs is lacking.
 */
export const drawFitting = (asked: FittingAsked): Drawing => {
  const { measures, view, kind, garment, signs } = asked;
  const f = figureOf(measures);
  const half = halfOutline(f);
  const body = view === 'side' ? profileOutline(f) : [...half, ...half.map((path) => applyToPath(mirrorX(0), path))];
  const spots = spotsOf(f, view, kind, garment);
  const zones = [...new Set(spots.map(({ zone }) => zone))];
  const [from, to] = partShown(f, kind);
  const across = view === 'side' ? 230 : Math.max(f.wrist.x + 90, f.half.hip + 90);
  const sheet = { minX: -across, maxX: across, minY: from, maxY: to };
  return {
    label: asked.label,
    bounds: sheet,
    marks: [
      // The body is seen as far as the paper goes.
      pathMark('body', 'body', ...body.flatMap((path) => clipPath(path, sheet))),
      ...zones.map((zone) =>
        groupMark(
          zone,
          asked.sayZone(
            zone,
            signs.filter((sign) => sign.zone === zone),
          ),
          spots.filter((spot) => spot.zone === zone).flatMap((spot) => spotMarks(spot, asked)),
        ),
      ),
    ],
  };
};
