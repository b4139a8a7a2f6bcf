// What stands round the console and is no body of it: floor, modules along the rails, envelope, operator, reach, sight.

import {
  BufferAttribute,
  BufferGeometry,
  Color,
  Group,
  LineBasicMaterial,
  LineSegments,
} from "three";
import type { ConsoleScene } from "./console-messages.ts";
import { cutPlanes } from "./cut-planes.ts";
import { floorGrid, railTicks } from "./floor-grid.ts";
import type { Look } from "./look.ts";
import { operatorLines } from "./operator-figure.ts";

export interface Surroundings {
  readonly holder: Group;
  readonly show: (scene: ConsoleScene) => void;
  readonly follow: (look: Look) => void;
  readonly dispose: () => void;
}

type Part =
  | "fine"
  | "coarse"
  | "ticks"
  | "envelope"
  | "figure"
  | "functional"
  | "extended"
  | "sight";

export const INKS: Readonly<
  Record<Part, { readonly day: string; readonly night: string; readonly strength: number }>
> = {
  fine: { day: "#cfc8ba", night: "#42474c", strength: 0.5 },
  coarse: { day: "#a9a294", night: "#5b6168", strength: 0.9 },
  ticks: { day: "#22262a", night: "#e8e6e0", strength: 0.9 },
  envelope: { day: "#7a4b1f", night: "#e0b07a", strength: 0.7 },
  figure: { day: "#1f5a7a", night: "#7fc4e6", strength: 1 },
  functional: { day: "#4d6b2f", night: "#a9cf83", strength: 0.65 },
  extended: { day: "#7a4b1f", night: "#e0b07a", strength: 0.45 },
  sight: { day: "#6a3d72", night: "#cf9fd8", strength: 0.9 },
};

export const pictureSurroundings = (): Surroundings => {
  const holder = new Group();
  const parts = new Map<Part, LineSegments<BufferGeometry, LineBasicMaterial>>();
  for (const [part, { strength }] of Object.entries(INKS)) {
    const material = new LineBasicMaterial({ transparent: true, opacity: strength });
    const lines = new LineSegments(new BufferGeometry(), material);
    if (isPart(part)) parts.set(part, lines);
    holder.add(lines);
  }
  const draw = (part: Part, lines: ArrayLike<number>): void => {
    const shown = parts.get(part);
    if (shown === undefined) return;
    shown.geometry.dispose();
    shown.geometry = new BufferGeometry();
    shown.geometry.setAttribute("position", new BufferAttribute(Float32Array.from(lines), 3));
  };
  return {
    holder,
    show: (scene) => {
      const grid = floorGrid(scene);
      draw("fine", grid.fine);
      draw("coarse", grid.coarse);
      draw("ticks", scene.bays.flatMap(railTicks));
      draw("envelope", scene.envelope ?? []);
      const operator = scene.operator === null ? null : operatorLines(scene.operator, scene.bays);
      draw("figure", operator?.figure ?? []);
      draw("functional", operator?.functional ?? []);
      draw("extended", operator?.extended ?? []);
      draw("sight", operator?.sight ?? []);
    },
    follow: (look) => {
      for (const [part, { material }] of parts)
        material.color = new Color(look.dark ? INKS[part].night : INKS[part].day);
      // The floor and the operator stay: they are no part of what is cut.
      const planes = cutPlanes(look.cut);
      for (const part of ["ticks", "envelope"] as const)
        parts.get(part)!.material.clippingPlanes = planes;
      for (const part of ["functional", "extended"] as const)
        parts.get(part)!.visible = look.showReach;
      parts.get("sight")!.visible = look.showSight;
    },
    dispose: () => {
      for (const { geometry, material } of parts.values()) {
        geometry.dispose();
        material.dispose();
      }
    },
  };
};

const isPart = (name: string): name is Part => name in INKS;
