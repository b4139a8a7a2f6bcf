// Each sabotage of a sound record is one way in which a real part would not fit; the linter must object to each.

import { expect, test } from "vitest";
import type { Hardware } from "../../src/catalogue/hardware.ts";
import { lintRecord } from "../../src/catalogue/lint.ts";
import type { Mount } from "../../src/catalogue/mount.ts";
import type { Figures, Hold, Part } from "../../src/catalogue/part.ts";
import type { MaterialRecord } from "../../src/catalogue/record.ts";
import type { Shape } from "../../src/catalogue/shape.ts";
import { point } from "../../src/geometry/contour.ts";
import { degrees, mm } from "../../src/geometry/quantity.ts";
import { testLibrary } from "../support/test-library.ts";

const { catalogue } = testLibrary();
const part = (id: string): Part => catalogue.parts.get(id)!;
const toggle = part("toggle-6");
const button = part("push-button-16");
const display = part("character-16x2");
const pot = part("pot-16");
const keypad = part("keypad-4x4");

const round = (diameter: number): Shape => ({ kind: "round", diameter: mm(diameter) });

const held = (of: Part, change: Partial<Hold & { readonly kind: "bush" }>): Part =>
  of.hold.kind === "bush" ? { ...of, hold: { ...of.hold, ...change } } : of;

const opened = (of: Part, change: Partial<Part["openings"]>): Part => ({
  ...of,
  openings: { ...of.openings, ...change },
});

const sourced = (of: Part, change: Partial<Figures>): Part => ({
  ...of,
  figures: { ...of.figures, ...change },
});

