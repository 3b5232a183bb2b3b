import type { Ink } from '../draw/index.ts';

/** How one ink is put on paper. Width and dash in millimetres; an empty dash is a whole line. */
export interface InkStyle {
  readonly colour: string;
  readonly width: number;
  readonly dash: readonly number[];
}

const black = '#000000';
const ink = '#23282b';

/**
 * The print column of docs/look.md. Weight and dash alone tell every ink from every other, so that a sheet from a
 * black printer says as much as one from a colour printer; colour only repeats it.
 */
export const inkStyles: Readonly<Record<Ink, InkStyle>> = {
  cut: { colour: black, width: 0.6, dash: [] },
  seam: { colour: black, width: 0.25, dash: [] },
  mark: { colour: black, width: 0.3, dash: [] },
  grain: { colour: black, width: 0.3, dash: [] },
  fold: { colour: black, width: 0.45, dash: [4.8, 1.2, 0.9, 1.2] },
  level: { colour: black, width: 0.2, dash: [2.1, 1.5] },
  original: { colour: '#6d7377', width: 0.3, dash: [0.5, 1.1] },
  changed: { colour: '#b3261e', width: 0.5, dash: [3.3, 0.9, 1.8, 0.9, 4.5, 1.2, 2.4, 0.9] },
  body: { colour: '#1f4e8c', width: 0.45, dash: [] },
  cloth: { colour: '#5b5f5a', width: 0.3, dash: [] },
  selvage: { colour: ink, width: 0.7, dash: [0.6, 0.9] },
  dimension: { colour: black, width: 0.2, dash: [] },
  paper: { colour: '#ffffff', width: 0, dash: [] },
  faint: { colour: '#8b9094', width: 0.15, dash: [] },
};
