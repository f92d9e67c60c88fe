/** What every cell has besides its answers, fields and picture: it comes after them, in one file. */
import { InSight } from '../input/in-sight';
import { Cautions } from './cautions';
import { CellKeys } from './cell-keys';
import { Folds } from './folds';

export const afterAnswers = { InSight, Cautions, CellKeys, Folds };
