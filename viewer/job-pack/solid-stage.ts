// A print file's bodies in space: turned by hand or by keys, drawn when something has changed and never else. Holds what the
// screen's processor holds for it, until it is disposed of.

import {
  AmbientLight,
  Box3,
  BufferAttribute,
  BufferGeometry,
  Color,
  DirectionalLight,
  Group,
  LineBasicMaterial,
  LineSegments,
  Mesh,
  MeshLambertMaterial,
  PerspectiveCamera,
  Scene,
  Sphere,
  Vector3,
  WebGLRenderer,
} from "three";
import type { StageBodies } from "./stage-bodies.ts";

/** Degrees that the camera sees from edge to edge. */
const OPENING = 35;
/** A step of a key, in degrees. */
const STEP = 10;
const GROUND = { day: "#f4f1ea", night: "#1b1d1f" } as const;

export interface SolidStage {
  readonly turn: (across: number, up: number) => void;
  readonly nearer: (times: number) => void;
  /** As large as it can be seen whole, from where it is looked at. */
  readonly whole: () => void;
  readonly resize: () => void;
  readonly dispose: () => void;
}

export const solidStage = (
  canvas: HTMLCanvasElement,
  bodies: StageBodies,
  options: { readonly isDark: boolean; readonly isPlain: boolean },
): SolidStage => {
  const { isDark, isPlain } = options;
  const renderer = new WebGLRenderer({ canvas, antialias: !isPlain, powerPreference: "low-power" });
  const camera = new PerspectiveCamera(OPENING, 1, 0.1, 100_000);
  camera.up.set(0, 0, 1);
  const { scene, lamp } = litScene(isDark);
  const { face, line } = materials(isDark);
  const ball = ballRound(bodies);
  const { holder, release } = bodyObjects(bodies, { face, line }, ball);
  scene.add(holder);
  const look = { side: -55, rise: 35, distance: 0 };
  let waiting = 0;
  const draw = (): void => {
    waiting = 0;
    camera.position.copy(ball.center).addScaledVector(wayOf(look), look.distance);
    camera.lookAt(ball.center);
    lamp.position.copy(camera.position).add(new Vector3(0, 0, ball.radius));
    lamp.target.position.copy(ball.center);
    renderer.render(scene, camera);
    canvas.dataset["drawn"] = `${Number(canvas.dataset["drawn"] ?? 0) + 1}`;
  };
  const ask = (): void => {
    if (waiting === 0) waiting = requestAnimationFrame(draw);
  };
  const whole = (): void => {
    look.distance = wholeFrom(bodies, ball.center, { way: wayOf(look), camera });
    ask();
  };
  return {
    whole,
    turn: (across, up) => {
      look.side += across * STEP;
      look.rise = Math.max(-89, Math.min(89, look.rise + up * STEP));
      ask();
    },
    nearer: (times) => {
      look.distance = Math.max(ball.radius / 4, Math.min(ball.radius * 40, look.distance / times));
      ask();
    },
    resize: () => {
      const { clientWidth, clientHeight } = canvas;
      if (clientWidth === 0 || clientHeight === 0) return;
      renderer.setPixelRatio(isPlain ? 1 : Math.min(2, devicePixelRatio));
      renderer.setSize(clientWidth, clientHeight, false);
      camera.aspect = clientWidth / clientHeight;
      camera.updateProjectionMatrix();
      // As large as it can be at first; later a frame of another size leaves it as it is looked at.
      if (look.distance === 0) whole();
      ask();
    },
    dispose: () => {
      cancelAnimationFrame(waiting);
      release();
      face.dispose();
      line.dispose();
      renderer.dispose();
    },
  };
};

const litScene = (isDark: boolean): { readonly scene: Scene; readonly lamp: DirectionalLight } => {
  const scene = new Scene();
  scene.background = new Color(isDark ? GROUND.night : GROUND.day);
  const lamp = new DirectionalLight("#ffffff", 1.8);
  scene.add(new AmbientLight("#ffffff", 1.1), lamp, lamp.target);
  return { scene, lamp };
};

interface Materials {
  readonly face: MeshLambertMaterial;
  readonly line: LineBasicMaterial;
}

const materials = (isDark: boolean): Materials => ({
  face: new MeshLambertMaterial({
    color: isDark ? "#7c8fa0" : "#b9c4cd",
    polygonOffset: true,
    polygonOffsetFactor: 1,
    polygonOffsetUnits: 1,
  }),
  line: new LineBasicMaterial({ color: isDark ? "#e8e6e0" : "#22262a" }),
});

/** From the bodies to the eye; degrees. */
const wayOf = (look: { readonly side: number; readonly rise: number }): Vector3 => {
  const [side, rise] = [(look.side * Math.PI) / 180, (look.rise * Math.PI) / 180];
  return new Vector3(
    Math.cos(rise) * Math.cos(side),
    Math.cos(rise) * Math.sin(side),
    Math.sin(rise),
  );
};

/** A little air round it. */
const AIR = 1.06;

/** How far away the eye must be for every corner to be seen. */
const wholeFrom = (
  { corners, lines }: StageBodies,
  middle: Vector3,
  { way, camera }: { readonly way: Vector3; readonly camera: PerspectiveCamera },
): number => {
  const right = new Vector3().crossVectors(camera.up, way).normalize();
  const up = new Vector3().crossVectors(way, right);
  const high = Math.tan((OPENING * Math.PI) / 360);
  const wide = high * camera.aspect;
  const place = new Vector3();
  let distance = 0;
  for (const numbers of [corners, lines])
    for (let at = 0; at + 2 < numbers.length; at += 3) {
      place.set(numbers[at] ?? 0, numbers[at + 1] ?? 0, numbers[at + 2] ?? 0).sub(middle);
      const aside = Math.max(Math.abs(place.dot(right)) / wide, Math.abs(place.dot(up)) / high);
      distance = Math.max(distance, place.dot(way) + aside * AIR);
    }
  return distance;
};

const bodyObjects = (
  { corners, normals, lines }: StageBodies,
  { face, line }: Materials,
  ball: Sphere,
): { readonly holder: Group; readonly release: () => void } => {
  const faces = new BufferGeometry();
  faces.setAttribute("position", new BufferAttribute(corners, 3));
  faces.setAttribute("normal", new BufferAttribute(normals, 3));
  const edges = new BufferGeometry();
  edges.setAttribute("position", new BufferAttribute(lines, 3));
  // Known, and else worked out for each of them before the first picture.
  faces.boundingSphere = ball;
  edges.boundingSphere = ball;
  const holder = new Group();
  holder.add(new Mesh(faces, face), new LineSegments(edges, line));
  return {
    holder,
    release: () => {
      faces.dispose();
      edges.dispose();
    },
  };
};

/** Round the box of all places. */
const ballRound = ({ corners, lines }: StageBodies): Sphere => {
  const box = new Box3();
  const place = new Vector3();
  for (const numbers of [corners, lines])
    for (let at = 0; at + 2 < numbers.length; at += 3)
      box.expandByPoint(place.set(numbers[at] ?? 0, numbers[at + 1] ?? 0, numbers[at + 2] ?? 0));
  return box.isEmpty() ? new Sphere(new Vector3(), 1) : box.getBoundingSphere(new Sphere());
};
