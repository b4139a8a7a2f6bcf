// A stencil legend is cut right through: nothing may fall out of it. (The stencil's whole purpose.)

import { describe, expect, it } from "vitest";
import { mm } from "../../src/geometry/quantity.ts";
import { islandsOf } from "../../src/lettering/islands.ts";
import { setText } from "../../src/lettering/set-text.ts";
import { everyFace, faceNamed } from "./faces.ts";

const SET = { capHeight: mm(6), align: "start" } as const;
const HAS_A_COUNTER = [..."ABDOPQR04689"];

describe("saira-stencil", () => {
  const face = faceNamed("saira-stencil");

  it.each([..."ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789.,:;-+/()!?&%"])(
    "%s has no island",
    (letter) => {
      const { fills, missing } = setText(face, letter, SET);
      expect(missing).toEqual([]);
      expect(fills.length).toBeGreaterThan(0);
      expect(islandsOf(fills)).toEqual([]);
    },
  );

  it("is the only stencil face", () => {
    expect(everyFace.filter(({ kind }) => kind === "stencil").map(({ id }) => id)).toEqual([
      "saira-stencil",
    ]);
  });
});

it.each(HAS_A_COUNTER)("an outline face's %s would drop its middle", (letter) => {
  const { fills } = setText(faceNamed("overpass"), letter, SET);
  expect(islandsOf(fills).length).toBeGreaterThan(0);
});
