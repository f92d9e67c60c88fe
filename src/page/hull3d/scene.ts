/**
 * The hull in the round, drawn by three on a canvas. Nothing runs by itself: a picture is drawn when `draw` is
 * called, and `dispose` gives the graphics memory back.
 */
import {
  AmbientLight,
  BufferAttribute,
  BufferGeometry,
  Color,
  DirectionalLight,
  DoubleSide,
  Group,
  Mesh as ThreeMesh,
  MeshLambertMaterial,
  OrthographicCamera,
  Scene as ThreeScene,
  WebGLRenderer,
} from 'three';
import { LineMaterial } from 'three/addons/lines/LineMaterial.js';
import { LineSegments2 } from 'three/addons/lines/LineSegments2.js';
import { LineSegmentsGeometry } from 'three/addons/lines/LineSegmentsGeometry.js';
import { add, type Mesh, polygonMesh, scale } from '../../kernel';
import type { HullModel, ModelLine } from './hull-model';
import { atHeel, axesOfLook, type Viewpoint, unseen } from './look';

/** Colours of the page, as CSS writes them. */
export interface Paints {
  readonly ink: string;
  readonly skin: string;
  readonly lit: string;
  readonly litSkin: string;
  readonly second: string;
}

export interface InScene {
  readonly model: HullModel;
  /** Its edges are dashed. */
  readonly second: HullModel | null;
  readonly lit: ReadonlySet<string>;
  readonly paints: Paints;
}

export interface HullScene {
  readonly show: (shown: InScene) => void;
  /** @param heel by which she lies over to port, rad */
  readonly see: (look: Viewpoint, heel: number) => void;
  /** CSS px. */
  readonly size: (width: number, height: number) => void;
  readonly draw: () => void;
  readonly dispose: () => void;
}

/** Widths of lines, px. */
const EDGE = 2.2;
const FRAME = 1.2;
const LIT = 4.2;
/** Lines stand off the skin towards the eye by this share of the hull's reach, so that it does not swallow them. */
const OFF_SKIN = 0.008;
/** Room round the hull. */
const ROOM = 1.05;
const FINEST = 2;

/** @throws where there is no WebGL */
export function openScene(canvas: HTMLCanvasElement): HullScene {
  const renderer = new WebGLRenderer({ canvas, alpha: true, antialias: true });
  renderer.setPixelRatio(Math.min(devicePixelRatio, FINEST));
  const world = new ThreeScene();
  const camera = new OrthographicCamera();
  // A lamp of strength pi straight on gives a surface its own colour.
  const lamp = new DirectionalLight(0xffffff, 0.4 * Math.PI);
  const skin = new Group();
  const ink = new Group();
  world.add(new AmbientLight(0xffffff, 0.68 * Math.PI), lamp, lamp.target, skin, ink);
  let model: HullModel | null = null;
  let shape = { width: 1, height: 1 };
  let look: Viewpoint | null = null;
  let lies = 0;

  const aim = () => {
    if (!model || !look) return;
    const { middle, reach, half } = model;
    const axes = atHeel(axesOfLook(look), lies);
    const aspect = shape.width / shape.height;
    // Her reach fits across from every side; upward what of her stands up, or all would be small on a low canvas.
    const upward = axes.up.reduce((sum, share, axis) => sum + Math.abs(share) * half[axis]!, 0);
    const across = (ROOM / look.near) * Math.max(reach, upward * aspect);
    Object.assign(camera, {
      left: -across,
      right: across,
      top: across / aspect,
      bottom: -across / aspect,
      near: reach,
      far: 5 * reach,
    });
    camera.up.set(...axes.up);
    camera.position.set(...add(middle, scale(axes.toward, 3 * reach)));
    camera.lookAt(...middle);
    camera.updateProjectionMatrix();
    lamp.position.set(...add(middle, unseen(axes, [-0.45 * reach, 0.65 * reach, 0.6 * reach])));
    lamp.target.position.set(...middle);
    ink.position.set(...scale(axes.toward, OFF_SKIN * reach));
  };

  return {
    show: (shown) => {
      empty(skin);
      empty(ink);
      model = shown.model;
      skin.add(...skinOf(shown));
      ink.add(...linesOf(shown));
      aim();
    },
    see: (next, heel) => {
      look = next;
      lies = heel;
      aim();
    },
    size: (width, height) => {
      shape = { width, height };
      renderer.setSize(width, height, false);
      aim();
    },
    draw: () => renderer.render(world, camera),
    dispose: () => {
      empty(skin);
      empty(ink);
      renderer.dispose();
      renderer.forceContextLoss();
    },
  };
}

/** Takes everything out of a group, and its buffers and programmes off the graphics card. */
function empty(group: Group): void {
  for (const child of group.children) {
    if (!(child instanceof ThreeMesh)) continue;
    const { geometry, material } = child as ThreeMesh<BufferGeometry, MeshLambertMaterial | LineMaterial>;
    geometry.dispose();
    material.dispose();
  }
  group.clear();
}

function skinOf({ model, lit, paints }: InScene): ThreeMesh[] {
  const surfaces = [
    ...model.panels,
    ...model.ends.map(({ name, corners }) => ({ name, mesh: polygonMesh(corners) })),
  ];
  return surfaces.map(({ name, mesh }) => {
    const material = new MeshLambertMaterial({
      color: new Color(lit.has(name) ? paints.litSkin : paints.skin),
      side: DoubleSide,
    });
    return new ThreeMesh(geometryOf(mesh), material);
  });
}

function geometryOf({ points, triangles }: Mesh): BufferGeometry {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(Float32Array.from(points), 3));
  geometry.setIndex(new BufferAttribute(triangles, 1));
  geometry.computeVertexNormals();
  return geometry;
}

function linesOf({ model, second, lit, paints }: InScene): LineSegments2[] {
  const part = (lines: readonly ModelLine[], isLit: boolean) =>
    lines.filter(({ name }) => lit.has(name) === isLit);
  const { edges, frames } = model;
  return [
    segments(part(frames, false), { color: paints.ink, linewidth: FRAME }),
    segments(part(edges, false), { color: paints.ink, linewidth: EDGE }),
    segments([...part(frames, true), ...part(edges, true)], { color: paints.lit, linewidth: LIT }),
    segments(second?.edges ?? [], {
      color: paints.second,
      linewidth: EDGE,
      dashed: true,
      dashSize: 0.035 * model.reach,
      gapSize: 0.025 * model.reach,
      // Dashed over everything, as on a drawing.
      depthTest: false,
    }),
  ].flat();
}

function segments(
  lines: readonly ModelLine[],
  pen: ConstructorParameters<typeof LineMaterial>[0],
): LineSegments2[] {
  const ends = lines.flatMap(
    ({ points }) => points.slice(1).flatMap((to, i): number[] => [...points[i]!, ...to]), // the list shifted by one
  );
  if (ends.length === 0) return [];
  const geometry = new LineSegmentsGeometry();
  geometry.setPositions(ends);
  const drawn = new LineSegments2(geometry, new LineMaterial(pen));
  drawn.computeLineDistances();
  return [drawn];
}
