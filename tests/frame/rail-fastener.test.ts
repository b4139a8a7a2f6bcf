// The hole that is offered for a rail is one that the fastener goes through: the panels' own only where it does that.

import { expect, test } from "vitest";
import type { Finding } from "../../src/diagnostics/finding.ts";
import { mm } from "../../src/geometry/quantity.ts";
import { compile } from "../../src/project.ts";
import { testLibrary } from "../support/test-library.ts";
import { PLY_SHED } from "./ply-shed.ts";

const consoleText = (hole: string): string => `consolewright: 1
kind: console
name: stand
workshop: shed.yaml
bays:
  aft: { mount: console-rail, at: [0, -400, 620], along: [1, 0, 0], length: 24 modules, depth: 120 mm }
frame: { type: side-console, sheet: ply, rails: { hole: ${hole} } }
`;

/** The panels' own holes are 6.6 wide. */
const foundWith = (body: number, hole: string): readonly Finding[] => {
  const library = testLibrary();
  const { hardware } = library.catalogue;
  const stud = hardware.get("stud-console");
  if (stud?.kind !== "stud") throw new Error("a stud");
  const thick = new Map([...hardware, ["stud-console", { ...stud, body: mm(body) }] as const]);
  const files = new Map([
    ["console.yaml", consoleText(hole)],
    ["shed.yaml", PLY_SHED],
  ]);
  return compile(
    { entry: "console.yaml", files, binaries: new Map() },
    { ...library, catalogue: { ...library.catalogue, hardware: thick } },
  ).findings.filter(({ code }) => code === "checks/frame-rail-fastener");
};

test("a stud of 6.53 mm goes through the panels' own hole, which is offered", () => {
  const [found] = foundWith(6.53, "5 mm");
  expect(found?.message).toContain("hole: 6.6 mm, as wide as the panels' own, does.");
  expect(foundWith(6.53, "6.6 mm")).toEqual([]);
});

test("a stud of 7 mm does not, and a hole that it goes through is offered", () => {
  const [found] = foundWith(7, "5 mm");
  expect(found?.message).toContain(
    "5 mm don't let stud-console pass, which is 7 mm thick, 2 mm more. hole: 7 mm does;",
  );
  expect(found?.remedies.map(({ title }) => title)).toEqual(["hole: 7 mm"]);
  expect(foundWith(7, "7 mm")).toEqual([]);
});
