/** Works without a network after the first visit; a newer build waits until the builder asks for it. */
import type { Signal } from '@preact/signals';
import type { Notice } from '../notice';

export async function watchForNewBuild(notice: Signal<Notice | null>): Promise<void> {
  const registration = await navigator.serviceWorker.register('./sw.js').catch(() => null);
  if (!registration) {
    notice.value ??= {
      says: 'This browser does not keep the notebook for use without a network. It works as long as you are online.',
    };
    return;
  }
  void navigator.serviceWorker.ready.then(({ active }) => {
    // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a worker has one page's origin and no other to name
    active?.postMessage('keep-the-rest');
  });
  const tell = () => {
    const { waiting } = registration;
    // The first worker ever has nothing to replace.
    if (!waiting || !navigator.serviceWorker.controller) return;
    notice.value = {
      says: 'A newer Battenbook is ready. It comes by itself once all its windows have been closed.',
      key: { words: 'Change to it now', act: () => changeTo(waiting) },
    };
  };
  tell();
  registration.addEventListener('updatefound', () => {
    registration.installing?.addEventListener('statechange', tell);
  });
}

/** What was typed is saved as the page is left, and found again by the newer build. */
function changeTo(worker: ServiceWorker): void {
  navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true });
  // A worker has one page's origin and no other to name.
  // oxlint-disable-next-line unicorn/require-post-message-target-origin
  worker.postMessage('skip-waiting');
}
