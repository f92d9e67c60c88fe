/** Paint and varnish: what a coat takes from solids and film, how many tins to buy, and how many roller covers. */
import { drawing, mm, note } from '../../drawing';
import { handLoss, mostThinner, sunCoats } from '../../trade/paints';
import { citation } from '../../trade/table';
import { packFunctions } from '../common/sizes/cheapest-packs';
import { packsInWords } from '../common/sizes/packs-in-words';
import { defineCell } from '../form/define';
import { tableOf } from '../form/row-quantities';
import { coatTables } from './coat-tables';
import { coatsInSection } from './paint-drawing';
import { paintInputs } from './paint-inputs';
import { HOW_LOST, paintSteps } from './paint-steps';
import { counted } from './sheathing-drawing';

export const paint = defineCell({
  id: 'paint',
  stage: 'finish',
  title: 'Paint and varnish',
  question: 'How much paint does a coat take, and how many tins do I buy for all of them?',
  inputs: paintInputs,
  groups: {
    'The faces': ['outsideArea', 'insideArea', 'moreArea'],
    'The paint': ['solids', 'film', 'handLoss', 'unevenLoss', 'coverReach'],
    'As the shop sells it': [
      'smallTin',
      'smallTinPrice',
      'middleTin',
      'middleTinPrice',
      'largeTin',
      'largeTinPrice',
    ],
  },
  functions: packFunctions,
  steps: paintSteps,
  answers: [
    {
      of: 'volume',
      label: 'paint, all coats',
      from: 'out of the tin, before it is thinned; losses included',
    },
    { of: 'perCoat', label: 'for one coat', from: 'out of the tin; pour no more than that into the tray' },
    { of: 'wetFilm', label: 'wet film', from: 'of one coat, above the face, as a comb reads it' },
  ],
  inWords: [
    'A face of {area} takes {perCoat} of paint a coat, {volume} for {coats} {coats?coat:coats}.',
    'One goes on {wetFilm} thick and dries to {film}.',
    { when: 'thinner > 0', says: 'Stir {thinnerVolume} of thinner into all of it.' },
    {
      when: 'volume > 0 L',
      says: [
        'Buy',
        ...packsInWords({
          one: 'tin',
          many: 'tins',
          sizes: [
            ['large', 'largeTin'],
            ['middle', 'middleTin'],
            ['small', 'smallTin'],
          ],
        }),
        ', for {cost}, and {rollers} roller {rollers?cover:covers}; {leftOver} will be left.',
      ],
      otherwise: 'There is nothing to paint.',
    },
  ],
  table: tableOf({
    caption: 'What other paints take on the same face',
    over: 'paint',
    columns: [
      { of: 'realRate', label: 'one coat covers' },
      { of: 'perCoat', label: 'one coat takes' },
      { of: 'volume', label: 'all coats take' },
      { of: 'dryFilm', label: 'all coats, dry' },
    ],
  }),
  warnings: [
    {
      when: `paint == "varnish" and coats < ${sunCoats.value}`,
      says: 'Sun goes through {coats} {coats?coat:coats} of varnish and spoils the epoxy below.',
      limit: citation(sunCoats),
      weight: 'mind',
    },
    {
      when: `thinner > (paint == "varnish" ? 50 % : ${mostThinner.value * 100} %)`,
      says: 'Thinned by {thinner} a coat of {wetFilm} runs: thin less, or roll on more and thinner coats.',
      limit: citation(mostThinner),
      weight: 'mind',
    },
    {
      when: 'handLoss < 10 %',
      says: 'With {handLoss} left in tin, tray and roller the last coat mostly falls short.',
      limit: citation(handLoss),
      weight: 'mind',
    },
  ],
  cautions: [
    'Solvents go into the lungs and through the skin: paint in the open or with a fan that moves the air out, in nitrile gloves, with a mask for organic vapour (A2P2, or OV with P95). An open window is not enough, and there is no flame near.',
    'Two-part polyurethane holds isocyanates, which can bring on asthma for life: brush or roll it, outdoors or with forced air. Never spray it yourself; that takes supplied air and a trained hand. In the EU who uses it for work must be trained.',
    'Rags with oil paint, oil or varnish heat themselves and burn: dry them flat in the open, or drown them in a metal can with a lid.',
    'Wash epoxy with water, dry it, and scuff it with 150 grit until no shine is left. Try a patch first: some oil paints stay soft on epoxy that is not yet cured through.',
    'The sheet of the tin outranks every figure here.',
  ],
  sources: [
    {
      text: 'Coating-industry sheets, “Theoretical spreading rate”; R. Joseph, “Calculating Paint Coverage” (2003); thinning: a paint chemist’s note',
      known: 'published',
    },
    { text: HOW_LOST, known: 'published' },
    {
      text: 'Solids, films, coats, faces to a roller cover, coats of varnish against the sun: custom of the trade',
      known: 'common practice',
    },
    {
      text: 'Regulation (EC) No 1907/2006 (REACH), Annex XVII entry 74, on diisocyanates',
      known: 'published',
    },
  ],
  about: ['bottom', 'bilge', 'side', 'transom', 'bowTransom'],
  brings: coatTables,
  draw: (v, on) => {
    const film = (metres: number) => on.say(metres, 'film');
    const coats = counted(v.coats, 'dry coat');
    return drawing({
      title: 'A coat wet, and all coats dry, much enlarged',
      says: `A coat goes on ${film(v.wetFilm)} thick and dries to ${film(v.film)}; ${coats} are ${film(v.dryFilm)} in all.`,
      shapes: [
        coatsInSection(
          { coats: v.coats, wet: mm(v.wetFilm), film: mm(v.film) },
          { wet: film(v.wetFilm), film: film(v.film), all: film(v.dryFilm), coats },
        ),
        note('Thickness to scale; the face is scuffed, not this smooth.'),
      ],
    });
  },
});
