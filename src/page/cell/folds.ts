/** What a cell keeps a press away: the names in one line, what is opened below it. Graph, table and changes go on paper, open or not. */
import { useEffect } from 'preact/hooks';
import type { Instance } from '../../cells';
import { wordsOf } from '../../measure';
import { type Bench, optionsFor, useBench } from '../bench';
import { Disclosure, type DisclosureProps } from '../disclosure';
import { html, use } from '../html';
import { later } from '../later';
import { plotHere } from '../picture/chart-view';
import { PatternsRow } from '../picture/patterns-row';
import { Pictures } from '../picture/pictures';
import { Checks } from './checks';
import { LogFold } from '../log/log-fold';
import { Offers, offersPlace } from './offers';
import { CellTable } from './table';
import { views } from './views';

/** The same list each time, so that nothing is made anew for it. */
const CHART = ['chart'] as const;

const Further = later(async () => (await import('../further/further')).Further, 'further-to-come');
const Working = later(async () => (await import('./working')).Working, 'working');

export function Folds({ instance }: { instance: Instance }) {
  const bench = useBench();
  const drawn = Object.hasOwn(bench.book.state.value.sweeps, instance.name);
  useEffect(() => {
    const call = requestIdleCallback(() => fetchForPaper(instance, drawn), { timeout: 4000 });
    return () => cancelIdleCallback(call);
  }, [instance, drawn]);
  return html`<div class="folds">
    ${foldsOf(instance, hasRows(instance, bench), drawn).map((fold) => use(Disclosure, { ...fold, key: fold.className, className: `fold ${fold.className}` }))}
    ${bench.boatless.value ? null : use(LogFold, { name: instance.name })}
  </div>`;
}

/** Of one answer a table says nothing that the answers above don't: a choice among a boat's parts, where there is none. */
function hasRows({ cell: { table }, name }: Instance, { book }: Bench): boolean {
  if (!table || table.rows) return table !== undefined;
  return optionsFor(book.inHand.value, `${name}.${table.over}`).length > 1;
}

/** @param drawn whether something is drawn further, which goes on paper */
function foldsOf(instance: Instance, hasTable: boolean, drawn: boolean): DisclosureProps[] {
  const { cell, name } = instance;
  const { table } = cell;
  const view = views[cell.view ?? ''];
  return [
    ...(cell.chart && cell.draw
      ? [
          {
            summary: 'Graph',
            className: 'graph',
            prints: true,
            inside: () => use(Pictures, { instance, which: CHART }),
          },
        ]
      : []),
    ...(view?.folded
      ? [
          {
            summary: view.folded,
            className: 'round',
            prints: true,
            inside: () => use(view.show, { instance }),
          },
        ]
      : []),
    ...(table && hasTable
      ? [
          {
            summary: inShort(table.caption),
            className: 'rows',
            prints: true,
            inside: () => use(CellTable, { instance, table }),
          },
        ]
      : []),
    ...(cell.patterns
      ? [
          {
            summary: inShort(cell.patterns.are),
            className: 'full-size',
            inside: () => use(PatternsRow, { instance }),
          },
        ]
      : []),
    ...(cell.offers
      ? [
          {
            summary: 'Changes to try',
            className: 'changes',
            id: offersPlace(name),
            prints: true,
            inside: () => use(Offers, { instance }),
          },
        ]
      : []),
    { summary: 'Ask further', className: 'further', prints: drawn, inside: () => use(Further, { instance }) },
    {
      summary: 'Working',
      className: 'working',
      holds: `${name}.`,
      inside: () => use(Working, { instance }),
    },
    { summary: 'Sources', className: 'sources', inside: () => sourcesOf(instance) },
  ];
}

/** Printing waits for nothing: what goes on paper must be here before anybody has opened it. */
function fetchForPaper({ cell }: Instance, drawn: boolean): void {
  const view = views[cell.view ?? ''];
  if (drawn) void Further.fetch();
  if (cell.chart || drawn) void plotHere();
  if (view?.folded) void view.show.fetch();
}

/** What a table or a pattern is of: its caption up to how it is laid. */
const inShort = (caption: string): string => caption.split(/[:,;]/)[0]!; // split gives at least one

function sourcesOf({ cell, name }: Instance) {
  return [
    html`<ul>
      ${cell.sources.map((source) => html`<li>${source.text} <em>(${source.known})</em></li>`)}
    </ul>`,
    use(Checks, { cell: cell.id, of: wordsOf(name) }),
  ];
}
