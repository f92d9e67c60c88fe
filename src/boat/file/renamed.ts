/**
 * Names that quantities had when files and kept boats were of version 1. They stand in keys and in the texts of entries
 * alike, so they are changed before anything else is read. What one cell alone had and others read of it is the shop's
 * now: the air, the moisture of the wood, the paste. What several cells had each for itself stays theirs: there it
 * stands in place of the shop's number. The builder's own notebooks are left as they are: no letter of a file that was
 * opened is changed.
 */
export function underPresentNames(json: unknown): unknown {
  const isOld = typeof json === 'object' && json !== null && 'version' in json && json.version === 1;
  return isOld ? renamed(json) : json;
}

function renamed(json: unknown): unknown {
  if (typeof json === 'string') return presentName(json);
  if (Array.isArray(json)) return json.map(renamed);
  if (typeof json !== 'object' || json === null) return json;
  return Object.fromEntries(
    Object.entries(json)
      .filter(([key, value]) => !isPlaceInList(key, value))
      .flatMap(([key, value]) => askedOtherwise(key, value))
      .map(([key, value]) => [
        presentName(key),
        key === 'notebooks' ? value : renamed(numberInList(key, value)),
      ]),
  );
}

/**
 * What is asked in another way now. Prices were for boards of one of the parts: now the section is written, here as that
 * part's. A strap's glass was told by volume: now by weight, here worked out from it with the densities of both.
 */
function askedOtherwise(key: string, value: unknown): readonly (readonly [string, unknown])[] {
  if (typeof value !== 'string') return [[key, value]];
  if (key === 'boards.pricedFor') {
    const [thickness, width] =
      value === 'other'
        ? ['boards.otherThickness', 'boards.otherWidth']
        : [`${value}.thickness`, `${value}.boardWidth`];
    return [
      ['shop.boardThickness', thickness],
      ['shop.boardWidth', width],
    ];
  }
  if (key === 'butt.glassVolume')
    return [['butt.glassShare', `1 / (1 + (1 / (${value}) - 1) * 1200 / 2560)`]];
  return [[key, value]];
}

/** Which thing of a list is looked at, is its number: `cut3` of the boards, `n3` of the screws. */
const numberInList = (key: string, value: unknown): unknown =>
  typeof value === 'string' && /\.(piece|screw)$/.test(key) ? value.replace(/^(?:cut|n)(\d+)$/, '$1') : value;

/** Where in a list it was by the name of a place there, the list begins anew: nothing of the work hangs on it. */
const isPlaceInList = (key: string, value: unknown): boolean =>
  typeof value === 'string' &&
  ((key.endsWith('.joint') && /^(port|starboard)\d+$/.test(value)) ||
    (key.endsWith('.mark') && /^(first|last|mark\d+)$/.test(value)));

/** Whole names, and what they are now. */
const moved: Readonly<Record<string, string>> = {
  'bending.allowed': 'shop.breakingShare',
  'bending.easyFrom': 'shop.easyFrom',
  'bending.onePerson': 'shop.onePerson',
  'moisture.air': 'shop.air',
  'moisture.now': 'shop.woodMoisture',
  'fillet.fillerShare': 'shop.fillerShare',
  'fillet.fillerDensity': 'shop.fillerDensity',
  'fillet.epoxyDensity': 'shop.epoxyDensity',
  'fasten.soldIn': 'shop.screwsIn',
  'fasten.pitch': 'shop.screwPitch',
  'screwCount.framePitch': 'shop.framePitch',
  ...Object.fromEntries(
    ['smallPack', 'smallPrice', 'middlePack', 'middlePrice', 'largePack', 'largePrice'].map(
      (key) => [`resin.${key}`, `shop.${key}`] as const,
    ),
  ),
  ...Object.fromEntries(
    ['A', 'B', 'C', 'D'].flatMap((key) =>
      [`perLength${key}`, `each${key}`].map((price) => [`boards.${price}`, `shop.${price}`] as const),
    ),
  ),
};

const presentName = (text: string): string =>
  text
    .replace(/(?<=\w\.)glue(Density|Waste|Volume)\b/g, (_, word: string) => word.toLowerCase())
    .replace(/\b(?:yard|lumber)(?=\.(?:(?:length|price)[A-D]|sheet(?:Length|Width))\b)/g, 'shop')
    .replace(/(?<![\w.])[a-z]+\.[a-z]\w*(?![\w.])/gi, (name) => moved[name] ?? name);
