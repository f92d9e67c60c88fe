/** A box that the builder ticks off; what is ticked is kept with the boat. */
import type { TargetedEvent } from 'preact';
import { useState } from 'preact/hooks';
import type { Shelf } from '../../notebook';
import { useBench } from '../bench';
import { html } from '../html';

export interface TickBoxProps {
  readonly notebook: string;
  readonly label: string;
  /** As the notebook comes. */
  readonly ticked: boolean;
}

export function TickBox({ notebook, label, ticked }: TickBoxProps) {
  const { ownBoat, shelf } = useBench();
  const key = `battenbook ticks ${ownBoat.value}`;
  const name = `${notebook}: ${label}`;
  const [, setTurns] = useState(0);
  const turn = (event: TargetedEvent<HTMLInputElement>) => {
    keep(shelf, key, { ...kept(shelf, key), [name]: event.currentTarget.checked });
    setTurns((turns) => turns + 1);
  };
  return html`<input type="checkbox" class="tick" aria-label=${label} checked=${kept(shelf, key)[name] ?? ticked} onChange=${turn} />`;
}

type Ticks = Readonly<Record<string, boolean>>;

/** Where the browser keeps nothing, ticks last as long as the page. */
const here = new Map<string, Ticks>();

function kept(shelf: Shelf | null, key: string): Ticks {
  const known = here.get(key);
  if (known) return known;
  try {
    const read: unknown = JSON.parse(shelf?.getItem(key) ?? '{}');
    return typeof read === 'object' && read !== null && !Array.isArray(read)
      ? Object.fromEntries(Object.entries(read).filter(([, is]) => typeof is === 'boolean'))
      : {};
  } catch {
    return {};
  }
}

function keep(shelf: Shelf | null, key: string, ticks: Ticks): void {
  here.set(key, ticks);
  try {
    shelf?.setItem(key, JSON.stringify(ticks));
  } catch {
    // The storage is full or shut: the notice of it stands at the head of the page.
  }
}
