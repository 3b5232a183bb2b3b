import { writeFileSync } from 'node:fs';
import { type Measures, type SurveyBody, surveyBodies } from '../src/body/index.ts';
import { housePattern } from '../src/drafting/index.ts';
import { type ContactEntry, drawContactSheet } from '../src/draw/index.ts';
import { writeSvg } from '../src/formats/index.ts';
import { sharedText } from '../test/shared-data.ts';

/**
 * A contact sheet of one house pattern drafted for the 5th, 50th and 95th percentile of bust and for the extremes of the
 * survey, for looking over before drafts are trusted: `contact-sheet PATTERN women|men OUT.svg`.
 */
const [id = 'blouse', survey = 'women', out = 'contact-sheet.svg'] = process.argv.slice(2);
const pattern = housePattern(id);
const read = surveyBodies(sharedText(`bodies/ansur2-${survey}.csv`) ?? '', survey === 'men' ? 'men' : 'women');
if (!pattern || !read.ok) throw new Error(`Nothing to draw for ${id} and ${survey}`);
const bodies = read.value;

type Whole = Required<Measures>;

const at = (share: number, by: (body: Whole) => number): SurveyBody => {
  const sorted = bodies.toSorted((a, b) => by(a.measures as Whole) - by(b.measures as Whole));
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] as SurveyBody;
};

const bust = (body: Whole): number => body.bustGirth;
const slope = (body: Whole): number => body.shoulderDrop / body.shoulderLength;
const arm = (body: Whole): number => body.upperArmGirth / body.bustGirth;
const back = (body: Whole): number => body.acrossBack / body.bustGirth;
const fall = (body: Whole): number => body.bustDepth - body.backWaistLength;

const looked: readonly (readonly [string, SurveyBody])[] = [
  ['5th percentile of bust', at(0.05, bust)],
  ['50th', at(0.5, bust)],
  ['95th', at(0.95, bust)],
  ['smallest bust', at(0, bust)],
  ['largest bust', at(1, bust)],
  ['tallest', at(1, (body) => body.stature)],
  ['shortest', at(0, (body) => body.stature)],
  ['steepest shoulders', at(1, slope)],
  ['squarest shoulders', at(0, slope)],
  ['thickest arms', at(1, arm)],
  ['slimmest arms', at(0, arm)],
  ['broadest back', at(1, back)],
  ['narrowest back', at(0, back)],
  ['lowest bust', at(1, fall)],
  ['highest bust', at(0, fall)],
  ['straightest waist', at(0, (body) => body.bustGirth - body.waistGirth)],
  ['smallest waist', at(1, (body) => body.bustGirth - body.waistGirth)],
  ['widest hips', at(1, (body) => body.hipGirth - body.bustGirth)],
];

const entries = looked.map(([label, { row, measures }]): ContactEntry => {
  const drafted = pattern.draft(measures);
  return {
    id: `row-${row}`,
    label: drafted.ok ? `${label} (row ${row})` : `${label} (row ${row}): ${drafted.problem.code}`,
    garment: drafted.ok ? drafted.value : null,
  };
});
writeFileSync(out, writeSvg(drawContactSheet(entries, { unit: 'cm', columns: 3 })));
