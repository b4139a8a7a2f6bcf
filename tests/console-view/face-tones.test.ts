// A panel's face in the console's picture is as light or dark as it is by its sheet and its paint, and its words as they are read
// there: dark on what is light. By the design's own words, read off by hand.

import { expect, test } from "vitest";
import { compile } from "../../src/project.ts";
import { markingTone, sheetTone } from "../../viewer/console/body-tone.ts";
import { testLibrary } from "../support/test-library.ts";

const layoutOf = (sheet: string, finish: string) => {
  const text = `consolewright: 1
kind: panel
name: pumps
mount: console-rail
height: 10 modules
stack: [{ layer: face, sheet: ${sheet}, finish: ${finish} }]
components:
  main: { part: toggle-6, at: { x: 40 mm, y: 50 mm }, legend: MAIN }
`;
  const files = new Map([["panel.yaml", text]]);
  const { layout } = compile({ entry: "panel.yaml", files }, testLibrary()).panels[0]!;
  if (layout === null) throw new Error("the panel is laid out");
  return layout;
};

test.each([
  ["aluminium-2", "black-filled", "metal", "dark-marking"],
  ["opal-acrylic-3", "paint-and-engrave", "painted", "marking"],
] as const)("%s, %s", (sheet, finish, face, words) => {
  const front = layoutOf(sheet, finish).layers[0]!;
  expect([sheetTone(front), markingTone(front)]).toEqual([face, words]);
});
