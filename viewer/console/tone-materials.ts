// What the tones look like: a wash of colour under ink lines on paper, by day and by night. One material a tone and fade,
// shared by everything that wears it.

import {
  Color,
  DoubleSide,
  LineBasicMaterial,
  type Material,
  MeshBasicMaterial,
  MeshLambertMaterial,
  type Plane,
} from "three";
import type { Tone } from "./console-messages.ts";

interface Wash {
  readonly day: string;
  readonly night: string;
  /** 1: nothing shines through. */
  readonly body: number;
}

const WASHES: Readonly<Record<Tone, Wash>> = {
  clear: { day: "#cfe0e4", night: "#5c7d86", body: 0.35 },
  opal: { day: "#fbfaf4", night: "#cfcdc4", body: 0.85 },
  opaque: { day: "#c9c4b8", night: "#8b877d", body: 1 },
  painted: { day: "#3d4145", night: "#4a4f54", body: 1 },
  pale: { day: "#efede6", night: "#c9c6bc", body: 1 },
  print: { day: "#7d8a86", night: "#5d6b67", body: 1 },
  metal: { day: "#b4b9bd", night: "#9ba2a8", body: 1 },
  case: { day: "#5a5148", night: "#6b6055", body: 1 },
  board: { day: "#56744f", night: "#5f8357", body: 1 },
  wire: { day: "#b3774a", night: "#b98357", body: 1 },
  knob: { day: "#22262a", night: "#15181a", body: 1 },
  cap: { day: "#a8552f", night: "#b9643b", body: 1 },
  guard: { day: "#b23b2e", night: "#c1503f", body: 1 },
  button: { day: "#dcd6c6", night: "#c3bdae", body: 1 },
  lamp: { day: "#e0a93c", night: "#eebb55", body: 1 },
  display: { day: "#1d3f46", night: "#123138", body: 1 },
  marking: { day: "#f3ead2", night: "#f3ead2", body: 1 },
  "dark-marking": { day: "#111111", night: "#111111", body: 1 },
  sweep: { day: "#1f5a7a", night: "#7fc4e6", body: 0.16 },
  rail: { day: "#9aa0a5", night: "#868d93", body: 1 },
  timber: { day: "#d9bf93", night: "#97805a", body: 1 },
  wall: { day: "#c7c2b6", night: "#6a675f", body: 0.5 },
  obstacle: { day: "#8e8a80", night: "#77736a", body: 1 },
};

/** What a faded thing keeps of its body, and of its lines. */
const FADED = { body: 0.1, line: 0.3 } as const;

export interface Materials {
  readonly face: (tone: Tone, isFaded: boolean) => Material;
  readonly line: (isFaded: boolean) => Material;
  readonly cap: (tone: Tone) => Material;
  readonly capLine: Material;
  readonly setDark: (isDark: boolean) => void;
  /** Empty: nothing is cut off. */
  readonly setCut: (planes: readonly Plane[]) => void;
  readonly dispose: () => void;
}

const INK = { day: "#22262a", night: "#0c0e10" } as const;

export const toneMaterials = (): Materials => {
  const made = new Map<
    string,
    { readonly material: Inked; readonly wash: Pick<Wash, "day" | "night"> }
  >();
  let isDark = false;
  let planes: readonly Plane[] = [];
  const kept = <Made extends Inked>(
    key: string,
    wash: Pick<Wash, "day" | "night">,
    make: () => Made,
  ): Material => {
    const known = made.get(key);
    if (known !== undefined) return known.material;
    const material = make();
    material.color = new Color(isDark ? wash.night : wash.day);
    if (!key.startsWith("cap")) material.clippingPlanes = [...planes];
    made.set(key, { material, wash });
    return material;
  };
  return {
    face: (tone, isFaded) =>
      kept(`face ${tone} ${isFaded}`, WASHES[tone], () => faceMaterial(tone, isFaded)),
    line: (isFaded) => kept(`line ${isFaded}`, INK, () => lineMaterial(isFaded)),
    cap: (tone) => kept(`cap ${tone}`, WASHES[tone], capMaterial),
    capLine: kept("cap-line", INK, () => new LineBasicMaterial()),
    setDark: (dark) => {
      isDark = dark;
      for (const { material, wash } of made.values())
        material.color.set(isDark ? wash.night : wash.day);
    },
    setCut: (cut) => {
      planes = cut;
      for (const [key, { material }] of made)
        if (!key.startsWith("cap")) material.clippingPlanes = [...planes];
    },
    dispose: () => {
      for (const { material } of made.values()) material.dispose();
    },
  };
};

type Inked = MeshLambertMaterial | MeshBasicMaterial | LineBasicMaterial;

/** Flat on its face, and read whatever the light. */
export const isMarking = (tone: Tone): boolean => tone === "marking" || tone === "dark-marking";

const faceMaterial = (tone: Tone, isFaded: boolean): Inked => {
  const body = WASHES[tone].body * (isFaded ? FADED.body : 1);
  const shared = {
    transparent: body < 1,
    opacity: body,
    depthWrite: body === 1,
    side: DoubleSide,
    // Faces stand back a little, so that the ink on their edges is not lost in them.
    polygonOffset: true,
    polygonOffsetFactor: 1,
    polygonOffsetUnits: 1,
  };
  return isMarking(tone)
    ? new MeshBasicMaterial(shared)
    : new MeshLambertMaterial({ ...shared, flatShading: true });
};

/** Hatched, as a drawing office hatches what is cut. */
const capMaterial = (): MeshBasicMaterial => {
  const material = new MeshBasicMaterial({ side: DoubleSide });
  material.onBeforeCompile = (shader) => {
    shader.fragmentShader = shader.fragmentShader.replace(
      "#include <color_fragment>",
      `#include <color_fragment>
      if (mod(gl_FragCoord.x + gl_FragCoord.y, 7.0) < 1.5) diffuseColor.rgb *= 0.35;`,
    );
  };
  return material;
};

const lineMaterial = (isFaded: boolean): Inked =>
  new LineBasicMaterial({ transparent: true, opacity: isFaded ? FADED.line : 0.75 });
