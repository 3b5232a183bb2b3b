import type { HouseWords } from './types.ts';

export const skirtWords = {
  name: 'A-line skirt',
  about:
    'A lined A-line skirt on a straight waistband: darts front and back, concealed zip at the centre back, a hook on the band. It follows the hip and falls away from it to the hem.',
  views: {
    knee: { name: 'Knee length', about: 'The hem just below the knee.' },
    pockets: { name: 'Knee length with pockets', about: 'As the knee length, with pockets in the side seams.' },
    midi: { name: 'Midi', about: 'The hem below the calf, with the same flare carried on.' },
  },
  pieces: {
    front: 'Front',
    back: 'Back',
    'lining-front': 'Front lining',
    'lining-back': 'Back lining',
    waistband: 'Waistband',
    pocket: 'Pocket bag',
  },
  work: [
    {
      do: 'prepare',
      text: 'Cut the lining in viscose twill or taffeta. Transfer dart points, notches, the zip’s end and the tucks of the lining. Fuse interfacing to the whole waistband. Neaten sides and centre back of the cloth.',
    },
    {
      do: 'prepare',
      text: 'Fuse a strip of interfacing along the front’s pocket mouths, that they do not stretch.',
      views: ['pockets'],
    },
    {
      do: 'sew',
      text: 'Stitch the darts from the waist to the point, the last stitches along the fold; knot the ends.',
    },
    { do: 'press', text: 'Press the darts towards the centre over a rounded pad.' },
    {
      do: 'sew',
      text: 'Stitch the lining’s pocket bags to the front and the cloth’s to the back, from the waist to the end of the mouth; understitch the front ones.',
      views: ['pockets'],
    },
    {
      do: 'sew',
      text: 'Stitch the concealed zip to the centre back down to its notch, then the seam below it.',
    },
    { do: 'sew', text: 'Join the sides.', views: ['knee', 'midi'] },
    {
      do: 'sew',
      text: 'Bags laid out, sew the sides from the waist to the upper mark of the mouth, and from the mouth’s end to the hem; then the bags round to one another. Fold them to the front and baste them to its waist.',
      views: ['pockets'],
    },
    { do: 'press', text: 'Press the seams open, over the hip on the pad, so that the curve is kept.' },
    {
      do: 'try-on',
      text: 'Try it on, the waist pinned to a tape: sit down in it, look at side seams and darts, and take in or let out at the side.',
    },
    {
      do: 'sew',
      text: 'Join the lining’s sides, and its centre back below the notch. Fold the tucks at the waist and baste them.',
    },
    {
      do: 'sew',
      text: 'Hang the lining inside the skirt, wrong sides together, seams on seams; baste it along the waist and turn it in beside the zip.',
    },
    {
      do: 'sew',
      text: 'Stitch the waistband’s outer edge to the skirt, notches on sides and centre front, the underlap running on beyond the zip.',
    },
    {
      do: 'press',
      text: 'Press the seam into the band, fold the band, stitch its ends, turn, and fell the inside edge over the lining.',
    },
    { do: 'sew', text: 'Sew on hook and bar, or work a buttonhole, so that the band closes without a step.' },
    {
      do: 'try-on',
      text: 'Let the skirt hang a day on its band, then level the hem from the floor with the shoes it is worn with.',
    },
    {
      do: 'finish',
      text: 'Hem the skirt by hand; hem the lining so that it ends 2 cm higher. Catch it to the zip tape.',
    },
    { do: 'press', text: 'Press the hem from inside, without a line showing through.' },
  ],
} as const satisfies HouseWords;
