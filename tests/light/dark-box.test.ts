// Dark box: gaps planted in lit panels are found, each by its name and nothing else, by the program and by a second opinion
// that follows thousands of rays through triangles; sealed one by one, the list goes to none. Legends stay lit.

import { beforeAll, describe, expect, test } from "vitest";
import { point } from "../../src/geometry/contour.ts";
import type { Kernel } from "../../src/geometry/solid/kernel.ts";
import { legendLightOf } from "../../src/light/legend-light.ts";
import { lightScene } from "../../src/light/light-scene.ts";
import { sightsOf } from "../../src/light/sight.ts";
import { litShare, waysOut } from "../support/dark-box.ts";
import { openKernel } from "../support/kernel.ts";
import {
  bareWalls,
  displayPanel,
  holeInFloor,
  type LitPanel,
  ledAt,
  ledPanel,
  leverPanel,
  noCollar,
  type Spoil,
  selfOpenPanel,
  shaftPanel,
  shortSpacer,
  slotInBox,
  widerHoles,
  windowPanel,
} from "./dark-panels.ts";

let kernel: Kernel;
beforeAll(async () => {
  kernel = await openKernel();
});

const spoilt = (panel: LitPanel, spoils: readonly Spoil[]): LitPanel =>
  spoils.reduce((before, spoil) => spoil(before), panel);

const sights = ({ layout, printedParts }: LitPanel): readonly string[] =>
  sightsOf(lightScene(layout, printedParts)).map(({ through, owner }) => `${through} ${owner}`);

/** What a ray's way out is called by whoever only sees where it leaves. */
const owners = (found: readonly string[]): readonly string[] =>
  [
    ...new Set(
      found.map((name) => (/^(edge|bare-edge|box) /.test(name) ? "edge" : name.split(" ")[1]!)),
    ),
  ].sort();

const traced = (panel: LitPanel): readonly string[] => waysOut({ ...panel, kernel, rays: 5000 });

interface Gap {
  readonly spoils: readonly Spoil[];
  readonly found: readonly string[];
}

interface Planted {
  readonly name: string;
  readonly panel: () => LitPanel;
  /** Each gap with what it must be called. */
  readonly gaps: readonly { readonly spoils: readonly Spoil[]; readonly found: string }[];
}

const PANELS: readonly Planted[] = [
  {
    name: "a lever whose nut hole lets a lamp through, and a cable's hole under a lamp",
    panel: () => leverPanel(),
    gaps: [
      {
        spoils: [widerHoles("pump", "front-clearance", 1.5), ledAt(point(40, 57))],
        found: "nut pump",
      },
      { spoils: [ledAt(point(60, 20)), holeInFloor(point(60, 18), 3)], found: "cable night" },
    ],
  },
  {
    name: "a display without its collar, and a spacer that ends short of its sheet",
    panel: displayPanel,
    gaps: [
      {
        spoils: [
          noCollar("depth"),
          widerHoles("depth", "clamp", 6),
          widerHoles("depth", "window", 8),
        ],
        found: "display depth",
      },
      { spoils: [shortSpacer], found: "edge spacer" },
    ],
  },
  {
    name: "a shaft in a hole wider than its flange, without its collar",
    panel: shaftPanel,
    gaps: [
      {
        spoils: [
          noCollar("speed"),
          widerHoles("speed", "clamp", 9),
          widerHoles("speed", "front-clearance", 4),
        ],
        found: "nut speed",
      },
    ],
  },
];

