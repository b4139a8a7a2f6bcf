import { describe, expect, test } from "vitest";
import { recordFiles, recordText } from "../../scripts/build-library.ts";
import { HARDWARE_KINDS } from "../../src/catalogue/hardware.ts";
import { lintRecord } from "../../src/catalogue/lint.ts";
import type { Part } from "../../src/catalogue/part.ts";
import { readRecords } from "../../src/catalogue/read-records.ts";
import { recordsById } from "../../src/catalogue/record.ts";
import { shapeSize } from "../../src/catalogue/shape-contour.ts";
import { NAME } from "../../src/design/text-fields.ts";
import { mm } from "../../src/geometry/quantity.ts";
import { CAST_ACRYLIC, EXTRUDED_ACRYLIC } from "../../src/standards/acrylic-thickness.ts";
import { BUSHINGS } from "../../src/standards/bushings.ts";
import { CONSOLE_RAIL } from "../../src/standards/console-rail.ts";
import { CLEARANCE_HOLES } from "../../src/standards/metric-fasteners.ts";
import { INSTRUMENT_CUT_OUTS, isCutOutWithin } from "../../src/standards/panel-instruments.ts";
import { RACK, rackHoleRows, rackPanelHeight, SUBRACK } from "../../src/standards/rack.ts";
import { ROTARY_SELECTOR } from "../../src/standards/reach.ts";
import { testLibrary } from "../support/test-library.ts";

const { catalogue } = testLibrary();
const all = [...recordsById(catalogue).values()];
const part = (id: string): Part => catalogue.parts.get(id)!;

test.each(recordFiles())("%s is read without a finding", (file) => {
  const { records, findings } = readRecords(file, recordText(file));
  expect(findings).toEqual([]);
  expect(records.length).toBeGreaterThan(0);
});

test.each(all.map((record) => [record.id, record] as const))(
  "the linter has nothing against %s",
  (_, record) => {
    expect(lintRecord(record, catalogue)).toEqual([]);
  },
);

test("there are parts of every family and hardware of every kind", () => {
  expect(catalogue.parts.size).toBeGreaterThanOrEqual(75);
  const families = new Set([...catalogue.parts.values()].map((record) => record.family));
  expect([...families].toSorted()).toEqual([
    "connector",
    "display",
    "encoder",
    "fuse-holder",
    "instrument",
    "key",
    "key-switch",
    "keypad",
    "lamp",
    "lever",
    "potentiometer",
    "push-button",
    "rocker",
    "rotary-switch",
    "servo",
    "slide",
    "speaker",
    "thumbwheel",
    "toggle",
  ]);
  const kinds = new Set([...catalogue.hardware.values()].map((record) => record.kind));
  expect(HARDWARE_KINDS.filter((kind) => !kinds.has(kind))).toEqual([]);
});

test("every name can be written in a design", () => {
  const names = [
    ...all.map((record) => record.id),
    ...catalogue.stock.keys(),
    ...catalogue.finishes.keys(),
    ...catalogue.machines.keys(),
  ];
  expect(names.filter((name) => !NAME.test(name))).toEqual([]);
});

