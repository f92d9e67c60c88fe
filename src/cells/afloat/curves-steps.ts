/** The working of the curves of form. */
import { step, type ValuesOf } from '../form/define';
import { tell } from '../form/fact';
import { form, FORM, heights, levelDraught } from './curves-facts';
import type { curvesInputs } from './curves-inputs';

export const curvesSteps = {
  usualDraught: tell(levelDraught, 'length', 'draught, level, with all aboard'),
  deep: step('length', 'draught', 'draught, level', 'nothing but the draught looked at'),
  lowest: tell(heights, 'length', 'height of her lowest point', ({ lowest }) => lowest),
  leastSheer: tell(
    heights,
    'length',
    'height of the sheer where it is lowest',
    ({ leastSheer }) => leastSheer,
  ),
  waterline: step('length', 'lowest + draught', 'height of the water above the base line', 'geometry'),
  freeboard: step('length', 'leastSheer - waterline', 'least freeboard, level', 'geometry'),
  volume: tell(form, 'displacement', 'water that she pushes aside', ({ at }) => at.volume),
  mass: step('mass', 'volume * density', 'displacement: boat and all aboard', 'Archimedes’ principle'),
  buoyancyForward: tell(
    form,
    'length',
    'centre of the water pushed aside, from the after end of the bottom',
    ({ at }) => at.centre[0],
  ),
  buoyancyHeight: tell(form, 'length', 'its height above the base line', ({ at }) => at.centre[2]),
  waterplane: tell(form, 'area', 'area of the waterplane', ({ at }) => at.waterplane.area),
  flotation: tell(
    form,
    'length',
    'middle of the waterplane, from the after end of the bottom: a load put there does not trim her',
    ({ at }) => at.waterplane.centroid![0], // the water cuts her: form says so where it doesn't
  ),
  waterlineLength: tell(form, 'length', 'length on the waterline', ({ waterlineLength }) => waterlineLength),
  wetted: tell(form, 'area', 'wetted area', ({ at }) => at.wettedArea),
  sinks: step(
    'mass',
    'waterplane * density * 10 mm',
    'load that sinks her by 10 mm (about 3/8 in)',
    'waterplane area times density times the sinkage',
  ),
  metacentre: tell(
    form,
    'length',
    'height of the metacentre above the base line, for a small heel',
    ({ at }) => at.metacentre.transverse,
    {
      how: 'height of the centre of the water pushed aside, and on it the second moment of the waterplane over the volume',
    },
  ),
  longMetacentre: tell(
    form,
    'length',
    'height of the metacentre above the base line, for a small trim',
    ({ at }) => at.metacentre.longitudinal,
    { how: 'the same with the second moment about the axis across' },
  ),
  stiffness: step(
    'length',
    'metacentre - centreHeight',
    'metacentric height with this load: less than 0, she lies over',
    FORM,
  ),
  trimMoment: step(
    'massMoment',
    'mass * (longMetacentre - centreHeight) * 10 mm / waterlineLength',
    'load times distance that changes her trim by 10 mm (about 3/8 in) over the waterline’s length',
    'D. R. Derrett, Ship Stability for Masters and Mates: moment to change trim; from memory',
  ),
  walks: step(
    'length',
    'trimMoment / person',
    'way that this person walks forward or aft to change the trim so much',
    'load times distance over the load',
  ),
} as const;

export type CurvesValues = ValuesOf<typeof curvesInputs, typeof curvesSteps>;