const PARTS: readonly (readonly [string, Part, string])[] = [
  ["a go gauge larger than its hole", opened(toggle, { clamp: round(6.3) }), "openings.passes"],
  ["a hole that nothing covers", opened(toggle, { covered: mm(6.5) }), "openings.covered"],
  ["a cover that is not there", opened(toggle, { covered: mm(12) }), "openings.covered"],
  [
    "a grip longer than the thread",
    held(toggle, { grip: { least: mm(0.8), most: mm(6) } }),
    "hold.grip",
  ],
  ["a grip turned round", held(toggle, { grip: { least: mm(5), most: mm(4) } }), "hold.grip"],
  ["a thread too short for nut and washer", held(toggle, { length: mm(6) }), "hold.grip"],
  ["a nut that does not exist", held(toggle, { nut: "nut-of-gold" }), "hold.nut"],
  ["a nut of another thread", held(toggle, { nut: "nut-m7" }), "hold.nut"],
  ["a nut that falls through", held(toggle, { nut: "nut-m3", thread: "m3" }), "hold.nut"],
  ["a washer that does not exist", held(toggle, { washers: ["washer-of-gold"] }), "hold.washers"],
  ["a washer that does not go over", held(toggle, { washers: ["washer-m3"] }), "hold.washers"],
  ["a spanner smaller than its nut", held(toggle, { spanner: mm(8) }), "hold.spanner"],
  ["a bush that is not what passes", held(toggle, { diameter: mm(6) }), "openings.passes"],
  [
    "a tab hole that runs into the hole",
    opened(toggle, { tabs: [{ shape: round(2.4), at: point(0, -4) }] }),
    "openings.tabs.0",
  ],
  ["a front opening that the nut fouls", opened(toggle, { front: round(9) }), "openings.front"],
  ["a front opening that the flange fouls", opened(button, { front: round(17) }), "openings.front"],
  ["a rear opening that the case fouls", opened(toggle, { behind: round(8) }), "openings.behind"],
  ["a rear opening that the nut fouls", opened(button, { behind: round(20) }), "openings.behind"],
  [
    "a body upside down",
    { ...toggle, bodies: toggle.bodies.map((body) => ({ ...body, from: body.to, to: body.from })) },
    "bodies.0",
  ],
  [
    "nothing behind",
    { ...toggle, bodies: toggle.bodies.filter((body) => body.from >= 0) },
    "bodies",
  ],
  [
    "no shoulder to bear on",
    { ...toggle, bodies: toggle.bodies.filter((body) => body.role !== "flange") },
    "bodies",
  ],
  [
    "no flange to bear on",
    { ...button, bodies: button.bodies.filter((body) => body.role !== "flange") },
    "bodies",
  ],
  [
    "a case too large to go through from the front",
    {
      ...button,
      bodies: button.bodies.map((body) =>
        body.role === "case" ? { ...body, shape: round(20) } : body,
      ),
    },
    "bodies.2",
  ],
  [
    "a lever too thick to come through from behind",
    {
      ...toggle,
      bodies: toggle.bodies.map((body) =>
        body.role === "lever" ? { ...body, shape: round(9) } : body,
      ),
    },
    `bodies.${toggle.bodies.findIndex((body) => body.role === "lever")}`,
  ],
  [
    "a lever that ends in its bush",
    { ...toggle, lever: { ...toggle.lever!, length: mm(8) } },
    "lever.length",
  ],
  [
    "a shaft that ends in its bush",
    { ...pot, shaft: { ...pot.shaft!, length: mm(7) } },
    "shaft.length",
  ],
  ["a knob that does not exist", { ...pot, usual: ["knob-of-gold"] }, "usual"],
  ["a knob of another bore", { ...pot, usual: ["knob-24-quarter"] }, "usual"],
  ["a knob without a shaft", { ...toggle, usual: ["knob-16"] }, "usual"],
  [
    "a pointer that does not point at the first stop",
    { ...pot, shaft: { ...pot.shaft!, flatAt: degrees(90) } },
    "shaft.flatAt",
  ],
  [
    "positions that do not make the travel",
    { ...pot, turning: { ...pot.turning!, step: degrees(30), positions: 12 } },
    "turning",
  ],
  [
    "detents that do not make a turn",
    { ...part("encoder-11"), turning: { ...part("encoder-11").turning!, positions: 24 } },
    "turning",
  ],
  [
    "a window larger than the glass",
    {
      ...display,
      display: {
        ...display.display!,
        window: {
          shape: { kind: "rectangle", width: mm(80), height: mm(14), corner: mm(0) },
          at: point(0, 0),
        },
      },
    },
    "display.window",
  ],
  [
    "an active area that the window hides",
    {
      ...display,
      display: { ...display.display!, active: { width: mm(66), height: mm(11), at: point(0, 0) } },
    },
    "display.active",
  ],
  ["a lamp that a hand turns", { ...part("led-5"), hand: "knob" }, "hand"],
  ["a toggle that nobody touches", { ...toggle, hand: "none" }, "hand"],
  ["nothing to draw", { ...toggle, face: [] }, "face"],
  [
    "two contacts of one name",
    {
      ...toggle,
      contacts: [
        { name: "up", role: "throw" },
        { name: "up", role: "throw" },
      ],
    },
    "contacts",
  ],
  [
    "a screw that does not exist",
    { ...keypad, hold: { ...keypad.hold, screw: "screw-of-gold" } as Hold },
    "hold.screw",
  ],
  [
    "a screw hole that runs into the opening",
    { ...keypad, hold: screwsAt(keypad, { x: 28, diameter: 2.9, head: 5 }) },
    "hold.holes.0",
  ],
  [
    "a screw hole that the screw does not enter",
    { ...keypad, hold: screwsAt(keypad, { x: 32, diameter: 2.4, head: 5 }) },
    "hold.holes.0",
  ],
  [
    "a head that falls through",
    { ...keypad, hold: screwsAt(keypad, { x: 32, diameter: 2.9, head: 2.8 }) },
    "hold.holes.0",
  ],
  [
    "a flat outside its circle",
    opened(toggle, { clamp: { kind: "flat", diameter: mm(6), flat: mm(3.5), clock: degrees(0) } }),
    "openings.clamp",
  ],
  [
    "flats outside their circle",
    opened(toggle, {
      clamp: { kind: "double-flat", diameter: mm(6), across: mm(7), clock: degrees(0) },
    }),
    "openings.clamp",
  ],
  [
    "a notch that stays inside",
    opened(toggle, {
      clamp: { kind: "notch", diameter: mm(6), width: mm(1), over: mm(5), clock: degrees(0) },
    }),
    "openings.clamp",
  ],
  [
    "corners rounder than the rectangle",
    opened(toggle, { behind: { kind: "rectangle", width: mm(8), height: mm(20), corner: mm(5) } }),
    "openings.behind",
  ],
  [
    "a slot wider than long",
    opened(toggle, { front: { kind: "slot", length: mm(8), width: mm(9), clock: degrees(0) } }),
    "openings.front",
  ],
  [
    "an outline that crosses itself",
    opened(toggle, {
      behind: {
        kind: "polygon",
        points: [point(-5, -5), point(5, 5), point(5, -5), point(-5, 6)],
        corner: mm(0),
      },
    }),
    "openings.behind",
  ],
  [
    "memory that passes for a standard",
    sourced(toggle, { source: "somewhere", kind: "standard" }),
    "figures",
  ],
  [
    "memory that does not say so",
    sourced(toggle, { source: "I think", kind: "memory" }),
    "figures",
  ],
  [
    "a source for a field that is not there",
    sourced(toggle, {
      exceptions: { "hold.colour": { source: "a datasheet", kind: "datasheet" } },
    }),
    "hold.colour",
  ],
  ["a measurement of nothing", sourced(toggle, { measureFirst: ["hold.thread"] }), "hold.thread"],
  [
    "a remembered thread that nobody measures",
    sourced(toggle, { measureFirst: [] }),
    "hold.length",
  ],
];

