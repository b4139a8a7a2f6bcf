// In the browser: the first picture of a console as the page draws it, beside a bare scene of the same triangles and lines.
// Bundled by the bench of the page; each call builds everything anew and waits until the pixels are there.

import {
  AmbientLight,
  BufferAttribute,
  BufferGeometry,
  DirectionalLight,
  LineBasicMaterial,
  LineSegments,
  Mesh,
  MeshLambertMaterial,
  PerspectiveCamera,
  Scene,
  WebGLRenderer,
} from "three";
import type { ConsoleScene } from "../../viewer/console/console-messages.ts";
import { ConsolePicture } from "../../viewer/console/console-picture.ts";
import { FIRST_LOOK } from "../../viewer/console/look.ts";
import { frameMatrix } from "../../viewer/console/picture-groups.ts";
import { standingViews } from "../../viewer/console/standing-views.ts";

const SIZE = { width: 640, height: 400 } as const;

declare global {
  interface Window {
    readonly bench: { readonly page: typeof pictureTime; readonly bare: typeof bareTime };
  }
}

/** Milliseconds from nothing to pixels. */
const pictureTime = async (scene: ConsoleScene): Promise<number> => {
  const { canvas, labels } = stage();
  const started = performance.now();
  const picture = new ConsolePicture({ canvas, labels, plain: true, isStill: () => true });
  picture.resize();
  picture.show(scene);
  const [whole] = standingViews(scene, picture.opening(), FIRST_LOOK);
  if (whole !== undefined) picture.goTo(whole.goal);
  await frameOf(canvas);
  const time = performance.now() - started;
  picture.dispose();
  canvas.parentElement?.remove();
  return time;
};

const bareTime = async (scene: ConsoleScene): Promise<number> => {
  const { canvas } = stage();
  const started = performance.now();
  const renderer = new WebGLRenderer({ canvas, antialias: false });
  renderer.setSize(SIZE.width, SIZE.height, false);
  const shown = new Scene();
  const face = new MeshLambertMaterial({ flatShading: true });
  const ink = new LineBasicMaterial();
  for (const { frame, lots } of scene.groups)
    for (const { positions, triangles, edges } of lots ?? []) {
      const faces = new BufferGeometry();
      faces.setAttribute("position", new BufferAttribute(positions, 3));
      faces.setIndex(new BufferAttribute(triangles, 1));
      const lines = new BufferGeometry();
      lines.setAttribute("position", new BufferAttribute(edges, 3));
      for (const each of [new Mesh(faces, face), new LineSegments(lines, ink)]) {
        each.matrixAutoUpdate = false;
        each.matrix.copy(frameMatrix(frame));
        shown.add(each);
      }
    }
  const camera = new PerspectiveCamera(38, SIZE.width / SIZE.height, 5, 40_000);
  camera.up.set(0, 0, 1);
  camera.position.set(-200, 1600, 2200);
  camera.lookAt(500, -400, 500);
  shown.add(new AmbientLight(), new DirectionalLight());
  await new Promise((done) => requestAnimationFrame(done));
  renderer.render(shown, camera);
  settle(canvas);
  const time = performance.now() - started;
  renderer.dispose();
  canvas.parentElement?.remove();
  return time;
};

const stage = (): { readonly canvas: HTMLCanvasElement; readonly labels: HTMLElement } => {
  const holder = document.createElement("div");
  const canvas = document.createElement("canvas");
  const labels = document.createElement("div");
  canvas.style.width = `${SIZE.width}px`;
  canvas.style.height = `${SIZE.height}px`;
  holder.append(canvas, labels);
  document.body.append(holder);
  return { canvas, labels };
};

const frameOf = async (canvas: HTMLCanvasElement): Promise<void> => {
  while (canvas.dataset["frames"] === undefined)
    await new Promise((done) => requestAnimationFrame(done));
  settle(canvas);
};

/** Reading a pixel waits for all of them. */
const settle = (canvas: HTMLCanvasElement): void => {
  const context = canvas.getContext("webgl2");
  context?.readPixels(0, 0, 1, 1, context.RGBA, context.UNSIGNED_BYTE, new Uint8Array(4));
};

Object.assign(window, { bench: { page: pictureTime, bare: bareTime } });
