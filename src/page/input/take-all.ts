/**
 * A tap, a click or Tab in a field selects what stands in it, so that the next key replaces it; a second tap
 * places the caret, and what is drawn over with the pointer stays as drawn.
 */
import { useRef } from 'preact/hooks';
import { redraw } from '../picture/redraw';

type Field = { readonly current: HTMLInputElement | null };

export function useTakeAll(field: Field) {
  /** A press of the pointer is bringing the focus, and places the caret after it: what is to be selected waits for its end. */
  const pressed = useRef(false);
  const byFinger = useRef(false);
  const clear = () => {
    pressed.current = false;
  };
  return {
    onPointerDown: ({ pointerType }: PointerEvent) => {
      pressed.current = document.activeElement !== field.current;
      byFinger.current = pointerType === 'touch';
    },
    onPointerCancel: clear,
    onBlur: clear,
    onFocus: () => {
      if (!pressed.current) field.current?.select();
    },
    onClick: () => {
      const at = field.current;
      const { value = '', selectionStart: from, selectionEnd: to } = at ?? {};
      if (pressed.current && from === to) at?.select();
      // Some browsers keep what is selected under a finger: the caret goes where one writes on, the next tap moves it.
      const isAll = from === 0 && to === value.length;
      if (!pressed.current && byFinger.current && isAll) at?.setSelectionRange(to, to);
      clear();
    },
  };
}

/** The same after a key that settles or steps what stands there, once it is shown. */
export function takeAll(field: Field): void {
  redraw(() => {
    if (document.activeElement === field.current) field.current?.select();
  });
}
