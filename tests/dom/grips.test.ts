/** What can be moved in a drawing: by mouse or finger to the nearest mark, by arrow keys mark by mark, one step for a whole drag. */
import { signal } from '@preact/signals';
import { render } from 'preact';
import { expect, test, vi } from 'vitest';
import { demoBoat } from '../../src/boat';
import { plainInstance } from '../../src/cells';
import { weights } from '../../src/cells/afloat/weights';
import type { Sheet } from '../../src/drawing';
import { plainShown } from '../../src/measure';
import { createGraph } from '../../src/notebook/graph/graph';
import { wholeCatalogue } from '../../src/notebook/graph/whole-catalogue';
import { type Bench, BenchContext } from '../../src/page/bench';
import { Grips } from '../../src/page/grip/grips';
import { use } from '../../src/page/html';

/** 10 mm to a px, the origin 50 px from the left and 100 from the top. */
const sheet = { scale: 0.1, origin: [50, 100] } as unknown as Sheet;
const frame = () => new Promise(requestAnimationFrame);

test('an anchor is dragged, then moved by keys', async () => {
  const graph = createGraph({
    catalogue: () => wholeCatalogue(demoBoat),
    entries: () => ({ 'weights.gearBForward': '3 m', 'weights.gearBHeight': '200 mm' }),
    shown: plainShown,
  });
  const write = vi.fn<(entries: object, run: string) => void>();
  const settle = vi.fn<() => void>();
  const bench = {
    book: { inHand: signal(graph), write, settle },
    shown: signal(plainShown),
    instances: signal(new Map([['weights', plainInstance(weights)]])),
    wall: signal(null),
  } as unknown as Bench; // what the rings ask for
  const host = document.body.appendChild(document.createElement('div'));
  const grips = [
    {
      name: 'anchor',
      at: [3000, 200],
      right: { key: 'gearBForward', zero: 0 },
      up: { key: 'gearBHeight', zero: 0 },
    },
  ] as const;
  render(
    use(
      BenchContext.Provider,
      { value: bench },
      use(Grips, { instance: plainInstance(weights), grips, sheet }),
    ),
    host,
  );
  const ring = host.querySelector<HTMLElement>('.grip')!;
  expect([ring.style.left, ring.style.top]).toStrictEqual(['350px', '80px']);
  expect(ring.getAttribute('aria-label')).toMatch(/^Move anchor: .*3000 mm.*200 mm$/);
  expect(ring.getBoundingClientRect().width).toBe(44);

  ring.setPointerCapture = () => {};
  const at = (type: string, x: number, y: number) =>
    ring.dispatchEvent(
      new PointerEvent(type, { pointerId: 1, button: 0, clientX: x, clientY: y, bubbles: true }),
    );
  at('pointermove', 400, 300);
  await frame();
  expect(write).not.toHaveBeenCalled();
  at('pointerdown', 350, 80);
  at('pointermove', 340, 80);
  // 23 px to the left and 7 up, of which only the last is written in a frame: to the nearest marks of 50 and 10 mm.
  at('pointermove', 327, 73);
  await frame();
  expect(write.mock.calls).toStrictEqual([
    [{ 'weights.gearBForward': '2750 mm', 'weights.gearBHeight': '270 mm' }, 'drag weights anchor'],
  ]);
  // No further than the field takes.
  at('pointermove', 327, 5000);
  await frame();
  expect(write.mock.lastCall![0]).toMatchObject({ 'weights.gearBHeight': '-2000 mm' });
  expect(settle).not.toHaveBeenCalled();
  at('pointerup', 327, 5000);
  await frame();
  expect(settle).toHaveBeenCalledTimes(1);
  at('pointermove', 300, 80);
  await frame();
  expect(write).toHaveBeenCalledTimes(2);

  const press = (key: string, shiftKey = false) =>
    ring.dispatchEvent(new KeyboardEvent('keydown', { key, shiftKey, bubbles: true, cancelable: true }));
  expect(press('ArrowRight')).toBe(false);
  expect(write.mock.lastCall![0]).toStrictEqual({ 'weights.gearBForward': '3050 mm' });
  press('ArrowDown', true);
  expect(write.mock.lastCall![0]).toStrictEqual({ 'weights.gearBHeight': '100 mm' });
  expect(press('Tab')).toBe(true);
  expect(write).toHaveBeenCalledTimes(4);
});
