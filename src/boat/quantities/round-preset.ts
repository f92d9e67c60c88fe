/** Presets that are round in the system of the builder: 19 mm, 3/4 in. */
import { inchTwin, type KindId } from '../../measure';
import type { Declared } from './quantity';

/**
 * The preset of a size of custom; a length has its twin for who works in feet and inches.
 * @param inch the preset there, where no rule gives it
 */
export function roundPreset(
  kind: KindId,
  preset: string,
  inch?: string,
): Pick<Declared, 'preset' | 'presetInch' | 'presetFrom'> {
  const twin = inch ?? (kind === 'length' || kind === 'drill' ? inchTwin(preset) : undefined);
  return twin === undefined
    ? { preset }
    : { preset, presetInch: twin, presetFrom: (read) => (read.inches() ? twin : preset) };
}
