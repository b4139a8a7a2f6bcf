// Colours that two processes share are refused when a design is judged, not first when its files are made.

import { expect, test } from "vitest";
import { compile } from "../../src/project.ts";
import { testLibrary } from "../support/test-library.ts";

const PANEL = `consolewright: 1
kind: panel
name: bell
workshop: shed.yaml
mount: box-lid
width: 60 mm
height: 50 mm
stack: [{ layer: face, sheet: aluminium-2 }]
`;

test("a process colour that two processes share is a fault of the workshop", () => {
  const shed =
    'consolewright: 1\nkind: workshop\nname: shed\nprocess-colours: { engrave: "#ff0000", cut-inner: "#ff0000" }\n';
  const files = new Map([
    ["bell.yaml", PANEL],
    ["shed.yaml", shed],
  ]);
  const { findings } = compile({ entry: "bell.yaml", files }, testLibrary());
  expect(findings).toMatchObject([
    { code: "pack/refused-colour", severity: "fault", span: { file: "shed.yaml" } },
  ]);
});
