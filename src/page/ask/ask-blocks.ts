/** What a class asks for in a notebook, in one file: questions, the place of numbers of one's own, and what covers answers. */
import type { AskPlace, SeedPlace } from '../../notebook';
import { use } from '../html';
import { AskView } from './ask-view';
import type { AskProps } from './ask-words';
import { SeedView } from './seed-view';

export { coverAsked } from './asked';

export interface AskBlockProps {
  readonly block: AskPlace | SeedPlace;
  readonly showing: AskProps['showing'];
}

export const AskBlock = ({ block, showing }: AskBlockProps) =>
  block.type === 'ask'
    ? use(AskView, { ask: block, showing })
    : use(SeedView, { seed: block, notebook: showing.notebook });
