import type { Girth, Seam, SeamSide } from '../pattern/index.ts';
import { longer, plain, roundBody, side } from './seams.ts';
import { tuckedIn } from './skirt-lining.ts';
import type { SkirtDraft } from './skirt-panel.ts';
import type { Half } from './skirt-pieces.ts';

/** The tucks may take in so much more or less than drafted, mm: they are folded to fit the band. */
const tucksGive = 3;

/** Waist of front or back, on the left as worn (the half that is drawn) and on the right. */
const bandEdges = (which: Half): readonly { readonly id: string; readonly mate: (inner: boolean) => SeamSide }[] => {
  const mate = (id: string, outerReversed: boolean) => (inner: boolean) =>
    side('waistband', inner ? `inner-${id}` : id, inner ? !outerReversed : outerReversed);
  return [
    { id: `${which}-left`, mate: mate(`${which}-left`, which === 'front') },
    { id: `${which}-right`, mate: mate(`${which}-right`, which === 'back') },
  ];
};

/** Above and below its mouth the side is sewn; at the mouth the lining's pair of bags is sewn to the front, the cloth's to the back. */
const pocketSeams: readonly Seam[] = [
  plain('side-upper', side('front', 'side-upper'), side('back', 'side-upper'), [
    ['mouth', 'mouth'],
    ['hip', 'hip'],
    ['mouth-end', 'mouth-end'],
  ]),
  ...(['front', 'back'] as const).map((which) =>
    plain(`pocket-${which}`, side('pocket', 'side'), side(which, 'side-upper'), [
      ['mouth', 'mouth'],
      ['hip', 'hip'],
      ['mouth-end', 'mouth-end'],
    ]),
  ),
  plain('pocket-bag', side('pocket', 'bag'), side('pocket', 'bag')),
];

/** How the skirt is joined: shell, lining, and both to the band, the shell outside, the lining inside. */
export const skirtSeams = (draft: SkirtDraft): readonly Seam[] => {
  const halves: readonly Half[] = ['front', 'back'];
  return [
    plain('side', side('front', 'side'), side('back', 'side'), [['hip', 'hip']]),
    ...(draft.plan.pocketed ? pocketSeams : []),
    plain('centre-back', side('back', 'centre-back'), side('back', 'centre-back'), [['zip-end', 'zip-end']]),
    plain('lining-side', side('lining-front', 'side'), side('lining-back', 'side'), [['hip', 'hip']]),
    plain('lining-centre-back', side('lining-back', 'centre-back'), side('lining-back', 'centre-back'), [
      ['opening-end', 'opening-end'],
    ]),
    ...halves.flatMap((which) =>
      bandEdges(which).map(({ id, mate }) => plain(`waist-${id}`, side(which, 'waist'), mate(false))),
    ),
    ...halves.flatMap((which) => {
      const tucked = tuckedIn(draft, which);
      return bandEdges(which).map(({ id, mate }) =>
        longer('pleated', `lining-waist-${id}`, side(`lining-${which}`, 'waist'), mate(true), [
          tucked - tucksGive,
          tucked + tucksGive,
        ]),
      );
    }),
    plain('band-start', side('waistband', 'start-inner'), side('waistband', 'start-outer', true)),
    plain('band-end', side('waistband', 'end-inner'), side('waistband', 'end-outer', true)),
    plain('band-underlap', side('waistband', 'inner-underlap'), side('waistband', 'underlap', true)),
  ];
};

export const skirtGirths: readonly Girth[] = [
  { level: 'waist', measure: 'waistGirth', around: 'body', pieces: [{ piece: 'waistband', factor: 1 }] },
  roundBody('hip', 'hipGirth', ['front', 'back']),
];
