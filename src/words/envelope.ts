import type { ProblemCatalogue } from './catalogue.ts';

/** What an envelope's document and its charts can have wrong. */
export const envelopeProblems: ProblemCatalogue = {
  'envelope.not-an-envelope': {
    message: 'This is not a pattern’s envelope: it does not say which format it is.',
    remedy: 'Choose a file whose first line says “format”: “easewright-envelope/1”.',
  },
  'envelope.unknown-version': {
    message: 'This envelope is written in a form this program does not know ({format}).',
    remedy: 'It may come from a newer Easewright: update the program, then try again.',
  },
  'envelope.field': {
    message: 'Something in the envelope is not as it should be, at {where}: {what}.',
    remedy: 'Mend that entry. docs/envelopes.md says what belongs there.',
  },
  'envelope.size-twice': {
    message: 'The size {size} is there twice.',
    remedy: 'Give every size its own name, or take one of them out.',
  },
  'envelope.view-twice': {
    message: 'The view {view} is there twice.',
    remedy: 'Give every view its own letter or name, or take one of them out.',
  },
  'envelope.measure-twice': {
    message: 'The body chart has two rows for the same measure ({measure}).',
    remedy: 'Keep the row that is printed and take the other out.',
  },
  'envelope.figures-count': {
    message: 'Row {row} of the {chart} chart has {found} figures for {sizes} sizes.',
    remedy: 'Give every size its figure; leave it empty where none is printed.',
  },
  'envelope.range-reversed': {
    message: 'Row {row} of the {chart} chart has a range that ends before it begins, in size {size}.',
    remedy: 'Write the smaller figure first.',
  },
  'envelope.weight-reversed': {
    message: 'The weight of the cloth advised ends before it begins.',
    remedy: 'Write the lighter figure first.',
  },
  'envelope.view-missing': {
    message: 'Something is entered for the view {view}, which this pattern does not have.',
    remedy: 'Add the view, or enter it for one of those there are.',
  },
  'envelope.size-missing': {
    message: 'Something is entered for the size {size}, which this pattern does not have.',
    remedy: 'Its sizes are {sizes}.',
  },
  'envelope.flat-no-pieces': {
    message: 'No piece has been measured yet.',
    remedy: 'Measure each piece the level runs over and enter them all.',
  },
  'envelope.flat-no-length': {
    message: 'What is entered for {piece} is no length.',
    remedy: 'Enter what the tape reads, and 0 where nothing is to be left out.',
  },
  'envelope.flat-times': {
    message: '{piece} must be counted at least once, and a whole number of times.',
    remedy: 'Enter 2 for a piece on the fold or a pair, 1 for a piece cut once.',
  },
  'envelope.flat-nothing-left': {
    message: 'Of {piece}, {flat} wide, {out} is to be left out: nothing remains.',
    remedy: 'Look at the unit and the decimal mark of each figure.',
  },
  'envelope.flat-too-long': {
    message: 'The pieces come to {sum}, which is more than any garment measures.',
    remedy: 'Look at the units, and at how often each piece is counted.',
  },
  'envelope.chart-empty': {
    message: 'There is no chart here yet.',
    remedy: 'Type or paste it in the order it is printed: a row of sizes, then a row for each measure.',
  },
  'envelope.chart-too-long': {
    message: 'This is longer than any envelope’s chart.',
    remedy: 'Paste one chart at a time: the body chart, the finished measurements, or the cloth needed.',
  },
  'envelope.chart-too-much': {
    message:
      'With this chart the envelope would hold more than any prints: {sizes} sizes, {views} views and {rows} rows.',
    remedy: 'Leave out what you do not need, or keep views you will not sew as an envelope of their own.',
  },
  'envelope.chart-too-broad': {
    message: 'This has {columns} columns or more; no chart has over {most}.',
    remedy: 'Paste only the chart, with one column for each size.',
  },
  'envelope.no-chart': {
    message: 'This does not read as a chart: there are no rows of figures under sizes.',
    remedy: 'Put the sizes into the first line, then one line for each measure with a figure for every size.',
  },
  'envelope.no-sizes': {
    message: 'There is no row of sizes.',
    remedy: 'Put the sizes into the first line, after the word Size: Size 8 10 12 14.',
  },
  'envelope.sizes-differ': {
    message: 'This chart has the sizes {found}; the pattern has {sizes}.',
    remedy: 'Look whether it belongs to this pattern; if it does, mend the sizes of one of them.',
  },
  'envelope.gap': {
    message: '“{row}” has {found} figures for {sizes} sizes; none is left for size {size}.',
    remedy: 'Put in the figure that is missing, or a dash where the envelope prints none.',
  },
  'envelope.run-together': {
    message: '“{row}” cannot be parted into figures: {found} are found, run together, for {sizes} sizes.',
    remedy: 'Put a tab or two spaces between the figures.',
  },
  'envelope.row-unnamed': {
    message: 'A row of figures has no name before it: {text}.',
    remedy: 'Write what it is of before its figures, or look whether its first word was taken for a figure.',
  },
  'envelope.width-among-lengths': {
    message: '“{text}” stands among the lengths of the row “{row}” and reads as the width of the cloth.',
    remedy: 'Put the width before the lengths, and look whether a length is missing.',
  },
  'envelope.too-many-figures': {
    message: '“{row}” has {found} figures for {sizes} sizes.',
    remedy: 'Take out what is no figure of a size, or put the size that is missing into the first line.',
  },
  'envelope.mixed-units': {
    message: '“{row}” has inches and centimetres in one row.',
    remedy: 'Give the row in one of them, or give it twice, once in each.',
  },
  'envelope.unit-unknown': {
    message: 'Nothing says whether “{row}” is in inches or centimetres.',
    remedy: 'Say in which unit the envelope is printed, or write (in) or (cm) after the name of the row.',
  },
  'envelope.price': {
    message: '“{row}” has a price in it ({text}), which is no measure.',
    remedy: 'Leave prices out of the chart; what the pattern cost has its own place.',
  },
  'envelope.not-a-figure': {
    message: '“{row}” has “{text}” for size {size}, which does not read as a figure.',
    remedy: 'Write it as 96, 96.5, 38 1/2 or 38–40; a dash where the envelope prints none.',
  },
  'envelope.nonsense-figure': {
    message: '“{row}” has “{text}” for size {size}, which cannot be so.',
    remedy: 'Look at the decimal mark and at the unit.',
  },
  'envelope.row-twice': {
    message: '“{row}” is there twice, with different figures.',
    remedy: 'Keep the row that is printed; where they are for different views, say for which: View A.',
  },
  'envelope.crossing': {
    message: '“{row}” is smaller in size {size} than in size {before}: the columns seem to cross.',
    remedy: 'Look whether each figure stands under its own size.',
  },
  'envelope.one-size': {
    message: 'The chart has only one size, {size}.',
    remedy:
      'That is enough to judge by, but there is nothing to choose or to blend to. Look whether others are printed.',
  },
  'envelope.view-new': {
    message: 'The chart names {view}, which the pattern did not have; it is added.',
    remedy: 'Look whether it is a view of this pattern, and give it its name.',
  },
  'envelope.stars-usual': {
    message: 'One star is read as without nap, two as with nap, three or both as either.',
    remedy: 'If the envelope says otherwise, paste its line about the stars above the chart.',
  },
  'envelope.one-for-all': {
    message: 'One figure is taken for every size: “{text}”.',
    remedy: 'Mend the row below if some size needs another.',
  },
  'envelope.line-left-out': {
    message: 'Left out, because it is no row of the chart: “{text}”.',
    remedy: 'If it holds a measure, write it as a row with a figure for every size.',
  },
  'envelope.units-disagree': {
    message: '“{row}” in size {size} is {taken} in one unit and {other} in the other; the first is taken.',
    remedy: 'Look which of the two the envelope prints so.',
  },
  'envelope.units-one-empty': {
    message: '“{row}” in size {size} has a figure in one unit and none in the other.',
    remedy: 'Look whether a figure was left out.',
  },
  'envelope.doubt-unit-row': {
    message: '“{row}” begins with {figure}: in the other unit it would be a likely {turned}.',
    remedy: 'Look whether the envelope prints this row in inches or in centimetres.',
  },
  'envelope.doubt-unit': {
    message: '“{row}” is {figure} in size {size}: in the other unit it would be a likely {turned}.',
    remedy: 'Look whether this figure was entered in inches for centimetres, or the other way round.',
  },
  'envelope.doubt-width-unit': {
    message: 'A width of {width} is none cloth is woven in; in the other unit it would be {turned}.',
    remedy: 'Look whether the width is printed in inches or in centimetres.',
  },
  'envelope.doubt-impossible': {
    message: '“{row}” is {figure} in size {size}; nobody’s is under {low} or over {high}.',
    remedy: 'Look at the figure, its unit and its decimal mark.',
  },
  'envelope.doubt-falls': {
    message: '“{row}” is smaller in size {size} than in size {before}.',
    remedy: 'Look whether the figures stand under their own sizes, or two have changed places.',
  },
  'envelope.doubt-uneven': {
    message: '“{row}” is {figure} in size {size}; by the sizes beside it, about {likely} would be likely.',
    remedy: 'Look whether it is printed so, or a digit was missed or turned round.',
  },
  'envelope.doubt-order': {
    message: '“{row}” is {figure} in size {size} and the {other} is {under}: the second is hardly the larger.',
    remedy: 'Look whether the two rows have changed places.',
  },
  'envelope.doubt-cup': {
    message:
      'In size {size} the bust is {cup} more than the upper bust, but the pattern is said to be drafted for {drafted}.',
    remedy: 'Look at both rows and at what the envelope says of the cup.',
  },
  'envelope.doubt-under-body': {
    message: '“{row}” is finished {figure} in size {size}, under the {body} of the body it goes round, in woven cloth.',
    remedy:
      'Look whether it is a finished measurement, whether the pattern is for knits, and whether it stands in the right row.',
  },
  'envelope.doubt-under-stretch': {
    message:
      '“{row}” is finished {figure} in size {size}; a knit of this stretch wants {least} round a body of {body}.',
    remedy: 'Look at the figure, and at how far the envelope says the knit must stretch.',
  },
  'envelope.doubt-hip-under-waist': {
    message: '“{row}” is finished {figure} in size {size}, less than the waist of {waist}.',
    remedy: 'Look whether the two rows have changed places.',
  },
  'envelope.doubt-cloth-falls': {
    message: '{view}: in cloth {width} wide size {size} needs less than size {before}.',
    remedy: 'Look whether the lengths stand under their own sizes.',
  },
  'envelope.doubt-cloth-narrow': {
    message: '{view}: size {size} needs {figure} of cloth {width} wide, less than the {than} of cloth {other} wide.',
    remedy: 'Look whether the two widths have changed places.',
  },
  'envelope.doubt-cloth-nap': {
    message:
      '{view}: laid all one way, size {size} needs {figure}, less than the {than} it needs when pieces may be turned.',
    remedy: 'Look whether with and without nap have changed places.',
  },
  'envelope.doubt-allowance': {
    message: 'A seam allowance of {allowance} is unusual.',
    remedy: 'Look at the unit and the decimal mark; 1.5 cm or 5/8 in is common, 6 to 10 mm for knits.',
  },
  'envelope.doubt-drafted-cup': {
    message: 'A pattern drafted for a bust {cup} larger than the upper bust is unusual.',
    remedy:
      'Look whether this is the difference of the two measures, and not one of them; about 5 cm or 2 in is common.',
  },
  'envelope.doubt-drafted-stature': {
    message: 'A pattern drafted for a stature of {stature} is unusual: most lie between {low} and {high}.',
    remedy: 'Look at the unit and the decimal mark.',
  },
  'envelope.answer-place': {
    message: 'There is no such row to be asked about.',
    remedy: 'Read the chart again.',
  },
  'envelope.answer-kind': {
    message: 'That is no answer for a chart of this kind.',
    remedy: 'Choose a body measure for a body chart, a finished measurement, or the cloth’s layer and width.',
  },
};

