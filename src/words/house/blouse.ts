import type { HouseWords } from './types.ts';

export const blouseWords = {
  name: 'Blouse',
  about:
    'A woven blouse to the hip: round neck with facings, side bust dart, back shoulder dart, centre-back zip, long set-in sleeve. Semi-fitted by its side seams.',
  views: { long: { name: 'Long sleeve', about: 'Set-in sleeve to the wrist, hemmed.' } },
  pieces: {
    front: 'Front',
    back: 'Back',
    sleeve: 'Sleeve',
    'front-facing': 'Front neck facing',
    'back-facing': 'Back neck facing',
  },
  work: [
    {
      do: 'prepare',
      text: 'Transfer notches, dart points and the zip’s end. Fuse interfacing to both facings. Neaten centre back, shoulders and sides.',
    },
    { do: 'sew', text: 'Stitch the bust darts from the side to the point, and the back shoulder darts from the seam.' },
    { do: 'press', text: 'Press bust darts down over a rounded pad, shoulder darts towards the centre.' },
    { do: 'sew', text: 'Stitch the concealed zip to the centre back down to its notch, then the seam below it.' },
    { do: 'sew', text: 'Join the shoulders, the back eased on to the front.' },
    { do: 'press', text: 'Press the shoulders open over the edge of the board, the centre back flat under a cloth.' },
    { do: 'sew', text: 'Join the facings at the shoulders, stitch them to the neck, snip, and understitch.' },
    { do: 'sew', text: 'Join the side seams.' },
    {
      do: 'try-on',
      text: 'Try it on with the zip closed: shoulders, bust dart and length. Pin what is to change before the sleeves go in.',
    },
    {
      do: 'sew',
      text: 'Run two ease threads round each sleeve head between the notches, join the underarm seam, and set the sleeve in, one notch in front and two behind.',
    },
    {
      do: 'press',
      text: 'Shrink the ease into the sleeve head with steam from inside; leave the seam towards the sleeve.',
    },
    { do: 'try-on', text: 'Try on with arms forward and raised, and mark both hems.' },
    { do: 'finish', text: 'Hem body and sleeves, catch the facings down at shoulders and zip, and press once more.' },
  ],
} as const satisfies HouseWords;
