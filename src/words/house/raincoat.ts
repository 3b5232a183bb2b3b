import { cautionWords } from '../caution.ts';
import type { HouseWords } from './types.ts';

const unlined = ['unlined'] as const;
const lined = ['lined'] as const;

export const raincoatWords = {
  name: 'Child’s raincoat',
  about:
    'A hooded raincoat to the middle of the thigh, A-line and roomy over a pullover: dropped shoulder with a low-capped sleeve, three-panel hood with a visor, front zip under a placket with press studs, patch pockets with flaps. Sizes go by stature. The sleeve’s deep hem lets down for two sizes of growth.',
  views: {
    unlined: {
      name: 'Unlined',
      about: 'Seams bound or taped inside; the zip and the neck neatened by facings.',
    },
    lined: {
      name: 'Lined',
      about: 'Body, sleeves and hood lined with cotton jersey; the lining hangs free at the hem.',
    },
  },
  pieces: {
    front: 'Front',
    back: 'Back',
    sleeve: 'Sleeve',
    'hood-side': 'Hood side',
    'hood-centre': 'Hood centre strip',
    'front-facing': 'Front facing',
    'back-facing': 'Back neck facing',
    placket: 'Placket',
    pocket: 'Pocket',
    'pocket-flap': 'Pocket flap',
    'lining-front': 'Front lining',
    'lining-back': 'Back lining',
    'lining-sleeve': 'Sleeve lining',
  },
  work: [
    {
      do: 'prepare',
      text: 'Try needle, stitch ({3 mm} or longer) and iron on a scrap: coated cloth keeps every needle hole and may melt. Clips within the allowances instead of pins. Transfer notches, pocket lines and elastic notches with chalk or thread, not a wheel.',
    },
    {
      do: 'prepare',
      text: 'Baste or, where the coating bears it, fuse interfacing to the placket and to one layer of each flap.',
    },
    {
      do: 'sew',
      text: 'Join the flaps in pairs round their outer edge, clip the curves, turn, topstitch. Hem the pockets’ tops, turn in their sides and stitch them to the fronts on their lines; each flap above its pocket. Set a stud through flap and pocket on their marks, a scrap of interfacing under each half.',
    },
    {
      do: 'sew',
      text: 'Fold the placket along its length, close its ends, turn and topstitch. Baste it to the front edge of the side that closes over.',
    },
    {
      do: 'sew',
      text: 'Join the shoulders, press towards the back and fell. Reflective tape, if wanted, now, on the marked lines of back and sleeves.',
    },
    {
      do: 'sew',
      text: 'Set the sleeves in flat: one notch in front, two behind. Turn the seam to the body and topstitch.',
    },
    {
      do: 'sew',
      text: 'Join each side and sleeve in one seam. Bind the edges as you go, or tape the seams inside once all are sewn.',
      views: unlined,
    },
    { do: 'sew', text: 'Join each side and sleeve in one seam.', views: lined },
    {
      do: 'press',
      text: 'Press with fingers, a clapper or a cool iron under a cloth, on a scrap first: coatings soften and stick. Air the room if the coating smells.',
    },
    {
      do: 'sew',
      text: 'Sew the hood’s strip to both sides from the visor over the crown to the nape, notches meeting. Topstitch the seams towards the strip; bind them where they are not lined.',
    },
    {
      do: 'sew',
      text: 'Hem the hood’s opening, and cut the elastic in two, a length for each side. Run each through the hem between that side’s notches, stretched to about a fifth more than it is long, both ends stitched down fast and covered. No cord and no free ends.',
      views: unlined,
    },
    {
      do: 'sew',
      text: 'Make up the hood’s lining, sew it to the opening edge, turn, and stitch a casing between the notches of each side. Cut the elastic in two, draw a length into each, and stitch both ends down fast and covered. No cord and no free ends.',
      views: lined,
    },
    {
      do: 'try-on',
      text: 'Over a pullover, hood pinned on: arms up and forward, sit, turn the head. The hood must turn with the face and not cover an eye; neck, sleeves and length free.',
    },
    {
      do: 'sew',
      text: 'Baste the hood to the neck, centre front to centre front, notches on notches, its seams on the back’s. Baste the zip to both fronts, teeth towards the coat, its slider at the neck.',
    },
    { do: 'sew', text: 'Join the facings at the shoulders and bind their outer edge.', views: unlined },
    {
      do: 'sew',
      text: 'Join the facings at the shoulders. Make up the lining, pleat at the centre back, and join it to the facings, to where its own hem will turn up.',
      views: lined,
    },
    {
      do: 'sew',
      text: 'Lay the facings right sides together with the coat and stitch front edges and neck in one, through zip, placket and hood, and at the foot along the hem’s line to the facing’s inner edge. Grade, clip the neck, turn, and topstitch, a fold of the facing left as a guard behind the slider at the chin.',
    },
    {
      do: 'finish',
      text: 'Turn the sleeve hems back to the inside in full, {70 mm} deep, and catch them with one row of long stitches: let down, they give two sizes more. Hem the coat level.',
    },
    {
      do: 'finish',
      text: 'Hem the lining {15 mm} shorter than the coat. Turn its sleeves’ hems in as deep as the coat’s, so that they let down with them, and catch them to the turned-up hems.',
      views: lined,
    },
    {
      do: 'finish',
      text: 'Set the placket’s studs evenly along its line through both layers, and their lower halves on the line of the front below, through front, facing and a scrap of interfacing; pull each hard to see that it holds. Tape the seams, if they are to be taped.',
    },
    {
      do: 'try-on',
      text: 'Let the child close and open it alone, and run in it. Nothing may hang below the hem or catch.',
    },
  ],
  cautions: [
    cautionWords.childCords,
    cautionWords.smallParts,
    cautionWords.elastic,
    'A hood catches on climbing frames and in doors: down, or the coat off, for climbing. Set on with press studs it gives way where a sewn one holds.',
    cautionWords.coatedCloth,
  ],
} as const satisfies HouseWords;
