// What a spacer's plan has to say where the panel leaves it no room.

import type { LightingDesign } from "../../design/panel-design.ts";
import type { StockDesign } from "../../design/workshop-design.ts";
import { spanOf } from "../../design/written.ts";
import { type Finding, finding } from "../../diagnostics/finding.ts";
import { nearestNames } from "../../diagnostics/nearest.ts";
import type { Contour } from "../../geometry/contour.ts";
import { decimal } from "../../geometry/number.ts";
import type { LayerLayout, PanelLayout } from "../../layout/panel-layout.ts";
import {
  NO_OPAQUE_WALL,
  NO_SPACER_ROOM,
  NO_SPLIT,
  SPACER_TOO_SHALLOW,
  UNKNOWN_STRIP,
} from "./codes.ts";
import type { OpaqueWall } from "./opaque-wall.ts";
import { edgeRoom } from "./pocket-edge.ts";
import type { Pocket } from "./pockets.ts";
import type { PrintedContext } from "./printed-context.ts";

/** Where a hole comes too near to the outline for a wall that keeps light in. */
export const thinWalls = (scene: {
  readonly layout: PanelLayout;
  readonly layer: LayerLayout;
  readonly stock: StockDesign;
  readonly outline: Contour;
  readonly pockets: readonly Pocket[];
  readonly wall: OpaqueWall;
}): readonly Finding[] =>
  scene.pockets.flatMap((pocket) => {
    const room = edgeRoom(pocket, scene.outline);
    const { thickness, lines, line } = scene.wall;
    if (room >= thickness) return [];
    const component = scene.layout.components.find(({ id }) => id === pocket.owner);
    return [
      finding(NO_OPAQUE_WALL, {
        message: `${pocket.owner} ${room < 0 ? "breaks out of" : "leaves"} ${room < 0 ? `${scene.layer.id} by ${decimal(-room, 2)} mm` : `${decimal(room, 2)} mm of ${scene.layer.id} beside its pocket`}, and light gets out: a wall of ${scene.stock.id} needs ${decimal(thickness, 2)} mm (${lines} lines of ${decimal(line, 2)} mm). It is ${decimal(thickness - room, 2)} mm too near to the edge.`,
        span: component?.placeSpan ?? scene.layer.design.written.span,
        subjects: [pocket.owner],
        measured: { value: room, unit: "mm" },
        limit: { value: thickness, unit: "mm" },
        source: { kind: "workshop", name: `${scene.stock.id}: opaque-from` },
      }),
    ];
  });

export const noRoom = (layer: LayerLayout, layout: PanelLayout): Finding =>
  finding(NO_SPACER_ROOM, {
    message: `Nothing is left for ${layer.id} between the rails and fasteners of ${layout.mount.id}.`,
    span: layer.design.written.span,
    subjects: [layer.id],
  });

export const unknownStrip = (lighting: LightingDesign, { catalogue }: PrintedContext): Finding => {
  const names = [...catalogue.strips.keys(), ...catalogue.ledBoards.keys()];
  const nearest = nearestNames(lighting.strip, names, 3);
  const hint = nearest.length === 0 ? "" : ` Nearest: ${nearest.join(", ")}.`;
  return finding(UNKNOWN_STRIP, {
    message: `There is no strip called "${lighting.strip}".${hint}`,
    span: spanOf(lighting.written, "strip"),
  });
};

export const tooShallow = (layer: LayerLayout, least: number): Finding => {
  const depth = layer.front - layer.rear;
  return finding(SPACER_TOO_SHALLOW, {
    message: `${layer.id} is ${decimal(depth, 2)} mm deep; its floor, its channels and the seat of its foam leave no room for light below ${decimal(least, 2)} mm. Write depth: ${decimal(Math.ceil(least), 0)} mm or more.`,
    span: spanOf(layer.design.written, "depth"),
    subjects: [layer.id],
    measured: { value: depth, unit: "mm" },
    limit: { value: least, unit: "mm" },
    source: { kind: "geometry", name: "floor, channel and seat" },
  });
};

export const noSplit = (layer: LayerLayout, why: string): Finding =>
  finding(NO_SPLIT, {
    message: `${layer.id} is larger than the printer's bed and can't be split: ${why}.`,
    span: layer.design.written.span,
    subjects: [layer.id],
  });
