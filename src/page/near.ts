/** What is near the window; what is far from it waits until the page is at rest. */

/** Tells at once, and at each change, whether an element is in a part of the window; gives the end of it. */
function watcher(rootMargin: string) {
  const told = new Map<Element, (isIn: boolean) => void>();
  const observer = new IntersectionObserver(
    (entries) => {
      for (const { target, isIntersecting } of entries) told.get(target)?.(isIntersecting);
    },
    { rootMargin },
  );
  return (element: Element, tell: (isIn: boolean) => void) => {
    told.set(element, tell);
    observer.observe(element);
    return () => {
      told.delete(element);
      observer.unobserve(element);
    };
  };
}

/** In the window, or so close to it that it may come in sight at once. */
export const watchNear = watcher('300px');
/** In the upper middle of the window, where one reads. */
export const watchRead = watcher('-40% 0px -55%');
