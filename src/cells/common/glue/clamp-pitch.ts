/** Clamp to clamp by custom, as it stands in the formulas of a cell with the choice `measures`. */
import { inchText } from '../../../measure';
import { clampPitch, clampPitchInch } from '../../../trade/adhesives';
import { custom } from '../sizes/custom-sizes';

export const customPitch = (run: keyof typeof clampPitch): string =>
  custom(`${clampPitch[run].value * 1000} mm`, inchText(clampPitchInch[run].value));
