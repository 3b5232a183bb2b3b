import type { HouseWords } from './types.ts';

export const shirtDressWords = {
  name: 'Shirt dress',
  about:
    'A woven dress buttoned from neck to hem: forward yoke, box pleat below it, side bust dart, waistband set in, gathered skirt with pockets in its sides. Easy over the bust, loose at the hip.',
  views: {
    tiered: {
      name: 'Tiered, long sleeve',
      about: 'Band collar, long sleeve pleated into a cuff, gathered tier to mid-calf.',
    },
    knee: {
      name: 'Knee length, short sleeve',
      about: 'Collar with stand, short hemmed sleeve, skirt in one length to the knee.',
    },
  },
  pieces: {
    front: 'Front',
    back: 'Back',
    yoke: 'Yoke',
    sleeve: 'Sleeve',
    cuff: 'Cuff',
    'slit-binding': 'Slit binding',
    'collar-stand': 'Collar stand',
    collar: 'Collar',
    'button-stand': 'Button stand',
    'waist-front': 'Front waistband',
    'waist-back': 'Back waistband',
    'skirt-front': 'Skirt front',
    'skirt-back': 'Skirt back',
    pocket: 'Pocket',
    'tier-front': 'Tier front',
    'tier-back': 'Tier back',
  },
  work: [
    {
      do: 'prepare',
      text: 'Transfer notches, dart points, pleat folds and buttonholes; the waistbands’ lengthwise threads run up and down, so interface them before they stretch. Fuse interfacing to collar, waistband and the outer half of the button stands.',
    },
    {
      do: 'prepare',
      text: 'Fuse the outer half of the cuffs. Mark slit and pleats on the sleeves, left and right as a pair.',
      views: ['tiered'],
    },
    {
      do: 'sew',
      text: 'Stitch the bust darts. Lay the box pleat with its folds meeting behind the centre, and tack it along the yoke seam.',
    },
    {
      do: 'press',
      text: 'Press the darts down. Press the pleat only as far as its folds are marked; below it falls free.',
    },
    {
      do: 'sew',
      text: 'Lay the back between both yokes and stitch; then the fronts to the outer yoke, and the inner yoke’s front edge over their seam.',
    },
    { do: 'press', text: 'Press both yokes up and topstitch {2 mm} from their seams.' },
    {
      do: 'sew',
      text: 'Cut the slits and bind them with the strips. Lay the pleats towards the slit and tack them.',
      views: ['tiered'],
    },
    {
      do: 'sew',
      text: 'Set the sleeves in flat, one notch in front, two behind, cap top to the yoke’s shoulder mark. Then stitch each side and sleeve in one seam down to the waist.',
    },
    {
      do: 'try-on',
      text: 'Pin the fronts edge to edge, their raw edges a stand’s width short of meeting: look at shoulders, bust dart and armhole, and where the waistband will lie.',
    },
    {
      do: 'sew',
      text: 'Join the waistband at the sides. Gather the bodice’s lower edge between the notches and stitch it to the waistband’s upper edge.',
    },
    {
      do: 'sew',
      text: 'Sew a pocket to each side of the skirt between its notches, and join the skirt’s sides round the bags; join the tier’s sides. Gather the tier’s top in quarters on to the skirt, pin notch to notch, and stitch.',
      views: ['tiered'],
    },
    {
      do: 'sew',
      text: 'Sew a pocket to each side of the skirt between its notches, and join the skirt’s sides round the bags.',
      views: ['knee'],
    },
    {
      do: 'sew',
      text: 'Gather the skirt’s top with two rows of long stitches, share it out by the quarter notches, and stitch it to the waistband.',
    },
    {
      do: 'press',
      text: 'Press both waist seams into the waistband, the tip of the iron running into the gathers and never over them.',
    },
    {
      do: 'press',
      text: 'Press the tier’s seam up into the skirt and topstitch it, so that the gathers hang.',
      views: ['tiered'],
    },
    {
      do: 'try-on',
      text: 'Try on with the fronts pinned centre to centre. Settle the hem: level from the floor, the same all round.',
    },
    { do: 'finish', text: 'Hem the skirt before the stands are sewn on: turn {10 mm}, then {20 mm}, and stitch.' },
    {
      do: 'sew',
      text: 'Sew the stands to the front edges from hem to neck, fold them, close their lower ends right sides together, and stitch the inner edge over the seam.',
    },
    {
      do: 'sew',
      text: 'Sew the collar’s outer edges, trim, turn and press it; lay it between both layers of the stand from centre front to centre front, and stitch round.',
      views: ['knee'],
    },
    {
      do: 'sew',
      text: 'Stitch both layers of the collar stand together along the upper edge and round the ends, trim the corners, and turn.',
      views: ['tiered'],
    },
    {
      do: 'sew',
      text: 'Sew the stand to the neck, its shoulder notch at the yoke’s front seam, its end flush with the button stand; stitch the inner layer over.',
    },
    {
      do: 'sew',
      text: 'Pleat each sleeve on to its cuff, the lap behind the slit; fold the cuff, close the ends and stitch the inner edge over.',
      views: ['tiered'],
    },
    { do: 'finish', text: 'Turn up the sleeve hems and stitch.', views: ['knee'] },
    { do: 'press', text: 'Press collar and stands flat from the inside before anything is cut into them.' },
    {
      do: 'finish',
      text: 'Work the buttonholes down the right stand, one at the bust’s level, across in the collar stand. Sew the buttons on the centre front.',
    },
    { do: 'finish', text: 'Work one buttonhole in each cuff, and sew its button on the lap.', views: ['tiered'] },
  ],
  cautions: [
    'Loose cotton near a flame burns fast: mind full sleeves and a full hem at stove, candle and heater, and turn the sleeves up to cook.',
  ],
} as const satisfies HouseWords;
