/** How far common saws tilt, and what is said of a bevel past it. */
import type { Warning } from '../form/define';

export const SAW_TILT = 'tilt of common table and circular saws, 45°; common practice, no source';

/**
 * @param when whether a bevel is past it, as a comparison over the cell's values
 * @param instead what to do without the saw
 */
export function pastTheSaw(when: string, instead = 'rough it out'): Warning {
  const says = `A bevel of more than 45° is past the tilt of a saw: ${instead} and plane to the marks.`;
  return { when, says, limit: SAW_TILT, weight: 'mind' };
}
