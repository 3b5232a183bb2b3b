import type { HouseWords } from './types.ts';

export const jacketWords = {
  name: 'Jacket',
  about:
    'A lined jacket to the hip for wool: seams from the shoulder over bust and shoulder blade shape it, a centre-back seam follows the spine, the sleeve is in two parts and bent at the elbow, two patch pockets lie over the front seams. Cut to be worn over a blouse.',
  views: {
    collar: {
      name: 'With collar',
      about: 'A turn-down collar in two layers; buttoned to the neck with five buttons, or worn open at the top.',
    },
    collarless: {
      name: 'Without collar',
      about: 'A round neck, wider and lower, turned with the facings; four buttons.',
    },
  },
  pieces: {
    front: 'Centre front',
    'side-front': 'Side front',
    'side-back': 'Side back',
    back: 'Centre back',
    sleeve: 'Top sleeve',
    'under-sleeve': 'Under sleeve',
    collar: 'Top collar',
    'under-collar': 'Under collar',
    'front-facing': 'Front facing',
    'back-facing': 'Back neck facing',
    'lining-front': 'Front lining',
    'lining-side-front': 'Side front lining',
    'lining-side-back': 'Side back lining',
    'lining-back': 'Back lining',
    'lining-sleeve': 'Top sleeve lining',
    'lining-under-sleeve': 'Under sleeve lining',
    pocket: 'Patch pocket',
  },
  work: [
    {
      do: 'prepare',
      text: 'Steam the wool and let it dry flat. Cut shell, lining and interfacing; tack every notch, the centre front, buttonholes and pocket lines through both layers.',
    },
    {
      do: 'prepare',
      text: 'Fuse the centre fronts, front and back facings, and the collar, after a trial on a scrap: the cloth must stay soft.',
    },
    {
      do: 'sew',
      text: 'Run an ease thread along each side front between the notches over the bust. Stitch the front princess seams from shoulder to hem with the side front on top of the ease, and the back ones.',
    },
    {
      do: 'press',
      text: 'Snip the centre front’s allowance at waist and bust, and press the seams open over a rounded pad; shrink what was eased over the bust with steam.',
    },
    { do: 'sew', text: 'Make up the pockets with their lining and stitch them to the fronts along the marks.' },
    {
      do: 'sew',
      text: 'Stitch the centre back and the shoulders, the back eased on to the front, with tape in the seam.',
    },
    {
      do: 'press',
      text: 'Press centre back and shoulders open; lay stay tape along neck and front edge just inside the seam.',
    },
    {
      do: 'try-on',
      text: 'Pin the sides and the centre front and try it on over a blouse, with the pads: shoulders, bust, waist, length. Every panel seam can still be let out or taken in.',
    },
    { do: 'sew', text: 'Stitch the sides. Turn the hem up and catch it to the interfacing or to the cloth.' },
    {
      do: 'sew',
      text: 'Join the under collar at its centre back and stitch it to the neck from centre front to centre front; stitch the top collar to the joined facings.',
      views: ['collar'],
    },
    {
      do: 'sew',
      text: 'Join collars along ends and edge, and facings to the front edges; grade the seams so that the outside layer is the longest.',
      views: ['collar'],
    },
    {
      do: 'sew',
      text: 'Join the facings at the shoulders and stitch them to front edges and neck in one seam; snip the curve and grade.',
      views: ['collarless'],
    },
    {
      do: 'press',
      text: 'Roll the seam a hair to the inside of collar, neck and fronts, and press under a cloth with a block of wood to hold the steam.',
    },
    {
      do: 'sew',
      text: 'Stretch the top sleeve’s front edge over the elbow with the iron until it is as long as the under sleeve’s, and stitch the front seam; ease the back seam over the elbow.',
    },
    {
      do: 'sew',
      text: 'Run two ease threads round each sleeve head from seam to seam over the shoulder, set the sleeve in with its seams on their marks, and stitch.',
    },
    { do: 'press', text: 'Shrink the sleeve head over the end of the board; leave the seam towards the sleeve.' },
    {
      do: 'try-on',
      text: 'Try on with arms hanging, then forward: a sleeve that swings is turned at the armhole. Mark sleeve hems and the place of the pads.',
    },
    { do: 'sew', text: 'Sew in the pads, hem the sleeves.' },
    {
      do: 'sew',
      text: 'Make up the lining: princess seams, the pleat at the centre back stitched a hand down from the neck and across the waist, shoulders, sides, sleeves set in.',
    },
    {
      do: 'sew',
      text: 'Stitch the lining to the facings from hem to hem, easing nothing. Catch it to the allowances under the arm, which it goes over.',
    },
    {
      do: 'finish',
      text: 'Fell the lining’s hems to body and sleeves two fingers above their edges, with a fold for movement. Work the buttonholes and sew the buttons on a shank.',
    },
    { do: 'press', text: 'Press once more from the inside, and let it hang a night before it is worn.' },
  ],
} as const satisfies HouseWords;
