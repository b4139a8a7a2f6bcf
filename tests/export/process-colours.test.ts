// The default colours against the published palette, and what a user's own mapping may hold.

import { describe, expect, test } from "vitest";
import { DEFAULT_COLOURS, processColours } from "../../src/export/process-colours.ts";

/** Okabe and Ito 2008, in the published 8-bit values. */
const PALETTE: Readonly<Record<string, readonly [number, number, number]>> = {
  black: [0, 0, 0],
  orange: [230, 159, 0],
  "bluish green": [0, 158, 115],
  blue: [0, 114, 178],
  vermillion: [213, 94, 0],
  "reddish purple": [204, 121, 167],
};

test("the defaults are six different colours of the palette", () => {
  const published = Object.values(PALETTE).map(
    (channels) => `#${channels.map((channel) => channel.toString(16).padStart(2, "0")).join("")}`,
  );
  expect(Object.values(DEFAULT_COLOURS).toSorted()).toEqual(published.toSorted());
});

describe("a user's mapping", () => {
  test("replaces a colour, in either case", () => {
    const choice = processColours({ "cut-outer": "#FF0000" });
    expect(choice.colours).toEqual({ ...DEFAULT_COLOURS, "cut-outer": "#ff0000" });
    expect(choice.refused).toEqual([]);
  });

  test.each([
    ["cut-outer", "red"],
    ["cut-outer", `#ff0000"/><script>`],
    ["cut-outer", "#f00"],
    ["cut", "#ff0000"],
    ["__proto__", "#ff0000"],
  ])("%s: %s is refused and the default stays", (process, colour) => {
    const choice = processColours(Object.fromEntries([[process, colour]]));
    expect(choice.colours).toEqual(DEFAULT_COLOURS);
    expect(choice.refused.map((refused) => refused.process)).toEqual([process]);
  });

  test("one colour for two processes is refused: the machine could not tell them apart", () => {
    const choice = processColours({ score: DEFAULT_COLOURS.engrave });
    expect(choice.refused).toEqual([
      { process: "score", colour: "#000000", why: "is the colour of engrave already" },
    ]);
  });
});