/**
 * Words a printed chart is recognised by, each the trade's own. They are compared whole, in small letters, without
 * units, brackets and marks, and without “your”, “body”, “measurement” and, where nothing else is called so, “girth”
 * or “circumference”. What is not here is asked about.
 */
export const chartWords = {
  /** Body measures, by measure. */
  body: {
    stature: ['height', 'stature', 'body height', 'total height'],
    bustGirth: ['bust', 'chest', 'full bust', 'bust/chest', 'bust or chest', 'chest/bust'],
    upperBustGirth: ['upper bust', 'high bust', 'upper chest', 'over bust', 'overbust'],
    underBustGirth: ['under bust', 'underbust', 'under-bust', 'rib cage', 'below bust'],
    waistGirth: ['waist', 'waistline', 'natural waist'],
    abdomenGirth: ['abdomen', 'stomach', 'tummy', 'belly'],
    hipGirth: [
      'hip',
      'hips',
      'full hip',
      'full hips',
      'low hip',
      'lower hip',
      'hip/seat',
      'seat',
      'hips/seat',
      'hip (seat)',
    ],
    waistToHip: ['waist to hip', 'waist to hips', 'waist-to-hip', 'hip depth', 'waist to hip depth'],
    neckBaseGirth: ['neck', 'neck base', 'base of neck', 'collar', 'neckline'],
    // A shoulder width may be of one shoulder or from point to point: it is asked about.
    shoulderLength: ['shoulder', 'shoulder length', 'shoulder seam', 'single shoulder'],
    shoulderDrop: ['shoulder drop', 'shoulder slope'],
    acrossBack: ['across back', 'back width', 'width across back', 'cross back'],
    acrossFront: ['across front', 'across chest', 'front width', 'chest width', 'cross front'],
    armholeDepth: ['armhole depth', 'depth of armhole', 'scye depth', 'armscye depth'],
    backWaistLength: [
      'back waist length',
      'back waist',
      'back waist lgth',
      'nape to waist',
      'nape to back waist',
      'neck to waist',
      'back neck to waist',
      'centre back to waist',
      'center back to waist',
      'centre back length to waist',
      'back length to waist',
      'back-neck to waist',
      'back length',
      'back bodice length',
    ],
    frontWaistLength: [
      'front waist length',
      'front waist',
      'neck point to waist',
      'shoulder to waist',
      'front length to waist',
    ],
    bustDepth: ['bust depth', 'bust point depth', 'neck point to bust point', 'shoulder to bust point'],
    bustSpan: ['bust span', 'bust point to bust point', 'point to point'],
    upperArmGirth: ['upper arm', 'upper arms', 'bicep', 'biceps', 'top arm'],
    elbowGirth: ['elbow'],
    armLength: ['arm length', 'arm', 'sleeve length', 'shoulder to wrist', 'outside arm', 'outer arm'],
    wristGirth: ['wrist'],
    bodyRise: ['body rise', 'crotch depth', 'rise', 'seat depth', 'depth of crotch'],
    crotchLength: ['crotch length', 'crotch', 'total crotch length', 'total rise', 'crotch seam'],
    crotchLengthFront: ['front crotch length', 'crotch length front'],
    crotchLengthBack: ['back crotch length', 'crotch length back'],
    insideLeg: ['inside leg', 'inside leg length', 'inseam', 'inner leg', 'inside leg seam'],
    thighGirth: ['thigh', 'upper thigh', 'upper leg'],
    kneeGirth: ['knee'],
    calfGirth: ['calf'],
    ankleGirth: ['ankle'],
    napeHeight: ['nape height', 'nape to floor', 'back neck to floor'],
    waistHeight: ['waist height', 'waist to floor', 'side length waist to floor', 'outside leg', 'side waist to floor'],
    kneeHeight: ['knee height', 'knee to floor'],
    headGirth: ['head'],
    handGirth: ['hand'],
    heelGirth: ['heel', 'instep and heel', 'heel and instep'],
    shoulderGirth: ['shoulder girth', 'shoulder circumference', 'round the shoulders'],
  },
  /** Finished measurements; “finished” and “garment” are not part of the word. */
  finished: {
    bust: [
      'bust',
      'chest',
      'width at bust',
      'at bust',
      'bust width',
      'width at underarm',
      'width at bustline',
      'bustline',
      'bust/chest',
    ],
    waist: ['waist', 'waistline', 'width at waist', 'at waist', 'waist width', 'width at waistline', 'waistband'],
    hip: [
      'hip',
      'hips',
      'width at hip',
      'at hip',
      'hip width',
      'width at hips',
      'hipline',
      'width at hipline',
      'seat',
      'full hip',
    ],
    'upper-arm': [
      'upper arm',
      'bicep',
      'biceps',
      'sleeve width',
      'width at upper arm',
      'upper sleeve',
      'sleeve at upper arm',
    ],
    thigh: ['thigh', 'width at thigh', 'upper leg', 'thigh width'],
    knee: ['knee', 'width at knee', 'knee width', 'leg width at knee'],
    'hem-width': [
      'hem',
      'hem width',
      'width at hem',
      'hemline',
      'sweep',
      'hem sweep',
      'width at lower edge',
      'lower edge',
      'width at bottom edge',
      'leg width',
      'width of each leg',
      'width each leg',
      'leg opening',
      'leg hem',
    ],
    'sleeve-hem': ['sleeve hem', 'sleeve opening', 'cuff', 'width at wrist', 'wrist', 'sleeve width at hem'],
    'back-length': [
      'back length',
      'length',
      'centre back length',
      'center back length',
      'back length from base of neck',
      'length from base of neck',
      'back length from base of your neck',
      'back length from neck',
      'length at centre back',
      'length at center back',
      'cb length',
      'nape to hem',
      'back neck to hem',
    ],
    'front-length': [
      'front length',
      'centre front length',
      'center front length',
      'length at centre front',
      'cf length',
    ],
    'side-length': [
      'side length',
      'side length from waist',
      'length at side',
      'outside leg',
      'outseam',
      'side seam',
      'side seam length',
      'side length waist to hem',
    ],
    'sleeve-length': ['sleeve length', 'sleeve', 'length of sleeve', 'arm length'],
    'inside-leg': ['inside leg', 'inseam', 'inside leg length', 'inner leg', 'inside leg seam'],
    shoulder: ['shoulder', 'shoulder length', 'shoulder seam'],
    'across-back': ['across back', 'back width', 'width across back', 'cross back'],
    other: [],
  },
  /** Layers of cloth. */
  layers: {
    shell: [
      'fabric',
      'main fabric',
      'cloth',
      'main cloth',
      'shell',
      'self',
      'outer',
      'outer fabric',
      'main',
      'garment',
      'all fabric',
      'fabric 1',
      'main fabric 1',
      'dress',
      'top',
      'blouse',
      'shirt',
      'tunic',
      'jacket',
      'waistcoat',
      'coat',
      'skirt',
      'trousers',
      'pants',
      'shorts',
      'dungarees',
      'apron',
    ],
    lining: ['lining', 'lining fabric', 'lining cloth'],
    interfacing: ['interfacing', 'fusible interfacing', 'iron-on interfacing', 'sew-in interfacing', 'stiffening'],
    contrast: [
      'contrast',
      'contrast fabric',
      'contrasting fabric',
      'contrast cloth',
      'trim fabric',
      'contrast 1',
      'collar fabric',
    ],
  },
  /** Left away before words are compared. */
  leftAway: [
    'finished',
    'garment',
    'measurements',
    'measurement',
    'body',
    'your',
    'approx',
    'approximate',
    'approximately',
    'about',
    'the',
  ],
  /** Left away where the word alone is not another measure. */
  around: ['girth', 'circumference', 'round', 'around'],
  /** Beside a width, and nothing more than that. */
  besideWidth: ['wide', 'width'],
  /** Heads of a column that is not figures, and titles of a row of sizes. */
  heads: [
    'size',
    'sizes',
    'your size',
    'pattern size',
    'view',
    'views',
    'width',
    'fabric width',
    'cloth width',
    'measure',
    'unit',
    'nap',
  ],
  titles: [
    'size',
    'sizes',
    'measurement',
    'measurements',
    'body',
    'finished',
    'garment',
    'fabric',
    'cloth',
    'yardage',
    'inches',
    'centimetres',
    'cm',
    'metres',
    'yards',
    'in',
    'view',
    'width',
    'chart',
  ],
  /** Words by which a garment without sleeves is known. */
  sleeveless: ['sleeveless', 'no sleeves', 'without sleeves'],
  /** Said beside the one figure of a row that stands for every size. */
  everySize: ['for all sizes', 'all sizes', 'for every size', 'every size', 'each size'],
  allViews: ['all views', 'all', 'every view', 'all garments', 'views all'],
  view: 'View {letter}',
  /** What a row for every view is called in a sentence. */
  everyView: 'All views',
  prices: ['price', 'cost', 'costs', 'usd', 'eur', 'gbp', 'retail'],
} as const;

