/** The drill for the corners of the keelson's slot: a plain hole, bored with a bit that is sold. */
import { putUp } from '../../../measure';
import { bitShelf } from '../../../trade/drills';
import { input, type InputSpec } from '../../form/define';

putUp('drill', bitShelf);

export const limberDrill = (
  more: Pick<InputSpec, 'ofBoat' | 'slider' | 'note'> = {},
): InputSpec & { readonly kind: 'drill' } =>
  input('drill', 'Drill at the slot’s corners', {
    from: 'frame.limberDrill',
    preset: '12 mm',
    presetInch: '1/2 in',
    min: '3 mm',
    max: '2 in',
    step: '1 mm',
    ...more,
  });
