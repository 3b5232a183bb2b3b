/** Notions as they stand on a shopping list, one and several. `{size}` is a width or a diameter, `{length}` how long each is. */
export const notionWords = {
  'concealed-zip': { one: 'concealed zip', many: 'concealed zips' },
  zip: { one: 'zip', many: 'zips' },
  'open-ended-zip': { one: 'open-ended zip', many: 'open-ended zips' },
  elastic: { one: 'elastic', many: 'pieces of elastic' },
  button: { one: 'button', many: 'buttons' },
  'press-stud': { one: 'press stud', many: 'press studs' },
  'hook-and-bar': { one: 'hook and bar', many: 'hooks and bars' },
  buckle: { one: 'buckle', many: 'buckles' },
  'stay-tape': { one: 'stay tape', many: 'pieces of stay tape' },
  'bias-binding': { one: 'bias binding', many: 'pieces of bias binding' },
  'cord-stop': { one: 'cord stop', many: 'cord stops' },
  'shoulder-pad': { one: 'shoulder pad', many: 'shoulder pads' },
  interfacing: { one: 'interfacing, for the pieces marked', many: 'interfacing, for the pieces marked' },
} as const;

export const notionLines = {
  /** Bought by number. */
  several: '{count} {what}',
  long: '{what}, {length}',
  severalLong: '{count} {what}, {length} each',
  wide: '{size} wide',
  across: '{size} across',
} as const;
