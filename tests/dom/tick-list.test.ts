/** The buying list as it stands on the page: a tick is written, a line leads to its cell. */
import { signal } from '@preact/signals';
import { render } from 'preact';
import { expect, test, vi } from 'vitest';
import { demoBoat } from '../../src/boat';
import { plainInstance } from '../../src/cells';
import { buyList } from '../../src/cells/buying/buy-list';
import { plainShown } from '../../src/measure';
import { createGraph } from '../../src/notebook/graph/graph';
import { wholeCatalogue } from '../../src/notebook/graph/whole-catalogue';
import { type Bench, BenchContext } from '../../src/page/bench';
import { use } from '../../src/page/html';
import { TickList } from '../../src/page/list/tick-list';

test('ticks a line off, takes the tick away, and leads to the cell that counts it', () => {
  const graph = createGraph({
    catalogue: () => wholeCatalogue(demoBoat),
    entries: () => ({ 'buyList.screwsGot': 'yes' }),
    shown: plainShown,
  });
  const write = vi.fn<(entries: object) => void>();
  const goTo = vi.fn<(name: string) => void>();
  const bench = {
    book: { inHand: signal(graph), write, settle: () => {} },
    shown: signal(plainShown),
    table: signal(demoBoat),
    goTo,
  } as unknown as Bench; // what the list asks for
  const host = document.body.appendChild(document.createElement('div'));
  render(
    use(BenchContext.Provider, { value: bench }, use(TickList, { instance: plainInstance(buyList) })),
    host,
  );
  const line = (label: string) =>
    [...host.querySelectorAll('li')].find((one) => one.textContent.includes(`${label}:`))!;
  expect(host.querySelectorAll('li')).toHaveLength(17);
  expect(line('plywood').textContent).toContain('sheets');
  line('plywood').querySelector('input')!.click();
  expect(write).toHaveBeenLastCalledWith({ 'buyList.sheetsGot': 'yes' });
  expect(line('screws of the skin').querySelector('input')!.checked).toBe(true);
  line('screws of the skin').querySelector('input')!.click();
  expect(write).toHaveBeenLastCalledWith({ 'buyList.screwsGot': 'no' });
  line('plywood').querySelector('button')!.click();
  expect(goTo).toHaveBeenLastCalledWith('sheets.count');
  render(null, host);
  host.remove();
});
