/** How a number or a choice of the shop is declared. */
import type { KindId } from '../../measure';
import type { Declared } from './quantity';
import { roundPreset } from './round-preset';

/** What is said of it. */
interface Said extends Pick<
  Declared,
  'label' | 'source' | 'min' | 'max' | 'step' | 'otherwise' | 'options' | 'withoutBoat' | 'asked'
> {
  readonly preset: string;
  /** The preset of who works in feet and inches, where no rule gives it. */
  readonly presetInch?: string;
  /** What it is, where the label does not say it as a noun. */
  readonly meaning?: string;
}

export const shop = (
  key: string,
  kind: KindId,
  { label, preset, presetInch, meaning = small(label), ...more }: Said,
): Declared => ({
  name: `shop.${key}`,
  kind,
  label,
  meaning,
  ...more,
  ...roundPreset(kind, preset, presetInch),
});

/** In which of the two systems something is sold or said; until the builder says, in that which is chosen for lengths. */
export const inSystem = (key: string, label: string, meaning: string): Declared =>
  shop(key, 'choice', {
    label,
    meaning,
    source: 'as the units chosen',
    options: [
      { id: 'mm', label: 'millimetres' },
      { id: 'inch', label: 'inches' },
    ],
    preset: 'mm',
    presetInch: 'inch',
  });

const small = (text: string) => text.charAt(0).toLowerCase() + text.slice(1);
