// What a view of the whole holds: the bodies, and the envelope where one is written. Corners read off the text by hand.

import { expect, test } from "vitest";
import { consoleBodies } from "../../src/fit/bodies/console-bodies.ts";
import { compile } from "../../src/project.ts";
import { consoleScene } from "../../viewer/console/console-scene.ts";
import { testLibrary } from "../support/test-library.ts";

const CONSOLE = `consolewright: 1
kind: console
name: desk
bays:
  one: { mount: console-rail, at: [0, 0, 700], along: [1, 0, 0], length: 20 modules, depth: 150 mm }
envelope:
  profile: [[-60, 0], [420, 0], [420, 640], [340, 800], [-60, 690]]
  across: [-250 mm, 250 mm]
`;

test("an envelope is in sight with the rest", () => {
  const files = new Map([["console.yaml", CONSOLE]]);
  const { console } = compile({ entry: "console.yaml", files }, testLibrary());
  if (console === null) throw new Error("the text is a console");
  const { layout, frame } = console;
  const bodies = consoleBodies({ layout, frame, printedParts: new Map() });
  const { box } = consoleScene(layout, bodies, { sent: new Map(), trueShape: () => null }).scene;
  expect(box.low.z).toBeCloseTo(0, 3);
  expect(box.high.z).toBeCloseTo(800, 3);
  expect(box.high.y - box.low.y).toBeGreaterThanOrEqual(480);
});
