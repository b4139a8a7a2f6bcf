// An order of assembly: every fastener once, with its tool, after what has to be there and before what would cover it; a
// planted nut that no socket comes to is told with its step and with what stands in the way.

import { describe, expect, test } from "vitest";
import { contourExtent } from "../../src/geometry/measure.ts";
import { compile, type Finding } from "../../src/project.ts";
import { closedOver, type ServiceOrder, serviceOrder } from "../../src/service/service-order.ts";
import { toolWords } from "../../src/service/tool.ts";
import { testLibrary } from "../support/test-library.ts";

const WORKSHOP = `consolewright: 1
kind: workshop
name: shed
stock:
  opal: { material: acrylic-cast, colour: opal, nominal: 3 mm, measured: 2.9 mm, dated: 2026-01-31 }
  plate: { material: aluminium, nominal: 2 mm, measured: 2 mm, dated: 2026-01-31 }
  black-petg: { material: petg, colour: black, opaque-from: 1.35 mm }
finishes:
  painted: { coats: [black, black], thickness: 0.08 mm, dated: 2026-01-31, order: cut-paint-engrave }
`;

const HEAD = `consolewright: 1
kind: panel
name: serviced
workshop: shed.yaml
mount: console-rail
height: 12 modules
`;

const STACK = `stack:
  - { layer: face, sheet: opal, finish: painted }
  - { layer: backing, sheet: plate }
  - { layer: spacer, print: black-petg, depth: 14 mm, lighting: { strip: strip-60-5v-addressable, circuit: night } }
  - { layer: tray, behind: 18 mm, boards: [avr-328-45x18] }
fixings: { screws: m3, dowels: 3 mm }
`;

interface Serviced {
  readonly order: ServiceOrder;
  readonly findings: readonly Finding[];
}

const serviced = (lines: string): Serviced => {
  const library = testLibrary();
  const files = new Map([
    ["panel.yaml", HEAD + lines],
    ["shed.yaml", WORKSHOP],
  ]);
  const [panel] = compile({ entry: "panel.yaml", files }, library).panels;
  if (panel?.layout == null) throw new Error("the panel is laid out");
  const { layout, printedParts, findings } = panel;
  return {
    order: serviceOrder({ layout, printedParts, catalogue: library.catalogue }),
    findings,
  };
};

const stepOf = ({ steps }: ServiceOrder, id: string): number =>
  steps.find(({ item }) => item.id === id)?.number ?? Number.NaN;

