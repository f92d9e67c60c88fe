/**
 * A tap, a click or Tab in a field selects what stands in it, so that the next key replaces it; a second tap
 * places the caret, and what is drawn over with the pointer stays as drawn. What a key has selected is still whole
 * after the first tap: a thumb goes for the field that Enter has led to.
 */
import { useRef } from 'preact/hooks';
import { redraw } from '../picture/redraw';

type Field = { readonly current: HTMLInputElement | null };

export function useTakeAll(field: Field) {
  /** A press of the pointer is bringing the focus, and places the caret after it: what is to be selected waits for its end. */
  const pressed = useRef(false);
  const byFinger = useRef(false);
  /** A tap has selected it, so that the next one places the caret. */
  const tapped = useRef(false);
  const clear = () => {
    pressed.current = false;
    document.removeEventListener('click', released.current, true);
  };
  // What the last field had under it goes with the focus, so that a finger may be lifted beside the field that it
  // came down on: the click is heard wherever it falls.
  const released = useRef(() => {
    const at = field.current;
    const isNew = pressed.current;
    clear();
    if (at === null || document.activeElement !== at) return;
    tapped.current = true;
    if (isNew) {
      if (at.selectionStart === at.selectionEnd) at.select();
    } else if (byFinger.current && isAllOf(at)) {
      // Some browsers keep what is selected under a finger: the caret goes where one writes on, the next tap moves it.
      at.setSelectionRange(at.value.length, at.value.length);
    }
  });
  return {
    onPointerDown: ({ pointerType }: PointerEvent) => {
      byFinger.current = pointerType === 'touch';
      const isNew = byFinger.current && !tapped.current && isAllOf(field.current);
      pressed.current = document.activeElement !== field.current || isNew;
      document.addEventListener('click', released.current, true);
    },
    onPointerCancel: clear,
    onBlur: () => {
      clear();
      tapped.current = false;
    },
    onFocus: () => {
      if (!pressed.current) field.current?.select();
    },
  };
}

const isAllOf = (at: HTMLInputElement | null): boolean =>
  at !== null && at.value !== '' && at.selectionStart === 0 && at.selectionEnd === at.value.length;

/** The same after a key that settles or steps what stands there, once it is shown. */
export function takeAll(field: Field): void {
  redraw(() => {
    if (document.activeElement === field.current) field.current?.select();
  });
}
