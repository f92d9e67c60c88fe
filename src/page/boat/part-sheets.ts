/** The hull, its edges and panels, the parts and the shop: for each its entries and the numbers that follow. */
import { countsNow, type Declared, type Given, lists, partOf, shopGroups } from '../../boat';
import { isIssue, wordsOf } from '../../measure';
import { useBench } from '../bench';
import { CutMark } from '../as-built/cut-mark';
import { Disclosure } from '../disclosure';
import { html, use } from '../html';
import { InputRow } from '../input/input-row';
import { capital } from '../words';
import { Numbers } from './numbers';

const SHOP = 'shop';
/** What is no wood that could be cut. */
const notCut = new Set(['hull', 'pieces']);

export function PartSheets() {
  const { book, instances, table } = useBench();
  const { names, find } = book.catalogue.value;
  const frames = new Set(lists(table.value).frames.map(({ id }) => id));
  const isPart = (part: string) => !instances.value.has(part) && !frames.has(part);
  const ofParts = names().filter((name) => isPart(partOf(name)) && name.split('.').length === 2);
  const isGiven = (name: string) => 'preset' in find(name)!; // one of the catalogue's own
  const sizes = byPart(ofParts.filter(isGiven));
  const numbers = byPart(ofParts.filter((name) => !isGiven(name)));
  const others = [...numbers.keys()].filter((part) => !sizes.has(part));
  return html`<section>
    <h3>Scantlings</h3>
    <p>Sizes and materials of the parts. Where the plan says otherwise, write the plan’s size here once; every cell follows. What calipers read on the wood goes under <i>measured</i>, and what is cut can be marked so: then it stays, and you are told what no longer fits it.</p>
    <div class="sheet-groups">
      ${[...sizes]
        .filter(([part]) => part !== SHOP)
        .map(
          ([part, entries]) => html`<details id=${`part-${part}`}>
          <summary>${capital(wordsOf(part))}</summary>
          ${rows(entries)}
          ${notCut.has(part) ? null : use(CutMark, { part })}
          ${numbersOf(part)}
        </details>`,
        )}
    </div>
    <h3>The shop</h3>
    <p id=${`part-${SHOP}`}>What the cells share. Written here or in any cell that shows it, it holds in all.</p>
    <div class="sheet-groups">
      ${Object.entries(shopGroups).map(
        ([name, entries]) => html`<details>
          <summary>${name}</summary>
          ${use(ShopRows, { entries })}
        </details>`,
      )}
    </div>
    <h3>What the hull gives</h3>
    <p>Worked out from the offsets and the scantlings.</p>
    <div class="sheet-groups">${others.map((part) => numbersOf(part, capital(wordsOf(part))))}</div>
  </section>`;

  function rows(entries: readonly string[]) {
    const labelOf = (name: string) =>
      (find(name) as Given).label ?? capital(wordsOf(name.split('.')[1] ?? name)); // entries are given
    return html`<div class="inputs">
      ${entries.map((name) => use(InputRow, { key: name, name, label: labelOf(name) }))}
    </div>`;
  }

  function numbersOf(part: string, summary = 'What follows') {
    const names = numbers.get(part);
    if (!names) return null;
    const inside = () => use(Numbers, { names });
    return use(Disclosure, {
      key: `${part} numbers`,
      summary,
      className: 'follows',
      holds: `${part}.`,
      inside,
    });
  }
}

/** Of prices only those in the way that the yard quotes; or one at fault, which has to be seen to be mended. */
function ShopRows({ entries }: { entries: readonly Declared[] }) {
  const graph = useBench().book.inHand.value;
  const isAtFault = ({ name }: Declared) => {
    const value = graph.value(name);
    return isIssue(value) && value.waitsFor === undefined;
  };
  const shown = entries.filter((entry) => countsNow(entry, (name) => graph.value(name)) || isAtFault(entry));
  return html`<div class="inputs">
    ${shown.map(({ name, label }) => use(InputRow, { key: name, name, label }))}
  </div>`;
}

/** Names under their first words. */
function byPart(names: readonly string[]): Map<string, string[]> {
  const parts = new Map<string, string[]>();
  for (const name of names) parts.set(partOf(name), [...(parts.get(partOf(name)) ?? []), name]);
  return parts;
}
