/** The ways the log may change: pure functions on the state, which Undo steps through as through any other. */
import type { Log, LogEntry } from '../../boat';
import type { BookState } from '../state/state';

/** The id that a new entry takes. */
export function nextEntry(log: Log): string {
  return `e${Object.keys(log).reduce((most, id) => Math.max(most, Number(id.slice(1))), 0) + 1}`;
}

/** Writes an entry, or with null takes it out. What stands there already is no change. */
export function writeEntry(state: BookState, id: string, entry: LogEntry | null): BookState {
  const { [id]: was, ...others } = state.log;
  if (entry === null) return was ? { ...state, log: others } : state;
  if (was && fields.every((field) => was[field] === entry[field])) return state;
  return { ...state, log: { ...state.log, [id]: entry } };
}

const fields = ['day', 'cell', 'hours', 'money', 'measured', 'note'] as const satisfies (keyof LogEntry)[];
