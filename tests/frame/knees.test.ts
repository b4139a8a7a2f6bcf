// The knee space of a front desk where nobody writes how deep: what the fit asks of a desk is what the desk is made with.
// 440 mm at the knee, 600 at the foot: OSHA guidance on computer workstations. Knees as high as a seat and 186 mm of thighs, 604
// at least: NUREG-0700 Rev 3, table 11.4. The rest are sums over the text, by hand.

import { describe, expect, test } from "vitest";
import type { Finding } from "../../src/diagnostics/finding.ts";
import { consoleBodies } from "../../src/fit/bodies/console-bodies.ts";
import { operatorFacts } from "../../src/fit/operator/operator-facts.ts";
import { contourExtent } from "../../src/geometry/measure.ts";
import { findingsOf, type Texts } from "../findings/example.ts";
import { faultsOf, isSame, remedied } from "../findings/remedied.ts";
import { openKernel } from "../support/kernel.ts";
import { type FrameText, framed, soundFrame } from "./framed.ts";
import { trouble } from "./random-frames.ts";

const kernel = await openKernel();

const DESK = "{ type: front-desk, sheet: birch-ply-12 }";

const deskText = (modules: number, up: number): string =>
  `desk: { mount: console-rail, at: [400, 0, ${up}], along: [1, 0, 0], length: ${modules} modules, depth: 80 mm }`;

const seatText = (height: number): string =>
  `operator: { seat-height: ${height} mm, at: [0, 0], hand: right }\n`;

const desk = (modules: number, up: number, seat: number): Partial<FrameText> => ({
  bays: [deskText(modules, up)],
  frame: DESK,
  more: seatText(seat),
});

const kneesBelow = (said: Partial<FrameText>): readonly (number | undefined)[] => {
  const { layout, frame } = framed(said);
  const { knees } = operatorFacts(
    layout,
    consoleBodies({ layout, frame, printedParts: new Map() }),
  );
  return [knees?.depthAtKnee, knees?.depthAtFoot, knees?.height].map((room) => room?.has);
};

const expectClose = (has: readonly (number | undefined)[], wants: readonly number[]): void => {
  expect(has).toHaveLength(wants.length);
  for (const [index, want] of wants.entries()) expect(has[index]).toBeCloseTo(want, 6);
};

describe("an unwritten knee space", () => {
  // Its cheeks end the knees, its boards stand 15 behind: 80 modules of 9.525 are 762 mm of desk.
  test("is deeper at the foot than at the knee", () => {
    const frame = soundFrame({ ...desk(80, 800, 430), more: "" });
    const at = (id: string): readonly number[] => {
      const part = frame.parts.find((each) => each.id === id)!;
      const { minY, maxY } = contourExtent(part.region.outline);
      // Good faces look outward, to the seat: the board's face stands at its origin.
      return [part.frame.origin.x, part.frame.origin.z, maxY - minY];
    };
    // The knees' board stands on the one over the feet (120 + 15 + 11.6 + 0.5) and below the one over the knees (635 - 0.5).
    expectClose(at("back").slice(0, 1), [400 + 440 + 15]);
    expectClose(at("back").slice(2), [634.5 - 147.1]);
    // The feet's stands from 60 over the floor to half a millimetre below the one over them, at 135.
    expectClose(at("foot-back").slice(0, 1), [400 + 600 + 15]);
    expectClose(at("foot-back").slice(2), [134.5 - 60]);
    // From the knees' board to behind the feet's.
    expectClose(at("foot-top").slice(2), [600 - 440 + 11.6]);
  });

  test("goes together", () => {
    expect(trouble(soundFrame(desk(80, 800, 430)), kernel)).toEqual([]);
    expect(trouble(soundFrame(desk(60, 800, 430)), kernel)).toEqual([]);
    const lapped = { ...desk(80, 800, 430), frame: `${DESK.slice(0, -1)}, joints: half-lap }` };
    expect(trouble(soundFrame(lapped), kernel)).toEqual([]);
  });

  // Between cheeks 520 apart the boards are what stands before knees and feet: 15 behind the cheeks' edges.
  test("is what the fit asks for, on a high seat too", () => {
    expectClose(kneesBelow(desk(80, 800, 430)), [455, 615, 635]);
    expectClose(kneesBelow(desk(80, 900, 480)), [455, 615, 480 + 186 + 15]);
  });

  // 60 modules are 571.5: half a millimetre more, less 15 of cheek, 11.6 of board, half a millimetre on each side of it and 40 of floor.
  test("is as deep at the foot as a shorter desk leaves, and as high as its bays", () => {
    expectClose(kneesBelow(desk(60, 800, 430)), [455, 504.4 + 15, 635]);
    // 800 less 80 of depth, 60 of rib, 0.5 of gap, 11.6 of board and 15 of cheek.
    expectClose(kneesBelow(desk(80, 800, 480)), [455, 615, 632.9 + 15]);
  });

  // 50 modules are 476.25, which leave 409.15 of depth.
  test("is told of where knees find no room", () => {
    const found = framed(desk(50, 800, 430)).findings.filter(
      ({ severity }) => severity === "fault",
    );
    expect(found.map(({ code }) => code)).toEqual(["checks/frame-knees"]);
  });

  // 54 modules are 514.35, which leave 447.25: no room for a board between knees and feet.
  test("is straight where feet would have a hand's breadth more at most", () => {
    expectClose(kneesBelow(desk(54, 800, 430)), [455, 455, 635]);
  });

  test("is straight where it is written", () => {
    const frame = `${DESK.slice(0, -1)}, knees: [440, 620] }`;
    expectClose(kneesBelow({ ...desk(80, 800, 430), frame }), [455, 455, 635]);
  });
});

