import type { MeasureId, Measures } from './types.ts';

/** The public survey of soldiers, 2010–2012 (Gordon et al., NATICK/TR-15/007): its women or its men. */
export type Survey = 'women' | 'men';

/** One body of the survey: column name → millimetres. */
export type SurveyRow = Readonly<Record<string, number>>;

/** How one measure is had from survey columns. */
export interface SurveyRule {
  /** Columns it needs. Where one is missing the measure is left out, never guessed here. */
  readonly columns: readonly string[];
  /** Standard deviation, mm, of what the rule adds beyond the survey's own tape: 0 where the column is the measure. */
  readonly spread: number;
  readonly value: (column: (name: string) => number, survey: Survey) => number;
}

const as = (name: string): SurveyRule => ({ columns: [name], spread: 0, value: (column) => column(name) });

/** A figure for women and one for men. */
const either = (survey: Survey, women: number, men: number): number => (survey === 'women' ? women : men);

/**
 * A difference of two heights carries the error of both and of posture (observers of the survey differed
 * by up to 10 mm in one height), so only a `share` of how far it strays from what is expected is believed
 * (Kelley's regressed estimate, Fundamentals of Statistics, 1947; the share is the reliability).
 */
const believed = (share: number, expected: number, measured: number): number =>
  expected + share * (measured - expected);

/**
 * How far the waist a dressmaker uses lies above the navel. ISO 8559-1: midway between the lowest rib and
 * the hip bone's crest, both heights in the survey. Women 46 ± 17, men 35 ± 19; half of the own departure believed.
 */
const waistAboveNavel = (column: (name: string) => number, survey: Survey): number =>
  believed(
    0.5,
    either(survey, 46, 35),
    (column('tenthribheight') + column('iliocristaleheight')) / 2 - column('waistheightomphalion'),
  );

const waistColumns = ['tenthribheight', 'iliocristaleheight', 'waistheightomphalion'] as const;

const waistHeight = (column: (name: string) => number, survey: Survey): number =>
  column('waistheightomphalion') + waistAboveNavel(column, survey);

/** Waist over waist at the navel. Women draw in above the navel, men hardly; see `waistGirth`. */
const waistOverNavel = (survey: Survey): number => either(survey, 0.925, 0.97);

/** Relaxed over flexed upper arm; see `upperArmGirth`. */
const relaxedOverFlexed = (survey: Survey): number => either(survey, 0.94, 0.92);

/**
 * Bust girth − upper bust girth. The survey has no upper bust. Women: 50 at the mean bust of 948 (what
 * single-cup patterns are commonly drafted for), 10 more for every 100 of bust, and 1.5 × the chest's depth
 * beyond what its breadth and girth lead one to expect (regression over the survey's women, residual ± 8.4):
 * a fuller bust adds to depth, hardly to breadth. Men: the chest is fullest near the upper level; 15.
 */
const bustAboveUpper = (column: (name: string) => number, survey: Survey): number => {
  if (survey === 'men') return 15;
  const girth = column('chestcircumference');
  const depthExpected = -17.8 - 0.297 * column('chestbreadth') + 0.3647 * girth;
  return Math.max(10, 50 + 0.1 * (girth - 948) + 1.5 * (column('chestdepth') - depthExpected));
};

const bustColumns = ['chestcircumference', 'chestbreadth', 'chestdepth'] as const;

/** Nape to bust level, straight down: 70 % of the own departure from what stature and bust lead one to expect is believed. */
const napeToBust = (column: (name: string) => number, survey: Survey): number =>
  believed(
    0.7,
    either(survey, 224 + 0.07 * (column('stature') - 1628), 226 + 0.07 * (column('stature') - 1756)) +
      either(survey, 0.1 * (column('chestcircumference') - 948), 0.05 * (column('chestcircumference') - 1059)),
    column('cervicaleheight') - column('chestheight'),
  );

const bustDepthOf = (column: (name: string) => number, survey: Survey): number =>
  1.02 * Math.hypot(napeToBust(column, survey), 0.5 * column('chestdepth'));

/**
 * Every measure from the columns of the survey: the third column of the table of measures, each
 * difference by a conversion whose reasoning stands with it. `bodyFromSurveyRow` applies them.
 */
