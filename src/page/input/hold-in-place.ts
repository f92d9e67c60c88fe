/**
 * Keeps an element where it stands in the window while something above it grows or shrinks: a
 * warning that comes up must not push away the key that is being pressed.
 */
import { redraw } from '../picture/redraw';

export function holdInPlace(element: Element, act: () => void): void {
  const before = element.getBoundingClientRect().top;
  act();
  redraw(() => {
    const moved = element.getBoundingClientRect().top - before;
    if (Math.abs(moved) >= 1 && element.isConnected) scrollBy({ top: moved, behavior: 'instant' });
  });
}
