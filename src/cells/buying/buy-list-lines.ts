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
  consumables: 'used up',
  safety: 'hands, eyes, lungs',
} as const;

export type Shop = keyof typeof shops;

export interface BuyLine {
  readonly id: string;
  readonly label: string;
  readonly shop: Shop;
  /** What one of it is, as the shop hands it over. */
  readonly sold: string;
  /** Parts that light up. */
  readonly about: readonly string[];
}

const line = <const Id extends string>(
  id: Id,
  shop: Shop,
  label: string,
  sold: string,
  about: readonly string[],
) => ({ id, shop, label, sold, about });

export const buyLines = [
  line('timbers', 'lumber', 'long timbers', 'boards', ['keelson', 'chineLog', 'sheerClamp', 'rubRail']),
  line('rough', 'lumber', 'frames, stem, thwarts', 'boards', ['frame', 'thwart']),
  line('jig', 'lumber', 'jig and legs', 'boards', ['frame']),
  line('sheets', 'sheet', 'plywood', 'sheets', ['bottom', 'side']),
  line('screws', 'fastening', 'screws of the skin', 'boxes', ['chineLog', 'sheerClamp']),
  line('glue', 'glue', 'glue', 'packs', ['chineLog', 'keelson']),
  line('epoxy', 'resin', 'epoxy', 'packs', ['bottom', 'side']),
  line('powder', 'resin', 'filler for epoxy', 'bags', ['chineLog']),
  line('cloth', 'cloth', 'glass cloth', 'lengths off the roll', ['bottom', 'side']),
  line('paint', 'paint', 'paint', 'tins', ['bottom', 'side']),
  line('thinner', 'paint', 'thinner', 'tins', ['side']),
  line('paper', 'consumables', 'paper for sanding', 'pieces', ['bottom', 'side']),
  line('covers', 'consumables', 'roller covers', 'covers', ['side']),
  line('cups', 'consumables', 'mixing cups', 'cups', ['side']),
  line('gloves', 'safety', 'gloves', 'boxes', ['hull']),
  line('masks', 'safety', 'masks for dust', 'masks', ['hull']),
  line('fittings', 'fastening', 'fittings and the rest', 'lots', ['transom']),
] as const satisfies readonly BuyLine[];

export type LineId = (typeof buyLines)[number]['id'];

export const lineIds: readonly LineId[] = buyLines.map(({ id }) => id);
