// The picture of a console: a scene that is drawn when something in it has changed and never else. Takes a scene, a look
// and a goal of the camera; tells what lies under a pointer. Imperative: the page beside it holds the state.

import {
  AmbientLight,
  Color,
  DirectionalLight,
  PerspectiveCamera,
  Raycaster,
  Scene,
  Vector2,
  Vector3,
  WebGLRenderer,
} from "three";
import { unitVector, type Vector, vector } from "../../src/geometry/space/vector.ts";
import {
  betweenGoals,
  type CameraGoal,
  cameraPlace,
  fittingDistance,
  isLeap,
  type Opening,
} from "./camera-goal.ts";
import type { ConsoleScene, SceneBody, SceneGroup } from "./console-messages.ts";
import { type Gathered, gatheredBays, NONE_GATHERED } from "./console-names.ts";
import { FIRST_LOOK, type Look } from "./look.ts";
import { NO_WAYS } from "./name-spots.ts";
import { pictureCaps } from "./picture-caps.ts";
import { followLook, releaseGroup, type ShownGroup, shownGroup } from "./picture-groups.ts";
import { type DrawnNames, labelsOf, NO_NAMES, showLabels } from "./picture-labels.ts";
import { pictureMarks } from "./picture-marks.ts";
import { pictureSurroundings } from "./picture-surroundings.ts";
import type { Ray } from "./space-point.ts";
import { toneMaterials } from "./tone-materials.ts";

/** In pixels from the upper left of the picture. */
export interface ScreenPoint {
  readonly x: number;
  readonly y: number;
}

export interface Picked {
  readonly group: string;
  readonly body: SceneBody;
  readonly at: Vector;
  /** The lines of the body, in the console: two points each. */
  readonly lines: readonly number[];
}

export interface PictureOptions {
  readonly canvas: HTMLCanvasElement;
  readonly labels: HTMLElement;
  /** Without smoothed edges and at one pixel a pixel, for drawing by software. */
  readonly plain: boolean;
  /** Whether whoever looks asks for stillness: names then go at once where they belong. */
  readonly isStill: () => boolean;
}

const OPENING = 38;
const GROUND = { day: "#f4f1ea", night: "#1b1d1f" } as const;
/** A motion of the camera, ms. */
const MOTION = 320;

/** Holds what the screen's own processor holds for it, until it is disposed of. */
export class ConsolePicture {
  readonly #canvas: HTMLCanvasElement;
  readonly #labels: HTMLElement;
  readonly #plain: boolean;
  readonly #isStill: () => boolean;
  readonly #renderer: WebGLRenderer;
  readonly #scene = new Scene();
  readonly #camera = new PerspectiveCamera(OPENING, 1, 5, 40_000);
  readonly #lamp = new DirectionalLight("#ffffff", 1.9);
  readonly #caster = new Raycaster();
  readonly #materials = toneMaterials();
  readonly #marks = pictureMarks();
  readonly #caps = pictureCaps(this.#materials);
  readonly #surroundings = pictureSurroundings();
  readonly #groups = new Map<string, ShownGroup>();
  #shown: ConsoleScene | null = null;
  #look: Look = FIRST_LOOK;
  #goal: CameraGoal = { target: vector(0, 0, 700), distance: 2500, side: 60, rise: 35 };
  #motion: { readonly from: CameraGoal; readonly to: CameraGoal; readonly start: number } | null =
    null;
  /** In pixels of the page. Asked of the canvas between two labels it would have the page laid out for each. */
  #size = { width: 1, height: 1 };
  /** As they were last drawn, and when; their ways are forgotten when what is seen is another thing. */
  #names: DrawnNames = NO_NAMES;
  #gathered: Gathered = NONE_GATHERED;
  #namedAt = 0;
  /** Whether the scene is to be drawn in the next frame; else the names alone are. */
  #isChanged = false;
  #frames = 0;
  #waiting = 0;

