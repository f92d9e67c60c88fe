/**
 * The keys of a field (where its number comes from, clear, measured) stand aside when Tab goes from field to field.
 * Alt+Enter in the field opens them and leads there, arrows from one to the next, Escape or Alt+Enter back.
 */
export const TO_ROW_KEYS = 'Alt+Enter';

export interface Opening {
  readonly isOpen: boolean;
  /** Opens what holds the keys and leads to the first; undefined where a field has none. */
  readonly enter: (() => void) | undefined;
  readonly close: () => void;
}

/** For the row that holds the field and its keys. */
export function onRowKey(event: KeyboardEvent, { isOpen, enter, close }: Opening): void {
  const row = event.currentTarget as HTMLElement;
  const keys = [...row.querySelectorAll<HTMLElement>('button[data-row-key]')];
  const at = keys.indexOf(event.target as HTMLElement);
  const isWayOver = event.key === 'Enter' && event.altKey;
  const act = () => {
    if (at < 0) {
      if (!isWayOver || enter === undefined) return false;
      const first = row.querySelector<HTMLElement>('.more-about button');
      if (!isOpen) enter();
      else if (first) first.focus();
      else close();
      return true;
    }
    if (isWayOver || event.key === 'Escape') {
      focusField(event);
      close();
      return true;
    }
    const step = STEPS[event.key];
    if (step !== undefined) keys[(at + step + keys.length) % keys.length]?.focus();
    return step !== undefined;
  };
  if (!act()) return;
  event.preventDefault();
  event.stopPropagation();
}

const STEPS: Readonly<Record<string, number>> = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 };

/** A key that goes away leaves the focus with its row's field. */
export function focusField(event: Event): void {
  const row = (event.currentTarget as HTMLElement).closest('.input');
  row?.querySelector<HTMLElement>('input, select')?.focus();
}
