/** What the fairing of a long timber asks for. */
import { choice, input, type ValuesOf } from '../form/define';
import { fromBoat } from '../form/from-boat';
import { chosenFromShop } from '../form/from-shop';
import { ofGlue } from '../common/glue/glues';
import { longPartOptions } from '../common/wood/long-parts';

/** No stem: it has a landing of its own, and lies along no edge. */
const TIMBER = 'timber != "stem"';

export const fairingInputs = {
  timber: choice('Long timber', {
    // A rub rail lies outside the skin.
    options: [
      ...longPartOptions.filter(({ id }) => id !== 'rubRail'),
      { id: 'stem', label: 'stem', ofBoat: true },
    ],
    preset: 'keelson',
  }),
  along: choice('Lies along', {
    options: 'longEdges',
    from: '{timber}.edge',
    fromBy: { choice: 'timber', links: { stem: '' } },
    preset: 'keel',
    note: 'of two chines the one looked at',
    when: TIMBER,
  }),
  face: choice('Which face', {
    options: [
      { id: 'below', label: 'to the panel below' },
      { id: 'above', label: 'to the panel above' },
    ],
    preset: 'below',
    note: 'a chine log lies on two panels: under it the bottom, beside it the side',
    when: 'faces > 1',
  }),
  interval: input('length', 'From mark to mark', {
    from: 'rollingBevel.interval',
    preset: '150 mm',
    presetInch: '6 in',
    min: '20 mm',
    max: '1 m',
    step: '10 mm',
    note: 'as on the chine log, when its bevel is planed',
  }),
  at: input('length', 'This mark', {
    from: '{self}.mostAt',
    preset: '1.5 m',
    presetInch: '60 in',
    min: '0 mm',
    max: '45 m',
    step: '10 mm',
    note: 'from its after end along the bent timber, of a stem from its foot; where it is most proud, until another place is typed',
  }),
  ends: choice('Its ends', {
    options: [
      { id: 'free', label: 'held, free to turn' },
      { id: 'fast', label: 'held fast, fair beyond' },
    ],
    preset: 'free',
    note: 'free where a screw or two hold it; fast where it is let in so deep that it leads on fair beyond its end',
    when: TIMBER,
  }),
  thickness: fromBoat('{timber}.thickness', {
    // What bears on the lower of two panels that meet; a keelson bears by its width alone.
    when: `${TIMBER} and isKeelson == 0 and faces > 1 and face == "below"`,
    fromBy: { choice: 'timber', links: { stem: 'stem.moulded' } },
  }),
  width: fromBoat('{timber}.width', {
    when: TIMBER,
    fromBy: { choice: 'timber', links: { stem: 'stem.siding' } },
  }),
  landing: input('length', 'Landing wanted for the side', {
    from: 'stemBevel.landing',
    preset: '30 mm',
    presetInch: '1 1/4 in',
    min: '3 mm',
    max: '200 mm',
    step: '1 mm',
    note: 'width of the planed face of the stem',
    when: 'hasStem > 0',
  }),
  glue: chosenFromShop('glue'),
  mostGap: ofGlue('length', 'Gap the glue bridges', 'mostGap', ['0 mm', '20 mm']),
} as const;

/** The inputs as facts read them. */
export type FairingAsked = ValuesOf<typeof fairingInputs>;
