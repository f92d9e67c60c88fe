/**
 * Glue, resin, glass, plywood, screws and what lasts, typed once more: custom of the trade where nothing else is
 * said, so that no figure moves unseen.
 */
import { FT, IN, type Printed, PSI, tableOf } from './units';

const MIN = 60;
const HOUR = 3600;
const MM = 1e-3;
const GRAMS = 1e-3;
const OUNCE = 0.028349523125;

/**
 * Glues: gap mm, pressure MPa, minutes open, hours clamped at 20 °C, least °C, moisture %, spread g/m2. Pressure of
 * rigid glues: Wood Handbook, ch. 10, from memory; gap of PVA: a glue maker's sheet.
 */
const glues = `
epoxy        | 3    | 0.02 | 0.1 | 20 | 40 | 8  | 24 | 10 | 6 | 16 | 250 | 400
resorcinol   | 0.15 | 0.7  | 1.7 | 10 | 20 | 10 | 16 | 21 | 8 | 12 | 300 | 350
polyurethane | 2    | 0.05 | 0.2 | 10 | 20 | 4  | 24 | 5  | 8 | 18
pva          | 0.15 | 0.7  | 1.4 | 5  | 10 | 1  | 24 | 10 | 6 | 12 | 150 | 250
`;
const kelvin = (table: Printed): Printed =>
  Object.fromEntries(
    Object.entries(table).map(([path, value]) => [
      path,
      path.endsWith('leastTemperature') ? value + 273.15 : value,
    ]),
  );

/** Wood screws of ASME B18.6.1: flat heads as a trade list prints them, threads per inch; roots of the National Design Specification, Table L3; in. */
const heads: Readonly<Record<number, number>> = {
  4: 0.225,
  6: 0.279,
  8: 0.332,
  10: 0.385,
  12: 0.438,
  14: 0.491,
};
const roots: Readonly<Record<number, number>> = {
  6: 0.113,
  7: 0.122,
  8: 0.131,
  9: 0.142,
  10: 0.152,
  12: 0.171,
  14: 0.196,
};
const threads: Readonly<Record<number, number>> = { 4: 22, 6: 18, 7: 16, 8: 15, 10: 13, 12: 11, 14: 10 };
const screws = Object.fromEntries(
  [4, 5, 6, 7, 8, 9, 10, 12, 14].flatMap((gauge) => {
    const path = `screws.screws.gauge${gauge}`;
    const diameter = 0.06 + 0.013 * gauge;
    return [
      [`${path}.diameter`, diameter * IN],
      // The printed heads lie on this line; roots of small sizes are about 0.8 of the diameter, by custom.
      [`${path}.head`, (heads[gauge] ?? 2.04 * diameter - 0.003) * IN],
      [`${path}.root`, (roots[gauge] ?? 0.8 * diameter) * IN],
      ...(threads[gauge] ? [[`${path}.pitch`, IN / threads[gauge]] as const] : []),
    ] as const;
  }),
);

/** Twist drills by number and letter, in: ASME B94.11M, from memory. */
const numbers = `
.2280 .2210 .2130 .2090 .2055 .2040 .2010 .1990 .1960 .1935 .1910 .1890 .1850 .1820 .1800 .1770 .1730 .1695 .1660 .1610
.1590 .1570 .1540 .1520 .1495 .1470 .1440 .1405 .1360 .1285 .1200 .1160 .1130 .1110 .1100 .1065 .1040 .1015 .0995 .0980
.0960 .0935 .0890 .0860 .0820 .0810 .0785 .0760 .0730 .0700 .0670 .0635 .0595 .0550 .0520 .0465 .0430 .0420 .0410 .0400`;
const letters = `
.234 .238 .242 .246 .250 .257 .261 .266 .272 .277 .281 .290 .295
.302 .316 .323 .332 .339 .348 .358 .368 .377 .386 .397 .404 .413`;
const listed = (path: string, text: string, unit = 1): Printed =>
  Object.fromEntries(
    text
      .trim()
      .split(/\s+/)
      .map((number, i) => [`${path}.${i}`, Number(number) * unit]),
  );

