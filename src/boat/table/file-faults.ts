/**
 * Faults in the form of a file, told as sentences: `hull: stations: frame 3: chine: y must be a number`.
 */
import type { BaseIssue } from 'valibot';

const MOST = 20;

/** One sentence a fault, the first twenty. */
export function sentences(issues: readonly BaseIssue<unknown>[]): readonly string[] {
  const told = issues
    .slice(0, MOST)
    // A key that is not there is told by the object it is missing from.
    .map((fault) => `${place(fault)}${fault.received === 'undefined' ? 'is missing' : fault.message}`);
  return issues.length > MOST ? [...told, `and ${issues.length - MOST} more faults`] : told;
}

/** The way to the fault; an entry of a list goes by its own name if it has one, else by its number. */
function place(fault: BaseIssue<unknown>): string {
  const steps = fault.path ?? [];
  const words = steps.map((step) => {
    if (step.type !== 'array') return String(step.key);
    const { value } = step;
    if (typeof value === 'string' && value !== '') return `"${value}"`;
    if (
      typeof value === 'object' &&
      value !== null &&
      'name' in value &&
      typeof value.name === 'string' &&
      value.name !== ''
    ) {
      return value.name;
    }
    return `number ${step.key + 1}`;
  });
  return words.length === 0 ? 'the file ' : `${words.join(': ')} `;
}
