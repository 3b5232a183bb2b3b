import type { FamilyWords } from './family.ts';

const places: Readonly<Record<string, string>> = {
  'above-waist': 'above the waist',
  'below-waist': 'below the waist',
  rise: 'in the rise',
  leg: 'in the leg',
  sleeve: 'on the sleeve',
};

export const lengthWords: FamilyWords = {
  alterations: {
    'lengthen-shorten': {
      name: 'Lengthen or shorten',
      per: 'on every piece that carries the level',
      more: 'Lengthen',
      less: 'Shorten',
      about:
        'Makes every piece that carries the level longer or shorter there, along the grain. For a body longer or shorter than the one the pattern was drafted for.',
      caution: 'A hem that trails catches on stairs, and like a long sleeve in flames and machines.',
      source: 'The lengthening lines of bought patterns, and what pattern-cutting manuals say of altering a length.',
      sentence: ({ params }, say) => {
        const amount = Number(params['amount'] ?? 0);
        const place = places[String(params['where'])] ?? String(params['where']);
        return `${amount < 0 ? 'shortened' : 'lengthened'} ${place} by ${say(Math.abs(amount))}`;
      },
    },
  },
};
