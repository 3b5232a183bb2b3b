import type { HouseWords } from './types.ts';

const cuffed = ['long', 'pocket'] as const;

export const sweatshirtWords = {
  name: 'Sweatshirt',
  about:
    'A roomy raglan sweatshirt for fleeced or looped knits: bands at neck, cuffs and hem, the sleeve in one piece with a shoulder dart, so that it follows the shoulder.',
  views: {
    long: { name: 'Long sleeve', about: 'Long sleeves with cuffs, a band at the hem.' },
    pocket: { name: 'With pocket', about: 'As the long sleeve, with a pocket across the front, open at both sides.' },
    'three-quarter': {
      name: 'Three-quarter sleeve',
      about: 'Sleeves to below the elbow, hemmed instead of cuffed; a band at the hem.',
    },
  },
  pieces: {
    front: 'Front',
    back: 'Back',
    sleeve: 'Sleeve',
    'neck-band': 'Neck band',
    'hem-band': 'Hem band',
    cuff: 'Cuff',
    pocket: 'Pocket',
  },
  work: [
    {
      do: 'prepare',
      text: 'Let the cloth lie a night before cutting. Use a needle for knits, and try stitch and tension on a scrap stretched by a fifth: the stitches must not crack.',
    },
    {
      do: 'sew',
      text: 'Hem both openings of the pocket. Turn its other edges under, lay it to its placement line, and topstitch top, short sides and foot.',
      views: ['pocket'],
    },
    {
      do: 'sew',
      text: 'Stitch the shoulder dart of each sleeve from the neck, curving it a little outward and running out along the fold; trim it to a finger’s breadth.',
    },
    { do: 'press', text: 'Press the darts to the back over a rounded pad.' },
    {
      do: 'sew',
      text: 'Join the raglan seams, one notch in front and two behind, with stay tape in the upper half of the back seams.',
    },
    {
      do: 'press',
      text: 'Press the raglan seams towards the sleeve, and topstitch them if you like: lift the iron and set it down.',
    },
    {
      do: 'sew',
      text: 'Join the neck band into a ring, fold it along its length, and stretch it evenly on to the neck: seam to centre back, its marks to the raglan seams.',
    },
    {
      do: 'try-on',
      text: 'Pull it over the head: the band must pass without its stitches cracking and lie flat after. Lift the arms; mark the sleeve’s length.',
    },
    { do: 'sew', text: 'Stitch each side and sleeve in one seam, from the hem over the underarm to the wrist.' },
    {
      do: 'sew',
      text: 'Join each cuff into a ring, fold it, and stretch it on to its sleeve, seam to seam.',
      views: cuffed,
    },
    {
      do: 'sew',
      text: 'Join the hem band into a ring, fold it, and stretch it on to the hem, its marks to the side seams.',
    },
    { do: 'try-on', text: 'Try on: cuffs over the hands, the hem band round the hip without riding up.' },
    {
      do: 'finish',
      text: 'Turn the sleeve hems once and stitch with two needles or a narrow zigzag, so that they stretch.',
      views: ['three-quarter'],
    },
    { do: 'finish', text: 'Steam the bands until they have drawn in again, and trim all threads.' },
  ],
} as const satisfies HouseWords;

export const sweatshirtMenWords: HouseWords = { ...sweatshirtWords, name: 'Sweatshirt, men’s sizes' };