/** What stands beside an envelope's figures, and how a tissue is measured flat. */
export const envelopeWords = {
  finished: {
    bust: 'Bust',
    waist: 'Waist',
    hip: 'Hip',
    'upper-arm': 'Upper arm',
    thigh: 'Thigh',
    knee: 'Knee',
    'hem-width': 'Width at the hem',
    'sleeve-hem': 'Sleeve hem',
    'back-length': 'Back length',
    'front-length': 'Front length',
    'side-length': 'Side length',
    'sleeve-length': 'Sleeve length',
    'inside-leg': 'Inside leg',
    shoulder: 'Shoulder',
    'across-back': 'Across back',
    other: 'Another measurement',
  },
  from: { printed: 'printed on the envelope', 'measured-flat': 'measured flat on the tissue' },
  printedSo: 'It is printed so',
  flatPieces: {
    'bodice-front': 'Front',
    'bodice-back': 'Back',
    'skirt-front': 'Skirt front',
    'skirt-back': 'Skirt back',
    'leg-front': 'Trouser front',
    'leg-back': 'Trouser back',
    sleeve: 'Sleeve',
  },
  whereToMeasure: {
    bust: 'Straight across, square to the grain, about 2.5 cm below the bottom of the armhole or through the bust point where it is marked; from the centre to the side.',
    waist:
      'Straight across at the waist line or the notch for it, from the centre to the side; of a skirt or trousers along the seam line at the top.',
    hip: 'Straight across, square to the grain, at the hip line where it is marked, else 20 cm below the waist; from the centre to the side.',
    'upper-arm': 'Straight across the sleeve from underarm seam to underarm seam, just below the bottom of the cap.',
    thigh:
      'Straight across the leg, square to the grain, 2.5 cm below the point of the crotch; from inside leg to side.',
    knee: 'Straight across the leg at the knee line, or halfway between crotch and hem and 5 cm higher; from inside leg to side.',
    'hem-width':
      'Along the line the hem is folded on, not along the cut edge; follow a curve with the tape on its edge.',
    'sleeve-hem': 'Along the line the sleeve’s hem is folded on, or where the cuff is joined.',
    'back-length':
      'Down the centre back, from the neck seam line, or the waist seam line where it begins there, to the line the hem is folded on.',
    'front-length':
      'Down the centre front, from the neck seam line, or the waist seam line where it begins there, to the line the hem is folded on.',
    'side-length':
      'Along the side seam line, from the bottom of the armhole or the waist seam line to the line the hem is folded on.',
    'sleeve-length':
      'Down the middle of the sleeve, from the top of the cap to the line the hem is folded on; add a cuff’s finished width.',
    'inside-leg': 'Along the inside leg seam line, from the point of the crotch to the line the hem is folded on.',
    shoulder: 'Along the shoulder seam line, from the neck seam line to the armhole seam line.',
    'across-back': 'Straight across the back halfway down the armhole, from the centre to the armhole seam line.',
    other: '',
  },
  nowhereToMeasure: 'Such a garment has no piece to measure this on.',
  leaveOut: {
    allowances:
      'The seam allowance at each end of the tape; where the tissue shows only the cut line, that is the allowance the envelope states.',
    darts: 'What each dart takes where the tape crosses it: measure from leg to leg there.',
    pleats: 'What each pleat or tuck folds away: from fold line to placement line, twice where it folds both ways.',
    gathers: 'What is gathered up: take the length it is gathered to, such as the band or the yoke it joins.',
    overlap: 'What laps over: begin at the centre line, not at the edge, where a front buttons or wraps.',
    facing: 'A facing or button stand cut in one with the front: begin at the centre line.',
    hem: 'The hem turned up: end at the line it is folded on.',
    casing: 'A casing for elastic turned down at the top: begin at the line it is folded on.',
  },
  flatCare: [
    'Press the tissue flat with a cool, dry iron and measure on the line of your size.',
    'Measure between seam lines. A piece on the fold, or cut as a pair, counts twice round the body; round one arm or leg it counts once.',
    'Measure side panels, yokes and godets that the line runs over as well, each as a piece of its own.',
  ],
} as const;
