/** What is published nearby and no row checks, each with the reason: no cell asks it, or the source can't be worked by it. */
export const leftOut: readonly string[] = [
  'Lift of a planing hull by D. Savitsky’s equations (1964): no cell uses them. *power* gives ranges by rules of thumb, which say no more than they know.',
  'Length of oars for a span between the rowlocks (25/7 of half the span and 2 in): no cell asks for oars.',
  'Volume and second moment of the Wigley hull by Simpson’s rule and the trapezoid rule at few ordinates: no cell sums ordinates. Volumes and moments come from the hull’s mesh by the divergence theorem; the Wigley hull is checked so, and the order of convergence is told in `tests/kernel`.',
  'The lifting equation in inches and pounds (51 lb; 10/H; 0.82 + 1.8/D): *roll* and *lift* work its metric form, which rounds its constants otherwise and gives the same lift about 2 % smaller; the printed table of that form differs from its own formula besides.',
  'Lifts a minute averaged over a quarter of an hour with pauses: *roll* asks for the lifts a minute themselves.',
  'Limits of a sheet’s thickness by PS 1 and EN 315: no cell passes or refuses a sheet. The caliper has the word: type what it reads.',
  'Stiffness of a sheet thinner than it is called, as the cube of the two thicknesses: *plyBend* works with the thickness typed and compares no two; the cube stands in the rows on its bending.',
  'Force on a corner of a sheet that is twisted, and the shear in it: *panels* tells the twist as a strain, to which no published limit in stress belongs.',
  'Limit for amorphous silica in the air (29 CFR 1910.1000, Table Z-3): *filler* quotes it in a caution; no cell reckons dust in the air.',
  'Air changes of a shop, and dilution of a solvent’s vapour: no cell sizes a fan; the paints’ and the thinner’s own sheets rule.',
  'Hours and dose of noise by OSHA and NIOSH: no cell reckons noise; *sand* asks for ear muffs whatever the machine.',
];
