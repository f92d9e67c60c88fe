/** Jobs that can wait: in their turn, and no more in one idle moment than there is time for. */
import { expect, test, vi } from 'vitest';
import { atRest } from '../../../src/page/picture/at-rest';

type Idle = (deadline: Pick<IdleDeadline, 'timeRemaining'>) => void;
const asked: Idle[] = [];
vi.stubGlobal('requestIdleCallback', (idle: Idle) => asked.push(idle));

/** One idle moment of so long, ms, each job of which takes 10. */
async function idle(time: number): Promise<void> {
  let left = time;
  asked.shift()!({ timeRemaining: () => (left -= 10) });
  for (let turn = 0; turn < 20; turn += 1) await Promise.resolve();
}

test('as many in one idle moment as there is time for, one at the least', async () => {
  const done: number[] = [];
  for (const job of [1, 2, 3, 4, 5]) atRest(() => done.push(job));
  await idle(0);
  expect(done).toStrictEqual([1]);
  await idle(25);
  expect(done).toStrictEqual([1, 2, 3, 4]);
  await idle(25);
  expect(done).toStrictEqual([1, 2, 3, 4, 5]);
  expect(asked).toStrictEqual([]);
});

test('a job is told how many wait besides it, those among them that it brings about', async () => {
  const told: number[] = [];
  const last = (left: number) => {
    told.push(left);
    if (left > 0) atRest(last);
  };
  atRest(last);
  atRest(() => atRest(() => undefined));
  await idle(100);
  expect(told).toStrictEqual([1, 1, 0]);
});
