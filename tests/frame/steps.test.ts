// Where a bay stands over or under the one before it in a step, a strip closes the step, and the cheeks stand beyond it as they
// stand beyond the bays: its slots have wood round them, and everything still goes together.

import { describe, expect, test } from "vitest";
import type { Finding } from "../../src/diagnostics/finding.ts";
import { withKept } from "../../src/geometry/solid/kernel.ts";
import { thinnestWeb } from "../../src/parts/frame/webs.ts";
import { openKernel } from "../support/kernel.ts";
import { type FrameText, framed } from "./framed.ts";
import { blockedSteps, clashes, inRoomOf, looseSlots, piecesOf, standing } from "./put-together.ts";

const kernel = await openKernel();

const bay = (id: string, at: string, more = ""): string =>
  `${id}: { mount: console-rail, at: [${at}], along: [1, 0, 0]${more}, length: 24 modules, depth: 80 mm }`;

const wall = (id: string, at: string): string =>
  `${id}: { mount: console-rail, at: [${at}], along: [0, 0, 1], length: 24 modules, depth: 80 mm }`;

const PLY_18 =
  "{ material: plywood, colour: birch, light: opaque, nominal: 18 mm, measured: 17.4 mm, dated: 2026-10-02 }";

describe.each<readonly [string, Partial<FrameText>]>([
  ["that rises", { bays: [bay("low", "0, 0, 620"), bay("high", "254, 0, 780")] }],
  ["that rises steeply", { bays: [bay("low", "0, 0, 620"), bay("high", "243, 0, 780")] }],
  ["that falls", { bays: [bay("high", "0, 0, 780"), bay("low", "254, 0, 620")] }],
  [
    "between canted bays",
    { bays: [bay("low", "0, 0, 620", ", cant: 10"), bay("high", "254, 0, 780", ", cant: -6")] },
  ],
  [
    "between sloped bays",
    { bays: [bay("low", "0, 0, 620", ", slope: 10"), bay("high", "270, 0, 800", ", slope: 20")] },
  ],
  [
    "that slants up from a canted bay",
    {
      bays: [bay("low", "0, 0, 620", ", cant: 10"), bay("high", "308, 0, 740", ", slope: 30")],
    },
  ],
  [
    "that slants up from a bay canted the other way, in thick sheet",
    {
      bays: [bay("low", "0, 0, 620", ", cant: -10"), bay("high", "290, 0, 740")],
      stock: PLY_18,
    },
  ],
  [
    "that slants down to a canted bay",
    {
      bays: [bay("high", "0, 0, 780"), bay("low", "308, 0, 620", ", cant: 10")],
    },
  ],
  ["up to an upright bay", { bays: [bay("desk", "0, 0, 620"), wall("wall", "322, 0, 700")] }],
  [
    "of half-laps",
    {
      bays: [bay("low", "0, 0, 620"), bay("high", "254, 0, 780")],
      frame: "{ type: side-console, sheet: birch-ply-12, joints: half-lap }",
    },
  ],
])("a step %s", (_, said) => {
  const { frame, findings, layout } = framed(said);

  test("asks nobody about its slots", () => {
    const asked = findings.filter(({ severity }) => severity !== "note");
    expect(asked.map(({ message }) => message)).toEqual([]);
  });

  test("goes together", () => {
    if (frame === null) throw new Error("a frame without a fault is made");
    const trouble = withKept((keep) => {
      const bench = { kernel, keep };
      const all = standing(piecesOf(frame), bench);
      return [
        ...clashes(all, bench),
        ...looseSlots(frame, all, bench),
        ...blockedSteps(frame, all, bench),
        ...layout.bays.flatMap((each) => inRoomOf(each, all, bench)),
      ];
    });
    expect(trouble).toEqual([]);
  });
});

// 15 mm beyond the strip's face, less half the clearance, 0.1, and what reliefs of 3.175 take, 1.5875 (1 - 1/√2) = 0.465.
test("the slots of a strip in a step lie as far in as those of any other board", () => {
  const { frame } = framed({ bays: [bay("low", "0, 0, 620"), bay("high", "228.6, 0, 780")] });
  const cheek = frame?.parts.find(({ id }) => id === "cheek-left");
  const strip = frame?.parts.filter(({ role }) => role === "strip")[0];
  if (cheek === undefined || strip === undefined) throw new Error("a cheek and a strip");
  const web = thinnestWeb(cheek, {
    from: (feature) => feature.startsWith(`slot.${strip.id}.`),
    to: () => false,
  });
  expect(web?.gap).toBeCloseTo(15 - 0.1 - 1.5875 * (1 - Math.SQRT1_2), 2);
});

// The strip begins at the end of the sloped bay. Its lower edge, 11.6 down, meets the room behind the panels, which goes square to
// them: 11.6 tan(44) = 11.20 along it. With the gap of 0.5 that boards keep, 0.5 + 12.1 tan(44) = 12.18, in half millimetres. Of 228.6
// the bay takes 164.44 forward and 158.80 up.
describe("beside a strip that gives way to a bay's room", () => {
  const near = (slope: number): string => (slope === 44 ? "284.44, 0, 778.8" : "295.12, 0, 766.94");
  const sloped = (slope: number): readonly Finding[] =>
    framed({
      bays: [bay("low", "0, 0, 620", `, slope: ${slope}`), bay("high", `${near(slope)}`)],
    }).findings.filter(({ code }) => code === "checks/frame-left-open");

  test("a gap that is wider than the sheet is thick is told of, with both widths and who sets the limit", () => {
    const [found, ...others] = sloped(44);
    expect(others).toEqual([]);
    expect(found?.message).toBe(
      "Beside top-1 a gap of 12.5 mm stays open, where it gives way to the panels of a bay: light and dust pass. Its end, planed to the bay's angle, closes 11.6 mm, 0.9 mm less. Close it with a batten or foil.",
    );
    expect([found?.measured?.value, found?.limit?.value]).toEqual([12.5, 11.6]);
    expect(found?.source?.name).toContain("the sheet's thickness");
  });

  test("and a narrower one, which the strip's own end closes once it is planed, is not", () => {
    expect(sloped(40)).toEqual([]);
  });
});
