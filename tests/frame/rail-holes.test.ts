// Holes of a bay's rails that can't be: what is said of them names the two numbers that are held against one another, and a
// value only where it is one.

import { expect, test } from "vitest";
import type { Finding } from "../../src/diagnostics/finding.ts";
import { compile } from "../../src/project.ts";
import { testLibrary } from "../support/test-library.ts";
import { PLY_SHED } from "./ply-shed.ts";

const panel = (name: string, size: string): string =>
  `consolewright: 1\nkind: panel\nname: ${name}\nworkshop: shed.yaml\n${size}\nstack: [{ layer: face, sheet: plate }]\n`;

interface Said {
  readonly bay: string;
  readonly frame?: string;
  /** What each panel is, and where it stands in the bay. */
  readonly panels: Readonly<Record<string, { readonly size: string; readonly place: string }>>;
}

const railHolesOf = ({
  bay,
  frame = "{ type: side-console, sheet: ply }",
  panels,
}: Said): readonly Finding[] => {
  const all = Object.entries(panels);
  const uses = all.map(
    ([name, { place }]) => `  - { file: ${name}.yaml, as: ${name}, ${place} }\n`,
  );
  const text = `consolewright: 1\nkind: console\nname: stand\nworkshop: shed.yaml\nbays:\n  ${bay}\nframe: ${frame}\npanels:\n${uses.join("")}`;
  const files = new Map([
    ["console.yaml", text],
    ["shed.yaml", PLY_SHED],
    ...all.map(([name, { size }]) => [`${name}.yaml`, panel(name, size)] as const),
  ]);
  const project = compile({ entry: "console.yaml", files, binaries: new Map() }, testLibrary());
  return project.findings.filter(({ code }) => code === "checks/frame-rail-hole");
};

const DESK =
  "desk: { mount: corner-screws, at: [0, -400, 700], along: [1, 0, 0], length: 400 mm, depth: 120 mm }";
const SCREWED = "mount: corner-screws\nwidth: 120 mm\nheight: 90 mm";

// Screws 7 mm from the edges, holes of 3.4 mm: with both panels at one place hole falls on hole.
test("two panels on one place are told that their holes meet, with no width and no hole that would not help", () => {
  const [found] = railHolesOf({
    bay: DESK,
    panels: {
      one: { size: SCREWED, place: "bay: desk, module: 0" },
      other: { size: SCREWED, place: "bay: desk, module: 0" },
    },
  });
  expect(found?.message).toBe(
    "The rails of desk: the holes for mount.1.left of one and mount.1.left of other, 3.4 mm wide, stand 0 mm from middle to middle and run into one another, 3.4 mm too near. The panels that they are for stand too near to one another.",
  );
  expect([found?.measured?.value, found?.limit?.value, found?.remedies]).toEqual([0, 3.4, []]);
});

// Screws of the one 7 mm from its edges, 43 from the middle, and of the other 143: rails of 103 and more, in which the holes of one
// stand far from those of the other. Cheeks stand at whole tenths, and farther out for wider holes: none of them lacks room for tabs.
test("holes of a narrow and a wide panel in one bay have wood, however wide they are, up to the bar's edge", () => {
  const said = (hole: string): readonly (string | undefined)[] =>
    railHolesOf({
      bay: "desk: { mount: corner-screws, at: [0, -400, 640], along: [1, 0, 0], length: 600 mm, depth: 120 mm, clear-width: 300 mm }",
      frame: `{ type: side-console, sheet: ply, rails: { hole: ${hole} mm } }`,
      panels: {
        wide: {
          size: "mount: corner-screws\nwidth: 300 mm\nheight: 400 mm",
          place: "bay: desk, module: 0",
        },
        thin: {
          size: "mount: corner-screws\nwidth: 100 mm\nheight: 60 mm",
          place: "bay: desk, module: 430",
        },
      },
    }).map(({ message }) => message);
  for (const hole of ["2", "3", "3.1", "3.2", "3.39", "3.4", "3.5", "3.6", "13.9"])
    expect([hole, said(hole)]).toEqual([hole, []]);
  // As far within the screws as they stand from the panel's edge the bar begins: 7 from their middles.
  expect(said("14.5")).toEqual([
    "The rails of desk: holes of 14.5 mm run into the bar's edge, mount.1.left of thin first, its middle 7 mm from it; less than 14 mm leaves wood between them. hole: 3.4 mm, as wide as the panels' own, does.",
  ]);
});

// The second begins 2 mm on: 2 between the middles.
test("panels that overlap in part are told how far apart their holes are, and how far they should be", () => {
  const [found] = railHolesOf({
    bay: DESK,
    panels: {
      one: { size: SCREWED, place: "bay: desk, module: 0" },
      other: { size: SCREWED, place: "bay: desk, module: 2" },
    },
  });
  expect(found?.message).toContain(
    "the holes for mount.1.left of one and mount.1.left of other, 3.4 mm wide, stand 2 mm from middle to middle and run into one another, 1.4 mm too near.",
  );
  expect(found?.source).toEqual({
    kind: "geometry",
    name: "the places of mount.1.left of one and mount.1.left of other",
  });
  expect([found?.measured?.value, found?.limit?.value]).toEqual([2, 3.4]);
});

const rack = (clear: string): Said => ({
  bay: `desk: { mount: rack-19, at: [300, 0, 400], along: [0, 0, 1], length: 4 U, depth: 250 mm${clear} }`,
  panels: { one: { size: "mount: rack-19\nheight: 1 U", place: "bay: desk, module: 0" } },
});

// EIA/ECA-310: 465.1 mm between the columns of holes.
test("rails farther apart than the holes are told both, and a clear width that works", () => {
  const [found] = railHolesOf(rack(", clear-width: 470 mm"));
  const [, works = ""] =
    /^The rails of desk are to be 470 mm apart, and the holes for their panels, 465\.1 mm from middle to middle, want ([\d.]+) mm at most: .* clear-width: \1 mm does, or none written\.$/.exec(
      found?.message ?? "",
    ) ?? [];
  expect([found?.measured?.value, found?.limit?.value]).toEqual([470, Number(works)]);
  expect(railHolesOf(rack(`, clear-width: ${works} mm`))).toEqual([]);
  expect(railHolesOf(rack(""))).toEqual([]);
});

// A hole through the rails' inner edge and one that runs beyond it are one mistake: less between the rails.
test("rails whose inner edge runs through the panels' own holes are told a clear width as well", () => {
  const [found] = railHolesOf(rack(", clear-width: 462 mm"));
  const [, works = ""] = /clear-width: ([\d.]+) mm does/.exec(found?.message ?? "") ?? [];
  expect(railHolesOf(rack(`, clear-width: ${works} mm`))).toEqual([]);
});

test("a hole of the frame's own that is too wide is told the panels' own, and it does", () => {
  const wide = { ...rack(""), frame: "{ type: side-console, sheet: ply, rails: { hole: 13 mm } }" };
  const [found] = railHolesOf(wide);
  const [, works = ""] = /hole: ([\d.]+) mm does/.exec(found?.message ?? "") ?? [];
  expect(railHolesOf({ ...wide, frame: wide.frame.replace("13", works) })).toEqual([]);
});
