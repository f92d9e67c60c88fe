/**
 * Names that quantities had in earlier editions. A kept boat or a boat file may still hold them, in keys and in the texts
 * of entries alike, so they are changed in its text before anything is read: `laminate.glueDensity` is
 * `laminate.density`, so for waste and volume; and what the yard has of boards is the lumber's own.
 */
export const underPresentNames = (text: string): string =>
  text
    .replace(/(?<=\w\.)glue(Density|Waste|Volume)\b/g, (_, word: string) => word.toLowerCase())
    .replace(/\byard(?=\.(length|price)[A-D]\b)/g, 'lumber');
