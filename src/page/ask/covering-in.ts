/** What is covered among the cells that stand in the notebooks. */
import type { Bench } from '../bench';
import { type Covering, covering } from '../../notebook/lesson/covered';

/** @param waiting the numbers that questions wait for, each with its question; tracked */
export const coveringIn = (
  instances: Bench['instances'],
  waiting: () => ReadonlyMap<string, string>,
): Covering =>
  covering(
    waiting,
    (name) => {
      const [instance = '', key = ''] = name.split('.');
      return Object.hasOwn(instances.value.get(instance)?.cell.inputs ?? {}, key);
    },
    (word) => instances.value.has(word),
  );
