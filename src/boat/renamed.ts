/**
 * Names that quantities had in earlier editions. A kept boat or a boat file may still hold them, in keys and in the texts
 * of entries alike, so they are changed in its text before anything is read.
 */
const renamed: readonly (readonly [was: RegExp, now: string])[] = [
  // The stack asks for its glue by the words of the cell on glue.
  [/(?<=\w\.)glueDensity\b/g, 'density'],
  [/(?<=\w\.)glueWaste\b/g, 'waste'],
  [/(?<=\w\.)glueVolume\b/g, 'volume'],
  // What the yard has of boards is the lumber's own.
  [/\byard(?=\.(?:length|price)[A-D]\b)/g, 'lumber'],
];

export const underPresentNames = (text: string): string =>
  renamed.reduce((renewed, [was, now]) => renewed.replace(was, now), text);
