/** A key beside a field: one mark at a press, and on and on while it is held. */
import type { TargetedMouseEvent, TargetedPointerEvent } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { html } from '../html';

/** How long a press is before it counts as holding, and the pace of holding, ms. */
const HOLD = 450;
const PACE = 70;

export interface StepKeyProps {
  readonly sign: '−' | '+';
  readonly label: string;
  readonly disabled: boolean;
  readonly act: (key: Element) => void;
}

export function StepKey({ sign, label, disabled, act }: StepKeyProps) {
  const latest = useRef(act);
  latest.current = act;
  const timer = useRef(0);
  const held = useRef(false);
  const stop = () => clearTimeout(timer.current);
  useEffect(() => stop, []);

  const press = (event: TargetedPointerEvent<HTMLButtonElement>) => {
    if (event.button !== 0) return;
    const key = event.currentTarget;
    held.current = false;
    const again = () => {
      held.current = true;
      if (key.disabled) return;
      latest.current(key);
      timer.current = window.setTimeout(again, PACE);
    };
    stop();
    timer.current = window.setTimeout(again, HOLD);
  };
  // A press does nothing until it is a click, so that a thumb scrolling the page over the key changes nothing.
  const click = (event: TargetedMouseEvent<HTMLButtonElement>) => {
    stop();
    if (!held.current) latest.current(event.currentTarget);
    held.current = false;
  };
  return html`<button
    type="button"
    class="step"
    tabindex="-1"
    aria-label=${label}
    disabled=${disabled}
    onPointerDown=${press}
    onPointerUp=${stop}
    onPointerCancel=${stop}
    onPointerLeave=${stop}
    onContextMenu=${(event: Event) => event.preventDefault()}
    onClick=${click}
  >${sign}</button>`;
}
