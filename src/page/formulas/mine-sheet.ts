/** The builder's formulas that stand in no notebook, at the head of the page: for a sum that comes up at the bench. */
import { useBench } from '../bench';
import { mineOpen } from '../mine-open';
import { html, use } from '../html';
import { MINE } from '../../notebook/formulas/place-formulas';
import { FormulaView } from './formula-view';

export function MineSheet() {
  const { boatless } = useBench();
  const close = () => {
    mineOpen.value = false;
    document.getElementById('notebook-title')?.focus();
  };
  return html`<section class="boat-sheet own-boats mine-sheet" aria-labelledby="mine-title">
    <button type="button" class="close-sheet" aria-label="Close your own formulas" onClick=${close}>Close</button>
    <h2 id="mine-title" tabindex="-1">A formula of your own</h2>
    <p>Work out what no cell here does, from any number of ${boatless.value ? 'this notebook' : 'the boat, the shop and the cells'}. What you call a line can be used by its name, <code>${MINE}.name</code>, in every field and every text. It is kept with the ${boatless.value ? 'notebook' : 'boat'}, and is the same in both versions.</p>
    ${use(FormulaView, { name: MINE })}
  </section>`;
}
