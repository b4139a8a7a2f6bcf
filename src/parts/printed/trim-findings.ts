// What a trim has to say where its lip is too wide or too narrow, its wall too thin, or where it has nothing to stand in.

import { spanOf } from "../../design/written.ts";
import { type Finding, finding } from "../../diagnostics/finding.ts";
import { type Extent, extent } from "../../geometry/extent.ts";
import { decimal } from "../../geometry/number.ts";
import { arithmeticNoise } from "../../geometry/tolerance.ts";
import type { PlacedComponent } from "../../layout/panel-layout.ts";
import { TRIM_WALL_ROOM } from "../../layout/trim-plan.ts";
import { NO_OPAQUE_WALL } from "./codes.ts";
import { TRIM_HIDES, TRIM_LEAKS, TRIM_LOOSE } from "./trim-codes.ts";
import type { TrimScene, TrimSizes } from "./trim-sizes.ts";

/** A trim that can't be held has no other trouble worth telling. */
export const trimFindings = (scene: TrimScene, sizes: TrimSizes): readonly Finding[] => {
  const notHeld = loose(scene, sizes);
  return notHeld.length > 0
    ? notHeld
    : [...thinWall(scene, sizes), ...hides(scene, sizes), ...leaks(scene, sizes)];
};

/** The least distance inward from one box to another; negative where the inner one reaches out. */
export const leastInset = (outer: Extent, inner: Extent): number =>
  Math.min(
    inner.minX - outer.minX,
    inner.minY - outer.minY,
    outer.maxX - inner.maxX,
    outer.maxY - inner.maxY,
  );

const loose = ({ component, design }: TrimScene, { heights }: TrimSizes): readonly Finding[] =>
  heights.hasBody || design.fixing === "glue"
    ? []
    : [
        finding(TRIM_LOOSE, {
          message: `${component.id} is clamped to the front sheet, and its trim can't be held by a ${design.fixing}: no sheet lies in front of it. Write fixing: glue, or clamp the display to a sheet behind the face.`,
          span: spanOf(design.written, "fixing"),
          subjects: [component.id],
        }),
      ];

const thinWall = (
  { component, design, stock }: TrimScene,
  { wall, wallLines }: TrimSizes,
): readonly Finding[] => {
  if (wallLines >= wall.lines) return [];
  const thickness = wallLines * wall.line;
  return [
    finding(NO_OPAQUE_WALL, {
      message: `The trim of ${component.id} has ${decimal(TRIM_WALL_ROOM, 2)} mm between its display and the fascia: room for ${decimal(thickness, 2)} mm (${wallLines} lines of ${decimal(wall.line, 2)} mm). A wall of ${stock.id} keeps light in from ${decimal(wall.thickness, 2)} mm. Print it from a blacker stock.`,
      span: design.written.span,
      subjects: [component.id],
      measured: { value: thickness, unit: "mm" },
      limit: { value: wall.thickness, unit: "mm" },
      source: { kind: "workshop", name: `${stock.id}: opaque-from` },
    }),
  ];
};

const hides = ({ component, design }: TrimScene, sizes: TrimSizes): readonly Finding[] => {
  const active = activeBox(component);
  if (active === null || design.lip === null) return [];
  if (leastInset(sizes.inner, active) >= -arithmeticNoise) return [];
  const most = Math.max(0, leastInset(sizes.plan.display, active));
  return [
    finding(TRIM_HIDES, {
      message: `The lip of ${component.id}'s trim reaches ${decimal(design.lip, 2)} mm in over the display, and what is read begins ${decimal(most, 2)} mm from its edge. Write lip: ${decimal(most, 2)} mm or less, or leave it out: then it reaches to the window.`,
      span: spanOf(design.written, "lip"),
      subjects: [component.id],
      measured: { value: design.lip, unit: "mm" },
      limit: { value: most, unit: "mm" },
      source: { kind: "datasheet", name: component.part.figures.source },
    }),
  ];
};

const leaks = ({ component, design }: TrimScene, sizes: TrimSizes): readonly Finding[] => {
  const overlap = leastInset(sizes.plan.display, sizes.inner);
  if (sizes.isGlassBehind || overlap > sizes.play) return [];
  const wanted = sizes.play + LEAST_COVER;
  const active = activeBox(component);
  const most = active === null ? wanted : leastInset(sizes.plan.display, active);
  const remedy =
    most < wanted - arithmeticNoise
      ? `What is read begins ${decimal(Math.max(0, most), 2)} mm from the edge, so that no lip covers it: shim the display in its hole.`
      : `Write lip: ${decimal(wanted, 2)} mm or more, or shim the display in its hole.`;
  return [
    finding(TRIM_LEAKS, {
      message: `The lip of ${component.id}'s trim covers ${decimal(overlap, 2)} mm of the display's edge, and the display can lie ${decimal(sizes.play, 2)} mm aside in its hole: light leaks there. ${remedy}`,
      span: spanOf(design.written, "lip"),
      subjects: [component.id],
      measured: { value: overlap, unit: "mm" },
      limit: { value: sizes.play, unit: "mm" },
      source: { kind: "datasheet", name: component.part.figures.source },
    }),
  ];
};

/** A printed edge strays by this: a tenth or two (common practice). */
const LEAST_COVER = 0.2;

/** What is read of a display. */
const activeBox = ({ part }: PlacedComponent): Extent | null => {
  if (part.display === null) return null;
  const { width, height, at } = part.display.active;
  return extent(at.x - width / 2, at.y - height / 2, at.x + width / 2, at.y + height / 2);
};
