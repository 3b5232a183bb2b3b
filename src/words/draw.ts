import type { ProblemCatalogue } from './catalogue.ts';

/** Drawing refuses nothing: what it is given has been checked before. */
export const drawProblems: ProblemCatalogue = {};

/** What stands in drawings, and what a screen reader says of them. `{name}` is filled by `fill`. */
export const drawWords = {
  // What a piece is cut from, and how many times.
  cut: 'Cut {count} of {layer}',
  cutPairs: 'Cut {count} of {layer}, half of them mirrored',
  cutPair: 'Cut {count} of {layer}, one mirrored',
  cutOnFold: 'Cut {count} of {layer}, on the fold',
  layer: { shell: 'cloth', lining: 'lining', interfacing: 'interfacing' },
  size: 'Size {size}',
  grain: 'Straight grain',
  onFold: 'On the fold',
  allowance: 'Allowances included: {allowance}',
  allowanceAll: 'Seam allowance {allowance} included',
  allowanceNone: 'No seam allowance',
  edgeAllowance: '{edge} {allowance}',
  edgeNoAllowance: '{edge} none',
  seamAllowance: 'seams {allowance}',
  lengthenOrShorten: 'Lengthen or shorten here',
  foldHere: 'Fold',
  zipEnd: 'zip to here',

  // Screen reader labels.
  pieceLabel: '{name}. {cut}.',
  piecesLabel: 'The pieces of the garment, laid side by side: {names}.',
  beforeAfterLabel: '{name} before and after its alterations. {changes}',
  nestLabel: '{name}: all sizes of each piece, one within the other.',
  sketchLabel: '{name}: flat sketch, front and back.',
  sketchFront: '{name}, front',
  sketchBack: '{name}, back',
  contactSheetLabel: 'Contact sheet of {count} garments.',
  pieceGone: '{name}, no longer a piece',
  nothingChanged: 'Nothing changed on this piece.',

  // Before and after.
  changedEdge: '{edge} {amount}',
  changedLevel: '{level} width {amount}',
  amountsPerPiece: 'Each amount is for one piece, as drawn.',
  longer: '{edge} {amount} longer',
  shorter: '{edge} {amount} shorter',
  wider: '{level} {amount} wider',
  narrower: '{level} {amount} narrower',
  notchMoved: 'notch “{notch}” moved by {amount}',
  movedNotch: 'Notch moved {amount}',

  // Where a piece was cut, by the number of the step.
  cutOnly: '{step}: cut here',
  cutPutIn: '{step}: {amount} put in',
  cutOpened: '{step}: opened {amount} at its end',
  cutTakenOut: '{step}: {amount} taken out',
  hingeHere: '{step}: hinge',

  // Overlays to lay on the tissue.
  overlayOf: '{name}: overlay for the tissue',
  registerHere: 'Register here {number}',
  overlayLay:
    'Lay the crossed squares over the same places of the tissue, firm line on firm line; tape it down. Dotted: the old lines. Broken with a number: where that step cut the piece, as the steps before it had left it.',
  overlayWhole:
    'Too little of the old piece is left to lay this by: it is the whole piece. Cut it in place of the old one.',

  // Seam walks.
  meets: 'meets',
  meetsEased: 'meets, with {amount} eased in',
  meetsGathered: 'meets, with {amount} gathered in',
  meetsPleated: 'meets, with {amount} folded into pleats',
  meetsStretched: 'meets, stretched by {amount}',
  tooLong: 'does not meet: {amount} too long',
  tooShort: 'does not meet: {amount} too short',
  notchApart: 'notches {amount} apart',
  restLonger: '{amount} longer',
  rolledTo: '{seam}, rolled to {at}',
  walkLabel: '{seam}: {verdict}. {notches}',
  notchesMeet: 'All notches meet.',
  notchesMiss: 'Notches that do not meet: {count}.',
  noNotches: 'It has no notches.',
  // Layouts.
  layoutLabel: 'Cutting layout, {used} of cloth {width} wide: {pieces}.',
  fromEnd: '{fromEnd} from the end',
  fromSelvage: '{fromSelvage} from the selvage',
  grainFromSelvage: 'grain {fromSelvage} from the selvage',
  selvage: 'Selvage',
  selvages: 'Both selvages',
  foldOfCloth: 'Fold of the cloth',
  used: '{used} used',
  usedOf: '{used} used of {inHand}',
  shortOf: '{used} needed, {inHand} in hand: it does not fit',
  twice: 'two layers',
  opened: 'opened out',
  turnedOver: 'turned over',

  // Ease.
  easeLabel: 'Ease of each size against what is usual. {levels}',
  easeLevelLabel: '{level}: size {size} has {ease} of ease, {verdict}; usual is {low} to {high}.',
  easeLevelUnknown: '{level}: of size {size} it is not known; usual is {low} to {high} of ease.',
  easeUnknown: 'size {size}: not known',
  easeOfSize: 'size {size}: {ease}, {verdict}',
  bodyEstimated: 'body estimated, not measured',
  noEase: 'no ease',

  // Edges and seams. What is not named here is read off the pattern's own names.
  edgeNames: {
    'centre-front': 'centre front',
    'centre-back': 'centre back',
    side: 'side seam',
    outer: 'outer edge',
    inner: 'inner edge',
  },
  edgeParts: { front: 'front', back: 'back', left: 'left', right: 'right' },
  edgePart: '{edge}, {part}',
  edgeOfPlain: '{piece} {edge}',
  edgeOfNamed: '{piece}, {edge}',
  seamTo: '{a} to {b}',
  seamInto: '{a}, into {b}',
  seamAt: '{a} to {b}, at the {edge}',
  seamMirrored: '{a}, to its mirror image',
  seamParts: '{edge}, {a} to {b}',
  mirrorImage: 'Its mirror image',
  dart: 'dart',
  notchOn: 'Notch {name} on the {edge}',
} as const;
