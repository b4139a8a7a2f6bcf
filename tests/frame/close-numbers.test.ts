// Numbers that a finding compares, where they lie nearer together than two decimals say.

import { expect, test } from "vitest";
import { framed } from "./framed.ts";

const told = (code: string, said: Parameters<typeof framed>[0]): string =>
  framed(said).findings.find((found) => found.code === code)?.message ?? "";

const numbersIn = (message: string): readonly number[] =>
  [...message.matchAll(/([\d.]+) mm/g)].map(([, number]) => Number(number));

// 136.525 mm between columns of holes of 6.6 mm, 127 mm between the rails (MIL-F-25173A): 1.4625 mm of wood.
test("wood beside a rail's hole that lacks half a micrometre is told as less than is wanted", () => {
  const [is, wanted, lack] = numbersIn(
    told("checks/frame-rail-web", { house: "{ rail-web: 1.463 mm }" }),
  );
  expect(is).toBeLessThan(wanted!);
  expect(lack).toBeGreaterThan(0);
});

// The section is 211.2 mm across; its other sides are longer.
test("a doorway that is wider than high is told as it is written, each side beside the section's own", () => {
  const bays = [
    "aft: { mount: console-rail, at: [0, -400, 620], along: [1, 0, 0], length: 24 modules, depth: 120 mm }",
  ];
  const message = (doorway: string): string =>
    told("checks/frame-doorway", {
      bays,
      frame: `{ type: side-console, sheet: birch-ply-12, doorway: ${doorway} }`,
    });
  const upright =
    /^At its least the section with aft is 211\.2 mm x ([\d.]+) mm; the doorway is 200 mm x 1900 mm, 11\.2 mm too small\. A doorway of 211\.2 mm x 1900 mm lets it pass, this one with its panels 11\.2 mm narrower\.$/;
  const [, long] = upright.exec(message("[200, 1900]")) ?? [];
  expect(message("[1900, 200]")).toBe(
    `At its least the section with aft is ${long} mm x 211.2 mm; the doorway is 1900 mm x 200 mm, 11.2 mm too small. A doorway of 1900 mm x 211.2 mm lets it pass, this one with its panels 11.2 mm narrower.`,
  );
  expect(message("[211.199, 1900]")).toContain("is 211.200 mm x");
  expect(message("[211.199, 1900]")).toContain("211.199 mm x 1900 mm, 0.001 mm too small.");
});