describe("parts against what is published", () => {
  // Holes that makers ask for, by thread (makers' datasheets; see standards/bushings.ts).
  test.each(BUSHINGS.map((row) => [row.thread, row] as const))("holes for %s", (thread, row) => {
    const held = [...catalogue.parts.values()].filter(
      ({ hold }) => hold.kind === "bush" && hold.thread === thread,
    );
    for (const { id, openings } of held) {
      expect(shapeSize(openings.clamp), id).toBeGreaterThanOrEqual(row.hole.least);
      expect(shapeSize(openings.clamp), id).toBeLessThanOrEqual(row.hole.most);
    }
  });

  // IEC 61554:1999: a cut-out only larger than nominal, a bezel only smaller.
  test.each([48, 72, 96])("the square meter of %i keeps the rule of signs", (bezel) => {
    const row = INSTRUMENT_CUT_OUTS.find((candidate) => candidate.bezel === bezel)!;
    const { openings, bodies } = part(`meter-${bezel}`);
    expect(isCutOutWithin(shapeSize(openings.clamp), row)).toBe(true);
    expect(openings.covered).toBeCloseTo(row.cutOut + row.plus, 10);
    expect(shapeSize(bodies.find(({ role }) => role === "flange")!.shape)).toBe(bezel);
  });

  // IEC 60947-5-1: 22.3 with a notch 3.2 wide, 24.1 over it.
  test("22 mm devices take the hole of IEC 60947-5-1", () => {
    for (const id of ["push-button-22", "push-button-22-mushroom-red", "selector-22", "lamp-22"])
      expect(part(id).openings.clamp).toEqual({
        kind: "notch",
        diameter: 22.3,
        width: 3.2,
        over: 24.1,
        clock: 0,
      });
  });

  // IEC 60947-5-1, from memory, unverified: 30.5 with a notch 4.8 wide, 33 over it.
  test("30 mm devices take the hole of IEC 60947-5-1", () => {
    for (const id of ["push-button-30", "selector-30"])
      expect(part(id).openings.clamp).toEqual({
        kind: "notch",
        diameter: 30.5,
        width: 4.8,
        over: 33,
        clock: 0,
      });
  });

  // D-sub hole pitches 24.99, 33.32, 47.04: makers' datasheets agree.
  test.each([
    ["d-sub-9", 24.99],
    ["d-sub-15", 33.32],
    ["d-sub-25", 47.04],
  ])("the screws of %s are %f apart", (id, pitch) => {
    const { hold } = part(id);
    const [left, right] = hold.kind === "screws" ? hold.holes : [];
    expect(right!.at.x - left!.at.x).toBeCloseTo(pitch, 10);
    expect(left!.diameter).toBe(3.05);
  });

  // 16 x 2 modules: board 80 x 36, holes 75 x 31, bezel 71.3 x 24.3, window 64.5 x 14.5; 20 x 4: 98 x 60, 93 x 55,
  // 97 x 40, 76 x 26 (typical datasheets).
  test.each([
    ["character-16x2", [80, 36], [75, 31], [71.3, 24.3], [64.5, 14.5]],
    ["character-20x4", [98, 60], [93, 55], [97, 40], [76, 26]],
  ])("%s has the sizes of its datasheets", (id, board, holes, bezel, window) => {
    const { hold, bodies, display } = part(id);
    const sizeOf = (role: string) => bodies.find((body) => body.role === role)?.shape;
    expect(sizeOf("board")).toMatchObject({ width: board[0], height: board[1] });
    expect(sizeOf("glass")).toMatchObject({ width: bezel[0], height: bezel[1] });
    expect(display?.window.shape).toMatchObject({ width: window[0], height: window[1] });
    const [first, , third] = hold.kind === "screws" ? hold.holes : [];
    expect([third!.at.x - first!.at.x, third!.at.y - first!.at.y]).toEqual(holes);
  });

  // MIL-STD-1472E figure 4: steps of 15 to 40°, knobs 25 to 100 long and 16 to 75 high, at most 24 positions.
  test("the selector and its knob keep the limits of MIL-STD-1472E", () => {
    const { turning, usual } = part("rotary-12");
    const knob = catalogue.hardware.get(usual[0]!);
    expect(turning?.step).toBeGreaterThanOrEqual(ROTARY_SELECTOR.step.least);
    expect(turning?.step).toBeLessThanOrEqual(ROTARY_SELECTOR.step.most);
    expect(turning?.positions).toBeLessThanOrEqual(ROTARY_SELECTOR.positions.most);
    expect(knob?.kind === "knob" && knob.diameter >= ROTARY_SELECTOR.length.least).toBe(true);
    expect(knob?.kind === "knob" && knob.height >= ROTARY_SELECTOR.height.least).toBe(true);
  });

  test("only the red mushroom looks like an emergency stop", () => {
    const looks = [...catalogue.parts.values()].filter((record) => record.emergencyLook);
    expect(looks.map(({ id }) => id)).toEqual(["push-button-22-mushroom-red"]);
  });
});

describe("displays and cautions", () => {
  // Active areas of 1.8 and 2.8 in colour displays (makers' datasheets): 4 by 3 or 5 by 4, the diagonal in the name.
  test.each([
    ["tft-1-8", 1.8, 160 / 128],
    ["tft-2-8", 2.8, 320 / 240],
  ])("%s: diagonal and shape of its active area", (id, inches, ratio) => {
    const { width, height } = part(id).display!.active;
    expect(Math.sqrt(width ** 2 + height ** 2) / 25.4).toBeCloseTo(inches, 1);
    expect(width / height).toBeCloseTo(ratio, 2);
  });

  test("what may hurt carries its caution, and defers to local rules and licensed practice", () => {
    const cautioned = [...catalogue.parts.values()].filter(({ caution }) => caution !== null);
    expect(cautioned.map(({ id }) => id)).toEqual(["mains-inlet-c14", "vacuum-display-20x2"]);
    expect(part("mains-inlet-c14").caution).toMatch(/licensed electrician.*local codes/);
  });
});

