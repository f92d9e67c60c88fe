/**
 * The kinds of block. A new one is a file here that reads it, a line here, its form in `page-text.ts`, and a file in the
 * page's `blocks` that shows it. The first that finds a token reads it.
 */
import { ask } from './ask';
import { boat } from './boat';
import { cell } from './cell';
import { code } from './code';
import { formula } from './formula';
import { heading } from './heading';
import type { BlockKind } from '../text/block-kind';
import { list } from './list';
import { asTyped, paragraph } from './paragraph';
import { quote } from './quote';
import { rule } from './rule';
import { seed } from './seed';
import { sketch } from './sketch';
import { sweep } from './sweep';
import { table } from './table';
import { trying } from './try';
import { when } from './when';

export const kinds: readonly BlockKind[] = [
  cell,
  formula,
  trying,
  when,
  boat,
  ask,
  seed,
  sketch,
  sweep,
  heading,
  paragraph,
  list,
  quote,
  table,
  code,
  rule,
  asTyped,
];
