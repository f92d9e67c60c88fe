/** A notebook with questions on paper: its text, its questions with lines to write on or with their answers, and the numbers it gives. */
import { signal } from '@preact/signals';
import { render, type VNode } from 'preact';
import { nothingSaid } from '../../boat';
import { answersOf } from '../../cells';
import { isIssue } from '../../measure';
import type { AskPlace, Block, CellShown, Graph, NotebookPage } from '../../notebook';
import { isBlank, waitsFor } from '../../notebook/lesson/blanks';
import { underWord } from '../../notebook/lesson/class-table';
import { directionWords } from '../../notebook/lesson/judge';
import { keyTo } from '../../notebook/lesson/key';
import { clearPlace, printInStead } from '../card/in-stead';
import { type Bench, BenchContext, optionsFor, sayOf, useBench } from '../bench';
import { usualNotation } from '../../boat/table/offset-notation';
import { html, use } from '../html';
import { TableOnPaper } from '../offsets/print-table';
import type { FootProps, Wall } from '../plate';
import { capital } from '../words';
import { answerWords, keyWords } from './ask-words';
import { asksOf } from '../asks';
import { coveringIn } from './covering-in';
import './worksheet.css';

export type Filled = 'blank' | 'part' | 'full';

/** @returns why nothing was printed, as a sentence; empty where it was */
export function printWorksheets(
  bench: Bench,
  foot: FootProps,
  filled: Filled,
  words: readonly string[],
): string {
  const { page } = foot;
  const seed = page.blocks.find((block) => block.type === 'seed');
  const graph = bench.book.first.peek();
  // Without a name it is the notebook as it stands on the bench.
  const sheets = (words.length > 0 ? words : ['']).map(
    (word) => [word, word === '' ? graph : underWord(word, seed, asksOf(page), graph)] as const,
  );
  for (const [word, under] of sheets) if (isIssue(under)) return `For ${word}: ${under.issue}.`;
  const place = clearPlace('card worksheet');
  render(
    html`<div>${sheets.map(([word, under]) => (isIssue(under) ? null : use(Sheet, { key: word, bench, foot, filled, word, graph: under })))}</div>`,
    place,
  );
  printInStead(place, 'worksheet', `${page.title}, worksheet`);
  return '';
}

interface SheetProps {
  readonly bench: Bench;
  readonly foot: FootProps;
  readonly filled: Filled;
  readonly word: string;
  readonly graph: Graph;
}

function Sheet({ bench, foot: { page, blocks }, filled, word, graph }: SheetProps) {
  const book = { ...bench.book, first: signal(graph), inHand: signal(graph), second: signal(null) };
  const onPaper: Bench = {
    ...bench,
    book,
    wall: signal(filled === 'full' ? null : paper(page, bench, graph)),
    asked: signal(null),
  };
  const title = filled === 'full' ? `The key: ${page.title}` : page.title;
  return use(
    BenchContext.Provider,
    { value: onPaper },
    html`<section class="worksheet-page">
      <h1>${title}</h1>
      <p class="worksheet-name">${word === '' ? (filled === 'full' ? '' : html`Name <span class="rule"></span>`) : `Name: ${word}`}</p>
      ${page.blocks.map((block) => onSheet(block, { page, blocks }, filled))}
    </section>`,
  );
}

/** What is asked for stays blank in the text too. */
function paper(page: NotebookPage, { instances }: Bench, graph: Graph): Wall {
  const asked = asksOf(page).flatMap((ask) =>
    waitsFor(ask, nothingSaid, graph).map((of): [string, string] => [of, ask.name]),
  );
  const { askOf } = coveringIn(instances, () => new Map(asked));
  const hides = (name: string) => askOf(name, graph) !== undefined;
  const none = () => null;
  return { Plate: none, Bar: none, blank: () => html`<span class="rule short"></span>`, hides };
}

/** What is pressed or looked at on the page, and says nothing on paper. */
const LEFT_OUT: readonly Block['type'][] = ['seed', 'boat', 'try', 'sketch', 'fault', 'formula'];

