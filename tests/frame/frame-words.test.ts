// What is said of a frame that can't be cut: before any board of it is made, with a value that works. Expectations are sums
// over the text, done by hand beside each.

import { describe, expect, test } from "vitest";
import { framed } from "./framed.ts";

const BAY =
  "near: { mount: console-rail, at: [480, 0, 800], along: [1, 0, 0], length: 20 modules, depth: 80 mm }";

const faultsOf = (frame: string): readonly string[] =>
  framed({ bays: [BAY], frame })
    .findings.filter(({ severity }) => severity === "fault")
    .map(({ code, message }) => `${code}: ${message}`);

describe("a knee space deeper than its desk", () => {
  // 20 modules of 9.525 are 190.5; behind the knees stand 15 of cheek, a board of 11.6, half a millimetre on each side of it
  // less the one beyond the bay, and 40 for the floor's tab and its webs: 123.4.
  test("says how deep it can be", () => {
    expect(faultsOf("{ type: front-desk, sheet: birch-ply-12 }")).toEqual([
      "checks/frame-knees: The knee space is to be 440 mm deep, and before the boards behind it the desk leaves 123.4 mm, 316.6 mm less. knees: [123.4, 620] goes in; longer bays leave more.",
    ]);
  });

  test("and that much it can be", () => {
    const { frame, findings } = framed({
      bays: [BAY],
      frame: "{ type: front-desk, sheet: birch-ply-12, knees: [123.4, 620] }",
    });
    expect(findings.filter(({ severity }) => severity === "fault")).toEqual([]);
    expect(frame?.parts.map(({ id }) => id)).toContain("floor");
  });
});

describe("holes of the rails that run together", () => {
  // The pitch is 9.525, and as much is twice the 4.7625 from a column of holes to its bar's edge.
  test.each(["9.525", "40"])("%s mm", (hole) => {
    const frame = `{ type: side-console, sheet: birch-ply-12, rails: { hole: ${hole} mm } }`;
    expect(faultsOf(frame)).toEqual([
      `checks/frame-rail-hole: The rails of near: holes of ${hole} mm run into one another, rail-hole.1 (left) and rail-hole.2 (left) first, 9.525 mm from middle to middle; less than 9.525 mm leaves wood between them. hole: 6.6 mm, as wide as the panels' own, does.`,
    ]);
  });

  test("with wood between them nothing is said", () => {
    expect(
      faultsOf("{ type: side-console, sheet: birch-ply-12, rails: { hole: 9.4 mm } }"),
    ).toEqual([]);
  });
});

describe("bays whose ribs want the same place", () => {
  const bayAt = (id: string, at: string): string =>
    `${id}: { mount: console-rail, at: ${at}, along: [1, 0, 0], length: 60 modules, depth: 80 mm }`;
  const saidOf = (at: string): readonly string[] =>
    framed({
      bays: [bayAt("left", "[480, 110, 800]"), bayAt("right", at)],
      frame: "{ type: front-desk, sheet: birch-ply-12 }",
    })
      .findings.filter(({ severity }) => severity === "fault")
      .map(({ message }) => message);

  test("one within another", () => {
    // 571.5 long, from 480 on to 1051.5: the second begins 351.5 before that.
    expect(saidOf("[700, 110, 800]")).toEqual([
      "left and right: their ribs, 60 mm below the room of the panels, want the same place: 351.5 mm of it, and 0 mm can be shared. at: [1051.5, 110, 800] (right) parts them.",
    ]);
    expect(saidOf("[1051.5, 110, 800]")).toEqual([]);
  });
});

describe("ribs nearer than they are thick", () => {
  const ribs = (spacing: string): string =>
    `{ type: side-console, sheet: birch-ply-12, ribs: { spacing: ${spacing} } }`;

  // The run is 190.5 less twice the web of 14.5 and a board of 11.6: 149.9, in 150 parts of 0.9993.
  test("want the same place", () => {
    expect(faultsOf(ribs("1 mm"))).toEqual([
      "checks/frame-ribs: The ribs of near begin 1 mm apart, and their slots are 11.8 mm wide: 10.8 mm more are wanted before any wood stands between them. spacing: 47 mm does.",
    ]);
  });

  test("further apart nothing is said", () => {
    expect(faultsOf(ribs("47 mm"))).toEqual([]);
  });
});

