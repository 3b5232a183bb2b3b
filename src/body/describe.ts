import type { Result } from '../units/index.ts';
import { bad, good } from '../units/index.ts';
import { bodyWords } from '../words/index.ts';
import type { MeasureId } from './types.ts';

export type MeasureGroupId = keyof typeof bodyWords.groups;

/** From and to, mm. */
export type Range = readonly [low: number, high: number];

export interface MeasureDescription {
  readonly id: MeasureId;
  readonly name: string;
  /** How it is taken, in one or two sentences. */
  readonly how: string;
  readonly group: MeasureGroupId;
  /** Asked first; the rest can be estimated until measured. */
  readonly asked: boolean;
  /** Left and right can be entered apart; the garment is then cut for the larger or the smaller reading. */
  readonly sides: 'larger' | 'smaller' | null;
  /** Outside this nobody's is, and it is refused. */
  readonly possible: { readonly adult: Range; readonly child: Range };
  /** Outside this it is queried, and kept if she says so. Adults; children differ too much with age. */
  readonly usual: Range;
}

type Row = readonly [group: MeasureGroupId, adult: Range, child: Range, usual: Range, marks?: string];

/**
 * Possible ranges are wide on purpose: from the smallest and largest adults clothing is made for (stature
 * 900 to 2600) and from newborn to fourteen years. Usual ranges are the survey's extremes of both sexes,
 * widened by about a tenth below and, for girths, by about a third above, because soldiers are slim.
 * Marks: * asked first; > the larger side counts, < the smaller.
 */
const rows: Readonly<Record<MeasureId, Row>> = {
  stature: ['heights', [900, 2600], [400, 2000], [1350, 2100], '*'],
  bustGirth: ['body', [500, 2200], [300, 1400], [680, 1600], '*'],
  upperBustGirth: ['body', [500, 2000], [300, 1300], [660, 1500], '*'],
  underBustGirth: ['body', [450, 1900], [280, 1200], [560, 1400]],
  waistGirth: ['body', [400, 2200], [280, 1400], [530, 1600], '*'],
  abdomenGirth: ['body', [450, 2300], [280, 1500], [600, 1700]],
  hipGirth: ['body', [500, 2400], [280, 1500], [720, 1700], '*'],
  waistToHip: ['body', [80, 400], [40, 300], [130, 290]],
  neckBaseGirth: ['shoulders', [240, 750], [160, 500], [290, 600]],
  shoulderLength: ['shoulders', [60, 260], [30, 190], [95, 190], '>'],
  shoulderDrop: ['shoulders', [0, 160], [0, 100], [20, 95], '<'],
  acrossBack: ['shoulders', [200, 750], [110, 500], [260, 580]],
  acrossFront: ['shoulders', [190, 750], [100, 500], [240, 560]],
  armholeDepth: ['torso', [110, 400], [60, 280], [150, 310]],
  backWaistLength: ['torso', [220, 650], [120, 500], [300, 550], '*'],
  frontWaistLength: ['torso', [220, 750], [120, 550], [310, 620]],
  bustDepth: ['torso', [130, 550], [70, 350], [190, 420], '>'],
  bustSpan: ['torso', [90, 450], [50, 300], [140, 300]],
  upperArmGirth: ['arms', [130, 800], [80, 500], [190, 520], '>'],
  elbowGirth: ['arms', [130, 700], [80, 450], [190, 420], '>'],
  armLength: ['arms', [250, 950], [120, 800], [430, 750], '*>'],
  wristGirth: ['arms', [90, 400], [60, 280], [115, 230], '>'],
  bodyRise: ['legs', [130, 500], [70, 400], [200, 370]],
  crotchLength: ['legs', [350, 1400], [200, 1000], [540, 1000]],
  crotchLengthFront: ['legs', [130, 750], [90, 550], [190, 520]],
  crotchLengthBack: ['legs', [170, 800], [100, 600], [270, 600]],
  insideLeg: ['legs', [300, 1300], [80, 1000], [580, 1050], '>'],
  thighGirth: ['legs', [280, 1300], [120, 800], [400, 1000], '>'],
  kneeGirth: ['legs', [200, 900], [100, 550], [260, 620], '>'],
  calfGirth: ['legs', [170, 850], [90, 500], [250, 600], '>'],
  ankleGirth: ['legs', [120, 600], [70, 350], [160, 340], '>'],
  napeHeight: ['heights', [700, 2250], [300, 1700], [1120, 1800]],
  waistHeight: ['heights', [450, 1650], [180, 1250], [800, 1350], '>'],
  kneeHeight: ['heights', [180, 800], [80, 600], [340, 650]],
  headGirth: ['openings', [430, 750], [280, 650], [490, 650]],
  handGirth: ['openings', [130, 400], [80, 300], [180, 300], '>'],
  heelGirth: ['openings', [190, 550], [100, 420], [250, 430], '>'],
  shoulderGirth: ['openings', [550, 2200], [320, 1500], [800, 1700]],
  chestBreadth: ['figure', [150, 700], [90, 450], [200, 450]],
  chestDepth: ['figure', [110, 750], [70, 450], [155, 460]],
  waistBreadth: ['figure', [120, 800], [80, 500], [180, 560]],
  waistDepth: ['figure', [90, 800], [70, 500], [115, 500]],
  hipBreadth: ['figure', [170, 850], [80, 550], [245, 560]],
  hipDepth: ['figure', [110, 850], [70, 550], [150, 450]],
};

export const describeMeasure = (id: MeasureId): MeasureDescription => {
  const [group, adult, child, usual, marks = ''] = rows[id];
  const words = bodyWords.measures[id];
  return {
    id,
    name: words.name,
    how: words.how,
    group,
    asked: marks.includes('*'),
    sides: marks.includes('>') ? 'larger' : marks.includes('<') ? 'smaller' : null,
    possible: { adult, child },
    usual,
  };
};

/** Measures in the order they are taken: tape round the waist first, then what starts or ends at it; the figure last. */
export const measureGroups: readonly {
  readonly id: MeasureGroupId;
  readonly name: string;
  readonly measures: readonly MeasureId[];
}[] = (['heights', 'body', 'torso', 'shoulders', 'arms', 'legs', 'openings', 'figure'] as const).map((id) => ({
  id,
  name: bodyWords.groups[id],
  measures: (Object.keys(rows) as MeasureId[]).filter((measure) => rows[measure][0] === id),
}));

/** The measures asked first, in the order they are taken. */
export const askedFirst: readonly MeasureId[] = measureGroups
  .flatMap((group) => group.measures)
  .filter((measure) => describeMeasure(measure).asked);

/**
 * Refuses what nobody measures (`body.impossible`). Without knowing whether it is an adult's or a
 * child's, whatever either could have is let through.
 */
export const checkMeasure = (
  id: MeasureId,
  mm: number,
  of: 'adult' | 'child' | 'anyone' = 'anyone',
): Result<number> => {
  const { name, possible } = describeMeasure(id);
  const low = of === 'anyone' ? Math.min(possible.adult[0], possible.child[0]) : possible[of][0];
  const high = of === 'anyone' ? Math.max(possible.adult[1], possible.child[1]) : possible[of][1];
  if (mm >= low && mm <= high) return good(mm);
  return bad('body.impossible', {
    measure: name.toLowerCase(),
    length: Number.isFinite(mm) ? { mm } : String(mm),
    low: { mm: low },
    high: { mm: high },
  });
};
