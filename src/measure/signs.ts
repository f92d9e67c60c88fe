/** The many signs of keyboards, phones and spreadsheets, as the few that are read. */

const plainSigns: readonly (readonly [RegExp, string])[] = [
  [/[\u00A0\u1680\u2000-\u200A\u202F\u205F\u3000\t\r\n]/g, ' '],
  [/[\u200B-\u200D\u2060\uFEFF]/g, ''],
  [/[\u2032\u2018\u2019\u201A\u201B\u00B4\u0060\u02B9\u02BC]/g, "'"],
  [/[\u2033\u201C\u201D\u201E\u201F\u02BA]|''/g, '"'],
  [/[\u2010-\u2015\u2212\uFE63\uFF0D]/g, '-'],
  [/[\u2044\u2215\u00F7]/g, '/'],
  [/[\u00D7\u22C5\u2217]/g, '*'],
  [/ \u00B7 /g, ' * '],
  [/\u2264/g, '<='],
  [/\u2265/g, '>='],
  [/\u2260/g, '!='],
  [/\u00BA|\u02DA/g, '°'],
  [/\u2206/g, 'Δ'],
  [/\u03C0/g, 'pi'],
];

const fractions: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅐': '1/7',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅑': '1/9',
  '⅒': '1/10',
};
const fractionSign = new RegExp(`(\\d)?([${Object.keys(fractions).join('')}])`, 'g');
const unusual = /[^\x20-\x5F\x61-\x7E°µ²³⁴¹⁻·€£¤Δ]|''| · /;

/**
 * `text` with one sign for each meaning: primes and quotes as `'` and `"`, dashes as `-`, `½` as `1/2`
 * (parted from a figure before it), thin and hard spaces as spaces.
 */
export function plainText(text: string): string {
  if (!unusual.test(text)) return text.trim();
  let out = text.replace(
    fractionSign,
    (_, before: string | undefined, sign: string) =>
      before === undefined ? fractions[sign]! : `${before} ${fractions[sign]!}`, // the pattern holds the keys only
  );
  for (const [sign, plain] of plainSigns) out = out.replace(sign, plain);
  return out.trim();
}
