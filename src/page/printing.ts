/**
 * Whether the page is being printed: what is closed on the screen, and goes on paper, is made then. Not where a shop
 * card stands in the page's stead: nothing of the page goes on paper then.
 */
import { signal } from '@preact/signals';

const onPaper = matchMedia('print');
export const printing = signal(onPaper.matches);
const turn = (isOn: boolean) => () => {
  printing.value = isOn && document.documentElement.dataset['card'] === undefined;
};
addEventListener('beforeprint', turn(true));
addEventListener('afterprint', turn(false));
// Not every browser says so, and none of a page that is only shown as it would print.
onPaper.addEventListener('change', ({ matches }) => turn(matches)());
