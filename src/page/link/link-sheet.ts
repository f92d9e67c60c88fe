/** The sheet of a link at the head of the notebook: what one brings, or the one that is being made. */
import { linkOpen } from '../link-open';
import { use } from '../html';
import { BroughtSheet } from './brought-sheet';
import { MadeSheet } from './made-sheet';
import './link.css';

export function LinkSheet() {
  const link = linkOpen.value;
  if (link === null) return null;
  return link === 'make' ? use(MadeSheet, {}) : use(BroughtSheet, { link });
}
