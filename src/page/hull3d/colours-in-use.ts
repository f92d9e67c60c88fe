/** The colours in use, those of the system where the page goes by it: changes whenever they do. */
import { useEffect, useState } from 'preact/hooks';

export function useColoursInUse(chosen: string): string {
  const dark = matchMedia('(prefers-color-scheme: dark)');
  const [isDark, setDark] = useState(dark.matches);
  useEffect(() => {
    const follow = () => setDark(dark.matches);
    dark.addEventListener('change', follow);
    return () => dark.removeEventListener('change', follow);
  }, []);
  return `${chosen} ${isDark ? 'dark' : 'light'}`;
}