describe("mounts against their standards", () => {
  // MS25212 and MIL-F-25173A, secondary copies.
  test("console rail", () => {
    const mount = catalogue.mounts.get("console-rail")!;
    expect(mount).toMatchObject({
      width: CONSOLE_RAIL.panelWidth,
      height: { unit: "modules", pitch: CONSOLE_RAIL.module, less: 0 },
      undersize: CONSOLE_RAIL.undersize,
      seat: CONSOLE_RAIL.seat,
      clearWidth: CONSOLE_RAIL.clearWidth,
      holes: {
        kind: "columns",
        apart: CONSOLE_RAIL.columnsApart,
        first: CONSOLE_RAIL.firstRow,
        pitch: CONSOLE_RAIL.module,
        hole: { kind: "round", diameter: CONSOLE_RAIL.studHole },
        inAcrylic: { kind: "round", diameter: CONSOLE_RAIL.studHoleInAcrylic },
      },
    });
    expect(mount.web).toBeCloseTo(CONSOLE_RAIL.columnInset - CONSOLE_RAIL.studHole / 2, 2);
    // The rails' strips and the clear width fill the panel.
    expect(Math.abs(2 * mount.seat + mount.clearWidth! - mount.width!)).toBeLessThan(0.1);
  });

  // IEC 60297-3-100.
  test("19-inch rack", () => {
    const mount = catalogue.mounts.get("rack-19")!;
    expect(mount.width).toBe(RACK.width);
    expect(mount.height.pitch * 3 - mount.height.less).toBeCloseTo(rackPanelHeight(3), 10);
    expect(mount.clearWidth).toBe(RACK.opening);
    expect(mount.holes).toMatchObject({ kind: "units", apart: RACK.columnsApart });
    if (mount.holes.kind === "units")
      expect(mount.holes.inset).toBeCloseTo(rackHoleRows(3)[0]!, 10);
  });

  // IEC 60297-3-101.
  test("3U subrack", () => {
    const mount = catalogue.mounts.get("subrack-3u")!;
    expect(mount.fixedHeight).toBe(SUBRACK.height);
    expect(mount.holes).toMatchObject({
      kind: "subrack",
      rowsApart: SUBRACK.rowsApart,
      firstFromLeft: SUBRACK.firstFromLeft,
      pitch: SUBRACK.pitch,
      hole: { kind: "round", diameter: SUBRACK.hole },
    });
  });

  // ISO 273, medium.
  test.each(["corner-screws", "box-lid"])("%s takes an M3 screw", (id) => {
    expect(shapeSize(catalogue.mounts.get(id)!.holes.hole)).toBe(CLEARANCE_HOLES.m3.medium);
  });
});

describe("materials", () => {
  // ISO 7823-1 and 7823-2.
  test("acrylic carries the ranges of ISO 7823", () => {
    const rows = (id: string) =>
      catalogue.materials.get(id)!.tolerance.map(({ from, plus, minus }) => ({
        from,
        plus,
        same: plus.fixed === minus.fixed && plus.share === minus.share,
      }));
    expect(rows("acrylic-cast")).toEqual(
      CAST_ACRYLIC.map(({ from, fixed, share }) => ({ from, plus: { fixed, share }, same: true })),
    );
    expect(rows("acrylic-extruded")).toEqual(
      EXTRUDED_ACRYLIC.map(({ from, fixed, share }) => ({
        from,
        plus: { fixed, share },
        same: true,
      })),
    );
  });

  // Common practice of every laser workshop: chlorine, cyanide, fire.
  test("PVC, ABS and polycarbonate never go into a laser", () => {
    for (const id of ["pvc", "abs", "polycarbonate"])
      for (const machine of ["co2-laser", "diode-laser"])
        expect(catalogue.materials.get(id)!.byMachine[machine]?.verdict, id).toBe("cannot");
  });

  test("a bush in acrylic gets 0.2 to 0.3, in metal 0.05 to 0.1 (common practice)", () => {
    expect(catalogue.materials.get("acrylic-cast")!.bushFit).toBe(mm(0.25));
    const metal = catalogue.materials.get("aluminium")!.bushFit;
    expect(metal).toBeGreaterThanOrEqual(0.05);
    expect(metal).toBeLessThanOrEqual(0.1);
  });

  test("every stock is of a material that the catalogue knows", () => {
    for (const stock of catalogue.stock.values())
      expect(catalogue.materials.has(stock.material), stock.id).toBe(true);
  });
});
