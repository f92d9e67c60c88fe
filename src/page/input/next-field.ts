/** Enter in a field goes on to the next one of its cell or sheet, as Tab does; choices and what is put away are passed by. */

/** @returns whether there was one to go to */
export function goToNext(from: HTMLInputElement): boolean {
  const fields = [...(from.closest('.cell, .boat-sheet') ?? document).querySelectorAll<HTMLElement>(FIELDS)];
  const next = fields.slice(fields.indexOf(from) + 1).find((field) => !field.closest('details:not([open])'));
  next?.focus();
  return next !== undefined;
}

const FIELDS = '.input .entry-line input';
