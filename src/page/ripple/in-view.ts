/** Cells of which something stands in the window, by name. Asked when the page is at rest and laid out. */
export function cellsInView(): ReadonlySet<string> {
  const cells = [...document.querySelectorAll<HTMLElement>('.cell[data-cell]')];
  return new Set(
    cells
      .filter((cell) => {
        const { top, bottom } = cell.getBoundingClientRect();
        return bottom > 0 && top < innerHeight;
      })
      .map((cell) => cell.dataset['cell']!), // asked for by having one
  );
}
