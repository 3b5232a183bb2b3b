import type { ProblemCatalogue } from './catalogue.ts';

export const bodyProblems: ProblemCatalogue = {
  'body.no-columns': {
    message: 'The first line names no measure that is known here.',
    remedy: 'Give a survey file whose first line holds its column names, such as stature and chestcircumference.',
  },
  'body.row-length': {
    message: 'Row {row} has {found} values where the first line names {expected}.',
    remedy: 'Look for a missing comma, or a decimal comma inside a number.',
  },
  'body.bad-cell': {
    message: 'Row {row} has “{text}” for {column}, which is not a length.',
    remedy: 'Write it in whole millimetres, or leave it empty if it was not measured.',
  },
  'body.no-stature-column': {
    message: 'The first line names no “stature”, without which no child’s measures can be told.',
    remedy: 'Give a file whose first line holds our own measure names, stature among them; lengths in millimetres.',
  },
  'body.no-stature': {
    message: 'The stature is not known, and a child’s measures go by it.',
    remedy: 'Measure the child without shoes, heels and back to a wall, and enter the stature.',
  },
  'body.not-a-childs-stature': {
    message: 'The children’s chart says nothing of a stature of {stature}: it runs from {low} to {high}.',
    remedy: 'Look at the unit; for a taller child use a pattern for adults and her own measures.',
  },
  'body.unknown-measure': {
    message: '“{measure}” is not a measure that is kept here.',
    remedy: 'Choose one of the measures on the list.',
  },
  'body.impossible': {
    message: '{length} cannot be a {measure}: nobody’s is under {low} or over {high}.',
    remedy: 'Look at the unit and the decimal mark, then measure again.',
  },
  'body.wearer-shape': {
    message: 'This does not read as a wearer and her measures: {what}, at {where}.',
    remedy: 'Nothing was stored. Open a file that was written by this program, or enter the measures by hand.',
  },
  'body.wearer-version': {
    message: 'This wearer was written in a form this program does not know: “{format}”.',
    remedy: 'Nothing was stored. Open it with the program that wrote it, or a newer one of this.',
  },
};

/**
 * How each measure is called and taken (terms and levels after ISO 8559-1). `how` is what the person
 * holding the tape does.
 */
