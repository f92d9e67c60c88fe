/** Below a notebook with questions: what a learner hands in, and what a teacher hands out, collects and prints. */
import { Fragment } from 'preact';
import { useBench } from '../bench';
import { Disclosure } from '../disclosure';
import { html, use } from '../html';
import type { FootProps } from '../plate';
import { Collect } from './collect';
import { HandIn } from './hand-in-view';
import { HandOut } from './hand-out';
import { Worksheets } from './worksheets';
import './class-foot.css';

export function ClassFoot({ page, blocks }: FootProps) {
  if (useBench().wall.value) return html`<${Fragment} />`;
  return html`<section class="class-foot plain" aria-label="For the class">
    ${use(Disclosure, { summary: 'Hand in what you wrote', className: 'fold', inside: () => use(HandIn, { page }) })}
    ${use(Disclosure, { summary: 'For the teacher: hand this out', className: 'fold', inside: () => use(HandOut, { page }) })}
    ${use(Disclosure, { summary: 'For the teacher: print worksheets', className: 'fold', inside: () => use(Worksheets, { page, blocks }) })}
    ${use(Disclosure, { summary: 'For the teacher: collect', className: 'fold', inside: () => use(Collect, { page }) })}
  </section>`;
}
