/** A notebook that is a list of questions: the list, and the one that is open, alone. */
import './quick.css';
import { useEffect, useMemo } from 'preact/hooks';
import type { NotebookPage } from '../../notebook';
import { useBench } from '../bench';
import { way } from '../address';
import { html, use } from '../html';
import { questionAt } from '../library';
import { OpenQuestion } from './open-question';
import { partsOf } from './parts';
import { QuestionList } from './question-list';
import { noteUse } from './used-last';

export function Questions({ page }: { page: NotebookPage }) {
  const { shelf } = useBench();
  const parts = useMemo(() => partsOf(page.blocks), [page]);
  const instances = page.places.map(({ instance }) => instance);
  const name = questionAt(page.form, way.value.place, instances);
  const open = parts.flatMap(({ questions }) => questions).find((question) => question.name === name);
  useEffect(() => {
    if (open) noteUse(shelf, page.id, open.name);
  }, [open?.name]);
  return html`<div class=${open ? 'questions open' : 'questions'}>
    ${use(QuestionList, { page, parts, open: open?.name })}
    ${open ? use(OpenQuestion, { page, question: open, key: open.name }) : null}
  </div>`;
}
