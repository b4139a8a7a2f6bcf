// Printed parts in section: what the drawing shows is held against facts that come another way than its cut: pockets and
// heights from the spacer's plan, lengths along the cut from arithmetic.

import { describe, expect, test } from "vitest";
import type { DrawingItem } from "../../src/drawings/drawing.ts";
import { sectionSheet } from "../../src/drawings/section-drawing.ts";
import { sectionPlanes } from "../../src/drawings/section-planes.ts";
import { printedCuts } from "../../src/drawings/section-prints.ts";
import { sectionSteps } from "../../src/drawings/section-steps.ts";
import { lineStretches } from "../../src/geometry/line-stretches.ts";
import { contourExtent } from "../../src/geometry/measure.ts";
import { planeAcrossX } from "../../src/geometry/solid/solid-section.ts";
import { compile, type PanelProject } from "../../src/project.ts";
import { library } from "./panels.ts";

const WORKSHOP = `consolewright: 1
kind: workshop
name: shed
stock:
  opal: { material: acrylic-cast, colour: opal, nominal: 3 mm, measured: 3 mm, dated: 2026-01-31 }
  plate: { material: aluminium, nominal: 2 mm, measured: 2 mm, dated: 2026-01-31 }
  black-petg: { material: petg, colour: black, opaque-from: 1.35 mm }
`;

const STACK = `consolewright: 1
kind: panel
name: cut
workshop: shed.yaml
mount: console-rail
height: 13 modules
stack:
  - { layer: face, sheet: opal }
  - { layer: backing, sheet: plate }
  - { layer: spacer, print: black-petg, depth: 14 mm }
`;

const made = (text: string): PanelProject => {
  const files = new Map([
    ["panel.yaml", text],
    ["shed.yaml", WORKSHOP],
  ]);
  const [panel] = compile({ entry: "panel.yaml", files }, library).panels;
  if (panel?.layout == null) throw new Error("the panel is laid out");
  return panel;
};

const PUMP = made(`${STACK}  - { layer: tray, behind: 18 mm, boards: [avr-328-45x18] }
fixings: { screws: m3, dowels: 3 mm }
components:
  speed: { part: pot-16, at: { left: 60 mm, top: 40 mm } }
  stop: { part: led-5-bezel, at: { left: 63 mm, top: 85 mm } }
`);

const layoutOf = ({ layout }: PanelProject) => {
  if (layout === null) throw new Error("the panel is laid out");
  return layout;
};

const cutsOf = (panel: PanelProject, zero = 0) => {
  const [plane] = sectionPlanes(layoutOf(panel));
  if (plane === undefined) throw new Error("a plane");
  return { plane, cuts: printedCuts(panel.printedParts, plane, zero) };
};

describe("the steps of a section", () => {
  test("pass each component on its own axis, and change half way between two", () => {
    const { plane } = cutsOf(PUMP);
    const steps = sectionSteps(plane);
    expect(steps.map(({ x }) => x)).toEqual([63, 60]);
    const [first, second] = steps;
    expect(first?.low).toBe(-Infinity);
    expect(first?.high).toBe(second?.low);
    expect(second?.high).toBe(Infinity);
    const [speed, stop] = plane.components;
    expect(first?.high).toBeGreaterThan(stop?.at.y ?? Number.NaN);
    expect(first?.high).toBeLessThan(speed?.at.y ?? Number.NaN);
  });

  test("are one where all stand on one axis, or where nothing stands", () => {
    const one = { low: -Infinity, high: Infinity };
    expect(sectionSteps({ ...cutsOf(PUMP).plane, components: [] })).toEqual([{ x: 60, ...one }]);
    const components = cutsOf(PUMP).plane.components.slice(0, 1);
    expect(sectionSteps({ ...cutsOf(PUMP).plane, components })).toEqual([{ x: 60, ...one }]);
  });
});

