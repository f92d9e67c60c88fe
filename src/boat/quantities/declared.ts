/**
 * All numbers and choices of the boat and the shop that cells ask for as theirs, by name. Fetched with the cells.
 */
import { putUp } from '../../measure';
import { bitShelf } from '../../trade/drills';
import { lumberShelf } from '../../trade/lengths-sold';
import { draughtGivens } from './draught';
import { frameStands } from './frame-stands';
import { pieceEntries, pieceRules } from './piece-rules';
import type { Declared } from './quantity';
import { partKinds, scantlingsOf, skinKind } from './scantlings';
import { shopEntries } from './shop';

putUp('drill', bitShelf);
putUp('stockLength', lumberShelf);

const skins = ['bottom', 'bilge', 'side'].map((panel) => skinKind(panel, panel));

export const declared: readonly Declared[] = [
  ...[...partKinds, ...skins].flatMap(scantlingsOf),
  ...draughtGivens,
  ...frameStands,
  ...pieceRules,
  ...pieceEntries,
  ...shopEntries,
];

/**
 * Those that a link may lead to: one by its name, of `{part}.thickness` all thicknesses; none where it leads to what
 * follows from others.
 */
export function declaredAs(link: string): readonly Declared[] {
  const pattern = new RegExp(`^${link.replaceAll('.', '\\.').replaceAll(/\{\w+\}/g, '\\w+')}$`);
  return link === '' ? [] : declared.filter(({ name }) => pattern.test(name));
}