describe("too little room below a desk", () => {
  const consoleText = (modules: number, seat: number, frame: string): Texts =>
    new Map([
      [
        "console.yaml",
        `consolewright: 1\nkind: console\nname: stand\nworkshop: bench.yaml\nbays:\n  ${deskText(modules, 800)}\nframe: ${frame}\n${seatText(seat)}`,
      ],
      [
        "bench.yaml",
        "consolewright: 1\nkind: workshop\nname: bench\nstock:\n  birch-ply-12: { material: plywood, colour: birch, light: opaque, nominal: 12 mm, measured: 11.6 mm, dated: 2026-01-31 }\nmachines:\n  router: { type: router, bed: [1500, 1500], tools: [{ diameter: 3.175 mm }] }\nuse: { frame: router }\n",
      ],
    ]);
  const found = (texts: Texts): readonly Finding[] =>
    findingsOf(texts).filter(({ code }) => code === "fit/knee-room");
  const written = `${DESK.slice(0, -1)}, knees: [440, 600] }`;

  test("is not found below one that is made as usual", () => {
    expect(found(consoleText(80, 430, DESK))).toEqual([]);
  });

  test("goes with the knee space that the desk has room for", () => {
    const texts = consoleText(80, 430, written);
    const before = found(texts);
    expect(before.map(({ remedies }) => remedies.map(({ title }) => title))).toEqual([
      ["knees: [585, 600]"],
      ["knees: [440, 601]"],
    ]);
    for (const finding of before) {
      const after = findingsOf(remedied(texts, finding.remedies[0]!));
      const same = after.filter(
        (each) => isSame(finding, each) && each.limit?.value === finding.limit?.value,
      );
      expect(same).toEqual([]);
      expect(faultsOf(after)).toEqual([]);
    }
  });

  test("says how much farther a shorter desk reaches, and how much higher a lower one stands", () => {
    expect(found(consoleText(60, 430, DESK)).map(({ message }) => message)).toEqual([
      "The room for knees is 519.4 mm deep at the foot, up to the back of the foot space; 600 mm are wanted, 80.6 mm more. Bays that reach 80.6 mm farther leave it.",
    ]);
    // 480 and 186 are 666, of which 632.9 + 15 are there.
    expect(found(consoleText(80, 480, DESK)).map(({ message }) => message)).toEqual([
      expect.stringMatching(/ 18\.1 mm more\. Bays that stand 18\.1 mm higher leave it\.$/),
    ]);
    expect(
      found(consoleText(60, 430, `${DESK.slice(0, -1)}, knees: [440, 620] }`))[0]?.message,
    ).toMatch(/ Bays that reach 80\.6 mm farther leave it, with knees: \[585, 620\]\.$/);
  });
});