  constructor({ canvas, labels, plain, isStill }: PictureOptions) {
    this.#canvas = canvas;
    this.#labels = labels;
    this.#plain = plain;
    this.#isStill = isStill;
    this.#renderer = new WebGLRenderer({
      canvas,
      antialias: !plain,
      powerPreference: "low-power",
    });
    this.#renderer.localClippingEnabled = true;
    this.#camera.up.set(0, 0, 1);
    this.#scene.add(new AmbientLight("#ffffff", 1.5), this.#lamp, this.#lamp.target);
    this.#scene.add(this.#surroundings.holder);
  }

  show(next: ConsoleScene): void {
    this.#shown = next;
    this.#forgetWays();
    this.#caps.clear();
    const keys = new Set(next.groups.map(({ key }) => key));
    for (const key of [...this.#groups.keys()]) if (!keys.has(key)) this.#remove(key);
    for (const group of next.groups) this.#take(group);
    this.#surroundings.show(next);
    this.#follow();
  }

  look(next: Look): void {
    this.#look = next;
    this.#follow();
  }

  /** Where it is, or where it is moving to. */
  goal(): CameraGoal {
    return this.#motion?.to ?? this.#goal;
  }

  /** At once, or in a motion of a third of a second. */
  goTo(to: CameraGoal, moves = false): void {
    this.#motion = moves ? { from: this.#goal, to, start: performance.now() } : null;
    if (!moves) {
      if (isLeap(this.#goal, to)) this.#forgetWays();
      this.#goal = to;
    }
    this.#ask();
  }

  pick(at: ScreenPoint): Picked | null {
    this.#cast(at);
    return picked(this.#caster, this.#groups, this.#look);
  }

  ray(at: ScreenPoint): Ray {
    this.#cast(at);
    const { origin, direction } = this.#caster.ray;
    return {
      from: vector(origin.x, origin.y, origin.z),
      way: unitVector(vector(direction.x, direction.y, direction.z)),
    };
  }

  /** How many millimetres a pixel is at a point. */
  pixelAt({ x, y, z }: Vector): number {
    const away = this.#camera.position.distanceTo(new Vector3(x, y, z));
    return (2 * away * Math.tan((OPENING * Math.PI) / 360)) / this.#canvas.clientHeight;
  }

  /** From how far a ball of this radius is seen whole. */
  distanceFor(radius: number): number {
    return fittingDistance(radius, Math.min(OPENING, OPENING * this.#camera.aspect));
  }

  opening(): Opening {
    const across = Math.atan(Math.tan((OPENING * Math.PI) / 360) * this.#camera.aspect);
    return { across: (across * 360) / Math.PI, upright: OPENING };
  }

  resize(): void {
    const { clientWidth, clientHeight } = this.#canvas;
    if (clientWidth === 0 || clientHeight === 0) return;
    this.#renderer.setPixelRatio(this.#plain ? 1 : Math.min(2, devicePixelRatio));
    this.#renderer.setSize(clientWidth, clientHeight, false);
    this.#camera.aspect = clientWidth / clientHeight;
    this.#size = { width: clientWidth, height: clientHeight };
    this.#forgetWays();
    this.#ask();
  }

  dispose(): void {
    cancelAnimationFrame(this.#waiting);
    for (const group of this.#groups.values()) releaseGroup(group);
    this.#marks.dispose();
    this.#caps.clear();
    this.#surroundings.dispose();
    this.#materials.dispose();
    this.#renderer.dispose();
  }

  #take(group: SceneGroup): void {
    const before = this.#groups.get(group.key);
    if (group.lots === null && before !== undefined) {
      this.#groups.set(group.key, { ...before, frame: group.frame });
      return;
    }
    this.#remove(group.key);
    const made = shownGroup(group, this.#materials);
    this.#groups.set(group.key, made);
    this.#scene.add(made.holder);
  }

  #remove(key: string): void {
    const group = this.#groups.get(key);
    if (group === undefined) return;
    group.holder.removeFromParent();
    releaseGroup(group);
    this.#groups.delete(key);
  }

  #follow(): void {
    const look = this.#look;
    this.#scene.background = new Color(look.dark ? GROUND.night : GROUND.day);
    this.#materials.setDark(look.dark);
    this.#surroundings.follow(look);
    for (const group of this.#groups.values()) {
      const panel = this.#shown?.panels.find(({ name }) => name === group.key) ?? null;
      followLook(group, { look, panel, materials: this.#materials });
    }
    this.#caps.show(this.#groups.values(), look);
    this.#marks.show(this.#groups, look);
    this.#ask();
  }

  #ask(): void {
    this.#isChanged = true;
    this.#await();
  }

  #await(): void {
    if (this.#waiting === 0)
      this.#waiting = requestAnimationFrame((now) => {
        this.#waiting = 0;
        this.#isChanged ||= this.#motion !== null;
        this.#step(now);
        if (this.#isChanged) this.#draw();
        this.#name(now);
      });
  }

  #step(now: number): void {
    const motion = this.#motion;
    if (motion === null) return;
    const share = Math.min(1, Math.max(0, (now - motion.start) / MOTION));
    this.#goal = betweenGoals(motion.from, motion.to, share * share * (3 - 2 * share));
    if (share < 1) {
      this.#await();
      return;
    }
    this.#motion = null;
    this.#forgetWays();
  }

  #draw(): void {
    this.#isChanged = false;
    this.#aim();
    this.#renderer.render(this.#scene, this.#camera);
    this.#frames += 1;
    const { target, distance, side, rise } = this.#goal;
    this.#canvas.dataset["frames"] = `${this.#frames}`;
    this.#canvas.dataset["view"] = [target.x, target.y, target.z, distance, side, rise]
      .map((value) => value.toFixed(1))
      .join(" ");
  }

  /** Over the scene as it was last drawn; again and without it until the last name has come to rest. */
  #name(now: number): void {
    if (this.#shown === null) return;
    const place = (at: Vector, beyond = false): ScreenPoint | null => this.#onScreen(at, beyond);
    const view = { eye: cameraPlace(this.#goal), place };
    this.#gathered = gatheredBays(this.#shown, this.#look, { ...view, before: this.#gathered });
    this.#names = showLabels(
      this.#labels,
      {
        labels: labelsOf(this.#shown, this.#look, { ...view, gathered: this.#gathered }),
        stretch: this.#look.stretch,
      },
      {
        place,
        ...this.#size,
        before: this.#names,
        elapsed: this.#isStill() ? null : now - this.#namedAt,
      },
    );
    this.#namedAt = now;
    if (this.#names.isGliding) this.#await();
  }

  #forgetWays(): void {
    this.#names = { ...this.#names, ways: NO_WAYS };
    this.#gathered = NONE_GATHERED;
  }

  #aim(): void {
    const { target, distance } = this.#goal;
    const place = cameraPlace(this.#goal);
    this.#camera.position.set(place.x, place.y, place.z);
    this.#camera.lookAt(target.x, target.y, target.z);
    this.#camera.near = Math.max(2, distance / 100);
    this.#camera.updateProjectionMatrix();
    this.#camera.updateMatrixWorld();
    // A lamp over the left shoulder of whoever looks.
    const shoulder = new Vector3(-0.5, 0.7, 0.3).applyQuaternion(this.#camera.quaternion);
    this.#lamp.position.copy(this.#camera.position).addScaledVector(shoulder, distance);
    this.#lamp.target.position.set(target.x, target.y, target.z);
    this.#lamp.target.updateMatrixWorld();
  }

  #onScreen({ x, y, z }: Vector, beyond: boolean): ScreenPoint | null {
    const seen = new Vector3(x, y, z).project(this.#camera);
    const isOut = Math.abs(seen.x) > 1.05 || Math.abs(seen.y) > 1.05;
    if (seen.z > 1 || (isOut && !beyond)) return null;
    const { width, height } = this.#size;
    return { x: ((seen.x + 1) / 2) * width, y: ((1 - seen.y) / 2) * height };
  }

  #cast({ x, y }: ScreenPoint): void {
    const { clientWidth, clientHeight } = this.#canvas;
    const at = new Vector2((x / clientWidth) * 2 - 1, 1 - (y / clientHeight) * 2);
    this.#caster.setFromCamera(at, this.#camera);
  }
}

const picked = (
  caster: Raycaster,
  groups: ReadonlyMap<string, ShownGroup>,
  { cut, fadeFrame }: Look,
): Picked | null => {
  const lots = [...groups.values()].flatMap((group) =>
    group.key === "" && fadeFrame ? [] : group.lots.map((lot) => ({ group, lot })),
  );
  const meshes = lots.filter(({ lot }) => lot.holder.visible).map(({ lot }) => lot.mesh);
  const hit = caster
    .intersectObjects(meshes, false)
    .find(
      ({ point }) =>
        cut === null ||
        point.x * cut.normal.x + point.y * cut.normal.y + point.z * cut.normal.z >= cut.offset,
    );
  const owner = lots.find(({ lot }) => lot.mesh === hit?.object);
  const at = hit?.faceIndex;
  if (hit === undefined || owner === undefined || at == null) return null;
  const { group, lot } = owner;
  const range = lot.lot.ranges.find(
    ({ triangles }) => at >= triangles.from && at < triangles.from + triangles.count,
  );
  const body = range === undefined ? undefined : group.bodies[range.body];
  if (range === undefined || body === undefined) return null;
  const lines: number[] = [];
  const { from, count } = range.edges;
  const point = new Vector3();
  for (let end = 2 * from; end < 2 * (from + count); end += 1) {
    point.fromArray(lot.lot.edges, 3 * end).applyMatrix4(lot.holder.matrixWorld);
    lines.push(point.x, point.y, point.z);
  }
  return { group: group.key, body, at: vector(hit.point.x, hit.point.y, hit.point.z), lines };
};
