/**
 * The keys under a field (where its number comes from, clear, measured) stand aside when Tab goes from field to
 * field. Alt+Enter in the field leads to them, arrows from one to the next, Escape or Alt+Enter back.
 */
export const TO_ROW_KEYS = 'Alt+Enter';

/** For the row that holds the field and its keys. */
export function onRowKey(event: KeyboardEvent): void {
  const row = event.currentTarget as HTMLElement;
  const keys = [...row.querySelectorAll<HTMLElement>('button[data-row-key]')];
  const at = keys.indexOf(event.target as HTMLElement);
  const to = goes(event, row, keys, at);
  if (!to) return;
  event.preventDefault();
  event.stopPropagation();
  to.focus();
}

const STEPS: Readonly<Record<string, number>> = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 };

function goes(
  event: KeyboardEvent,
  row: HTMLElement,
  keys: readonly HTMLElement[],
  at: number,
): HTMLElement | null | undefined {
  const isWayOver = event.key === 'Enter' && event.altKey;
  if (at < 0) return isWayOver ? keys[0] : null;
  if (isWayOver || event.key === 'Escape') return row.querySelector<HTMLElement>('input, select');
  const step = STEPS[event.key];
  return step === undefined ? null : keys[(at + step + keys.length) % keys.length];
}