describe("a lit panel with a lever, a knob, a button held from behind and a tray", () => {
  const { order } = serviced(`${STACK}components:
  pump: { part: toggle-6, at: { left: 40 mm, top: 40 mm } }
  speed: { part: pot-16, knob: knob-22-skirt, at: { left: 90 mm, top: 40 mm } }
  stop: { part: led-5-bezel, at: { left: 40 mm, top: 80 mm } }
`);

  test("leaves nothing out of reach", () => expect(order.outOfReach).toEqual([]));

  test("has each item once, numbered from 1", () => {
    const ids = order.steps.map(({ item }) => item.id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(order.steps.map(({ number }) => number)).toEqual(ids.map((_, index) => index + 1));
    expect(ids).toEqual(
      expect.arrayContaining([
        "pump/nut",
        "speed/nut",
        "speed/knob",
        "serviced-spacer/strips",
        "fixing.1",
        "face",
        "backing",
        "spacer",
        "tray",
      ]),
    );
  });

  test("nuts are turned on the backing before the face lies over them; a knob goes on last of its part", () => {
    expect(stepOf(order, "backing")).toBeLessThan(stepOf(order, "pump/nut"));
    expect(stepOf(order, "pump/nut")).toBeLessThan(stepOf(order, "face"));
    expect(stepOf(order, "face")).toBeLessThan(stepOf(order, "fixing.1"));
    expect(stepOf(order, "speed/nut")).toBeLessThan(stepOf(order, "speed/knob"));
  });

  test("strips are laid before the sheets close the light box, and the tray comes after the spacer", () => {
    expect(stepOf(order, "serviced-spacer/strips")).toBeLessThan(stepOf(order, "face"));
    expect(stepOf(order, "spacer")).toBeLessThan(stepOf(order, "tray"));
    expect(stepOf(order, "tray")).toBeLessThan(stepOf(order, "fixing.1"));
  });

  test("names a tool for each nut, screw, plug and strip", () => {
    for (const { item } of order.steps)
      if (["nut", "stack-screw", "plug", "strip", "knob"].includes(item.kind))
        expect(item.tool, item.id).not.toBeNull();
    const nut = order.steps.find(({ item }) => item.id === "pump/nut")?.item;
    expect(nut?.tool).toEqual({ kind: "socket", diameter: 14 });
    expect(nut?.tool == null ? "" : toolWords(nut.tool)).toBe("a socket 14 mm across");
    expect(nut?.columns.map(({ contour }) => contourExtent(contour))).toMatchObject([
      { minX: 33, maxX: 47 },
    ]);
  });
});

describe("parts that screws hold, that snap in, and that rest behind the sheets", () => {
  const { order } = serviced(`${STACK}components:
  tow: { part: servo-9g-needle, at: { left: 60 mm, top: 50 mm } }
  stop: { part: tactile-12-cap, at: { left: 110 mm, top: 40 mm } }
  speed: { part: pot-16, at: { left: 110 mm, bottom: 30 mm } }
`);

  test("are put in once the sheet lies there that they are screwed to", () => {
    expect(stepOf(order, "backing")).toBeLessThan(stepOf(order, "tow/screws"));
    expect(stepOf(order, "tow/screws")).toBeLessThan(stepOf(order, "face"));
    expect(stepOf(order, "backing")).toBeLessThan(stepOf(order, "stop/part"));
    expect(stepOf(order, "stop/part")).toBeLessThan(stepOf(order, "spacer"));
  });

  test("are told before what closes over them they go in, and nothing is before itself", () => {
    const closed = closedOver(order);
    expect(closed.get("speed/nut")).toContain("face");
    expect(closed.get("speed/plug")).toContain("serviced-tray");
    for (const { item } of order.steps)
      for (const owner of closed.get(item.id) ?? []) {
        expect(owner).not.toBe(item.owner);
        // A print goes by its own name, its step by its layer's.
        const name = owner.replace("serviced-", "");
        const over = order.steps.filter((step) => step.item.owner === name);
        expect(Math.max(...over.map(({ number }) => number))).toBeGreaterThan(
          stepOf(order, item.id),
        );
      }
  });
});

describe("two levers 11.3 mm apart, whose sockets are 14 mm across", () => {
  const lines = (apart: string): string => `stack:
  - { layer: face, sheet: plate }
components:
  pump: { part: toggle-6, at: { left: 60 mm, top: 50 mm } }
  fan: { part: toggle-6, at: { right-of: pump, centres: ${apart} } }
`;

  test("the one is told with its step, its tool and the other", () => {
    const { order, findings } = serviced(lines("11.3 mm"));
    expect(order.outOfReach).toHaveLength(1);
    const [nut] = order.outOfReach;
    expect(nut?.item.id).toBe("pump/nut");
    expect(nut?.by).toEqual(["fan"]);
    expect(stepOf(order, "pump/nut")).toBe(nut?.number);
    const [found] = findings.filter(({ code }) => code === "checks/out-of-reach");
    expect(found?.message).toBe(
      `Step ${nut?.number}: a socket 14 mm across does not come to the nut of pump from the front: fan stands in the way.`,
    );
  });

  // Half a socket and half a nut over its corners: 7 + 9.24 / 2 = 11.62 mm.
  test("from 11.62 mm on both are reached", () => {
    expect(serviced(lines("11.61 mm")).order.outOfReach).toHaveLength(1);
    expect(serviced(lines("11.63 mm")).order.outOfReach).toEqual([]);
  });
});
