import { type Issue, issue } from '../measure';

/**
 * Asks the hull for something that its faults may spoil: the answer, or the fault as an issue.
 *
 * The hull and the kernel throw a plain `Error` whose message is a sentence for the builder. Anything
 * else thrown (a slip in the program, a value that the notebook waits for) passes through.
 */
export function attempt<T>(ask: () => T): T | Issue {
  try {
    return ask();
  } catch (fault) {
    if (fault instanceof Error && fault.constructor === Error) return issue(fault.message);
    throw fault;
  }
}