const measures = {
  stature: {
    name: 'Stature',
    how: 'Without shoes, heels and back to a wall, a flat book on the crown of the head; from the floor to the book.',
  },
  bustGirth: {
    name: 'Bust girth',
    how: 'Level round the body over the fullest part of the bust, in the bra that will be worn under it, breathing easily.',
  },
  upperBustGirth: {
    name: 'Upper bust girth',
    how: 'Snug under the arms and above the bust, high at the back as well.',
  },
  underBustGirth: { name: 'Under-bust girth', how: 'Level round the ribs, directly below the bust.' },
  waistGirth: {
    name: 'Waist girth',
    how: 'Where a waistband should sit, usually the narrowest place. Tie a tape there and leave it on for the lengths that follow; write down which waist it is.',
  },
  abdomenGirth: {
    name: 'Abdomen girth',
    how: 'Level round the body over the fullest part of the front, below the waist.',
  },
  hipGirth: { name: 'Hip girth', how: 'Level round the body over the fullest part of the seat, feet together.' },
  waistToHip: {
    name: 'Waist-to-hip depth',
    how: 'Down the side, from the tape at the waist to the level of the hip girth.',
  },
  neckBaseGirth: {
    name: 'Neck base girth',
    how: 'Round the base of the neck: over the bone at the nape, the neck points at the sides and the hollow in front, the tape on its edge.',
  },
  shoulderLength: {
    name: 'Shoulder length',
    how: 'From the neck point, where neck and shoulder meet, along the shoulder to the bone at its end.',
  },
  shoulderDrop: {
    name: 'Shoulder drop',
    how: 'How far the shoulder point lies below the neck point, straight down: hold a ruler level at the neck point and measure down from it to the shoulder point.',
  },
  acrossBack: {
    name: 'Across back',
    how: 'From arm crease to arm crease across the shoulder blades, halfway down the armhole, arms hanging.',
  },
  acrossFront: {
    name: 'Across front',
    how: 'From arm crease to arm crease across the chest, halfway down the armhole, arms hanging.',
  },
  armholeDepth: {
    name: 'Armhole depth',
    how: 'Hold a ruler level under the arm, up against it but not pressing. From the bone at the nape down the spine to the level of the ruler.',
  },
  backWaistLength: {
    name: 'Back waist length',
    how: 'From the bone at the nape, down the spine, to the tape at the waist.',
  },
  frontWaistLength: {
    name: 'Front waist length',
    how: 'From the neck point over the bust point, then straight down to the tape at the waist.',
  },
  bustDepth: { name: 'Bust depth', how: 'From the neck point to the bust point.' },
  bustSpan: { name: 'Bust span', how: 'From bust point to bust point, straight across.' },
  upperArmGirth: { name: 'Upper arm girth', how: 'Round the fullest part of the upper arm, arm hanging and at ease.' },
  elbowGirth: { name: 'Elbow girth', how: 'Round the elbow over its point, arm bent at a right angle.' },
  armLength: {
    name: 'Arm length',
    how: 'From the shoulder point over the slightly bent elbow to the wrist bone.',
  },
  wristGirth: { name: 'Wrist girth', how: 'Round the wrist over the bone.' },
  bodyRise: {
    name: 'Body rise',
    how: 'Seated upright on a hard chair: down the side, from the tape at the waist to the seat.',
  },
  crotchLength: {
    name: 'Crotch length',
    how: 'From the tape at the waist in front, between the legs, to the tape at the waist behind; easy, not tight.',
  },
  crotchLengthFront: {
    name: 'Crotch length, front',
    how: 'The part of the crotch length from the waist in front to the inside-leg point.',
  },
  crotchLengthBack: {
    name: 'Crotch length, back',
    how: 'The part of the crotch length from the inside-leg point to the waist behind.',
  },
  insideLeg: {
    name: 'Inside leg',
    how: 'From the crotch to the floor, without shoes, a book held level between the legs.',
  },
  thighGirth: { name: 'Thigh girth', how: 'Level round the thigh at its fullest, just under the seat.' },
  kneeGirth: { name: 'Knee girth', how: 'Level round the knee over the kneecap, leg straight.' },
  calfGirth: { name: 'Calf girth', how: 'Level round the fullest part of the calf.' },
  ankleGirth: { name: 'Ankle girth', how: 'Round the narrowest part of the leg, just above the ankle bones.' },
  napeHeight: { name: 'Nape height', how: 'From the bone at the nape straight down to the floor.' },
  waistHeight: { name: 'Waist height', how: 'At the side, from the tape at the waist straight down to the floor.' },
  kneeHeight: { name: 'Knee height', how: 'From the middle of the kneecap straight down to the floor.' },
  headGirth: { name: 'Head girth', how: 'Round the head above the brows, where it is largest.' },
  handGirth: {
    name: 'Hand girth',
    how: 'Round the knuckles with the thumb laid into the palm, as the hand goes through a cuff.',
  },
  heelGirth: { name: 'Heel girth', how: 'Round the heel and over the instep, as the foot goes through a trouser leg.' },
  shoulderGirth: {
    name: 'Shoulder girth',
    how: 'Level round both upper arms at their widest and the chest, arms hanging.',
  },
  chestBreadth: {
    name: 'Chest breadth',
    how: 'Straight across the body at bust level, from side to side, between two books held upright.',
  },
  chestDepth: { name: 'Chest depth', how: 'Straight from back to front at bust level, seen from the side.' },
  waistBreadth: { name: 'Waist breadth', how: 'Straight across at the waist, from side to side.' },
  waistDepth: { name: 'Waist depth', how: 'Straight from back to front at the waist, seen from the side.' },
  hipBreadth: { name: 'Hip breadth', how: 'Straight across at the widest part of the hips.' },
  hipDepth: { name: 'Hip depth', how: 'Straight from back to front at the fullest part of the seat.' },
} as const;

export const bodyWords = {
  measures,
  groups: {
    body: 'Round the body',
    torso: 'Lengths of the torso',
    shoulders: 'Neck, shoulders, back and chest',
    arms: 'Arms',
    legs: 'Seat and legs',
    heights: 'Heights from the floor',
    openings: 'What must pass an opening',
    figure: 'Breadths and depths, for the figure',
  },
  asked: 'Asked first',
  sides: { both: 'both sides', left: 'left', right: 'right' },
  waistAt: {
    waistband: 'where a waistband sits',
    narrowest: 'at the narrowest place',
    midway: 'midway between the lowest rib and the hip bone',
  },
  before:
    'Measure over what will be worn under the garment. Measure twice and keep both readings. Someone else holding the tape gets a truer back.',
  wearerCare: 'With pain, swelling, a prosthesis or a brace, follow the person and their clinician.',
  estimated: 'Estimated from the measures that are known; measure it before cutting.',
  estimatedPlusMinus: 'Estimated {value} ± {plusMinus}; measure it before cutting.',
  surveyLimits:
    'Estimates come from a survey of soldiers: fit adults, few over 50, no children. They say less about anyone else.',
  childLimits: 'There are no children in the survey. Measure a child; what is not measured is not estimated.',
  childEstimates:
    'Estimated from the children’s chart by stature and from what was measured. The chart is reasoned proportion, no survey: measure before cutting.',
  doubtful:
    '{measure} reads {length}; the other measures make {low} to {high} likely. Measure it again, or keep it if it is so.',
  unusual:
    '{measure} of {length} is unusual: most lie between {low} and {high}. Measure it again, or keep it if it is so.',
} as const;
