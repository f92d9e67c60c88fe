/** A component that is fetched after the answers stand: its place is kept, or another stands in it, until it comes. */
import { type FunctionComponent, h } from 'preact';
import { useEffect, useState } from 'preact/hooks';

/** Shown where it stands as soon as it has come; fetched before that, it is there at once. */
export type Later<P> = FunctionComponent<P> & { readonly fetch: () => Promise<FunctionComponent<P>> };

/**
 * @param load fetches the component
 * @param className of the box that keeps its place
 * @param meanwhile what stands in the box; left out, nothing
 */
export function later<P extends object>(
  load: () => Promise<FunctionComponent<P>>,
  className: string,
  meanwhile?: FunctionComponent<P>,
): Later<P> {
  let ready: FunctionComponent<P> | null = null;
  const fetch = async () => (ready = await load());
  return Object.assign(Later, { fetch });

  function Later(props: P) {
    const [component, setComponent] = useState(() => ready);
    const [lost, setLost] = useState(false);
    useEffect(() => {
      // Another place may have fetched it between this one's first drawing and now.
      if (ready) {
        setComponent(() => ready);
        return;
      }
      fetch().then(
        (loaded) => setComponent(() => loaded),
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
    return h('div', { class: className, 'aria-busy': 'true' }, meanwhile && h(meanwhile, props));
  }
}