describe("a spacer in section", () => {
  const { plane, cuts } = cutsOf(PUMP);
  const spacer = cuts.find(({ part }) => part.role === "spacer");
  const layer = layoutOf(PUMP).layers.find(({ kind }) => kind === "spacer");
  if (spacer === undefined || layer === undefined) throw new Error("a spacer");
  const regions = spacer.bodies.flatMap((body) => body.regions);

  test("is as deep as its layer, the operator on the left", () => {
    const boxes = regions.map(({ outline }) => contourExtent(outline));
    expect(Math.min(...boxes.map(({ minX }) => minX))).toBeCloseTo(-layer.front, 6);
    expect(Math.max(...boxes.map(({ maxX }) => maxX))).toBeCloseTo(-layer.rear, 6);
  });

  test("has its floor open where the pockets of its facts are, on each component's axis", () => {
    const pockets = spacer.part.facts.pockets;
    // Up the sheet through the floor, just above the rear.
    const floor = lineStretches(regions, {
      at: { ...planeAcrossX(-layer.rear - 0.3).at },
      along: { x: 0, y: 1 },
    });
    for (const { id, at } of plane.components) {
      const pocket = pockets.find(({ owner }) => owner === id);
      expect(pocket, id).toBeDefined();
      const room = lineStretches(
        (pocket?.contours ?? []).map((outline) => ({ outline, holes: [] })),
        planeAcrossX(at.x),
      );
      expect(room.length, id).toBeGreaterThan(0);
      for (const { low, high } of room) {
        expect(floor.every((solid) => solid.high <= low + 1e-6 || solid.low >= high - 1e-6)).toBe(
          true,
        );
      }
      expect(floor.some((solid) => solid.low < at.y && solid.high > at.y)).toBe(false);
    }
    expect(floor.length).toBeGreaterThan(1);
  });

  test("is hollow above its floor: only the rims are cut, a wall thick", () => {
    const half = lineStretches(regions, planeAcrossX(-(layer.front + layer.rear) / 2));
    expect(half).toHaveLength(2);
    const wall = half[0] === undefined ? 0 : half[0].high - half[0].low;
    // Opaque from 1.35 mm, in whole lines of a nozzle.
    expect(wall).toBeGreaterThanOrEqual(1.35);
    expect(wall).toBeLessThan(3);
  });
});

describe("what is drawn", () => {
  const layout = layoutOf(PUMP);
  const sheetOf = (printedParts: PanelProject["printedParts"]) =>
    sectionSheet({ layout, printedParts, findings: [] }, library.lettering);
  const inked = (items: readonly DrawingItem[], ink: string): number =>
    items.filter((item) => item.kind === "fill" && item.ink === ink).length;

  test("black print is dark, and nothing is where there is no part yet", () => {
    expect(inked(sheetOf(PUMP.printedParts).drawing.items, "opaque")).toBe(
      PUMP.printedParts.filter(({ role }) => role === "spacer" || role === "tray").length,
    );
    const bare = sheetOf([]).drawing.items;
    expect(inked(bare, "opaque")).toBe(0);
    const rooms = bare.filter((item) => item.kind === "outline" && item.ink === "printed");
    expect(rooms).toHaveLength(2);
  });

  test("a tray that reaches behind its layer's room has a dimension of its own", () => {
    const [view] = sheetOf(PUMP.printedParts).views;
    const tray = PUMP.printedParts.find(({ role }) => role === "tray");
    const { cuts } = cutsOf(PUMP);
    const rear = Math.max(
      ...cuts
        .filter(({ part }) => part === tray)
        .flatMap(({ bodies }) => bodies.flatMap(({ regions }) => regions))
        .map(({ outline }) => contourExtent(outline).maxX),
    );
    const said = view?.dimensions.find(({ text }) => text.startsWith("tray "));
    expect(said?.value).toBeCloseTo(rear, 6);
  });

  test("a tray's standoffs stand beyond the cut, from its plate forward", () => {
    const { cuts } = cutsOf(PUMP);
    const tray = cuts.find(({ part }) => part.role === "tray");
    const beyond = tray?.bodies.flatMap((body) => body.beyond) ?? [];
    const cut = tray?.bodies.flatMap((body) => body.regions) ?? [];
    const front = (regions: typeof cut): number =>
      Math.min(...regions.map(({ outline }) => contourExtent(outline).minX));
    expect(front(beyond)).toBeLessThan(front(cut) - 1);
  });
});
