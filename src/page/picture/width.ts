/** The width an element has been given, in whole px; null until it is laid out. */
import { useLayoutEffect, useState } from 'preact/hooks';

export function useWidth(host: { current: HTMLElement | null }): number | null {
  const [width, setWidth] = useState<number | null>(null);
  useLayoutEffect(() => {
    const element = host.current;
    if (!element) return undefined;
    const measure = () => {
      // Paper is not a narrower screen: a printed figure is the screen's, scaled.
      if (matchMedia('print').matches) return;
      const now = Math.floor(element.clientWidth);
      if (now > 0) setWidth(now);
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, [host]);
  return width;
}
