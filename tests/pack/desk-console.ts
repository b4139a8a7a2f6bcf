// A small console for the tests of what a console gives out: a level bay and one raised by 30 degrees, three panels, an
// operator, an inside and a duct, all with round figures.

import type { ConsoleScene } from "../../src/drawings/console-scene.ts";
import { consoleBodies } from "../../src/fit/bodies/console-bodies.ts";
import { compile, type Project } from "../../src/project.ts";
import { testLibrary } from "../support/test-library.ts";

/** 6 modules of 9.525 mm: 57.15. */
const panel = (name: string): string => `consolewright: 1
kind: panel
name: ${name}
mount: console-rail
height: 6 modules
stack: [{ layer: face, sheet: aluminium-2 }]
components:
  main: { part: toggle-12, at: { left: 50 mm, bottom: 28 mm }, legend: MAIN }
  speed: { part: pot-16, knob: knob-22-skirt, at: { left: 95 mm, bottom: 28 mm }, legend: SPEED }
`;

export const DESK = `consolewright: 1
kind: console
name: desk
title: Desk of the tests
bays:
  level: { mount: console-rail, at: [0, 0, 700], along: [1, 0, 0], slope: 0, cant: 0, length: 20 modules, depth: 120 mm }
  raised: { mount: console-rail, at: [200, 0, 700], along: [1, 0, 0], slope: 30 deg, cant: 0, length: 10 modules, depth: 120 mm }
panels:
  - { file: one.yaml, as: one, bay: level, module: 0, loop: 300 mm }
  - { file: two.yaml, as: two, bay: level, after: one }
  - { file: three.yaml, as: three, bay: raised, module: 2 }
operator: { seat-height: 430 mm, at: [-400 mm, 0 mm] }
envelope: { profile: [[-10 mm, 500 mm], [400 mm, 500 mm], [400 mm, 900 mm], [-10 mm, 700 mm]], across: [-100 mm, 100 mm] }
obstacles:
  - { name: duct, box: [100 mm, 60 mm, 40 mm], at: [100 mm, 0 mm, 520 mm] }
`;

export const deskProject = (text = DESK): Project =>
  compile(
    {
      entry: "console.yaml",
      files: new Map([
        ["console.yaml", text],
        ...["one", "two", "three"].map((name) => [`${name}.yaml`, panel(name)] as const),
      ]),
    },
    testLibrary(),
  );

export const sceneOf = (project: Project): ConsoleScene => {
  const { console } = project;
  if (console === null) throw new Error("the design is a console");
  const { layout } = console;
  const printedParts = new Map(project.panels.map((each) => [each.name, each.printedParts]));
  const bodies = consoleBodies({ layout, printedParts, frame: null });
  return { layout, bodies, frame: null };
};
