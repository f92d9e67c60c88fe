/** The lessons that come along, in their order, for every kind of test. */
export const lessons = [
  'reading-offsets',
  'is-it-fair',
  'why-one-in-eight',
  'two-for-one',
  'mix-what-you-can-spread',
  'where-the-weight-goes',
] as const;
