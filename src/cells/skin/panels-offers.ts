/** Second versions of a panel that are worth a look: the grain turned, one layer more. */
import { isIssue } from '../../measure';
import type { Offer, OnHand } from '../form/define';

const MOST_LAYERS = 6;

interface Turned {
  readonly grain: string;
  readonly skinLayers: number;
  readonly thickness: number;
  readonly share: number;
}

export function panelsOffers(
  v: Turned,
  { say, with: suppose }: Pick<OnHand<Turned>, 'say' | 'with'>,
): readonly Offer[] {
  const offer = (label: string, key: 'grain' | 'skinLayers', to: string | number): readonly Offer[] => {
    const then = suppose({ [key]: to });
    if (isIssue(then)) return [];
    return [
      {
        label,
        changes: { [`{self}.${key}`]: String(to) },
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
      : offer(`${more} layers of ${say(v.thickness / more, 'length')}`, 'skinLayers', more)),
  ];
}
