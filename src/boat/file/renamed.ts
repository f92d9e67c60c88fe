/**
 * Names that quantities had in earlier editions. A kept boat or a boat file may still hold them, in keys and in the texts
 * of entries alike, so they are changed before anything else is read: `laminate.glueDensity` is `laminate.density`, so
 * for waste and volume; and what the yard has of boards, and the air of the shop, are the shop's own. The builder's own notebooks are left as
 * they are: no letter of a file that was opened is changed.
 */
export function underPresentNames(json: unknown): unknown {
  if (typeof json === 'string') return presentName(json);
  if (Array.isArray(json)) return json.map(underPresentNames);
  if (typeof json !== 'object' || json === null) return json;
  return Object.fromEntries(
    Object.entries(json)
      .filter(([key, value]) => !isPlaceInList(key, value))
      .map(([key, value]) => [
        presentName(key),
        key === 'notebooks' ? value : underPresentNames(numberInList(key, value)),
      ]),
  );
}

/** Which thing of a list is looked at, is its number: `cut3` of the boards, `n3` of the screws. */
const numberInList = (key: string, value: unknown): unknown =>
  typeof value === 'string' && /\.(piece|screw)$/.test(key) ? value.replace(/^(?:cut|n)(\d+)$/, '$1') : value;

/** Where in a list it was by the name of a place there, the list begins anew: nothing of the work hangs on it. */
const isPlaceInList = (key: string, value: unknown): boolean =>
  typeof value === 'string' &&
  ((/\.joint$/.test(key) && /^(port|starboard)\d+$/.test(value)) ||
    (/\.mark$/.test(key) && /^(first|last|mark\d+)$/.test(value)));

const presentName = (text: string): string =>
  text
    .replace(/(?<=\w\.)glue(Density|Waste|Volume)\b/g, (_, word: string) => word.toLowerCase())
    .replace(/\b(?:yard|lumber)(?=\.(?:(?:length|price)[A-D]|sheet(?:Length|Width))\b)/g, 'shop')
    .replace(/\bbending\.allowed\b/g, 'shop.breakingShare')
    .replace(/\bmoisture\.air\b/g, 'shop.air')
    .replace(/\bbending(?=\.(?:easyFrom|onePerson)\b)/g, 'shop');
