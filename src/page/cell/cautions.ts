/** What can hurt: the first caution in view, the others a press away; all of them go on paper. */
import { Disclosure } from '../disclosure';
import { html, use } from '../html';

export function Cautions({ cautions }: { cautions: readonly string[] }) {
  const [first, ...more] = cautions;
  if (first === undefined) return null;
  return html`<div class="cautions" role="group" aria-label="Cautions">
    <p>${first}</p>
    ${
      more.length > 0
        ? use(Disclosure, {
            summary: html`${more.length} more<span class="unseen">${more.length > 1 ? ' cautions' : ' caution'}</span>`,
            className: 'more-cautions',
            prints: true,
            inside: () => more.map((caution) => html`<p>${caution}</p>`),
          })
        : null
    }
  </div>`;
}
