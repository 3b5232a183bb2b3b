import type { HouseWords } from './types.ts';

export const trousersWords = {
  name: 'Trousers',
  about:
    'Woven trousers to the waist: a flat front on a straight interfaced band, a back gathered on elastic, pockets in the side seams, a concealed zip in the left side that opens band and seam to below the hip. The waist is measured with the back gathered on its elastic, as worn; laid flat, the back is wider.',
  views: {
    straight: { name: 'Straight leg', about: 'One width from knee to hem, to the floor less a finger’s breadth.' },
    cropped: { name: 'Cropped, tapered leg', about: 'Narrowed from knee to hem, ending above the ankle.' },
  },
  pieces: {
    front: 'Front leg',
    back: 'Back leg',
    pocket: 'Pocket bag',
    'front-waistband': 'Front waistband',
    'back-waistband': 'Back waistband',
  },
  work: [
    {
      do: 'prepare',
      text: 'Transfer notches and the mouth of the pocket. Fuse interfacing to the front waistband. Fuse a strip of it along the front’s pocket mouth. Neaten side, inside leg and crotch.',
    },
    {
      do: 'sew',
      text: 'Stitch a lining bag to each front, and a cloth bag to the right back, along the upper side, a hair inside the seam line; the left cloth bag waits for the zip. Press the seams towards the bags and understitch the front’s between the notches.',
    },
    {
      do: 'sew',
      text: 'Right side: stitch the seam above the mouth’s upper notch and below its lowest; the one between is the hip’s. Left side: stitch only below the end of the mouth; the zip goes above.',
    },
    {
      do: 'sew',
      text: 'Right pocket: stitch the two bags together round their edge, and tack the mouth closed. Press it to the front and tack bag and front together at the waist.',
    },
    { do: 'press', text: 'Press both side seams open over a rounded pad, from the hem to the hip.' },
    {
      do: 'sew',
      text: 'Stretch the back inside leg a little between crotch and knee until it lies on the front’s, then stitch the inside legs.',
    },
    {
      do: 'press',
      text: 'Press the inside legs open. Fold each leg on its grain line and press the crease from hem to thigh.',
    },
    {
      do: 'sew',
      text: 'Put one leg inside the other and stitch the crotch in one seam from front waist to back waist; stitch the curve a second time beside it.',
    },
    {
      do: 'sew',
      text: 'Stitch front and back band together at the right end. Ease the fronts on to the front band and stitch the back to the back band, flat.',
    },
    {
      do: 'sew',
      text: 'Stitch the concealed zip to the left side from the band’s fold to the end of the mouth: one tape to the back, the other to the edge of the cloth bag. The lining bag stays on the front, and the pocket opens in front of the zip. Close the left bags.',
    },
    {
      do: 'sew',
      text: 'Fold the back band along its length and stitch its inner edge down as a casing. Draw the elastic in and stitch it across both ends, on the band’s end seams.',
    },
    {
      do: 'try-on',
      text: 'Try on with the zip closed, sitting as well: settle the elastic’s length, and look for folds that point to the crotch before its curve is trimmed.',
    },
    {
      do: 'finish',
      text: 'Fold the front band over its seam and fell it down inside, over the elastic’s ends and the zip’s tape. Stitch the back band through elastic and cloth in the ditch at each side.',
    },
    { do: 'try-on', text: 'Try on with the shoes they are for, and mark the hems.' },
    { do: 'finish', text: 'Turn up the hems and fell them by hand; press the creases again up to the thigh.' },
  ],
} as const satisfies HouseWords;

export const trousersMenWords: HouseWords = { ...trousersWords, name: 'Trousers, men’s sizes' };
