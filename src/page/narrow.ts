/** Whether the window is too narrow for a rail: what stands there lies in a strip at the foot then. As `layout.css` has it. */
import { useEffect, useState } from 'preact/hooks';

export function useNarrow(): boolean {
  const narrow = matchMedia('(max-width: 61.99rem)');
  const [isNarrow, setNarrow] = useState(narrow.matches);
  useEffect(() => {
    const follow = () => setNarrow(narrow.matches);
    narrow.addEventListener('change', follow);
    return () => narrow.removeEventListener('change', follow);
  }, []);
  return isNarrow;
}
