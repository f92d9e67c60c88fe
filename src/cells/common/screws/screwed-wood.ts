/** What is asked of the wood that screws go into. */
import { input } from '../../form/define';

/** Out of the code's own table, by the wood chosen as `species`. */
export const fasteningGravity = (label: string) =>
  input('ratio', label, {
    from: 'timber.{species}.fasteningGravity',
    preset: '0.5',
    min: '0.2',
    max: '1.2',
    step: '0.01',
    note: 'oven-dry, as the code counts it',
  });

/** @param counts where it counts, after what it is */
export const screwedDensity = (label: string, counts?: string) =>
  input('density', label, {
    from: 'timber.{species}.density',
    preset: '538 kg/m3',
    min: '150 kg/m3',
    max: '1300 kg/m3',
    step: '10 kg/m3',
    note: `mean, at 12 % moisture${counts === undefined ? '' : `; ${counts}`}`,
  });
