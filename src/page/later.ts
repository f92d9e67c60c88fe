/** A component that is fetched after the answers stand: its place is kept until it comes. */
import { type FunctionComponent, h } from 'preact';
import { useEffect, useState } from 'preact/hooks';

/**
 * @param load fetches the component
 * @param className of the empty box that keeps its place
 */
export function later<P extends object>(
  load: () => Promise<FunctionComponent<P>>,
  className: string,
): FunctionComponent<P> {
  let ready: FunctionComponent<P> | null = null;
  return function Later(props: P) {
    const [component, setComponent] = useState(() => ready);
    const [lost, setLost] = useState(false);
    useEffect(() => {
      // Another place may have fetched it between this one's first drawing and now.
      if (ready) {
        setComponent(() => ready);
        return;
      }
      load().then(
        (loaded) => {
          ready = loaded;
          setComponent(() => loaded);
        },
        () => setLost(true),
      );
    }, []);
    if (component) return h(component, props);
    if (lost)
      return h(
        'p',
        { class: 'notice' },
        'This part did not arrive. Load the page again when you are online.',
      );
    return h('div', { class: className, 'aria-busy': 'true' });
  };
}
