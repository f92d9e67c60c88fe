/** Entries of a log, for tests. */
import type { LogEntry } from '../../../src/boat';

export const entry = (said: Partial<LogEntry> = {}): LogEntry => ({
  day: '',
  cell: '',
  hours: '',
  money: '',
  measured: '',
  note: '',
  ...said,
});
