/** Second versions of a panel that are worth a look: the grain turned, one layer more. */
import { isIssue } from '../../measure';
import type { Offer, OnHand } from '../form/define';
import type { PanelsValues } from './panels-steps';

const MOST_LAYERS = 6;

interface Turned {
  readonly grain: string;
  readonly skinLayers: number;
  readonly share: number;
}

export const panelsOffers = (v: PanelsValues, on: OnHand<PanelsValues>) =>
  turnedOffers(v, v.thickness, `${v.panel}.layers`, on);

/**
 * @param thickness of all layers together, m
 * @param layers the name under which their number is written
 */
export function turnedOffers<V extends Turned>(
  v: Turned,
  thickness: number,
  layers: string,
  { say, with: suppose }: Pick<OnHand<V>, 'say' | 'with'>,
): readonly Offer[] {
  const offer = (label: string, key: 'grain' | 'skinLayers', to: string | number): readonly Offer[] => {
    const then = suppose({ [key]: to } as { readonly [K in keyof V]?: number | string });
    if (isIssue(then)) return [];
    return [
      {
        label,
        changes: { [key === 'skinLayers' ? layers : `{self}.${key}`]: String(to) },
        effects: [{ label: 'of what it takes', kind: 'share', before: v.share, after: then.share }],
      },
    ];
  };
  const turned = v.grain === 'along' ? 'across' : 'along';
  const more = v.skinLayers + 1;
  return [
    ...offer(`Face grain ${turned}`, 'grain', turned),
    ...(more > MOST_LAYERS
      ? []
      : offer(`${more} layers of ${say(thickness / more, 'length')}`, 'skinLayers', more)),
  ];
}