function onSheet(block: Block, { blocks }: FootProps, filled: Filled): VNode | readonly VNode[] | null {
  if (block.type === 'ask') return use(OnPaper, { ask: block, blocks, filled, key: block.name });
  if (block.type === 'cell') return use(CellOnPaper, { shown: block, filled });
  return LEFT_OUT.includes(block.type) ? null : blocks([block]);
}

interface OnPaperProps {
  readonly ask: AskPlace;
  readonly blocks: FootProps['blocks'];
  readonly filled: Filled;
}

function OnPaper({ ask, blocks, filled }: OnPaperProps) {
  const { book, shown } = useBench();
  const graph = book.first.value;
  const key = keyTo(ask.answer, graph);
  const isFull = filled === 'full';
  const stepBlank = (at: number) =>
    filled === 'blank' || (filled === 'part' && isBlank(ask, at, nothingSaid, graph));
  return html`<section class="worksheet-ask">
    <div class="ask-question">${blocks(ask.question)}</div>
    ${filled === 'part' ? ask.hints.map((hint) => html`<div class="worksheet-hint"><em>Hint.</em> ${blocks(hint)}</div>`) : null}
    ${
      ask.steps.length > 0
        ? html`<ol>
            ${ask.steps.map(
              (step, at) =>
                html`<li><span class="ask-step-words">${blocks([{ type: 'paragraph', inside: step.words }])}:</span> ${stepBlank(at) ? html`<span class="rule short"></span>` : html`<b>${keyWords(keyTo(step.answer, graph), graph, shown.value)}</b>`}</li>`,
            )}
          </ol>`
        : null
    }
    ${
      isFull
        ? html`<p><b>${answerWords(key, graph, shown.value)}</b></p>
            ${ask.answer.is === 'words' ? blocks(ask.answer.blocks) : null} ${blocks(ask.see)}`
        : html`<p>Your guess: ${choices(ask, graph)}</p>
            <div class="worksheet-sentence">${ask.sentence.length > 0 ? blocks(ask.sentence) : html`<p>In a sentence of your own: why is it so?</p>`}</div>
            <span class="rule whole"></span><span class="rule whole"></span>`
    }
  </section>`;
}

/** What is ringed with a pencil, where there are few answers; else a line. */
function choices({ answer }: AskPlace, graph: Graph): string | VNode {
  if (answer.is === 'moves' || answer.is === 'direction') return Object.values(directionWords).join(' · ');
  const options = answer.is === 'quantity' ? optionsFor(graph, answer.of) : [];
  return options.length > 0
    ? options.map(({ label }) => label).join(' · ')
    : html`<span class="rule"></span>`;
}

/** What the notebook gives of a cell; in the key, what it answers. */
function CellOnPaper({ shown: { instance: name }, filled }: { shown: CellShown; filled: Filled }) {
  const bench = useBench();
  const { book, shown, instances, wall } = bench;
  const graph = book.first.value;
  const instance = instances.value.get(name);
  if (!instance) return null;
  const told = (key: string) => sayOf(graph, `${name}.${key}`, graph.value(`${name}.${key}`), shown.value);
  const isOpen = (key: string) => !wall.value?.hides(`${name}.${key}`);
  const given = Object.keys(instance.presets)
    .filter(isOpen)
    .map((key) => `${capital(graph.quantity(`${name}.${key}`)?.meaning ?? key)}: ${told(key)}`);
  const answers =
    filled === 'full'
      ? answersOf(instance, (by) => graph.workOut(by)).map(
          ({ of, label }) => `${capital(label)}: ${told(of)}`,
        )
      : [];
  // Her table is what is read, on paper as on the page.
  const table =
    instance.cell.view === 'offsets'
      ? use(TableOnPaper, { notation: usualNotation(bench.table.value) })
      : null;
  if (given.length === 0 && answers.length === 0 && !table) return null;
  return html`<section class="worksheet-cell">
    <p><b>${instance.cell.title}.</b> ${given.length > 0 ? `${given.join('; ')}.` : ''}</p>
    ${answers.length > 0 ? html`<p><b>${answers.join('; ')}.</b></p>` : null} ${table}
  </section>`;
}
