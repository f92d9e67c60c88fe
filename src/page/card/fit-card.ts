/** Finds the roomiest setting in which a card fits its page, with the picture as large as the rest lets it be. */
import { render, type VNode } from 'preact';
import type { Card } from './card';
import { BESIDE_WIDTH, type Picture } from './card-picture';
import { type CardLayout, cardView } from './card-view';

/** Within the margins of A4 and of Letter alike, less what another machine's letters may take, px. */
const PAGE_HEIGHT = Math.floor(((259 - 3) / 25.4) * 96);

interface Setting extends Pick<CardLayout, 'closeness' | 'reference' | 'overleaf'> {
  /** What the picture must get, px, or all it wants, before less is given up for it. */
  readonly asks: number;
  readonly beside?: true;
}

/** Of a picture that can be read at arm's length. */
const FAIR_SIZE = 400;

const ONE_PAGE: readonly Setting[] = [
  { closeness: 'roomy', reference: 'roomy', overleaf: 'nothing', asks: FAIR_SIZE },
  { closeness: 'close', reference: 'close', overleaf: 'nothing', asks: 320 },
];
/** Without a table one page must do, unless no picture would be left. */
const ONE_PAGE_STILL: readonly Setting[] = [
  { closeness: 'tight', reference: 'tight', overleaf: 'nothing', asks: 250 },
  { closeness: 'tight', reference: 'tight', overleaf: 'nothing', asks: 0, beside: true },
  { closeness: 'tight', reference: 'tightest', overleaf: 'nothing', asks: 0, beside: true },
  { closeness: 'tight', reference: 'tightest', overleaf: 'nothing', asks: 0 },
  { closeness: 'tightest', reference: 'tightest', overleaf: 'nothing', asks: 0, beside: true },
];
/** A table is worth a second page, before the picture shrinks for it. */
const TWO_PAGES: readonly Setting[] = [
  { closeness: 'roomy', reference: 'roomy', overleaf: 'reference', asks: FAIR_SIZE },
  { closeness: 'close', reference: 'close', overleaf: 'reference', asks: FAIR_SIZE },
  { closeness: 'tight', reference: 'close', overleaf: 'reference', asks: FAIR_SIZE },
  { closeness: 'roomy', reference: 'close', overleaf: 'reference and picture', asks: FAIR_SIZE },
  { closeness: 'close', reference: 'tight', overleaf: 'reference and picture', asks: FAIR_SIZE },
  { closeness: 'tight', reference: 'tight', overleaf: 'reference', asks: 0 },
  { closeness: 'tight', reference: 'tight', overleaf: 'table', asks: 230 },
  { closeness: 'tight', reference: 'tightest', overleaf: 'table', asks: 0 },
  { closeness: 'tight', reference: 'tightest', overleaf: 'table', asks: 0, beside: true },
  { closeness: 'tight', reference: 'tightest', overleaf: 'reference and picture', asks: 0 },
];

const settingsOf = ({ table }: Card): readonly Setting[] => [
  ...ONE_PAGE,
  ...(table ? [] : ONE_PAGE_STILL),
  ...TWO_PAGES,
];

/** Renders the card into its place, which is laid out at the card's width. Nothing is cut off: what two pages can't hold runs on to a third. */
export function fitCard(
  card: Card,
  pictures: readonly Picture[],
  noPicture: string,
  place: HTMLElement,
): void {
  let tableParts = 1;
  let tableLines = true;
  const show = (setting: Setting, nodes: readonly VNode[]): number[] => {
    const { closeness, reference, overleaf, beside = false } = setting;
    const layout = {
      closeness,
      reference,
      overleaf,
      beside,
      tableParts,
      tableLines,
      pictures: nodes,
      noPicture,
    };
    render(cardView(card, layout), place);
    return [...place.querySelectorAll('.card-page')].map((page) => page.getBoundingClientRect().height);
  };
  const isTooWide = () => show(ONE_PAGE[0]!, []) && isTableTooWide(place); // there is a first one
  tableLines = !isTooWide();
  while (tableParts < (card.table?.columns.length ?? 1) && isTooWide()) tableParts += 1;
  for (const setting of settingsOf(card)) {
    const bare = show(setting, []);
    const room = PAGE_HEIGHT - (bare[setting.overleaf === 'reference and picture' ? 1 : 0] ?? 0);
    const enough = pictures.slice(0, 1).every(({ wants }) => room >= Math.min(wants, setting.asks));
    if (!enough || room < 0) continue;
    const tries = setting.beside ? besideText(pictures) : [pictured(pictures, room)];
    if (tries.some((nodes) => show(setting, nodes).every((height) => height <= PAGE_HEIGHT))) return;
  }
}

function isTableTooWide(place: HTMLElement): boolean {
  return [...place.querySelectorAll('table')].some((table) => table.offsetWidth > place.clientWidth);
}

/** The first picture in the height there is, and a further one below it where it finds room. */
function pictured(pictures: readonly Picture[], room: number): VNode[] {
  const nodes: VNode[] = [];
  let left = room;
  for (const picture of pictures) {
    const { node, height } = picture.draw(left);
    if (height > left && nodes.length > 0) break;
    nodes.push(node);
    left -= height;
  }
  return nodes;
}

/** The first picture in less than the card's width, larger and smaller: how much text runs on beside it is seen, not reckoned. */
function besideText([picture]: readonly Picture[]): VNode[][] {
  if (!picture) return [[]];
  return [460, 360, 280, 220].map((height) => [picture.draw(height, BESIDE_WIDTH).node]);
}
