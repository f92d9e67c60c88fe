/** The lines of the buying list: what each is called, where it is sold, and in what it is counted. */

/** Where it is bought, in the order of a day's errands. */
export const shops = {
  lumber: 'lumber yard',
  sheet: 'plywood',
  fastening: 'screws',
  glue: 'glue',
  resin: 'epoxy',
  cloth: 'cloth',
  paint: 'paint',
  consumables: 'consumables',
  safety: 'protective gear',
} as const;

export type Shop = keyof typeof shops;

export interface BuyLine {
  readonly id: string;
  readonly label: string;
  readonly shop: Shop;
  /** What one of it is, as the shop hands it over. */
  readonly sold: string;
  /** The number that it goes by, in the cell that counts it. */
  readonly counted: string;
  /** Parts that light up. */
  readonly about: readonly string[];
}

const line = <const Id extends string>(
  id: Id,
  shop: Shop,
  label: string,
  sold: string,
  counted: string,
  about: readonly string[],
) => ({ id, shop, label, sold, counted, about });

export const buyLines = [
  line('timbers', 'lumber', 'long timbers', 'boards', 'boards.boards', [
    'keelson',
    'chineLog',
    'sheerClamp',
    'rubRail',
  ]),
  line('rough', 'lumber', 'frames, stem, thwarts', 'boards', 'frame.volume', ['frame', 'thwart']),
  line('jig', 'lumber', 'jig and legs', 'boards', 'strongback.boards', ['frame']),
  line('sheets', 'sheet', 'plywood', 'sheets', 'sheets.count', ['bottom', 'side']),
  line('screws', 'fastening', 'screws of the skin', 'boxes', 'screwCount.boxes', ['chineLog', 'sheerClamp']),
  line('glue', 'glue', 'glue', 'packs', 'glue.volume', ['chineLog', 'keelson']),
  line('epoxy', 'resin', 'epoxy', 'packs', 'resin.cost', ['bottom', 'side']),
  line('powder', 'resin', 'filler for epoxy', 'bags', 'filler.fillerMass', ['chineLog']),
  line('cloth', 'cloth', 'glass cloth', 'lengths off the roll', 'cloth.length', ['bottom', 'side']),
  line('paint', 'paint', 'paint', 'tins', 'paint.volume', ['bottom', 'side']),
  line('thinner', 'paint', 'thinner', 'tins', 'paint.thinnerVolume', ['side']),
  line('paper', 'consumables', 'paper for sanding', 'pieces', 'sand.pieces', ['bottom', 'side']),
  line('covers', 'consumables', 'roller covers', 'covers', 'paint.rollers', ['side']),
  line('cups', 'consumables', 'mixing cups', 'cups', 'batch.batches', ['side']),
  line('gloves', 'safety', 'gloves', 'boxes', 'buyList.glovesNeed', ['hull']),
  line('masks', 'safety', 'masks for dust', 'masks', 'sand.lasts', ['hull']),
  line('fittings', 'fastening', 'fittings and the rest', 'lots', 'buyList.fittingsNeed', ['transom']),
] as const satisfies readonly BuyLine[];

export type LineId = (typeof buyLines)[number]['id'];

export const lineIds: readonly LineId[] = buyLines.map(({ id }) => id);

/** What so many of it are called: `1 box`, `2 boxes`. */
export const soldAs = ({ sold }: Pick<BuyLine, 'sold'>, many: number): string =>
  many === 1 ? sold.replace(/^(\w+?)(?:(?<=x)es|s)\b/, '$1') : sold;