export const surveyRules: Readonly<Record<MeasureId, SurveyRule>> = {
  stature: as('stature'),
  bustGirth: as('chestcircumference'),
  upperBustGirth: {
    columns: bustColumns,
    spread: 18,
    value: (column, survey) => column('chestcircumference') - bustAboveUpper(column, survey),
  },
  /**
   * The rib cage narrows below the bust. Women: 0.88 of the upper bust (898 → 790, what women's body charts
   * show beside a bust of 950); men: 0.95 of it.
   */
  underBustGirth: {
    columns: bustColumns,
    spread: 20,
    value: (column, survey) =>
      either(survey, 0.88, 0.95) * (column('chestcircumference') - bustAboveUpper(column, survey)),
  },
  /**
   * At the navel women measure wider than where a waistband sits: 0.925 of it brings the mean woman to 797
   * beside bust 948 and hip 1023, the proportions of women's body charts. Men 0.97.
   */
  waistGirth: {
    columns: ['waistcircumference'],
    spread: 20,
    value: (column, survey) => waistOverNavel(survey) * column('waistcircumference'),
  },
  /** The fullest part of the front lies a little below the navel: a quarter of the way from navel girth to hip girth. */
  abdomenGirth: {
    columns: ['waistcircumference', 'buttockcircumference'],
    spread: 20,
    value: (column) => 0.75 * column('waistcircumference') + 0.25 * column('buttockcircumference'),
  },
  hipGirth: as('buttockcircumference'),
  /** Height of the waist less height of the seat's fullest point; 4 % more along the curve of the side. */
  waistToHip: {
    columns: [...waistColumns, 'buttockheight'],
    spread: 10,
    value: (column, survey) =>
      1.04 * believed(0.7, either(survey, 192, 203), waistHeight(column, survey) - column('buttockheight')),
  },
  neckBaseGirth: as('neckcircumferencebase'),
  shoulderLength: as('shoulderlength'),
  /**
   * Nape height less shoulder point height. The neck point lies a fifth of that below the nape, leaving four
   * fifths: 20° to 21° for the mean woman, 23° to 24° for the mean man. 70 % of the own departure believed.
   */
  shoulderDrop: {
    columns: ['cervicaleheight', 'acromialheight'],
    spread: 8,
    value: (column, survey) =>
      0.8 * believed(0.7, either(survey, 60, 76), column('cervicaleheight') - column('acromialheight')),
  },
  /** Between the back's arm creases, over the skin. */
  acrossBack: as('interscyei'),
  /** The front between the arm creases is narrower: 0.94 of the back, as drafting rules have it (half the bust / 4 + 62 against + 74). */
  acrossFront: { columns: ['interscyei'], spread: 14, value: (column) => 0.94 * column('interscyei') },
  /**
   * The survey's armpit is the point up in the hollow; the crease's lower end, where a ruler under the arm
   * lies, is lower by the flesh of arm and side, some 0.12 of the relaxed upper arm (34 of 288). Of the own
   * departure of nape-to-armpit from what bust and stature lead one to expect, half is believed.
   * Mean woman 190 beside a bust of 948 and a back waist of 379; mean man 228.
   */
  armholeDepth: {
    columns: ['cervicaleheight', 'axillaheight', 'chestcircumference', 'stature', 'bicepscircumferenceflexed'],
    spread: 9,
    value: (column, survey) =>
      believed(
        0.5,
        either(survey, 36.3, 43.3) +
          either(survey, 0.0199, 0.0498) * column('chestcircumference') +
          either(survey, 0.0621, 0.0525) * column('stature'),
        column('cervicaleheight') - column('axillaheight'),
      ) +
      0.12 * relaxedOverFlexed(survey) * column('bicepscircumferenceflexed'),
  },
  /** The survey's runs to the level of the navel; less the height of the waist above it. */
  backWaistLength: {
    columns: ['waistbacklength', ...waistColumns],
    spread: 9,
    value: (column, survey) => column('waistbacklength') - waistAboveNavel(column, survey),
  },
  /**
   * Neck point over the bust point to the waist: bust depth, then down from the bust, where the waist lies
   * about 0.15 of the chest's depth further in. Front and back are one torso, so the front is taken as the
   * back waist length and what it is longer by: women 32, and 0.3 for each mm of cup beyond 50, men 25; half
   * of the own departure from that is believed.
   */
  frontWaistLength: {
    columns: [
      'cervicaleheight',
      'chestheight',
      'stature',
      'chestcircumference',
      'chestbreadth',
      'chestdepth',
      'waistbacklength',
      ...waistColumns,
    ],
    spread: 10,
    value: (column, survey) => {
      const napeToWaist = column('cervicaleheight') - waistHeight(column, survey);
      const below = Math.max(60, napeToWaist - napeToBust(column, survey));
      const overBust = bustDepthOf(column, survey) + Math.hypot(below, 0.15 * column('chestdepth'));
      const back = column('waistbacklength') - waistAboveNavel(column, survey);
      const longerBy = either(survey, 32 + 0.3 * (bustAboveUpper(column, survey) - 50), 25);
      return back + believed(0.5, longerBy, overBust - back);
    },
  },
  /**
   * Neck point to bust point, over the body: straight down from nape height and half the chest's depth
   * forward, 2 % more for the curve of the upper chest.
   */
  bustDepth: {
    columns: ['cervicaleheight', 'chestheight', 'stature', 'chestcircumference', 'chestdepth'],
    spread: 9,
    value: bustDepthOf,
  },
  /** One fifth of the bust girth: 176 at 880, 190 at 950, 220 at 1100, as women's body charts run. */
  bustSpan: { columns: ['chestcircumference'], spread: 12, value: (column) => 0.2 * column('chestcircumference') },
  /** Relaxed, the upper arm is smaller than flexed: women 0.94, men 0.92 of it. */
  upperArmGirth: {
    columns: ['bicepscircumferenceflexed'],
    spread: 6,
    value: (column, survey) => relaxedOverFlexed(survey) * column('bicepscircumferenceflexed'),
  },
  /** The bent elbow measures about what the flexed forearm does at its fullest. */
  elbowGirth: {
    columns: ['forearmcircumferenceflexed'],
    spread: 8,
    value: (column) => column('forearmcircumferenceflexed'),
  },
  /** The survey's arm hangs straight; over a slightly bent elbow the tape runs 3 % longer. */
  armLength: { columns: ['sleeveoutseam'], spread: 6, value: (column) => 1.03 * column('sleeveoutseam') },
  wristGirth: as('wristcircumference'),
  /** Waist height less crotch height, and 25 by which the seat's side spreads and sinks on a chair: 269 for the mean woman. */
  bodyRise: {
    columns: [...waistColumns, 'crotchheight'],
    spread: 10,
    value: (column, survey) => waistHeight(column, survey) - column('crotchheight') + 25,
  },
  /** The survey's runs from navel level to navel level; more by the rise to the waist, before and behind. */
  crotchLength: {
    columns: ['crotchlengthomphalion', ...waistColumns],
    spread: 15,
    value: (column, survey) => column('crotchlengthomphalion') + 2 * waistAboveNavel(column, survey),
  },
  crotchLengthFront: {
    columns: ['crotchlengthomphalion', 'crotchlengthposterioromphalion', ...waistColumns],
    spread: 12,
    value: (column, survey) =>
      column('crotchlengthomphalion') - column('crotchlengthposterioromphalion') + waistAboveNavel(column, survey),
  },
  crotchLengthBack: {
    columns: ['crotchlengthposterioromphalion', ...waistColumns],
    spread: 12,
    value: (column, survey) => column('crotchlengthposterioromphalion') + waistAboveNavel(column, survey),
  },
  insideLeg: as('crotchheight'),
  thighGirth: as('thighcircumference'),
  /** The survey's lower thigh is taken above the kneecap; at the knee 0.92 of it, about the girth of the calf. */
  kneeGirth: {
    columns: ['lowerthighcircumference'],
    spread: 10,
    value: (column) => 0.92 * column('lowerthighcircumference'),
  },
  calfGirth: as('calfcircumference'),
  ankleGirth: as('anklecircumference'),
  napeHeight: as('cervicaleheight'),
  waistHeight: { columns: waistColumns, spread: 10, value: waistHeight },
  kneeHeight: as('kneeheightmidpatella'),
  headGirth: as('headcircumference'),
  /** Over the knuckles without the thumb; 25 to 40 more with the thumb laid in: 32. */
  handGirth: { columns: ['handcircumference'], spread: 5, value: (column) => column('handcircumference') + 32 },
  heelGirth: as('heelanklecircumference'),
  shoulderGirth: as('shouldercircumference'),
  chestBreadth: as('chestbreadth'),
  chestDepth: as('chestdepth'),
  /** Taken at the navel; narrowed as the girth is. */
  waistBreadth: {
    columns: ['waistbreadth'],
    spread: 8,
    value: (column, survey) => waistOverNavel(survey) * column('waistbreadth'),
  },
  waistDepth: {
    columns: ['waistdepth'],
    spread: 8,
    value: (column, survey) => waistOverNavel(survey) * column('waistdepth'),
  },
  hipBreadth: as('hipbreadth'),
  hipDepth: as('buttockdepth'),
};

/**
 * The measures of a surveyed body, mm. A measure whose columns are not all there, or not positive
 * numbers, is left out. The survey is of soldiers: fit adults, few over 50, no children.
 */
export const bodyFromSurveyRow = (row: SurveyRow, survey: Survey): Measures => {
  const known = (name: string): boolean => {
    const value = row[name];
    return value !== undefined && Number.isFinite(value) && value > 0;
  };
  const column = (name: string): number => row[name] as number;
  const entries = (Object.entries(surveyRules) as [MeasureId, SurveyRule][])
    .filter(([, rule]) => rule.columns.every(known))
    .map(([measure, rule]) => [measure, rule.value(column, survey)] as const);
  return Object.fromEntries(entries);
};
