/** The slope of a long line where it passes a frame, as a seldom input. */
import { input } from '../form/define';

export const slopeOfLine = (label: string, from: string) =>
  input('ratio', label, {
    seldom: true,
    from,
    preset: '0',
    min: '-3',
    max: '3',
    step: '0.01',
    note: '+ where the line moves outboard, or up, going forward',
  });
