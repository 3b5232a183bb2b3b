import type { ProblemCatalogue } from './catalogue.ts';

export const unitsProblems: ProblemCatalogue = {
  'units.empty': {
    message: 'Nothing was written.',
    remedy: 'Write a length, for example 97.5 cm or 38 3/8 in.',
  },
  'units.not-a-length': {
    message: '“{text}” does not read as a length.',
    remedy: 'Write a number and its unit: 97.5 cm, 975 mm, 38 3/8 in, 5 ft 5 1/2 in, 1.9 m or 2 1/4 yd.',
  },
  'units.not-a-number': {
    message: '“{text}” does not read as a number.',
    remedy: 'Write it with one decimal mark, 97.5 or 97,5, or as a fraction, 38 3/8.',
  },
  'units.negative': {
    message: '“{text}” is less than nothing.',
    remedy: 'Leave the minus sign away.',
  },
  'units.zero-denominator': {
    message: '“{text}” divides by nothing.',
    remedy: 'Look at the lower number of the fraction: halves, quarters, eighths or sixteenths.',
  },
  'units.fraction-too-large': {
    message: '“{text}” after a whole number is more than one.',
    remedy: 'Carry it over: instead of 1 9/8 write 2 1/8.',
  },
  'units.ambiguous-thousands': {
    message: '“{text}” could mean thousands or a decimal.',
    remedy: 'Leave the mark out if it separates thousands; otherwise write fewer decimals, or another unit.',
  },
  'units.wrong-order': {
    message: '“{text}” has its units in an order that makes no length.',
    remedy: 'Put the larger unit first and stay with one kind: 5 ft 5 in, or 1 m 65 cm.',
  },
  'units.broken-part': {
    message: '“{text}” has a broken number before its last unit.',
    remedy: 'Only the last number may have a fraction: 5 ft 5 1/2 in.',
  },
  'units.part-too-large': {
    message: '“{text}” has more of the smaller unit than make one of the larger.',
    remedy: 'Carry it over: instead of 5 ft 14 in write 6 ft 2 in.',
  },
  'units.too-long': {
    message: '“{text}” is longer than a roll of cloth.',
    remedy: 'Look at the unit and the decimal mark.',
  },
  'units.range-falls': {
    message: '“{text}” ends before it begins.',
    remedy: 'Write the smaller figure first: 32–34.',
  },
  'units.not-a-weight': {
    message: '“{text}” does not read as a weight of cloth.',
    remedy: 'Write it by area: 150 g/m² or 4.5 oz/yd².',
  },
  'units.too-heavy': {
    message: '“{text}” is heavier than any cloth.',
    remedy: 'Look at the unit and the decimal mark; a heavy coating is about 500 g/m².',
  },
  'units.not-a-percentage': {
    message: '“{text}” does not read as a percentage.',
    remedy: 'Write 30 %, or just 30.',
  },
  'units.ambiguous-percentage': {
    message: '“{text}” could be a share of one or less than one percent.',
    remedy: 'Write 30 % for three tenths; write the % sign if you mean less than one percent.',
  },
  'units.percentage-too-large': {
    message: '“{text}” is more than cloth can stretch.',
    remedy: 'Write how much longer it gets: 100 mm that reach 130 mm stretch 30 %.',
  },
};

export const unitsWords = {
  cm: 'Centimetres',
  in: 'Inches',
} as const;
