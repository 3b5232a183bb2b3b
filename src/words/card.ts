/** What stands on alteration cards. `{each}` is an amount on one piece; `{total}`, made of it, is in all. */
export const cardWords = {
  places: {
    'above-waist': 'above the waist',
    'below-waist': 'below the waist',
    rise: 'in the rise',
    leg: 'in the leg',
    sleeve: 'in the sleeve',
  },
  levels: { bust: 'bust', waist: 'waist', hip: 'hip' },
  finished: {
    bust: 'Bust',
    waist: 'Waist',
    hip: 'Hip',
    'upper-arm': 'Upper arm',
    thigh: 'Thigh',
    knee: 'Knee',
    'hem-width': 'Round the hem',
    'sleeve-hem': 'Sleeve hem',
    'back-length': 'Back length',
    'front-length': 'Front length',
    'side-length': 'Side length',
    'sleeve-length': 'Sleeve length',
    'inside-leg': 'Inside leg',
    shoulder: 'Shoulder',
    'across-back': 'Across the back',
    other: 'Other',
  },
  layers: { shell: 'Cloth', lining: 'Lining', interfacing: 'Interfacing', contrast: 'Contrast' },
  naps: { with: 'with nap', without: 'without nap', either: '' },
  headings: {
    amounts: 'How much',
    where: 'Where to cut',
    steps: 'What to do',
    follows: 'What follows',
    holds: 'What must stay as it was',
    finished: 'Finished measurements',
    cloth: 'Cloth needed',
    cautions: 'Take care',
    drawing: 'On a generic piece',
  },
  columns: { measure: '', before: 'before', change: 'change', after: 'after' },
  facts: 'Size {size}',
  /** A view is named as she calls it: View A, or Long sleeve. */
  factsView: 'Size {size}, {view}',
  finishedRow: '{name}: {before} → {after} ({change})',
  finishedStays: '{name}: {before}, stays',
  finishedUnknown: '{name}: {change}; what it was is not known',
  pdfSubject: 'Alteration cards',
  notKnown: 'not known',
  stays: 'stays',
  clothRow: '{layer}, {width} wide{nap}: {old} → {now}',
  clothRowSame: '{layer}, {width} wide{nap}: {old}',
  drawnFor:
    'Drawn to scale on our own {house}, drafted for the body of size {size}: your tissue has other lines, and the amounts are the same.',
  drawnOwnSize:
    'Drawn to scale on our own {house} in its nearest size: your tissue has other lines, and the amounts are the same.',
  notDrawn: 'Not drawn: {why}',
  scale: 'Drawn at 1:{scale}.',
  cutHere: 'Before: cut along red',
  foldHere: 'Before: fold red to red',
  nestHere: 'Before, in its sizes',
  before: 'Before',
  afterwards: 'After: red is new, dots as it was',
  drawingLabel: '{title}. Before and after, on a generic piece.',

  sayings: {
    // Lengthen and shorten.
    'card.lengthen': 'Lengthen {place} by {amount}',
    'card.shorten': 'Shorten {place} by {amount}',
    'card.lengthen-amount':
      '{amount} longer in all, and {amount} on each of {count} pieces: nothing is shared out, every piece takes all of it.',
    'card.shorten-amount':
      '{amount} shorter in all, and {amount} on each of {count} pieces: nothing is shared out, every piece takes all of it.',
    'card.length-purpose-above-waist':
      'For a body longer or shorter between armhole and waist than the one the pattern is drafted for.',
    'card.length-purpose-below-waist': 'For a hem that should land lower or higher, and hips that lie lower or higher.',
    'card.length-purpose-rise':
      'For a body longer or shorter from waist to seat than the one the pattern is drafted for, sitting measured.',
    'card.length-purpose-leg': 'For a leg longer or shorter than the one the pattern is drafted for.',
    'card.length-purpose-sleeve': 'For an arm longer or shorter than the one the pattern is drafted for.',
    'card.length-where-above-waist': 'Front and back, each half, and every lining and facing that reaches the waist.',
    'card.length-where-below-waist': 'Front and back, each half, and every lining and facing that reaches so far down.',
    'card.length-where-rise': 'Both fronts and both backs: between waist and hip, above the crotch curve.',
    'card.length-where-leg': 'Both fronts and both backs: below the knee, or above it if the knee itself lies too low.',
    'card.rise-crotch-more':
      'The crotch seam from waist to waist is {total} longer in all: {each} in front and {each} behind.',
    'card.rise-crotch-less':
      'The crotch seam from waist to waist is {total} shorter in all: {each} in front and {each} behind.',
    'card.rise-follows-pocket':
      'A pocket in the side seam is moved or lengthened with it; a fly and its facing take the same.',
    'card.length-where-sleeve': 'Both sleeves, and their linings: below the elbow.',
    'card.length-where-line':
      'At the printed lengthening line. Where there is none, clear of darts, pockets and curves.',
    'card.length-where-same': 'At the same level of the body on every piece, so that seams and notches still meet.',
    'card.length-mark': 'Draw the grain line on through the whole piece; mark the level to be cut.',
    'card.length-square': 'Draw the cut square to the grain, from edge to edge.',
    'card.lengthen-cut': 'Lay paper under the piece and cut it apart along the line.',
    'card.lengthen-spread':
      'Slide the lower part down along the grain until the two edges lie {amount} apart everywhere.',
    'card.lengthen-tape': 'Check that the grain is one straight line, then tape both parts down.',
    'card.shorten-line': 'Draw a second line {amount} above the first, parallel to it.',
    'card.shorten-fold':
      'Fold the lower line up on to the upper one and tape it: a pleat {half} deep, half the amount, takes out all of it.',
    'card.length-redraw':
      'Redraw the side edges: straight ones from corner to corner, curves smoothly over a hand’s breadth above and below.',
    'card.length-walk': 'Do the same to the mates; walk the seams along each other and compare them notch by notch.',
    'card.length-follows-facing': 'Facings, linings and bands that cross the line take the same amount there.',
    'card.length-follows-lining': 'A sleeve lining takes the same amount at the same place.',
    'card.length-follows-zip':
      'A zip that ends below the line is {amount} longer or shorter with it; buttons are spaced anew.',
    'card.length-follows-placket':
      'A placket or cuff keeps its size; check that its opening still ends where it is marked.',
    'card.length-no-dart':
      'Do not cut or fold through a dart, a pocket or its placement: choose a level clear of it, or move it first.',
    'card.shorten-hem':
      'Look first whether the hem alone should be higher: then shorten there instead, and the shape stays.',

    // Bust.
    'card.full-bust': 'Full bust',
    'card.small-bust': 'Small bust',
    'card.full-bust-purpose':
      'For a fuller bust than the pattern is drafted for: more width and length over the bust. Neck, shoulder, armhole and side seam stay.',
    'card.small-bust-purpose':
      'For a smaller bust than the pattern is drafted for: less width and length over the bust. Neck, shoulder, armhole and side seam stay.',
    'card.full-bust-amount':
      '{total} more in all round the bust: {each} on each half of the front ({times} halves). The back stays as it is.',
    'card.small-bust-amount':
      '{total} less in all round the bust: {each} on each half of the front ({times} halves). The back stays as it is.',
    'card.full-bust-drop':
      'The centre front grows by about {drop}, on each half the same; on your tissue it is as much as levels the hem.',
    'card.small-bust-drop':
      'The centre front loses about {drop}, on each half the same; on your tissue it is as much as levels the hem.',
    'card.bust-where-hinge':
      'On the front: from the bust point to the armhole, to its lower third, not through the seam line there.',
    'card.bust-where-dart': 'From the bust point along both legs of the side dart, drawn on to the bust point.',
    'card.bust-where-down': 'From the bust point straight down along the grain, through the hem.',
    'card.bust-where-centre': 'From the bust point square across to the centre front.',
    'card.bust-mark':
      'Draw the seam lines and the grain. Mark the bust point: where none is printed, hold the tissue against the body.',
    'card.bust-draw': 'Draw the four cuts. A piece on the fold is altered as one half.',
    'card.bust-cut':
      'Cut up from the hem to the bust point and on towards the armhole, leaving a hinge at the seam line; snip the allowance to the hinge from outside. Cut along the dart to the bust point, leaving nothing.',
    'card.full-bust-swing':
      'Swing the side out about the hinge until the cut below the bust point is {each} wide, the same from bust point to hem. The dart opens of itself.',
    'card.small-bust-swing':
      'Swing the side in about the hinge until the parts overlap by {each} below the bust point, the same from bust point to hem. The dart closes of itself.',
    'card.full-bust-level':
      'Cut across to the centre front and let the lower centre down until the hem is level: about {drop}.',
    'card.small-bust-level':
      'Cut across to the centre front and take the lower centre up until the hem is level: about {drop}.',
    'card.full-bust-level-undrawn':
      'Cut across to the centre front and let the lower centre down until the hem is level.',
    'card.small-bust-level-undrawn':
      'Cut across to the centre front and take the lower centre up until the hem is level.',
    'card.bust-dart':
      'Tape it on paper. Draw the dart anew: its point on the line midway between the legs, {near} to {far} short of the bust point, its legs equal.',
    'card.bust-redraw': 'Redraw the armhole smoothly over the hinge, and the hem from centre to side.',
    'card.bust-walk':
      'Fold the dart as it will be pressed, draw the side edge over it, and walk the side seam along the back.',
    'card.full-bust-follows-centre':
      'A front facing or band that reaches below the bust grows by the same {drop}; buttons are spaced anew.',
    'card.small-bust-follows-centre':
      'A front facing or band that reaches below the bust loses the same {drop}; buttons are spaced anew.',
    'card.full-bust-follows-centre-undrawn':
      'A front facing or band that reaches below the bust grows by as much as the centre front; buttons are spaced anew.',
    'card.small-bust-follows-centre-undrawn':
      'A front facing or band that reaches below the bust loses as much as the centre front; buttons are spaced anew.',
    'card.full-bust-follows-widths':
      'Waist, hip and hem are {total} wider in all as well. Where that is too much, take it out at the side seam or in a waist dart.',
    'card.small-bust-follows-widths':
      'Waist, hip and hem are {total} narrower in all as well. Where that is too tight, let it out at the side seam.',
    'card.bust-wide':
      'The dart becomes about {intake} wide: over {widest} it makes a sharp point. Split it in two, a few fingers apart.',
    'card.full-bust-no-dart':
      'Without a dart on your front, draw one from the side to the bust point and cut along it: it opens into a dart you then sew, or swing into gathers or the hem. In a princess seam the width goes on the side front.',
    'card.small-bust-no-dart':
      'Without a dart there is nothing to close: take the side seam in, or choose the size by the bust. In a princess seam the width comes off the side front.',
    'card.toile': 'Try it in cheap cloth first where the amount is new to you: cut cloth does not grow.',

    // Blends.
    'card.blend-out': 'Run out to size {to} at the {level}',
    'card.blend-in': 'Run in to size {to} at the {level}',
    'card.blend-several': 'Run the side seams from size {size} into other sizes',
    'card.blend-purpose':
      'For a waist or hip of another size than the shoulders: neck, shoulder and armhole stay in the starting size.',
    'card.blend-out-amount':
      '{level}: {all} more in all, about {share} at each of {count} side edges, by the finished measurements of size {to}.',
    'card.blend-in-amount':
      '{level}: {all} less in all, about {share} at each of {count} side edges, by the finished measurements of size {to}.',
    'card.blend-out-amount-by-body':
      '{level}: {all} more in all, about {share} at each of {count} side edges, by the body chart of size {to}.',
    'card.blend-in-amount-by-body':
      '{level}: {all} less in all, about {share} at each of {count} side edges, by the body chart of size {to}.',
    'card.blend-where': 'The side edges of front and back, below the armhole.',
    'card.blend-where-not': 'Nothing is cut apart: the new line is drawn from one printed size to the other.',
    'card.blend-trace': 'Trace front and back in the starting size, with its notches, darts and levels.',
    'card.blend-keep': 'Keep its side line down to the level above the one that changes.',
    'card.blend-point':
      'At the {level} mark the line of size {to}. It should lie about {share} from the starting size’s; where it lies elsewhere, go by the printed line.',
    'card.blend-draw': 'Join the marks in one smooth line that leaves the old one without a corner.',
    'card.blend-below': 'Below the last mark go on along that size’s line to the hem, and draw the hem to it.',
    'card.blend-below-leg':
      'Below the hip come back little by little to the starting size’s line at the hem, so that the leg keeps its width there.',
    'card.blend-mate':
      'Draw front and back alike: lay one on the other at the side and trace the same line where the pattern has it so.',
    'card.blend-walk': 'Walk the front’s side seam along the back’s; trim the longer at the hem.',
    'card.blend-follows-waist': 'Waistband, facing and hem are as much longer or shorter as the edges they join.',
    'card.blend-far':
      'This is far for side seams alone: share it with darts or a centre-back seam, or begin from another size.',
    'card.blend-dart': 'Where a dart lies in the side seam, fold it closed before the line is drawn over it.',

    // Upper arm.
    'card.upper-arm': 'Full upper arm',
    'card.upper-arm-purpose':
      'For an arm fuller at the top than the sleeve: width there without a longer cap or a wider wrist. The armhole stays as it is.',
    'card.upper-arm-amount':
      '{amount} more in all round the arm, and {amount} on each of {count} sleeves: about {half} on either side of its middle.',
    'card.upper-arm-shorter':
      'Each sleeve comes out about {shorter} shorter, of which the cap falls about {falls}; it is given back below the elbow.',
    'card.upper-arm-where-middle':
      'On the sleeve: down its middle, along the grain, from the top of the cap to the wrist.',
    'card.upper-arm-where-across': 'Across it, square to that, from underarm point to underarm point.',
    'card.upper-arm-where-not':
      'Not through the seam lines: a hinge stays at the top, at the wrist and at both underarms.',
    'card.upper-arm-mark': 'Draw the seam lines. Draw the two cuts, and mark where they cross.',
    'card.upper-arm-cut':
      'Cut both lines from the crossing outwards, to the seam line; snip the allowance to each hinge from outside.',
    'card.upper-arm-pull':
      'Pull the four corners at the crossing apart sideways until the gap there is {amount} wide, the same to the left and right.',
    'card.upper-arm-flat': 'Lay it flat: the cut across overlaps towards the middle, and the cap comes down.',
    'card.upper-arm-redraw':
      'Tape it on paper. Redraw the cap smoothly over its top and the wrist smoothly over its middle; draw the grain anew down the middle of the gap.',
    'card.upper-arm-give-back': 'Give back the length, about {shorter}: lengthen below the elbow, square to the grain.',
    'card.upper-arm-walk':
      'Walk the cap along the armhole from underarm to shoulder, front and back, and the underarm edges along each other.',
    'card.upper-arm-follows-lining': 'A sleeve lining is widened alike.',
    'card.upper-arm-follows-elbow': 'Elbow darts and ease stay where the elbow is; mark the level anew.',
    'card.upper-arm-ease':
      'Compare cap and armhole after redrawing: what the cap is longer must still be eased in (up to {close} in shirts and knits, {least} to {most} in woven cloth).',
    'card.upper-arm-flat-cap':
      'The cap should keep three quarters of its height. For more, let out the underarm seams and lower the armhole by as much instead.',
    'card.hold-cap': 'The length of the cap, front and back, so that it still fits its armhole.',
    'card.hold-underarm-length': 'The length of both underarm edges.',
    'card.hold-wrist': 'The wrist.',

    // Sway back.
    'card.sway-back': 'Sway back',
    'card.sway-back-purpose':
      'For a back hollow at the waist, where slack folds lie across above it: the centre back is shorter, the side seam as it was.',
    'card.sway-back-amount':
      '{amount} shorter in all at the centre back, and {amount} on each of {count} halves there; nothing at the side.',
    'card.sway-back-where': 'On the back: from the centre back to the side, at the waist.',
    'card.sway-back-where-waist-seam':
      'With a waist seam nothing is cut: lower the upper back’s waist line by the amount at the centre, to nothing at the side, square at the centre.',
    'card.sway-back-first':
      'Look at the hips first: tight hips push the cloth up into the same folds. Let those out before this.',
    'card.sway-back-mark': 'Draw the waist line across the back, square to the grain, from seam line to seam line.',
    'card.sway-back-line':
      'Mark {amount} above it at the centre back, and draw from there to the waist at the side seam line.',
    'card.sway-back-fold':
      'Fold the waist line up on to that line and tape it: {amount} is gone at the centre, nothing at the side; the lower part turns about the side.',
    'card.sway-back-redraw': 'Redraw centre back and side smoothly over the waist.',
    'card.sway-back-grain':
      'Draw the grain on from the upper part, straight; redraw darts that cross the fold from point to point.',
    'card.sway-back-walk':
      'Walk the side seam along the front, and the two halves along each other at the centre back.',
    'card.sway-back-follows-zip': 'A zip or placket in the centre back is {amount} shorter where it passes the waist.',
    'card.sway-back-fold-edge': 'A back cut on the fold cannot take this: give it a centre-back seam first.',
    'card.sway-back-out':
      'Below the waist the centre back swings out, on a piece like this about {out} at its end: it needs the seam there, or is drawn straight and as much taken off at the side.',
    'card.sway-back-purpose-hung':
      'For a back hollow at the waist, where slack folds lie across below it: the centre back is shorter, the side seam as it was.',
    'card.sway-back-where-hung':
      'On the back: along its waist edge. Nothing is cut apart; what hangs from the waist is lowered there.',
    'card.sway-back-mark-hung': 'Draw the seam line of the waist from centre back to side, its darts folded closed.',
    'card.sway-back-line-hung':
      'Mark {amount} below it at the centre back, and draw the new waist from there to the old one at the side: square to the centre, and smoothly into the side.',
    'card.sway-back-darts-hung': 'Open the darts: each ends in the new waist as wide as it was, and keeps its point.',
    'card.sway-back-walk-hung': 'Walk the new waist along its waistband or facing, notch on notch.',
    'card.sway-back-follows-band': 'Waistband or facing is as much longer or shorter as the waist it is sewn to.',
    'card.hold-back-waist': 'The width of the back at the waist.',

    // What holds, and what always follows.
    'card.hold-widths': 'Widths at bust, waist and hip.',
    'card.hold-grain': 'The grain, one straight line.',
    'card.hold-underarm': 'The two underarm edges, equal to each other.',
    'card.hold-side': 'The side seams: front and back equal, notch on notch.',
    'card.hold-inside-leg': 'The inside legs: front and back as they were to each other.',
    'card.hold-centre': 'Centre front and centre back.',
    'card.hold-neck': 'The neckline.',
    'card.hold-shoulder': 'The shoulder.',
    'card.hold-armhole': 'The length of the armhole.',
    'card.hold-armhole-all': 'Neckline, shoulder and armhole.',
    'card.hold-side-dart': 'The side seam, its dart closed.',
    'card.hold-legs': 'The legs of the dart, equal to each other.',
    'card.follows-lining': 'A lining is altered alike.',
    'card.follows-notches': 'Notches near what was redrawn are marked anew on both mates.',
    'card.allowance-unknown':
      'The envelope does not say whether seam allowance is included: find the seam line first, and measure on it.',
    'card.cloth-more':
      'An estimate from what is put in; a layout with your own pieces says it exactly. Buy the larger.',
    'card.cloth-same': 'No more than is printed, by this estimate; what a smaller piece saves shows only in a layout.',
    'card.cloth-not-drawn':
      'How much more it takes is not reckoned, because not all of it could be drawn: lay the altered pieces out before you buy.',
    'card.cloth-unknown': 'The envelope’s cloth chart is not entered: lay the altered pieces out before you buy.',
  },
} as const;
