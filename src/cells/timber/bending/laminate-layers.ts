/** What a stack is asked for: its layers, alike or of their own thickness, the curve, and how it is held there. */
import { layersOf, ownStrains, stackOf } from '../../../kernel/layers';
import { type CellFunction, choice, input } from '../../form/define';
import { fromBoat } from '../../form/from-boat';
import { bentStock } from './bent-stock';

const { part, ...stock } = bentStock;

const ofTheList = (label: string, more: { readonly from?: string; readonly preset: string }) =>
  input('length', label, {
    ...more,
    min: '0 mm',
    max: '150 mm',
    step: '1 mm',
    note: '0 for none',
    when: 'layup == "listed"',
  });

export const layerInputs = {
  part,
  thickness: fromBoat('{part}.thickness', {
    label: 'Thickness, all layers together',
    hint: 'where the layers differ, the sum of the list',
  }),
  plies: input('count', 'Layers', {
    preset: '2',
    min: '2',
    max: '24',
    step: '1',
    slider: true,
    note: 'on a form at least 3 is common practice',
  }),
  held: choice('Glued', {
    options: [
      { id: 'frames', label: 'on the frames, and fastened there' },
      { id: 'form', label: 'on a form, and taken off' },
    ],
    preset: 'frames',
  }),
  layup: choice('The layers are', {
    options: [
      { id: 'alike', label: 'all alike' },
      { id: 'listed', label: 'of the thicknesses listed' },
    ],
    preset: 'alike',
  }),
  layer1: ofTheList('Layer 1, on the hollow side', { from: '{self}.evenPly', preset: '19 mm' }),
  layer2: ofTheList('Layer 2', { from: '{self}.evenPly', preset: '19 mm' }),
  layer3: ofTheList('Layer 3', { preset: '0 mm' }),
  layer4: ofTheList('Layer 4', { preset: '0 mm' }),
  ...stock,
  length: input('length', 'Length of the stack', {
    from: '{along}.length',
    preset: '4.2 m',
    min: '100 mm',
    max: '100 m',
    step: '100 mm',
  }),
  wholeRise: input('length', 'Rise of the curve, end to end', {
    from: '{along}.rise',
    preset: '400 mm',
    min: '0 mm',
    max: '50 m',
    step: '10 mm',
    note: 'from a string stretched between its ends',
  }),
  layerRatio: input('number', 'Least radius, in layer thicknesses', {
    bound: 'least',
    from: 'timber.{species}.layerRatio',
    preset: '125',
    min: '50',
    max: '300',
    step: '5',
    note: 'by the wood: 100 for hardwood and southern pine, 125 for other softwood; from memory: National Design Specification 5.3.8',
  }),
  screwHolds: input('force', 'One fastening holds', {
    when: 'held == "frames"',
    preset: '350 N',
    presetInch: '80 lbf',
    min: '10 N',
    max: '50 kN',
    step: '10 N',
    note: 'a No. 8 screw, 25 mm (1 in) of thread in Douglas-fir that is wet at times, as the strength of a screw has it: National Design Specification, 2850 G² D, 0.7 of it wet',
  }),
};

export const layerFunctions: Readonly<Record<string, CellFunction>> = {
  layersIn: {
    takes: ['length', 'length', 'length', 'length'],
    gives: 'count',
    how: 'how many of the list have a thickness',
    run: (...list) => layersOf(list).length,
  },
  stackOf: {
    takes: ['count'],
    gives: 'count',
    how: 'that number, if it is two or more',
    run: (layers = 0) => stackOf(layers),
  },
  mostStretched: {
    takes: ['length', 'length', 'length', 'length', 'length'],
    gives: 'ratio',
    how: 'greatest t/(2r) among the listed layers, each round the radius of its own middle',
    run: (radius = 0, ...list) => Math.max(...ownStrains(radius, list)),
  },
};
