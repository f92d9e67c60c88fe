/** The questions by stage, those used last above them; on a phone keys lead to each stage. */
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { type NotebookPage, wordsOf as wordsIn } from '../../notebook';
import { wordsOf } from '../../measure';
import { useBench } from '../bench';
import { wayTo } from '../address';
import { blockViews } from '../blocks/kinds';
import { html } from '../html';
import { capital } from '../words';
import type { QuickPart, Question } from './parts';
import { usedLast } from './used-last';

export interface QuestionListProps {
  readonly page: NotebookPage;
  readonly parts: readonly QuickPart[];
  /** The name of the one that is open. */
  readonly open: string | undefined;
}

export function QuestionList({ page, parts, open }: QuestionListProps) {
  const { shelf } = useBench();
  const host = useRef<HTMLElement>(null);
  const [used, setUsed] = useState(() => usedLast(shelf, page.id));
  const before = useRef(open);
  useLayoutEffect(() => {
    const left = before.current;
    before.current = open;
    if (open !== undefined || left === undefined) return;
    // Back in the list, at the question that was open.
    setUsed(usedLast(shelf, page.id));
    const link = host.current?.querySelector<HTMLElement>(`.by-stage a[data-question="${left}"]`);
    link?.focus({ preventScroll: true });
    link?.scrollIntoView({ block: 'center', behavior: 'instant' });
  }, [open]);
  const all = parts.flatMap(({ questions }) => questions);
  const last = used.flatMap((name) => all.find((question) => question.name === name) ?? []);
  const links = (questions: readonly Question[]) =>
    html`<ul>${questions.map((question) => link(question))}</ul>`;
  const link = ({ name, asks }: Question) => html`<li key=${name}>
    <a href=${wayTo(page.id, name)} data-question=${name} aria-current=${name === open ? 'page' : undefined}>${asks || capital(wordsOf(name))}</a>
  </li>`;
  const stages = parts.flatMap(({ heading }) => heading ?? []);
  return html`<nav class="question-list" aria-label="Questions" ref=${host}>
    <div class="prose">${parts[0]?.heading ? null : blockViews(parts[0]?.lead ?? [], page.id)}</div>
    ${
      stages.length > 1 &&
      html`<ul class="stages">${stages.map(({ id, inside }) => html`<li key=${id}><a href=${wayTo(page.id, id)} onClick=${(event: Event) => goTo(event, id)}>${wordsIn(inside)}</a></li>`)}</ul>`
    }
    ${
      last.length > 0 &&
      html`<section class="used-last" aria-labelledby="used-last"><h2 id="used-last">Used last</h2>${links(last)}</section>`
    }
    <div class="by-stage">
      ${parts.map(
        ({ heading, lead, questions }, at) => html`<section key=${heading?.id ?? at}>
          ${heading ? blockViews([heading, ...lead], page.id) : null} ${links(questions)}
        </section>`,
      )}
    </div>
  </nav>`;
}

/** Within the list, as often as it is pressed. */
function goTo(event: Event, id: string): void {
  event.preventDefault();
  void import('../go-to').then(({ showPlace }) => showPlace(id));
}