export const shop: Printed = {
  ...kelvin(
    tableOf(
      'adhesives.adhesives',
      [
        ['mostGap', MM],
        ['leastPressure', 1e6],
        ['mostPressure', 1e6],
        ['shortestOpen', MIN],
        ['longestOpen', MIN],
        ['shortestClamped', HOUR],
        ['longestClamped', HOUR],
        ['leastTemperature', 1],
        ['driest', 0.01],
        ['wettest', 0.01],
        ['leastSpread', GRAMS],
        ['mostSpread', GRAMS],
      ],
      glues,
    ),
  ),
  // 100 to 150 g/m2 on each face; 0.3 to 0.5 mm; 2 to 4 kN; 0.1 to 0.2 MPa; 150 to 200 and 75 to 100 mm.
  'adhesives.primer': 0.125,
  'adhesives.epoxyLine': 0.5 * MM,
  'adhesives.spreadTime': 30,
  'adhesives.clampTime': 30,
  'adhesives.clampForce': 3000,
  'adhesives.screwPressure': 0.15e6,
  'adhesives.clampPitch.straight': 175 * MM,
  // Near the middle of 75 to 100 mm, as it is said; of 3 to 4 in.
  'adhesives.clampPitch.tight': 85 * MM,
  'adhesives.clampPitchInch.straight': 7 * IN,
  'adhesives.clampPitchInch.tight': 3.5 * IN,
  // Wood Handbook, ch. 10: 0.08 to 0.15 mm; a glue maker's sheet: 0.05 to 0.15.
  'glue-lines.glueLines.epoxy': 0.5 * MM,
  'glue-lines.glueLines.resorcinol': 0.115 * MM,
  'glue-lines.glueLines.polyurethane': 0.5 * MM,
  'glue-lines.glueLines.pva': 0.1 * MM,
  'glue-lines.glueDensity': 1100,
  // 1140 to 1180 and 950 to 1050 kg/m3; 100 to 200, 60 to 120 and 70 to 110 mL/m2; B. Niederer: 15 % waste.
  'epoxy.partDensity.resin': 1160,
  'epoxy.partDensity.hardener': 1000,
  'epoxy.fillFilm': 0.09 * MM,
  'epoxy.uptake.softwoodPly.firstCoat': 150e-6,
  'epoxy.uptake.hardwoodPly.firstCoat': 90e-6,
  'epoxy.laterCoat': 90e-6,
  'epoxy.waste': 0.15,
  // 100 to 200, 70 to 110 mL/m2; 45 to 55 %; 79 to 90 ft2 a gallon, all of it in the film; 15 to 20 %.
  'resin-scatter.scatter.uptake': 50 / 150,
  'resin-scatter.scatter.laterCoat': 20 / 90,
  'resin-scatter.scatter.glass': 0.05,
  'resin-scatter.scatter.film': 0.11,
  'resin-scatter.scatter.waste': 0.025,
  // WMO-No. 8, Annex 4.B, over water; guides: 3 °C, 85 %; clear coats 75 to 80 %, the surer; below 10 °C oil paint is slow.
  'dew-point.magnus.atFreezing': 611.2,
  'dew-point.magnus.steepness': 17.62,
  'dew-point.magnus.offset': 243.12,
  'dew-point.leastMargin': 3,
  'coatings.coatings.epoxy.mostHumidity': 0.85,
  'coatings.coatings.epoxy.leastTemperature': 283.15,
  'coatings.coatings.clearEpoxy.mostHumidity': 0.75,
  'coatings.coatings.clearEpoxy.leastTemperature': 283.15,
  'coatings.coatings.paint.mostHumidity': 0.85,
  'coatings.coatings.paint.leastTemperature': 283.15,
  'coatings.coatings.varnish.mostHumidity': 0.75,
  'coatings.coatings.varnish.leastTemperature': 283.15,
  // Wood flour as in a fillet; middles of 150 to 250 and 30 to 50 kg/m3, 6 to 9 and 20 to 30 g to 100 g; silica 2.2 g/mL.
  'fillers.fillers.woodFlour.density': 1500,
  'fillers.fillers.woodFlour.bulk': 200,
  'fillers.fillers.woodFlour.share': 0.25,
  'fillers.fillers.silica.density': 2200,
  'fillers.fillers.silica.bulk': 40,
  'fillers.fillers.silica.share': 0.075,
  'fillers.fillers.glassBubbles.density': 250,
  'fillers.fillers.glassBubbles.bulk': 150,
  'fillers.fillers.glassBubbles.share': 0.25,
  'fillers.fillers.phenolicBubbles.density': 225,
  'fillers.fillers.phenolicBubbles.bulk': 105,
  'fillers.fillers.phenolicBubbles.share': 0.2,
  // At 25 °C 10 to 15, 20 to 30, 40 to 60 min, of which the shorter.
  'hardeners.hardeners.fast.potLife': 10 * MIN,
  'hardeners.hardeners.medium.potLife': 20 * MIN,
  'hardeners.hardeners.slow.potLife': 40 * MIN,
  // A seamanship course: 900 lb by the girth in inches squared; times manila. Rope makers: five times, knots half.
  'ropes.manilaByGirth': (900 * 16 * OUNCE) / IN ** 2,
  'ropes.timesManila.manila': 1,
  'ropes.timesManila.nylon': 2.5,
  'ropes.timesManila.polyester': 2,
  'ropes.timesManila.polypropylene': 1.4,
  'ropes.ropeFactor': 5,
  'ropes.knotTakes': 0.5,
  // DHHS (NIOSH) 94-110, frequency multiplier for up to an hour, from 0.2 a minute to 12.
  ...Object.fromEntries(
    [
      [0.2, 1],
      [0.5, 0.97],
      [1, 0.94],
      [2, 0.91],
      [3, 0.88],
      [4, 0.84],
      [5, 0.8],
      [6, 0.75],
      [7, 0.7],
      [8, 0.6],
      [9, 0.52],
      [10, 0.45],
      [11, 0.41],
      [12, 0.37],
    ].flatMap(([rate, left], i) => [
      [`lifting.rates.${i}.rate`, rate],
      [`lifting.rates.${i}.left`, left],
    ]),
  ),
  // 350 to 500 g in a cup, 150 to 250 g fast or above 27 °C, up to 800 g in a tray; the surer in a cup. As ounces say it.
  'pots.potful.cup': 350 * GRAMS,
  'pots.potful.hotCup': 150 * GRAMS,
  'pots.potful.tray': 800 * GRAMS,
  'pots.potful.hotTray': 250 * GRAMS,
  'pots.potfulOunces.cup': 12 * OUNCE,
  'pots.potfulOunces.hotCup': 5 * OUNCE,
  'pots.potfulOunces.tray': 28 * OUNCE,
  'pots.potfulOunces.hotTray': 8 * OUNCE,
  'pots.mostInCup': 500 * GRAMS,
  'pots.hotFrom': 27 + 273.15,
  'pots.cupWidth': 80 * MM,
  'pots.cupWidthInch': 3 * IN,
  // By roller 0.4 m2 a minute, cloth 0.15, fillets 0.45 m a minute: the middles.
  'pots.spreading.seal.pace': MIN / 0.4,
  'pots.spreading.wet.pace': MIN / 0.15,
  'pots.spreading.fill.pace': MIN / 0.4,
  'pots.spreading.fillets.pace': MIN / 0.45,
  // An aircraft-kit maker's manual: below 15 °C, at most 35 °C, half as thick 5 °C warmer. A maker: a minute of stirring.
  'pots.slowBelow': 15 + 273.15,
  'pots.warmedTo': 35 + 273.15,
  'pots.halfAsThick': 5,
  'pots.leastStirring': MIN,
  // Thermochimica Acta 447 (2006): 55 to 60 kJ/mol.
  'pots.activation': 55,
  // Six tenths of the pot life; 10 to 12 mm; poured spheres.
  'fillers.workable': 0.6,
  'fillers.deepestPour': 10 * MM,
  'fillers.mostGrains': 0.6,
  'paste.epoxyDensity': 1100,
  'paste.flourDensity': 1500,
  'paste.flourShare': 0.25,
  'paste.flourSpread': 0.5,
  'paste.filletRadius': 10 * MM,
  'paste.radiusToPanel': 2,
  'paste.scrapings': 0.25,
  // Ounces to the square yard and to the square foot; grams as Practical Action, “Fibreglass boat building”, prints them.
  ...tableOf(
    'glass.glass',
    [['weight', OUNCE / (3 * FT) ** 2]],
    'cloth4|4\ncloth6|6\ncloth7Half|7.5\ncloth10|10\ncloth12|12\ncloth17|17',
  ),
  ...tableOf('glass.glass', [['weight', OUNCE / FT ** 2]], 'mat3Quarter|0.75\nmat1Half|1.5'),
  ...tableOf('glass.glass', [['weight', GRAMS]], 'mat300|300\nmat450|450\nroving600|600\nroving800|800'),
  // ISO 12215-5, Annex C, from memory; B. Niederer for cloth.
  ...tableOf(
    'glass.layups',
    [['glassShare', 1]],
    'clothSqueegeed|0.5\nclothRolled|0.425\nmat|0.3\nwovenRoving|0.48\nstitched|0.5\nunidirectional|0.55',
  ),
  // Custom of the trade: ounces to the square yard, and the radius of the edge.
  ...tableOf(
    'glass.rounding',
    [
      ['upTo', OUNCE / (3 * FT) ** 2],
      ['radius', MM],
    ],
    'light|6|6\nmiddling|12|10\nheavy||12',
  ),
  ...Object.fromEntries([30, 38, 50, 60, 72].map((inches, i) => [`glass.rollWidths.${i}`, inches * IN])),
  'glass.glassDensity': 2560,
  'glass.curedResinDensity': 1200,
  // A plywood trade sheet for okoume; 540 to 600, 600 to 650, 680, 520 to 560 kg/m3; moduli of the veneers' woods.
  ...tableOf(
    'plywood.plywood',
    [['density', 1]],
    'okoume|450\nmeranti|570\nkhaya|625\nbirch|680\ndouglasFir|540',
  ),
  'plywood.plywood.okoume.faceModulus': 1.14e6 * PSI,
  'plywood.plywood.meranti.faceModulus': 1.23e6 * PSI,
  'plywood.plywood.khaya.faceModulus': 1.4e6 * PSI,
  'plywood.plywood.douglasFir.faceModulus': 13.4e9,
  // A data sheet on sheathing plywood; 24 thicknesses in all.
  'butt-plates.plateEachSide': 12,
  ...listed('butt-plates.sheathing.tension', '27.6 34.5', 1e6),
  ...listed('butt-plates.sheathing.rollingShear', '1.72 2.07', 1e6),
  ...screws,
  'screws.shankPlay': 0.002 * IN,
  'screws.headDegrees': 81,
  'screws.headAngle': (81 / 180) * Math.PI,
  'embedment.lowestTwentieth': 1.645,
  ...listed('drills.numberDrills', numbers),
  ...listed('drills.letterDrills', letters),
  // Common practice, no source: mm, and 16ths of an inch.
  ...listed('drills.bits.metric', '3 4 5 6 8 10 12 14 15 16 18 20 22 25 30 35 40 50'),
  ...listed('drills.bits.inch', '2 3 4 5 6 7 8 9 10 11 12 14 16 18 20 22 24 28 32'),
  ...listed('lengths-sold.screwLengths.metric', '12 16 20 25 30 35 40 45 50 60 70 80 90 100 120', MM),
  ...listed('lengths-sold.screwLengths.inch', '.5 .625 .75 .875 1 1.25 1.5 1.75 2 2.25 2.5 3 3.5 4 4.5', IN),
  ...listed(
    'lengths-sold.lumberLengths.metric',
    '1.8 2.1 2.4 2.7 3.0 3.3 3.6 3.9 4.2 4.5 4.8 5.1 5.4 5.7 6.0 6.3',
  ),
  ...listed('lengths-sold.lumberLengths.inch', '6 8 10 12 14 16 18 20', FT),
  // Common practice, no source: litres; half a pint, pint, quart, gallon and five gallons of 231 cubic inches.
  ...listed('packs-sold.packsSold.metric', '.25 .5 1 4 15', 1e-3),
  ...listed('packs-sold.packsSold.inch', '.0625 .125 .25 1 5', 231 * IN ** 3),
  // National Design Specification (2018), Table 2.3.2; ten minutes stands for a test.
  'load-duration.testFactor': 1.6,
  'load-duration.lastings.minutes.codeFactor': 1.6,
  'load-duration.lastings.week.codeFactor': 1.25,
  'load-duration.lastings.months.codeFactor': 1.15,
  'load-duration.lastings.years.codeFactor': 1,
  'load-duration.lastings.ever.codeFactor': 0.9,
  'load-duration.lastings.minutes.seconds': 5 * MIN,
  'load-duration.lastings.week.seconds': 7 * 24 * HOUR,
  'load-duration.lastings.months.seconds': (365.25 / 6) * 24 * HOUR,
  'load-duration.lastings.years.seconds': 3652.5 * 24 * HOUR,
  'load-duration.lastings.ever.seconds': 18262.5 * 24 * HOUR,
  // Wood Handbook, ch. 5, from memory: from 20 °C to -50 and +50.
  'load-duration.warmthChanges.modulus.cold': 0.17,
  'load-duration.warmthChanges.modulus.hot': -0.07,
  'load-duration.warmthChanges.rupture.cold': 0.35,
  'load-duration.warmthChanges.rupture.hot': -0.2,
  'load-duration.warmthChanges.ruptureDamp.cold': 0.6,
  'load-duration.warmthChanges.ruptureDamp.hot': -0.25,
  // Wood Handbook, ch. 10, and its editions; R. Birmingham as quoted; APA for plywood, from memory.
  'scarf-strength.buttKept': 0.25,
  'scarf-strength.scarfSpread': 0.05,
  'scarf-strength.otherPrinted.0.points.0.slope': 4,
  'scarf-strength.otherPrinted.0.points.0.kept': 0.65,
  'scarf-strength.otherPrinted.0.points.1.slope': 20,
  'scarf-strength.otherPrinted.0.points.1.kept': 0.95,
  'scarf-strength.otherPrinted.1.points.0.slope': 5,
  'scarf-strength.otherPrinted.1.points.0.kept': 0.75,
  'scarf-strength.otherPrinted.1.points.1.slope': 8,
  'scarf-strength.otherPrinted.1.points.1.kept': 1,
  // Common practice: over 200 easy, 150 to 200 ordinary stock; half the rupture, two thirds of picked wood, a third with knots.
  'bend-grades.easyBend': 200,
  'bend-grades.bendShares.clear': 0.5,
  'bend-grades.bendShares.picked': 0.67,
  'bend-grades.bendShares.knotty': 0.33,
  // E. C. Peck, from memory: 1 to 2 %, 25 to 30 %; T. J. Lemoine and P. Koch: 16.
  'steam.steamed.stretch': 0.015,
  'steam.steamed.shortening': 0.25,
  'steam.steamed.southernPineStrapped': 16,
};
