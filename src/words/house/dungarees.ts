import type { HouseWords } from './types.ts';

export const dungareesWords = {
  name: 'Dungarees',
  about:
    'Woven dungarees, roomy at hip and thigh: a lined bib in front and a small one behind, straps with buckles over the shoulder, both sides opening with buttons, patch pockets on bib, hips and seat. The straps are as long as front and back of the body ask for, with a little for bending, and have a hand’s breadth to let out.',
  views: {
    full: { name: 'Full length', about: 'A gently curved leg: wide at the knee, drawn in to the hem above the ankle.' },
    short: { name: 'Short', about: 'Cut off well above the knee.' },
  },
  pieces: {
    front: 'Front leg',
    back: 'Back leg',
    bib: 'Bib',
    'back-bib': 'Back bib',
    strap: 'Strap',
    'side-facing': 'Side facing',
    'side-underlap': 'Side underlap',
    'bib-pocket': 'Bib pocket',
    'hip-pocket': 'Hip pocket',
    'back-pocket': 'Back pocket',
  },
  work: [
    {
      do: 'prepare',
      text: 'Transfer notches, and the places of pockets, buttons and buckles. Fuse interfacing to the side facings and underlaps, and a strip of it along the top of both bibs. Neaten side, inside leg and crotch.',
    },
    {
      do: 'sew',
      text: 'Turn in and topstitch the upper edge of each pocket, press the other edges under, and topstitch the pockets to bib, fronts and backs. Bar-tack their upper corners.',
    },
    { do: 'sew', text: 'Stitch the inside legs, the back stretched a little between crotch and knee.' },
    {
      do: 'sew',
      text: 'Put one leg inside the other and stitch the crotch in one seam, front waist to back waist; stitch the curve a second time, and topstitch.',
    },
    { do: 'press', text: 'Press the crotch seam to the left above the curve, open below it.' },
    {
      do: 'sew',
      text: 'Stitch the side seams from the opening’s end, the lower of two notches at the hip, down, and topstitch them towards the back. Face the fronts’ opening with the side facing, turn it in and topstitch.',
    },
    {
      do: 'sew',
      text: 'Fold the straps along their length, stitch, turn and topstitch. Tack them to the top of the back bib, right sides together.',
    },
    {
      do: 'sew',
      text: 'Stitch each bib to its lining along sides and top, right sides together, the straps caught between. Trim, snip the curves, turn.',
    },
    { do: 'press', text: 'Press both bibs from the lining, the edge rolled a little inward, and topstitch them.' },
    {
      do: 'sew',
      text: 'Stitch the bib to the front waist and the back bib to the back waist; fell their linings down over the seam.',
    },
    {
      do: 'sew',
      text: 'Sew the underlap to the back’s opening and the back bib’s side, fold it over and fell it down. Bar-tack the opening’s end through all layers.',
    },
    {
      do: 'try-on',
      text: 'Try on with the sides pinned front edge to seam line, sitting as well: set the buckles so that nothing pulls between shoulder and crotch, and mark buttons and hem.',
    },
    {
      do: 'finish',
      text: 'Work the buttonholes on the fronts’ sides, sew the buttons to the underlaps and the bib, thread the buckles.',
    },
    { do: 'finish', text: 'Turn the hems twice and topstitch; press all over.' },
  ],
  cautions: [
    'Straps and buckles can catch: keep ends short and tucked in near machines, and take the straps off the shoulders before work with moving parts; check the rules where you live and work.',
  ],
} as const satisfies HouseWords;

export const dungareesMenWords: HouseWords = { ...dungareesWords, name: 'Dungarees, men’s sizes' };
