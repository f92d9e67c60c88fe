/** How many there are of what lies to port and to starboard alike: counted on one side, asked for both. */
import { input } from '../../form/define';

export const bothSides = (label: string, note = 'port and starboard') =>
  input('count', label, { preset: '2', min: '1', max: '20', step: '1', note });
