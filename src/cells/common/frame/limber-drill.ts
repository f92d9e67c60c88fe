/** The drill for the corners of the keelson's slot: a plain hole, bored with a bit that is sold. */
import { putUp } from '../../../measure';
import { bitShelf } from '../../../trade/drills';
import type { InputSpec } from '../../form/define';
import { fromBoat } from '../../form/from-boat';
import type { OfBoat } from '../../form/owned';

putUp('drill', bitShelf);

export const limberDrill = (more: OfBoat = {}): InputSpec => fromBoat('frame.limberDrill', more);
