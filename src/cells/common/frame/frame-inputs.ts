/** What the frame's pattern and the map of its screws both ask of the frame, the panels on it and what is let into it. */
import type { InputSpec } from '../../form/define';
import { fromBoat } from '../../form/from-boat';
import { limberDrill } from './limber-drill';

/** How its members meet. */
export const memberJoints = [
  { id: 'mitre', label: 'mitre' },
  { id: 'butt', label: 'upper stands on lower' },
] as const;

/** Where fields count, for a cell that does not ask all of them in every case. */
type Where = 'beyond' | 'slot' | 'clampThickness' | 'clampWidth' | 'gussets';

export function frameInputs(where: Readonly<Partial<Record<Where, string>>> = {}) {
  const counts = (key: Where) => (where[key] === undefined ? {} : { when: where[key] });
  return {
    moulded: fromBoat('frame.moulded'),
    siding: fromBoat('frame.siding'),
    beyond: fromBoat('frame.aboveSheer', counts('beyond')),
    sideThickness: fromBoat('side.thickness'),
    bottomThickness: fromBoat('bottom.thickness'),
    bilgeThickness: fromBoat('bilge.thickness', {
      when: 'bilge.thickness',
      hint: 'between bottom and side, on a boat with two chines or more',
    }),
    keelsonWidth: fromBoat('keelson.width', counts('slot')),
    keelsonThickness: fromBoat('keelson.thickness', counts('slot')),
    limberWidth: fromBoat('frame.limberWidth', counts('slot')),
    holeDiameter: limberDrill(counts('slot')),
    logThickness: fromBoat('chineLog.thickness'),
    logWidth: fromBoat('chineLog.width', { hint: 'up the side' }),
    clampThickness: fromBoat('sheerClamp.thickness', counts('clampThickness')),
    clampWidth: fromBoat('sheerClamp.width', { hint: 'down the side', ...counts('clampWidth') }),
    gussetLeg: fromBoat('gusset.leg', counts('gussets')),
    gussetThickness: fromBoat('gusset.thickness', counts('gussets')),
  } satisfies Readonly<Record<string, InputSpec>>;
}
