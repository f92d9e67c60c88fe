/** The log beside its cell: closed, with how many entries there are; what is written goes on paper with the cell. */
import { useComputed } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { useBench } from '../bench';
import { Disclosure } from '../disclosure';
import { use } from '../html';
import { later } from '../later';

const LogBook = later(async () => (await import('./log-book')).LogBook, 'log-to-come');

export function LogFold({ name }: { name: string }) {
  const { book } = useBench();
  const count = useComputed(
    () => Object.values(book.state.value.log).filter(({ cell }) => cell === name).length,
  ).value;
  const prints = count > 0;
  // Printing waits for nothing.
  useEffect(() => {
    if (prints) void LogBook.fetch();
  }, [prints]);
  return use(Disclosure, {
    summary: prints ? `Log (${count})` : 'Log',
    className: 'fold log',
    prints,
    inside: () => use(LogBook, { cell: name }),
  });
}
