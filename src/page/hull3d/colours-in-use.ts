/** The dress that is worn, the light of the system with it: changes whenever colours do. */
import { useEffect, useState } from 'preact/hooks';

export function useDressInUse(chosen: string): string {
  const dark = matchMedia('(prefers-color-scheme: dark)');
  const [isDark, setDark] = useState(dark.matches);
  useEffect(() => {
    const follow = () => setDark(dark.matches);
    dark.addEventListener('change', follow);
    return () => dark.removeEventListener('change', follow);
  }, []);
  return `${chosen} ${isDark ? 'dark' : 'light'}`;
}
