/** What the cell `fair` asks for. */
import { choice, input, type ValuesOf } from '../form/define';
import { fromBoat } from '../form/from-boat';
import { lineViews } from './long-line';

/** A station that the least mend leaves alone. */
function stays(label: string, note?: string) {
  const more = { options: 'stations', none: 'none', preset: 'none' } as const;
  return choice(label, note === undefined ? more : { ...more, note });
}

export const fairInputs = {
  edge: choice('Line', { options: 'edges', preset: 'sheer' }),
  view: choice('Seen in', { options: lineViews, preset: 'plan' }),
  tried: choice('Station to move on trial', { options: 'stations', preset: 'frame3' }),
  shift: input('length', 'Move it on trial by', {
    preset: '0 mm',
    min: '-100 mm',
    max: '100 mm',
    step: '1 mm',
    slider: true,
    note: '+ outboard in plan, up in profile; the table is left alone',
  }),
  meant: choice('A reverse in this line is meant', {
    options: [
      { id: 'no', label: 'no' },
      { id: 'yes', label: 'yes, one' },
    ],
    preset: 'no',
    note: 'a flared bow or a reverse sheer bends both ways on purpose',
  }),
  station: choice('Station looked at', {
    options: 'stations',
    from: '{self}.suspectStation',
    preset: 'frame2',
  }),
  ends: choice('The two ends of the line', {
    options: [
      { id: 'held', label: 'stay' },
      { id: 'free', label: 'may move' },
    ],
    preset: 'held',
  }),
  keep: stays('A station that stays', 'in the least mend: a frame that is built, or a number that you trust'),
  keepAnother: stays('Another that stays'),
  keepThird: stays('A third that stays'),
  nearest: input('length', 'Table written to the nearest', {
    preset: '1.5 mm',
    presetInch: '1/16 in',
    min: '0.1 mm',
    max: '10 mm',
    step: '0.5 mm',
    note: 'lines are drawn to 1/32 to 1/16 in (0.8 to 1.5 mm): common practice',
  }),
  blunder: input('length', 'Smallest error worth a thought', {
    preset: '6 mm',
    presetInch: '1/4 in',
    min: '1 mm',
    max: '50 mm',
    step: '1 mm',
    note: 'common practice: 1/8 in (3 mm) is faired away in silence, above 1/4 in (6 mm) one looks for a blunder',
  }),
  mostWedge: input('length', 'Thickest wedge worth gluing on', {
    bound: 'most',
    preset: '25 mm',
    min: '1 mm',
    max: '100 mm',
    step: '1 mm',
    note: 'common practice: up to an inch (25 mm) at the top, nothing at the bottom',
  }),
  moulded: fromBoat('frame.moulded', { hint: 'before anything is glued on or planed off' }),
  stiffness: input('bendingStiffness', 'Stiffness of the batten', {
    from: 'batten.stiffness',
    preset: '120 N·m²',
    min: '0.001 N·m²',
    step: '1 N·m²',
    note: 'about a square batten of spruce, 19 mm (3/4 in)',
  }),
  draught: fromBoat('hull.draught'),
};

/** The inputs as facts read them. */
export type FairAsked = ValuesOf<typeof fairInputs>;