function screwsAt(
  of: Part,
  hole: { readonly x: number; readonly diameter: number; readonly head: number },
): Hold {
  if (of.hold.kind !== "screws") throw new Error("not held by screws");
  const { x, diameter, head } = hole;
  return { ...of.hold, holes: [{ at: point(x, 0), diameter: mm(diameter), head: mm(head) }] };
}

test.each(PARTS)("the linter objects to %s", (_, sabotaged, path) => {
  expect(lintRecord(sabotaged, catalogue).map((fault) => fault.path)).toContain(path);
});

test("every sabotage starts from a sound record", () => {
  for (const sound of [toggle, button, display, pot, keypad, part("encoder-11"), part("led-5")])
    expect(lintRecord(sound, catalogue)).toEqual([]);
});

const hardware = <Kind extends Hardware["kind"]>(
  id: string,
  kind: Kind,
): Hardware & { readonly kind: Kind } => {
  const found = catalogue.hardware.get(id);
  if (found?.kind !== kind) throw new Error(`${id} is no ${kind}`);
  return found as Hardware & { readonly kind: Kind };
};

const HARDWARE: readonly (readonly [string, Hardware, string])[] = [
  [
    "a hexagon with wrong corners",
    { ...hardware("nut-m7", "nut"), acrossCorners: mm(11) },
    "acrossCorners",
  ],
  [
    "a nut that is not that of ISO 4032",
    { ...hardware("nut-m3", "nut"), thickness: mm(2) },
    "figures",
  ],
  [
    "a washer that is not that of ISO 7089",
    { ...hardware("washer-m3", "washer"), outside: mm(8) },
    "figures",
  ],
  [
    "a washer with too wide a hole",
    { ...hardware("washer-m7", "washer"), inside: mm(13) },
    "inside",
  ],
  [
    "a screw that is not that of ISO 10642",
    { ...hardware("screw-m3-countersunk", "screw"), headDiameter: mm(6.3) },
    "figures",
  ],
  [
    "lengths out of order",
    { ...hardware("screw-m3-pan", "screw"), lengths: [mm(8), mm(6)] },
    "lengths",
  ],
  ["a bore wider than the knob", { ...hardware("knob-9", "knob"), bore: mm(10) }, "bore"],
  ["a bore right through", { ...hardware("knob-9", "knob"), boreDepth: mm(20) }, "boreDepth"],
  [
    "a cover that opens downward",
    { ...hardware("guard-toggle-12", "guard"), openHeight: mm(10) },
    "openHeight",
  ],
  ["a stud that does not go in", { ...hardware("stud-console", "stud"), body: mm(6.7) }, "hole"],
  ["a stud that falls through", { ...hardware("stud-console", "stud"), head: mm(6.55) }, "head"],
  [
    "a cap with impossible corners",
    {
      ...hardware("cap-12-square", "cap"),
      shape: { kind: "rectangle", width: mm(12), height: mm(12), corner: mm(7) },
    },
    "shape",
  ],
];

test.each(HARDWARE)("the linter objects to %s", (_, sabotaged, path) => {
  expect(lintRecord(sabotaged, catalogue).map((fault) => fault.path)).toContain(path);
});

const rail = catalogue.mounts.get("console-rail")!;
const MOUNTS: readonly (readonly [string, Mount, string])[] = [
  ["a fastener that does not exist", { ...rail, fastener: "stud-of-gold" }, "fastener"],
  ["a fastener that fastens nothing", { ...rail, fastener: "knob-9" }, "fastener"],
  ["a panel that falls between its rails", { ...rail, clearWidth: mm(150) }, "clearWidth"],
  ["a web that its own holes do not leave", { ...rail, web: mm(2) }, "web"],
  ["widths without a height", { ...rail, counts: "width", fixedHeight: null }, "fixedHeight"],
];

test.each(MOUNTS)("the linter objects to %s", (_, sabotaged, path) => {
  expect(lintRecord(sabotaged, catalogue).map((fault) => fault.path)).toContain(path);
});

test("the linter objects to a machine without a verdict, and to ranges out of order", () => {
  const acrylic: MaterialRecord = catalogue.materials.get("acrylic-extruded")!;
  const { router: _router, ...others } = acrylic.byMachine;
  const paths = (record: MaterialRecord) =>
    lintRecord(record, catalogue).map((fault) => fault.path);
  expect(paths({ ...acrylic, byMachine: others })).toContain("byMachine");
  expect(paths({ ...acrylic, tolerance: acrylic.tolerance.toReversed() })).toContain("tolerance");
  expect(paths(acrylic)).toEqual([]);
});
