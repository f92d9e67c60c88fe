/**
 * Moving among the boxes of the grid, as the ARIA practices for grids have it: one stop for Tab, arrows from
 * box to box, Home and End along a row, with Ctrl to the corners. Boxes stand under `data-at="row column"`;
 * where there is none, the way goes on.
 */
export interface Stride {
  readonly down: number;
  readonly right: number;
  /** To the last box that way instead of the next. */
  readonly far?: boolean;
}

/** The box that is reached from one at `row`, `column`; null where none lies that way. */
export function boxFrom(
  table: Element,
  row: number,
  column: number,
  stride: Stride,
): HTMLInputElement | null {
  const size = sizeOf(table);
  let [r, c] = [row, column];
  let last: HTMLInputElement | null = null;
  for (;;) {
    r += stride.down;
    c += stride.right;
    if (r < 0 || c < 0 || r >= size.rows || c >= size.columns) return last;
    const box = boxAt(table, r, c);
    if (box && !stride.far) return box;
    last = box ?? last;
  }
}

/** The next box along the rows, as writing goes; null after the last, or with `back` before the first. */
export function nextBox(table: Element, row: number, column: number, back: boolean): HTMLInputElement | null {
  const all = [...table.querySelectorAll<HTMLInputElement>('[data-at] input')];
  const own = boxAt(table, row, column);
  return (own && all[all.indexOf(own) + (back ? -1 : 1)]) ?? null;
}

export function boxAt(table: Element, row: number, column: number): HTMLInputElement | null {
  return table.querySelector<HTMLInputElement>(`[data-at="${row} ${column}"] input`);
}

function sizeOf(table: Element): { readonly rows: number; readonly columns: number } {
  const places = [...table.querySelectorAll<HTMLElement>('[data-at]')].map((box) =>
    box.dataset['at']!.split(' '),
  );
  return {
    rows: 1 + Math.max(-1, ...places.map(([row]) => Number(row))),
    columns: 1 + Math.max(-1, ...places.map(([, column]) => Number(column))),
  };
}

const strides: Readonly<Record<string, Stride>> = {
  ArrowUp: { down: -1, right: 0 },
  ArrowDown: { down: 1, right: 0 },
  ArrowLeft: { down: 0, right: -1 },
  ArrowRight: { down: 0, right: 1 },
  Home: { down: 0, right: -1, far: true },
  End: { down: 0, right: 1, far: true },
  PageUp: { down: -1, right: 0, far: true },
  PageDown: { down: 1, right: 0, far: true },
};

/** Where a key leads; undefined where it leads nowhere. Among letters, keys along the line move the caret. */
export function strideOf(event: KeyboardEvent, inLetters: boolean): Stride | undefined {
  if (event.altKey || event.metaKey) return undefined;
  if (event.key === 'Enter') return { down: event.shiftKey ? -1 : 1, right: 0 };
  const stride = Object.hasOwn(strides, event.key) ? strides[event.key] : undefined;
  if (!stride || event.shiftKey) return undefined;
  return inLetters && stride.right !== 0 ? undefined : stride;
}
