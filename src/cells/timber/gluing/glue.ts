/** Glue for the joints of the boat: bead or film, volume, packs, and how long a run may be closed at once. */
import { glueSteps, BEADED } from './glue-steps';
import { firstOf } from '../../form/in-words';
import { OPEN_TIME, tooCold, glueCautions, glueSources, glueQuantities } from '../../common/glue/glues';
import { drawing, mm, note } from '../../../drawing';
import { gluedJoint } from './glue-drawing';
import { isIssue } from '../../../measure';
import { defineCell } from '../../form/define';
import { tableOf } from '../../form/row-quantities';
import { glueInputs } from './glue-inputs';
import { GEOMETRY } from '../../../trade/sources';
const EPOXY = 'glue == "epoxy"';
const PACKS = '{packs} {packs?pack:packs} of {pack}';
const ON_ALL = 'on {pieces} pieces, {length} together';

export const glue = defineCell({
  id: 'glue',
  stage: 'timber',
  title: 'Glue',
  question: 'How much glue does this joint take, how thick a bead, and how long a run can I close at once?',
  inputs: glueInputs,
  groups: {
    'The glue': [
      'beads',
      'bead',
      'spread',
      'primer',
      'hardenerPer100',
      'fillerShare',
      'density',
      'epoxyDensity',
      'fillerDensity',
    ],
    'As the shop sells it': ['pack', 'waste'],
    'How fast you work': ['perMetre', 'shop', 'moisture'],
    'The sheet of the glue': ['mostGap', 'openAt20', 'coldest', 'driest', 'wettest'],
    'The frame': ['frames', 'ends', 'siding'],
    'The keelson': ['keelsonRun', 'keelsonWidth', 'keelsonThickness'],
    'The chine log': ['logRun', 'logPieces', 'logThickness', 'logWidth'],
    'The sheer clamp': ['clampRun', 'clampPieces', 'clampThickness', 'clampWidth'],
    'The rub rail': ['railRun', 'railPieces', 'railThickness', 'railWidth'],
    'The panels': ['bottomThickness', 'sideThickness'],
  },
  steps: glueSteps,
  answers: [
    {
      of: 'volume',
      label: 'glue',
      from: 'for the whole joint, squeeze-out included; of epoxy both parts, before the filler',
    },
    { of: 'packs', label: 'packs', from: 'or cartridges, whole ones' },
    {
      of: 'atOnce',
      label: 'run at once',
      from: 'along the joint, spread and closed within the open time',
      tolerance: '100 mm',
    },
  ],
  inWords: firstOf(
    [
      { when: 'length <= 0', says: 'There is no such joint: its length is 0.' },
      {
        when: 'joint == "all"',
        says: [
          'All joints together take',
          {
            when: EPOXY,
            says: `{total} of paste on faces primed with {priming} of neat epoxy: {resin} of resin, {hardener} of hardener and {filler} of filler. Buy ${PACKS}, and mix it joint by joint.`,
            otherwise: `{volume} on {area}: ${PACKS}.`,
          },
        ],
      },
    ],
    [
      firstOf(
        [
          {
            when: BEADED,
            says: [
              'Lay',
              {
                when: 'beads <= 1',
                says: 'one bead {bead} thick',
                otherwise: '{beads} beads side by side, {bead} thick,',
              },
              { when: 'pieces > 1', says: ON_ALL, otherwise: 'on {length}' },
              `: {volume}, ${PACKS}; one lays {fromPack}.`,
            ],
          },
          {
            when: EPOXY,
            says: [
              `Prime both faces with {priming} of neat epoxy, then stir {filler} of filler into {thickened} more for {total} of paste: {resin} of resin and {hardener} of hardener in all, from ${PACKS}.`,
              { when: 'pieces > 1', says: 'That is for {pieces} pieces, {length} together.' },
            ],
          },
        ],
        [
          'Spread {spread}',
          { when: 'pieces > 1', says: `${ON_ALL}, {area}`, otherwise: 'over {area}' },
          `: {volume}, ${PACKS}.`,
        ],
      ),
      'It must be closed within {open}, so take at most {atOnce} at once.',
    ],
  ),
  table: tableOf({
    caption: 'The glued joints of this boat, by her own lengths; the joint chosen as typed',
    over: 'joint',
    only: 'jointLength',
    columns: [
      { of: 'run', label: 'length' },
      { of: 'area', label: 'glue face' },
      { of: 'volume', label: 'glue' },
    ],
  }),
  warnings: [
    {
      when: 'film > mostGap',
      says: 'A line of {film} is more than this glue bridges, {mostGap}: plane the faces until they meet, or take a glue that fills.',
      limit: 'the glue’s widest gap; the sheet rules',
      weight: 'stop',
    },
    {
      when: 'glue == "polyurethane" and filmLaid < 0.9 * film',
      says: 'A bead of {bead} closes to {filmLaid} and leaves places bare: {beadNeeded} fills {film}.',
      limit: GEOMETRY,
      weight: 'mind',
    },
    {
      when: 'joint != "all" and each > atOnce',
      says: 'One piece is {each} long, and only {atOnce} can be closed at once: mix {goes} batches in all, or get more hands.',
      limit: OPEN_TIME,
      weight: 'mind',
    },
    tooCold,
    {
      when: 'moisture > wettest',
      says: 'The wood holds {moisture} of moisture; this glue takes {wettest} at most.',
      limit: 'the glue’s range of moisture; common practice, the sheet rules',
      weight: 'stop',
    },
    {
      when: 'moisture < driest',
      says: 'The wood holds {moisture} of moisture; this glue asks for {driest} at least.',
      limit: 'the glue’s range of moisture; common practice, the sheet rules',
      weight: 'mind',
    },
    {
      when: '(glue == "pva" or glue == "polyurethane") and (joint == "bottomKeelson" or joint == "bottomLogs" or joint == "sideLogs")',
      says: 'This joint lies under water. Of the common kinds epoxy and resorcinol are for that; paste or white glue is no more than bedding here, and the screws have to hold.',
      limit: 'common practice, no source; by name EN 204, ASTM D3498: the class on the label rules',
      weight: 'mind',
    },
  ],
  cautions: [
    ...glueCautions,
    'A pot of epoxy left standing heats itself and can smoke: mix what you close in one go, and spread it at once.',
    'Plane or sand the faces the same day, wipe off the dust, and give end grain neat epoxy until it drinks no more. Screw holes and gaps are not in this figure.',
    'Dust of wood flour and of cured glue: a P100 or FFP3 mask when you stir or sand.',
  ],
  sources: [
    ...glueSources,
    {
      text: 'Primer and paste for epoxy, filler by weight, densities, one bead for 40 mm (1 1/2 in), packs, squeeze-out: custom of the trade',
      known: 'common practice',
    },
    { text: 'B. Niederer, “Estimating Epoxy Amounts”: about 15 % waste', known: 'published' },
    { text: 'EN 204 (class D4), ASTM D2559, ASTM D3498, EN 301: classes by name', known: 'from memory' },
    { text: 'Bead, film, length from a cartridge: geometry', known: 'geometry' },
  ],
  about: ['{joint}'],
  brings: glueQuantities,

  draw: (v, on) => {
    const say = (metres: number) => on.say(metres, 'length');
    const beaded = v.glue === 'polyurethane';
    const film = v.filmLaid;
    // A joint that the boat has not is drawn with a width that can be seen.
    const width = v.width > 0 ? v.width : 0.02;
    return drawing({
      title: 'The joint, cut square to its length',
      says: beaded
        ? `On a face ${say(v.width)} wide ${v.beads <= 1 ? 'lies a bead' : `lie ${on.say(v.beads, 'count')} beads side by side,`} ${say(v.bead)} thick; closed it fills ${say(film)}.`
        : `A face ${say(v.width)} wide with glue on both sides; closed it fills ${say(film)}.`,
      shapes: [
        gluedJoint(
          {
            width: mm(width),
            film: mm(film),
            beads: beaded ? v.beads : 0,
            bead: mm(v.bead),
          },
          { width: say(v.width), film: `film ${say(film)}`, bead: `bead ${say(v.bead)}` },
        ),
        note(
          beaded
            ? 'Closed, before anything is squeezed out.'
            : 'Closed; what is squeezed out is cut off green.',
        ),
      ],
    });
  },

  chart: (v, on) => {
    const films = Array.from({ length: 20 }, (_, i) => 0.00025 * (i + 1));
    // A bead typed by hand stays as it is, so the sweep takes the bead that each gap needs.
    const points = films.flatMap((film) => {
      const bead = Math.sqrt((4 * v.width * film) / (Math.PI * Math.max(1, v.beads)));
      const one = on.with({ film, bead });
      return isIssue(one) ? [] : [[film, one.volume] as const];
    });
    return {
      title: 'What a gap costs in glue',
      says: `The wider the gap the more glue: at ${on.say(v.film, 'length')} it takes ${on.say(v.volume, 'volume')}.`,
      x: { label: 'Thickness when closed', kind: 'length', from: 0, to: 0.005 },
      y: { label: 'Glue', kind: 'volume', from: 0 },
      lines: [{ name: 'glue', points, as: 'line' }],
      limits: [{ at: v.mostGap, axis: 'x', label: 'bridges no more' }],
      points: [{ x: v.film, y: v.volume, label: 'this joint' }],
    };
  },
});