describe("little wood beside a slot", () => {
  // Cheeks stand 4 mm beyond: less half the clearance, 0.1, and a relief of 1.5875 (1 - 1/√2) = 0.465.
  const beside = (house: string): readonly string[] =>
    framed({
      bays: [BAY],
      frame: "{ type: side-console, sheet: birch-ply-12, beyond: 4 mm }",
      house,
    })
      .findings.filter(({ code }) => code === "checks/frame-web")
      .map(({ measured, limit, source }) =>
        [measured?.value.toFixed(3), limit?.value, source?.kind].join(" "),
      );

  test("is less than the sheet's thickness, usually", () => {
    expect(beside("{}")).toEqual(["3.435 11.6 house-rule"]);
  });

  test("or less than the workshop says", () => {
    expect(beside("{ frame-web: 3.5 mm }")).toEqual(["3.435 3.5 workshop"]);
    expect(beside("{ frame-web: 3.4 mm }")).toEqual([]);
  });
});

// Half the clearance, 0.1, and a relief of 1.5875 (1 - 1/√2) = 0.465 stand out over the edge: with the sheet's 11.6 that is 12.165.
test("a slot that runs out over the edge of its cheek is a fault, by as much as it does", () => {
  const [found] = framed({
    bays: [BAY],
    frame: "{ type: side-console, sheet: birch-ply-12, beyond: 0 mm }",
  }).findings.filter(({ code }) => code === "checks/frame-web");
  expect(found?.severity).toBe("fault");
  expect(found?.measured?.value).toBeCloseTo(-0.565, 3);
  expect(found?.message).toMatch(
    /^cheek-right: slot\.\S+ runs out over the edge by 0\.56 mm; 11\.6 mm is to stand between the two, 12\.16 mm more\. beyond: 12\.2 mm leaves it\.$/,
  );
  expect(found?.remedies.map(({ title }) => title)).toEqual(["beyond: 12.2 mm"]);
});

const PLY_18 =
  "{ material: plywood, colour: birch, light: opaque, nominal: 18 mm, measured: 17.4 mm, dated: 2026-10-02 }";

describe("nobody writes how far the cheeks stand beyond the bays", () => {
  const RACK =
    "rack: { mount: rack-19, at: [300, -400, 760], along: [1, 0, 0], length: 7 U, depth: 160 mm }";
  const SLOPED =
    "rack: { mount: rack-19, at: [560, 0, 860], along: [1, 0, 0], slope: 20 deg, length: 8 U, depth: 160 mm }";

  test.each([
    ["side-console", RACK],
    ["side-console", SLOPED],
    ["side-console", SLOPED.replace("slope", "cant")],
    ["front-desk", SLOPED.replace("8 U", "11 U")],
  ])(
    "and in thick sheets, reliefs of a thick tool and all, a web is left (%s, %s)",
    (type, bay) => {
      for (const clearance of ["0.2", "0.6"]) {
        const { frame, findings } = framed({
          bays: [bay],
          frame: `{ type: ${type}, knees: [300, 500], sheet: birch-ply-12, clearance: ${clearance} mm }`,
          stock: PLY_18,
          tools: "[{ diameter: 6 mm }]",
          bed: "[3000, 3000]",
        });
        expect(frame, findings.map(({ message }) => message).join()).not.toBeNull();
        expect(
          findings.filter(({ code }) => code === "checks/frame-web").map(({ message }) => message),
        ).toEqual([]);
      }
    },
  );
});

describe("wood beside the holes of a rail", () => {
  const said = (hole: string, house = "{}"): readonly string[] =>
    framed({
      bays: [BAY],
      frame: `{ type: side-console, sheet: birch-ply-12, rails: { hole: ${hole} mm } }`,
      house,
    })
      .findings.filter(({ code }) => code === "checks/frame-rail-web")
      .map(({ message }) => message);

  // MIL-F-25173A (secondary copies): 4.7625 from the middle of a hole to the bar's edge.
  test("is 0.26 mm beside 9 mm, and a millimetre beside the hole that is said to leave it", () => {
    expect(said("9")).toEqual([
      "rail-near-left: 0.26 mm stand between rail-hole.1 and its edge; 1 mm is wanted, 0.74 mm more. hole: 7.5 mm leaves it.",
    ]);
    expect(said("7.5")).toEqual([]);
    expect(said("7.6")).toHaveLength(1);
  });

  test("is as much as the workshop asks", () => {
    expect(said("9", "{ rail-web: 0.2 mm }")).toEqual([]);
    expect(said("6.6", "{ rail-web: 1.5 mm }")).toHaveLength(1);
  });
});

