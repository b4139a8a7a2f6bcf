// Panels for the tests of drawings: design texts laid out with the built-in library.

import { readDesign } from "../../src/design/read-design.ts";
import type { Drawing, DrawingItem } from "../../src/drawings/drawing.ts";
import { type Extent, joinedExtent } from "../../src/geometry/extent.ts";
import { contourExtent, pathExtent } from "../../src/geometry/measure.ts";
import { layoutPanel } from "../../src/layout/layout-panel.ts";
import type { PanelLayout } from "../../src/layout/panel-layout.ts";
import { testLibrary } from "../support/test-library.ts";

export const library = testLibrary();

export const laidOut = (text: string): PanelLayout => {
  const { design, findings } = readDesign("panel.yaml", text);
  if (design?.kind !== "panel") throw new Error(findings.map(({ message }) => message).join("\n"));
  const { catalogue, lettering } = library;
  const { layout, findings: misses } = layoutPanel(design, {
    workshop: null,
    catalogue,
    lettering,
  });
  if (layout === null) throw new Error(misses.map(({ message }) => message).join("\n"));
  return layout;
};

export const panelText = (
  components: readonly string[],
  keys: readonly string[] = [],
): string => `consolewright: 1
kind: panel
name: winch
title: Towing winch
revision: B
dated: 2026-10-02
mount: console-rail
height: 11 modules
${keys.map((key) => `${key}\n`).join("")}stack:
  - { layer: face, sheet: opal-acrylic-3, finish: paint-and-engrave }
  - { layer: backing, sheet: black-acrylic-3 }
components:
${components.map((component) => `  ${component}\n`).join("")}`;

export const WINCH = panelText(
  [
    "brake: { part: toggle-12-locking, at: { left: 28 mm, top: 30 mm }, legend: BRAKE, measured: { hold.length: 11.7 mm, dated: 2026-10-01 } }",
    "release: { part: toggle-12-guarded, at: { left: 62 mm, top: 34 mm } }",
    "speed: { part: pot-16, at: { x: 110 mm, top: 34 mm }, scale: { from: 0, to: 10, major: 2, minor: 1 } }",
    "tension: { part: servo-9g-needle, at: { x: 108 mm, bottom: 28 mm }, fitted: later }",
    "warn: { row: { part: led-5-bezel, count: 4, pitch: 17 mm }, at: { left: 24 mm, bottom: 20 mm } }",
  ],
  ["depth: 150 mm"],
);

const PARTS = ["led-5-bezel", "toggle-6", "push-button-12", "encoder-11", "led-3-bezel", "lamp-8"];

/** Ten rows of six, no two centres on one line. */
export const sixtyComponents = (): string =>
  panelText(
    Array.from({ length: 60 }, (_, index) => {
      const column = index % 6;
      const row = Math.floor(index / 6);
      const left = (22 + column * 20 + row * 0.7).toFixed(2);
      const top = (16 + row * 17 + column * 0.9).toFixed(2);
      const part = PARTS[(row + column) % PARTS.length];
      return `thing-${index + 1}: { part: ${part}, at: { left: ${left} mm, top: ${top} mm } }`;
    }),
  ).replace("height: 11 modules", "height: 20 modules");

const itemExtent = (item: DrawingItem): Extent | null => {
  const boxes =
    item.kind === "fill"
      ? item.regions.map(({ outline }) => contourExtent(outline))
      : item.kind === "outline"
        ? item.contours.map(contourExtent)
        : item.paths.map(pathExtent);
  const [first, ...rest] = boxes;
  return first === undefined ? null : rest.reduce(joinedExtent, first);
};

export const itemExtents = (drawing: Drawing): readonly Extent[] =>
  drawing.items.map(itemExtent).filter((box): box is Extent => box !== null);
