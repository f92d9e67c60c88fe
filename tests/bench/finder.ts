/** How long the finder takes from a letter typed to the list of what is found, without the page. */
import { find, indexOf } from '../../src/page/finder/search';
import { tradeWords } from '../../src/page/finder/trade-words';
import { things } from '../page/finder/all-things';
import { type Section, spread, timesOf } from './table';

const RUNS = 100;
const typed = [
  'sc',
  'st',
  'scarf',
  'limer',
  'gunwale',
  'screw to screw',
  'thickness of the keelson',
  'zzyzx',
];

export function finding(): Section {
  const index = indexOf(things, tradeWords);
  const making = spread(timesOf(20, () => indexOf(things, tradeWords)));
  const rows = typed.map((text) => {
    const { median, p95 } = spread(timesOf(RUNS, () => find(index, text, 'the-build')));
    return [text, find(index, text, 'the-build').length, median, p95];
  });
  return {
    title: 'The finder, in Node',
    says: `${things.length} things to be found in ${index.words.size} words; what is typed, how much is found and in how many ms, median of ${RUNS} and the one that 95 of 100 don't pass. The index is made when the finder is first opened: ${making.median.toFixed(0)} ms.`,
    head: ['typed', 'found', 'median', '95 %'],
    rows,
  };
}
