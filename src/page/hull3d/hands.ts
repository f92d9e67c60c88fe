/** Finger, mouse and wheel on the hull in hand: one finger or the mouse turns, two fingers and the wheel draw nearer. */
import { OrthographicCamera } from 'three';
import { OrbitControls } from 'three/addons/controls/OrbitControls.js';
import { axesOfLook, FARTHEST, type Viewpoint, lookFrom, NEAREST } from './look';

export interface Hands {
  /** Takes over a look that came from elsewhere: a key, or a name. */
  readonly follow: (look: Viewpoint) => void;
  readonly dispose: () => void;
}

/** A turn of the wheel draws nearer faster than fingers do, which move the very points they touch. */
const WHEEL_SPEED = 3;

export function handsOn(element: HTMLElement, onLook: (look: Viewpoint) => void): Hands {
  // An eye at unit distance from the middle; the scene has a camera of its own, and takes the look alone.
  const eye = new OrthographicCamera();
  eye.up.set(0, 0, 1);
  eye.position.set(1, 0, 0);
  const controls = new OrbitControls(eye, element);
  Object.assign(controls, { enablePan: false, minZoom: FARTHEST, maxZoom: NEAREST });
  let isFollowing = false;
  controls.addEventListener('change', () => {
    const { x, y, z } = eye.position;
    if (!isFollowing) onLook(lookFrom([x, y, z], eye.zoom));
  });

  const take = () => {
    element.focus({ preventScroll: true });
    // A drag across the picture's width turns her half round, whatever its height.
    const rotateSpeed = element.clientHeight / (2 * element.clientWidth);
    Object.assign(controls, { enableZoom: true, zoomSpeed: 1, rotateSpeed });
  };
  // Until it is in hand the wheel scrolls the page.
  const wheel = () =>
    Object.assign(controls, { enableZoom: document.activeElement === element, zoomSpeed: WHEEL_SPEED });
  const stop = new AbortController();
  const first = { capture: true, signal: stop.signal };
  element.addEventListener('pointerdown', take, first);
  element.addEventListener('wheel', wheel, { ...first, passive: true });

  return {
    follow: (look) => {
      isFollowing = true;
      eye.position.set(...axesOfLook(look).toward);
      eye.zoom = look.near;
      controls.update();
      isFollowing = false;
    },
    dispose: () => {
      stop.abort();
      controls.dispose();
    },
  };
}
