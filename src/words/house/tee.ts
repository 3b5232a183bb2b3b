import type { HouseWords } from './types.ts';

export const teeWords = {
  name: 'Tee',
  about:
    'A knit tee to the hip, semi-fitted: round neck with a narrow band, short set-in sleeve, no darts. The side is drawn in as far as the body is.',
  views: { short: { name: 'Short sleeve', about: 'Set-in sleeve to the middle of the upper arm.' } },
  pieces: { front: 'Front', back: 'Back', sleeve: 'Sleeve', 'neck-band': 'Neck band' },
  work: [
    {
      do: 'prepare',
      text: 'Let the cloth lie a night before cutting. Use a needle for knits, and try stitch and tension on a scrap stretched by a quarter.',
    },
    { do: 'sew', text: 'Join the shoulders with stay tape in the seam, so that they do not grow.' },
    {
      do: 'sew',
      text: 'Join the neck band into a ring, fold it along its length, and stretch it evenly on to the neck, seam to centre back.',
    },
    { do: 'press', text: 'Steam the band until it lies flat; press its seam down into the body.' },
    {
      do: 'try-on',
      text: 'Pull it over the head: the band must pass without its stitches cracking, and lie flat after.',
    },
    { do: 'sew', text: 'Set the sleeves in flat, before the sides are closed.' },
    { do: 'sew', text: 'Stitch each side and sleeve in one seam, crossing the armhole seam.' },
    { do: 'try-on', text: 'Try on, settle the length, and pin both hems.' },
    { do: 'finish', text: 'Turn the hems once and stitch with two needles or a narrow zigzag, so that they stretch.' },
    { do: 'press', text: 'Lift the iron and set it down; do not push a knit along.' },
  ],
} as const satisfies HouseWords;

export const teeMenWords: HouseWords = { ...teeWords, name: 'Tee, men’s sizes' };
