/** How a card's table keeps to its width: its rows to a line each, or else its words break, or else its columns are parted. */
import { render, type VNode } from 'preact';
import type { CardTable } from './card-table';
import type { TableSetting } from './table-view';

/** @param view what stands in `place` with the table set so */
export function tableSetting(
  { rows: { length: rows }, columns: { length: columns } }: CardTable,
  place: HTMLElement,
  view: (setting: TableSetting) => VNode,
): TableSetting {
  const settings = [
    { parts: 1, breaks: 'nowhere', rows } as const,
    ...Array.from(
      { length: columns },
      (_, more) => ({ parts: 1 + more, breaks: 'between words', rows }) as const,
    ),
  ];
  const isTooWide = (setting: TableSetting) => {
    render(view(setting), place);
    return [...place.querySelectorAll('table')].some((table) => table.offsetWidth > place.clientWidth);
  };
  return settings.find((setting) => !isTooWide(setting)) ?? { parts: columns, breaks: 'anywhere', rows };
}
