import type { ProblemCatalogue } from './catalogue.ts';

export const fitProblems: ProblemCatalogue = {
  'fit.measure-missing': {
    message: 'Too little is known of the body to choose a size: {measures} is missing.',
    remedy: 'Measure it and enter it; the rest can be estimated until it is measured.',
  },
  'fit.size-unknown': {
    message: '{pattern} has no size {size}.',
    remedy: 'Choose one of its sizes: {sizes}.',
  },
  'fit.chart-incomplete': {
    message: 'The body chart of {pattern} does not give the measure its size is chosen by.',
    remedy: 'Add the bust (or hip, or stature) of every size to the pattern’s body chart.',
  },
};

export const fitWords = {
  verdicts: { 'too-tight': 'too tight', snug: 'snug', usual: 'usual', roomy: 'roomy' },
  ease: { skims: 'skims', easy: 'easy', roomy: 'roomy', full: 'full' },
  levels: {
    bust: 'Bust',
    waist: 'Waist',
    abdomen: 'Abdomen',
    hip: 'Hip',
    'upper-arm': 'Upper arm',
    elbow: 'Elbow',
    'across-back': 'Across back',
    wrist: 'Wrist',
    thigh: 'Thigh',
    knee: 'Knee',
    hem: 'Hem',
  },
  /** Where a finished figure came from. */
  from: {
    printed: 'printed on the envelope',
    'measured-flat': 'measured flat on the tissue',
    pieces: 'computed from the pieces',
  },
  recommended: 'Recommended',
  otherWay: 'Another way',
  beliefs: 'Usual ease is a starting belief; what this wearer liked before outranks it.',
  /** How an ease lies to a border: printed alike, it is only just under. */
  under: { clearly: 'under', just: 'just under' },
  so: {
    exactly: 'So',
    markable: 'So, to what can be marked,',
    partly: 'The difference is {gap}; this alteration makes it',
  },
  /** One sentence a reason, by its code. */
  reasons: {
    'fit.size-by-upper-bust':
      'Size {size}: the upper bust of {body} is nearest to its {chart} (its bust of {bust} less the {cup} between bust and upper bust it is drafted for). Neck, shoulders and armholes are the hardest to alter.',
    'fit.size-up-for-dart':
      'Size {size} rather than {from}, which it is nearly as near to: from {from} the full bust would make the bust dart wider than one dart should be.',
    'fit.wants-knit':
      'Caution: {pattern} is drafted for a knit that stretches by at least {needed} %, and {cloth} is woven, with {has} % across. In it the garment may not go on, nor give where it should.',
    'fit.wants-woven':
      'Caution: {pattern} is drafted for woven cloth, and {cloth} is a knit. It will give and hang closer than drafted; seams that must not stretch want a stay.',
    'fit.stretch-too-little':
      'Caution: {pattern} needs cloth that stretches by at least {needed} % across, and {cloth} stretches by {has} %. It will sit tighter than drafted.',
    'fit.size-by-bust': 'Size {size}: the bust of {body} is nearest to its {chart} on the chart.',
    'fit.size-by-hip': 'Size {size}: the hip of {body} is nearest to its {chart} on the chart.',
    'fit.size-by-waist':
      'Size {size}: the waist of {body} is nearest to its {chart} on the chart; the hip is full by design.',
    'fit.size-by-stature': 'Size {size}: a child goes by stature, and {body} is nearest to its {chart}.',
    'fit.size-by-finished-bust':
      'Size {size}: its finished bust of {chart} is nearest to the {body} that body and liked ease make.',
    'fit.size-by-full-bust': 'Size {size}: what the full bust of {bust} alone would say.',
    'fit.size-next-larger': 'Size {size}: the next size up.',
    'fit.size-next-smaller': 'Size {size}: the next size down.',
    'fit.size-chosen': 'Size {size}: your own choice.',
    'fit.size-close-call': 'A close call between {size} and {next}: either can be the start.',
    'fit.size-outside-chart': 'The body is {by} beyond size {size}, the last of the chart: expect to alter more.',
    'fit.size-up-for-stretch': 'Size {size}: a smaller one would strain this cloth beyond what it bears in wear.',
    'fit.shoulders-too-wide':
      'Neck, shoulders and armholes are drafted for an upper bust {by} larger: they will want narrowing.',
    'fit.shoulders-too-narrow':
      'Neck, shoulders and armholes are drafted for an upper bust {by} smaller: they will want widening.',
    'fit.bust-none': 'No bust alteration: it would be {wanted} in all, too little to be worth the work.',
    'fit.bust-spare': 'No bust alteration: there is {spare} to spare in all, and under {least} that is worn as ease.',
    'fit.bust-usual':
      'No bust alteration: with {ease} of ease the bust is within what is usual for this pattern, {low} to {high}.',
    'fit.bust-full':
      'The bust of {bust} with {liked} of ease needs {needs}; the size measures {finished} finished. {so} {total} more in all, {perFront} on each half of the front.',
    'fit.bust-small':
      'The bust of {bust} with {liked} of ease needs {needs}; the size measures {finished} finished. {so} {total} less in all, {perFront} on each half of the front.',
    'fit.bust-full-by-chart':
      'The bust of {bust} is set against the {finished} the size is drafted for; what the size measures finished is not known, so its ease stays as designed. {so} {total} more in all, {perFront} on each half of the front.',
    'fit.bust-small-by-chart':
      'The bust of {bust} is set against the {finished} the size is drafted for; what the size measures finished is not known, so its ease stays as designed. {so} {total} less in all, {perFront} on each half of the front.',
    'fit.bust-dart-unseen':
      'Whether the front has a side dart to open or close is seen on the tissue; the card supposes one, and says what to do without.',
    'fit.bust-dart-wide':
      'The bust dart becomes {intake} wide by that; over {widest} part of it should be moved to another edge (Move a dart).',
    'fit.bust-beyond':
      'More than {most} on one front is past what a side dart shapes; {left} in all is left over. Share it with a second dart, or see the other way.',
    'fit.bust-small-beyond':
      'The dart takes out no more than {most} on each front; {left} in all is left to the side seams, or to wear as it is.',
    'fit.bust-small-beyond-unseen':
      'A side dart such as a front of this size usually has takes out no more than {most} on each front; {left} in all is left to the side seams, or to wear as it is. If yours is deeper, enter more on the card.',
    'fit.bust-shallow-dart-unseen':
      'The bust has {wanted} to spare in all, but the side dart such a front usually has takes out only {most} on each front. Take the side seams in, or see the other way.',
    'fit.bust-shallow-dart':
      'The bust has {wanted} to spare in all, but the dart is too shallow to take it out: only {most} on each front. Take the side seams in, or see the other way.',
    'fit.bust-knit': 'No bust alteration: the knit gives.',
    'fit.bust-no-dart':
      'The bust wants {wanted} in all, but this front has no bust dart to open; choose the size by the bust instead.',
    'fit.length-back-waist':
      'Back waist length is {body}, the size is drafted for {chart}: {amount} between armhole and waist.',
    'fit.length-sleeve': 'Arm length is {body}, the size is drafted for {chart}: {amount} in the sleeve.',
    'fit.length-rise': 'Body rise is {body}, the size is drafted for {chart}: {amount} in the rise, above the hip.',
    'fit.length-leg': 'Inside leg is {body}, the size is drafted for {chart}: {amount} in the leg, below the knee.',
    'fit.length-agrees': '{measure} agrees with the size, within {within}.',
    'fit.lengths-agree': '{measure} and {other} agree with the size, within {within}.',
    'fit.length-beyond':
      'The pattern has room for {amount} there; {left} is left to take above the bust, across the armholes.',
    'fit.length-not-measured': 'A length is only estimated ({measure}); measure it before altering for it.',
    'fit.length-not-on-chart':
      '{measure}: the body chart does not say what the size is drafted for. Measure the tissue flat along it and set it against the body before you cut.',
    'fit.cup-supposed':
      'The envelope does not say how much its bust is more than its upper bust; {cup} is supposed, as is common. Where it says another, enter that: it can change the size.',
    'fit.finished-unknown':
      '{level}: the envelope prints no finished measurement for size {size}, so the ease there is unknown. Measure the tissue flat across that level, seams, darts and pleats left out, and enter it.',
    'fit.finished-known-elsewhere':
      '{level}: known for size {known} only; for size {size} nothing is printed or measured, so the ease there is unknown. Measure the tissue of size {size} flat across that level, seams, darts and pleats left out, and enter it.',
    'fit.usual-construction':
      'Nobody has seen the pieces: they are counted as usual, a front and a back of two halves each and a pair of sleeves. The cutting order in the instructions says what is so.',
    'fit.usual-construction-sleeveless':
      'Nobody has seen the pieces: they are counted as usual, a front and a back of two halves each. The cutting order in the instructions says what is so.',
    'fit.usual-construction-trousers':
      'Nobody has seen the pieces: they are counted as usual, two fronts and two backs. The cutting order in the instructions says what is so.',
    'fit.level-too-tight': 'Too tight. {level}: {ease} of ease is {under} the least comfortable, {least}.',
    'fit.level-snug': 'Snug. {level}: {ease} of ease is {under} what is usual, {low} and more.',
    'fit.arm-too-tight':
      'Too tight. {level}: {ease} of ease is {under} the least comfortable, {least}. Widen each sleeve (Full upper arm), or cut the sleeves and the armholes in size {size}.',
    'fit.arm-too-tight-in-all':
      'Too tight. {level}: {ease} of ease is {under} the least comfortable, {least}. No larger size has enough: widen each sleeve (Full upper arm).',
    'fit.arm-full':
      'Too tight. {level}: {ease} of ease is {under} the least comfortable, {least}. Widen each sleeve by {amount}, as its card shows; where that is more than its cap bears, cut sleeves and armholes in a larger size.',
    'fit.mended-by-bust':
      '{level}: the size by itself is too tight, with {ease} of ease where {least} is the least; the full bust widens it as well, to {after}.',
    'fit.blend-out':
      '{level}: run out to size {size}. Let the side seams out there (Side seams let out or taken in) until the ease below is as she likes it.',
    'fit.blend-in':
      '{level}: run in to size {size}. Take the side seams in there (Side seams let out or taken in) until the ease below is as she likes it.',
    'fit.blend-out-by-card':
      '{level}: run out to size {size} on the tissue, as its card shows; front and back alike, so that the side seams still meet.',
    'fit.blend-in-by-card':
      '{level}: run in to size {size} on the tissue, as its card shows; front and back alike, so that the side seams still meet.',
    'fit.estimated': '{measure} was not measured; {length} is an estimate from the other measures.',
  },
} as const;
