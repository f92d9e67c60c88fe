/** Works without a network after the first visit; a newer build waits until the builder is told and reloads. */
import type { Signal } from '@preact/signals';

export async function watchForNewBuild(notice: Signal<string | null>): Promise<void> {
  const registration = await navigator.serviceWorker.register('./sw.js').catch(() => null);
  if (!registration) return;
  const tell = () => {
    // The first worker ever has nothing to replace.
    if (!registration.waiting || !navigator.serviceWorker.controller) return;
    notice.value = 'A newer Battenbook is ready. It is used the next time all its windows have been closed.';
  };
  tell();
  registration.addEventListener('updatefound', () => {
    registration.installing?.addEventListener('statechange', tell);
  });
}
