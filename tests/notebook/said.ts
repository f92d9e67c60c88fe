/** The sentences of a notebook as they are read with a boat on the bench: comparisons held, values put in. */
import { isIssue, plainShown, write } from '../../src/measure';
import type { Graph } from '../../src/notebook/graph/graph';
import { holds } from '../../src/notebook/text/holds';
import type { Block, Condition, Inline, LiveValue, NotebookPage } from '../../src/notebook/text/page-text';

export interface Said {
  /** A paragraph, item, cell of a table or heading, in plain words; a value stands in it as written in millimetres. */
  readonly words: string;
  readonly values: readonly LiveValue[];
}

/** @throws Error where a comparison can't be made on this boat */
export function saidOn(graph: Graph, page: Pick<NotebookPage, 'blocks'>): readonly Said[] {
  return page.blocks.flatMap((block) => saidIn(block, graph));
}

function saidIn(block: Block, graph: Graph): readonly Said[] {
  const all = (blocks: readonly Block[]) => blocks.flatMap((one) => saidIn(one, graph));
  switch (block.type) {
    case 'heading':
    case 'paragraph':
      return [saying(block.inside, graph)];
    case 'list':
      return block.items.flatMap(all);
    case 'quote':
      return all(block.blocks);
    case 'when':
      return isTrue(block.holds, graph) ? all(block.blocks) : [];
    case 'table':
      return [block.head, ...block.rows].flat().map((cell) => saying(cell, graph));
    case 'try':
      return [{ words: block.title, values: [] }];
    case 'ask':
      return [
        ...all([...block.question, ...block.hints.flat(), ...block.see, ...block.sentence]),
        ...(block.answer.is === 'words' ? all(block.answer.blocks) : []),
        ...block.steps.map(({ words }) => saying(words, graph)),
      ];
    case 'boat':
    case 'seed':
    case 'cell':
    case 'code':
    case 'formula':
    case 'rule':
    case 'sketch':
    case 'sweep':
    case 'fault':
      return [];
  }
}

function saying(inlines: readonly Inline[], graph: Graph): Said {
  const values: LiveValue[] = [];
  const words = (of: readonly Inline[]): string =>
    of
      .map((inline): string => {
        switch (inline.type) {
          case 'value':
            values.push(inline);
            return written(inline.of, graph);
          case 'when':
            return words(isTrue(inline.holds, graph) ? inline.inside : inline.otherwise);
          case 'box':
            return '';
          case 'break':
            return ' ';
          case 'strong':
          case 'emphasis':
          case 'link':
            return words(inline.inside);
          case 'text':
          case 'code':
          case 'fault':
            return inline.text;
        }
      })
      .join('');
  return { words: words(inlines), values };
}

function isTrue(condition: Condition, graph: Graph): boolean {
  const so = holds(condition, graph);
  if (isIssue(so)) throw new Error(so.issue);
  return so;
}

function written(name: string, graph: Graph): string {
  const value = graph.value(name);
  if (typeof value === 'number') return write(value, graph.quantity(name)?.kind ?? 'number', plainShown).text;
  return isIssue(value) ? `(${value.issue})` : value;
}
