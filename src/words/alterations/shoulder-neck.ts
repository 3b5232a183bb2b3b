import { byHalves, inAll } from './amounts.ts';
import type { FamilyWords, SayAmount } from './family.ts';

type Params = Readonly<Record<string, unknown>>;

const amountOf = (params: Params): number => Number(params['amount'] ?? 0);

/** How much, said without its sign, and the word for its direction. */
const told = (params: Params, say: SayAmount, more: string, less: string): string =>
  `${say(Math.abs(amountOf(params)))} ${amountOf(params) < 0 ? less : more}`;

const where = (params: Params): string => (params['where'] === 'back' ? 'back' : 'front');

export const shoulderNeckWords: FamilyWords = {
  alterations: {
    'shoulder-width': {
      name: 'Shoulders broader or narrower',
      about:
        'Makes each shoulder longer or shorter at the armhole, on front, back and yoke; neckline and side seam stay. For shoulders broader or narrower than the pattern’s.',
      source: 'Fitting manuals’ chapters on broad and narrow shoulders.',
      parameters: { amount: 'Each shoulder wider by' },
      more: 'Widen',
      less: 'Narrow',
      sentence: (step, say) =>
        `${byHalves(step, 'shoulders: each', 'shoulder')} ${told(step.params, say, 'wider', 'narrower')}${inAll(step, say, 2)}`,
    },
    'shoulder-slope': {
      name: 'Shoulders squarer or more sloping',
      about:
        'Raises or lowers each shoulder at its outer end; the whole armhole goes with it, so the sleeve fits as before, and the side seam is longer or shorter by as much. For folds from the neck to the armhole, or at the neck.',
      source:
        'Fitting manuals’ chapters on square and sloping shoulders, those that move the whole armhole: moving the shoulder alone changes how deep the armhole is, and asks for another sleeve.',
      parameters: { amount: 'Squarer by' },
      more: 'Raise',
      less: 'Lower',
      sentence: (step, say) =>
        `${byHalves(step, 'shoulders: each', 'shoulder')} ${told(step.params, say, 'squarer', 'more sloping')} at its outer end`,
    },
    'forward-shoulder': {
      name: 'Shoulder seams forward or back',
      about:
        'Moves the outer end of each shoulder seam towards the front: the front loses what the back gains, and the sleeve turns forward with it. For shoulders that lie forward of the seam.',
      source: 'Fitting manuals’ chapters on the forward shoulder.',
      parameters: { amount: 'Forward by' },
      more: 'Forward',
      less: 'Back',
      sentence: (step, say) =>
        `${byHalves(step, 'shoulder seams: each', 'shoulder seam')} ${told(step.params, say, 'forward', 'back')} at its outer end, and the notch of the cap with it`,
    },
    'neck-gape': {
      name: 'Gaping neckline',
      about:
        'Folds out what a neckline is too long by as a wedge: into the bust dart or the back shoulder dart where there is one, else to nothing at the edge across. For a neckline that stands off the body.',
      caution: 'A stretched neckline gapes too: stay the edge with a tape before you judge it.',
      source: 'Fitting manuals’ wedge for a gaping neckline, turned into a dart where there is one.',
      parameters: { amount: 'Shorter on each half by', where: 'Front or back' },
      sentence: (step, say) =>
        `gaping neckline: ${say(amountOf(step.params))} folded out on ${byHalves(step, 'each half of the', 'the')} ${where(step.params)}${inAll(step, say, 2)}`,
    },
    'armhole-gape': {
      name: 'Gaping armhole',
      about:
        'Folds out what the front armhole is too long by as a wedge to nothing at the bust point: the bust dart opens by it, or the princess seam takes it. For an armhole that stands off in front.',
      caution: 'An armhole often gapes because the bust needs more room: look at that first.',
      source: 'Fitting manuals’ wedge for a gaping armhole, turned into the bust dart or the princess seam.',
      parameters: { amount: 'Shorter on each half by' },
      sentence: (step, say) =>
        `gaping armhole: ${say(amountOf(step.params))} folded out${byHalves(step, ' of each', '')}, on the front`,
    },
    'armhole-depth': {
      name: 'Armhole deeper or higher',
      about:
        'Lowers or raises the underarm along the side seam on front and back; the cap of the sleeve is fitted to it. For an armhole that cuts in under the arm, or one that gapes there.',
      caution: 'A deeper armhole binds when the arm is lifted: lower it only as far as it cuts in.',
      source: 'Pattern-cutting manuals on the depth of the armhole and the cap drafted to it.',
      parameters: { amount: 'Deeper by' },
      more: 'Lower',
      less: 'Raise',
      sentence: (step, say) =>
        `${byHalves(step, 'armholes: each', 'armhole:')} ${told(step.params, say, 'deeper', 'higher')} at the underarm`,
      per: 'at each underarm',
      perOne: 'at the underarm',
    },
    'neckline-depth': {
      name: 'Neckline lower or higher',
      about:
        'Draws the neckline of the front or the back lower at the centre, or higher; it stays where it is at the shoulder. Facings, bands and collars follow.',
      caution:
        'A neckline without an opening has to pass over the head, a child’s above all: measure it before making it higher.',
      source:
        'Pattern-cutting manuals on drawing necklines: square to the centre, and through in one line at the shoulder.',
      parameters: { amount: 'Lower by', where: 'Front or back' },
      more: 'Lower',
      less: 'Raise',
      sentence: ({ params }, say) => `neckline: ${told(params, say, 'lower', 'higher')} at the centre ${where(params)}`,
      per: 'at the centre',
    },
    'neckline-width': {
      name: 'Neckline wider or narrower',
      about:
        'Moves the neckline out along the shoulder on front and back alike, or in towards the neck. Facings, bands and collars follow; the shoulder is shorter or longer by as much.',
      caution:
        'A neckline without an opening has to pass over the head, a child’s above all: measure it before making it narrower.',
      source: 'Pattern-cutting manuals on drawing necklines: front and back moved alike along the shoulder.',
      parameters: { amount: 'Wider at each shoulder by' },
      more: 'Widen',
      less: 'Narrow',
      sentence: (step, say) =>
        `neckline: ${told(step.params, say, 'wider', 'narrower')} at ${byHalves(step, 'each', 'the')} shoulder${inAll(step, say, 2)}`,
    },
  },
  choices: { front: 'At the front', back: 'At the back' },
  holds: {
    'neck-shorter': 'The neckline becomes shorter by the amount on each half.',
    'armhole-shorter': 'The armhole becomes shorter by the amount.',
    'armhole-total': 'Front and back armhole together keep their length.',
    'shoulder-grows': 'Each shoulder changes by the amount, on front and back alike.',
    'shoulder-shorter': 'The shoulder changes by the amount, on front and back alike.',
  },
  follows: {
    collar: 'Collars, stands, bands and hoods are made as much longer or shorter.',
    'armhole-whole': 'The armhole moves whole and keeps its length, or nearly; the sleeve fits it as before.',
    'cap-notch': 'The place of the cap that meets the shoulder moves with the seam.',
    'dart-opens': 'A dart that the wedge runs into opens by it.',
    cap: 'The cap of the sleeve is fitted to the armhole again where its ease does not allow the difference.',
    'lining-alike': 'The lining is altered alike.',
  },
  held: {
    'neck-shorter': 'The neckline becomes shorter by the amount',
    'armhole-shorter': 'The armhole becomes shorter by the amount',
    'armhole-total': 'Front and back armhole together keep their length',
    'shoulder-grows': 'The shoulder changes by the amount',
    'shoulder-shorter': 'The shoulder changes by the amount',
  },
  changed: {
    armhole: 'Length of the armhole on this piece',
    'head-ease': 'Sleeve-head ease',
    neckline: 'Length of the neckline on this piece',
  },
  problems: {
    'alter.wedge-too-short': {
      message: 'From the edge of “{piece}” to where the wedge would end is too short for so much.',
      remedy: 'Choose a smaller amount.',
    },
    'alter.no-bust-shaping': {
      message: 'No front of this garment with an armhole has a bust dart or a princess seam over the bust.',
      remedy: 'Ease the armhole on to a tape, or give the front a bust dart first.',
    },
    'alter.shoulder-too-steep': {
      message: 'The shoulder of “{piece}” is too short to be so steep.',
      remedy: 'Choose a smaller amount.',
    },
    'alter.no-shoulder-seam': {
      message: 'This garment has no seam over the shoulder from neck to armhole.',
      remedy: 'A raglan sleeve takes the shoulder in its own dart or seam: alter it there.',
    },
    'alter.no-neckline': {
      message: 'This garment has no neckline on front and back.',
      remedy: 'Choose a pattern that reaches the neck.',
    },
    'alter.no-armhole': {
      message: 'This garment has no armhole with a sleeve set into it.',
      remedy: 'Choose a pattern with set-in sleeves.',
    },
    'alter.dart-in-edge': {
      message: 'A dart opens in the line of “{piece}” that would be drawn anew.',
      remedy: 'Move the dart to another edge first.',
    },
    'alter.edge-used-up': {
      message: 'An edge of “{piece}” is not long enough to take {by} off.',
      remedy: 'Choose a smaller amount.',
    },
    'alter.neck-too-flat': {
      message: 'The neckline of “{piece}” would be nearly level with its shoulder.',
      remedy: 'Raise it by less.',
    },
  },
};