describe("bolts between sections", () => {
  // Beds that hold one bay, not both.
  const said = (z: number, depth: number, frame: string): readonly string[] =>
    framed({
      bed: z > 300 ? "[700, 500]" : "[500, 300]",
      bays: [0, 320].map(
        (x) =>
          `b${x}: { mount: console-rail, at: [${x}, -420, ${z}], along: [1, 0, 0], length: 24 modules, depth: ${depth} mm }`,
      ),
      frame: `{ type: side-console, sheet: birch-ply-12, ${frame} }`,
    })
      .findings.filter(({ code }) => code === "checks/frame-bolt")
      .map(({ severity, measured, suppressed }) =>
        [severity, measured?.value.toFixed(3), suppressed].join(" "),
      );

  // The end board goes from 60 to 135: a bolt 120 up from its foot is 49.5 beyond it, on both boards that are bolted together.
  test("beyond their board are a fault", () => {
    expect(said(135, 30, "ribs: { web: 30 mm }")).toEqual(["fault -49.500 1"]);
  });

  // From 60 to 190: the bolt's edge, 124.5 up, stands 5.5 below that.
  test("near its edge are a query", () => {
    expect(said(190, 60, "ribs: { web: 50 mm }")).toEqual(["query 5.500 1"]);
  });

  test("with wood round them are none", () => {
    expect(said(620, 120, "hatch: none")).toEqual([]);
  });
});

describe("a bay about as deep as its sheet is thick", () => {
  const said = (depth: string): readonly string[] =>
    framed({
      bays: [
        `near: { mount: console-rail, at: [480, 0, 800], along: [1, 0, 0], length: 20 modules, depth: ${depth} mm }`,
      ],
    })
      .findings.filter(({ severity }) => severity === "fault")
      .map(({ code, message }) => `${code} ${/depth: .*/.exec(message)?.[0]}`);

  // A tool of 3.175: 11.6 and √2 x 1.5875 = 2.245 are 13.845.
  test("leaves ribs a step that no relief fits into", () => {
    expect(said("12.1")).toEqual(["checks/frame-rib-step depth: 13.9 mm does."]);
    expect(said("13.8")).toHaveLength(1);
    expect(said("9.4")).toHaveLength(1);
  });

  test("or none, or one with room", () => {
    expect(said("13.9")).toEqual([]);
    expect(said("11.6")).toEqual([]);
    expect(said("9.3")).toEqual([]);
  });
});

describe("the ribs of a bay canted by 70 degrees", () => {
  const said = (web: number): readonly string[] =>
    framed({
      bays: [
        "near: { mount: console-rail, at: [480, 0, 800], along: [1, 0, 0], cant: 70 deg, length: 20 modules, depth: 80 mm }",
      ],
      frame: `{ type: side-console, sheet: birch-ply-12, ribs: { web: ${web} mm } }`,
    })
      .findings.filter(({ code }) => code.startsWith("checks/frame-"))
      .map(({ code, message }) => `${code}: ${message}`);

  test("find room for a tab with the web that is said, and not with a millimetre less", () => {
    const [fault, ...others] = said(60);
    expect(others).toEqual([]);
    const works = Number(/web: (\d+) mm/.exec(fault ?? "")?.[1]);
    expect(works).toBe(114);
    expect(said(works)).toEqual([]);
    expect(said(works - 1)[0]).toContain("checks/frame-rib-tab");
  });
});

describe("how wide a frame stands", () => {
  const apart = (frame: string): number => {
    const parts = framed({ bays: [BAY], frame }).frame?.parts ?? [];
    const place = (id: string): number =>
      parts.find((part) => part.id === id)?.frame.origin.y ?? Number.NaN;
    // Good faces look outward: between the boards there is less by both thicknesses of 11.6.
    return Math.abs(place("cheek-left") - place("cheek-right")) - 2 * 11.6;
  };

  test("before knees it leaves the room that a seated person's take", () => {
    // OSHA workstation guidance: 520 wide.
    expect(apart("{ type: front-desk, sheet: birch-ply-12, knees: [120, 620] }")).toBeCloseTo(
      520,
      6,
    );
  });

  test("beside a seat it is as narrow as its bays, unless it says how wide", () => {
    expect(apart("{ type: side-console, sheet: birch-ply-12 }")).toBeCloseTo(188, 6);
    expect(apart("{ type: side-console, sheet: birch-ply-12, width: 300 mm }")).toBeCloseTo(300, 6);
  });
});
