/** The length of a board as the yard sells it: by feet or by tenths of a metre, as the builder works. */
import { putUp } from '../../../measure';
import { lumberShelf } from '../../../trade/lengths-sold';
import { input, type InputSpec } from '../../form/define';

putUp('stockLength', lumberShelf);

/** Asks for a length of lumber that is sold. */
export function soldLength(
  label: string,
  more: Omit<InputSpec, 'kind' | 'label' | 'step'> & Required<Pick<InputSpec, 'presetInch'>>,
): InputSpec & { readonly kind: 'stockLength' } {
  return input('stockLength', label, { step: '0.3 m', ...more });
}