describe.each(PANELS)("$name", ({ panel, gaps }) => {
  test("gives every planted gap and nothing else; sealed one by one the list goes to none", () => {
    const whole = panel();
    for (let open = gaps.length; open >= 0; open -= 1) {
      const left = gaps.slice(0, open);
      const dark = spoilt(
        whole,
        left.flatMap(({ spoils }) => spoils),
      );
      const expected = left.map(({ found }) => found).sort();
      expect([...sights(dark)].sort()).toEqual(expected);
      expect(traced(dark)).toEqual(owners(expected));
    }
  });

  test("lights its legends, as the second opinion sees it too", () => {
    const { layout, printedParts } = panel();
    const lit = legendLightOf(lightScene(layout, printedParts));
    expect(lit.length).toBeGreaterThan(0);
    for (const { marking, share, lamps } of lit) {
      expect(lamps, marking.id).toBeGreaterThan(0);
      const other = litShare({ layout, printedParts, kernel, rays: 0 }, marking.id, 9);
      expect(share, marking.id).toBeGreaterThan(0.8);
      expect(Math.abs(other - share), marking.id).toBeLessThan(0.15);
    }
  });
});

describe("a lamp box", () => {
  const openings: readonly Gap[] = [
    {
      spoils: [slotInBox(point(66, 41), point(80, 45))],
      found: ["cell window.1", "cell window.2"],
    },
    { spoils: [slotInBox(point(40, 41), point(56, 45))], found: ["box window.1"] },
  ];

  test("lets light into the neighbouring window and out at its side where its walls have gaps; sealed it lets none", () => {
    for (let open = openings.length; open >= 0; open -= 1) {
      const left = openings.slice(0, open);
      const dark = spoilt(
        windowPanel(),
        left.flatMap(({ spoils }) => spoils),
      );
      const expected = left.flatMap(({ found }) => found).sort();
      expect([...sights(dark)].sort()).toEqual(expected);
      expect(traced(dark)).toEqual(owners(expected));
    }
  });
});

describe("a lamp of its own beside a nut hole of 13 mm", () => {
  test("is seen past the nut where the walls of holes are bare, and not where they are painted", () => {
    const bare = spoilt(ledPanel(), [bareWalls]);
    expect(sights(bare)).toEqual(["nut pump"]);
    // A bare sheet glows at its edges too: that is the sheet's choice and not told of a lamp of its own.
    expect(traced(bare)).toEqual(["edge", "pump"]);
    expect(sights(ledPanel())).toEqual([]);
    expect(traced(ledPanel())).toEqual([]);
  });
});

describe("an LED beside a nut hole of 13 mm", () => {
  const led = ledAt(point(40, 57));

  test("is reported", () => expect(sights(led(leverPanel(56.5, "", 13)))).toEqual(["nut pump"]));

  test("and a light-tight washer clears it", () => {
    const washed = led(leverPanel(56.5, ", washer: light-tight", 13));
    expect(washed.printedParts.map(({ role }) => role)).toContain("washer");
    expect(sights(washed)).toEqual([]);
    expect(traced(washed)).toEqual([]);
  });

  test("and a move clears it", () => {
    const moved = led(leverPanel(58, "", 13));
    expect(sights(moved)).toEqual([]);
    expect(traced(moved)).toEqual([]);
  });
});

describe("a legend", () => {
  test("has a window of its own that lets light to it and nothing out, as the second opinion sees it too", () => {
    const panel = selfOpenPanel();
    const { layout, printedParts } = panel;
    const [legend] = legendLightOf(lightScene(layout, printedParts));
    expect(legend?.lamps).toBeGreaterThan(0);
    const other = litShare({ layout, printedParts, kernel, rays: 0 }, "pump/legend", 9);
    expect(Math.abs(other - (legend?.share ?? 0))).toBeLessThan(0.15);
    expect(sights(panel)).toEqual([]);
    expect(traced(panel)).toEqual([]);
  });

  test("behind which the backing has no window is in the dark, and the backing is named", () => {
    const { layout, printedParts } = leverPanel(15);
    const [legend] = legendLightOf(lightScene(layout, printedParts));
    expect(legend).toMatchObject({ lamps: 0, share: 0, behind: "backing" });
    expect(litShare({ layout, printedParts, kernel, rays: 0 }, "pump/legend", 9)).toBe(0);
  });
});
