/** The slope of a long line where it passes a frame. */
import { input } from '../form/define';

export const slopeOfLine = (label: string, from: string) =>
  input('ratio', label, {
    from,
    preset: '0',
    min: '-3',
    max: '3',
    step: '0.01',
    note: '+ where the line moves outboard, or up, going forward',
  });
