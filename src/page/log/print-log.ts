/** Prints the log by itself: stage by stage in tables, and on top what each stage comes to. */
import { render } from 'preact';
import { clearPlace, printInStead } from '../card/in-stead';
import { type Bench, BenchContext } from '../bench';
import { use } from '../html';
import { LogPaper } from './log-paper';
import './log-paper.css';

export function printLog(bench: Bench): void {
  const place = clearPlace('card log-paper');
  render(use(BenchContext.Provider, { value: bench }, use(LogPaper, { today: new Date() })), place);
  printInStead(place, 'log', `${bench.name.peek()}, log`);
}
