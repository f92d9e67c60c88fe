/** Presets that are round in the system of the builder: 19 mm, 3/4 in. */
import { inchTwin, type KindId } from '../../measure';
import type { Given } from './quantity';

/** The preset of a size of custom; a length has its twin for who works in feet and inches. */
export function roundPreset(kind: KindId, preset: string): Pick<Given, 'preset' | 'presetFrom'> {
  const twin = kind === 'length' || kind === 'drill' ? inchTwin(preset) : undefined;
  return { preset, ...(twin !== undefined && { presetFrom: (read) => (read.inches() ? twin : preset) }) };
}
