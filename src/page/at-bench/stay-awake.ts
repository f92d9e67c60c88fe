/** Keeps the screen awake while a cell lies at the bench, and says when the browser refuses. */
import { useEffect, useState } from 'preact/hooks';

export type Awake = 'asking' | 'kept' | 'refused';

export function useStayAwake(): Awake {
  const [state, setState] = useState<Awake>('asking');
  useEffect(() => {
    let lock: WakeLockSentinel | null = null;
    let gone = false;
    const lit = async () => {
      try {
        const kept = await navigator.wakeLock.request('screen');
        if (gone) void kept.release();
        else {
          lock = kept;
          setState('kept');
        }
      } catch {
        // No wake lock in this browser, or it is saving its battery.
        if (!gone) setState('refused');
      }
    };
    const ask = () => {
      if (document.visibilityState === 'visible') void lit();
    };
    // A browser lets the lock go when the page is put away: it is asked for again when the page is back.
    document.addEventListener('visibilitychange', ask);
    ask();
    return () => {
      gone = true;
      document.removeEventListener('visibilitychange', ask);
      void lock?.release();
    };
  }, []);
  return state;
}
