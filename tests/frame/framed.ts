// A frame from a few lines of design text: bays, what is said of the frame, and the sheet as measured.

import { judgedFrame } from "../../src/checks/frame/judged-frame.ts";
import type { ConsoleDesign } from "../../src/design/console-design.ts";
import type { FrameDesign } from "../../src/design/frame-design.ts";
import { readDesign } from "../../src/design/read-design.ts";
import type { WorkshopDesign } from "../../src/design/workshop-design.ts";
import type { Finding } from "../../src/diagnostics/finding.ts";
import type { ConsoleLayout } from "../../src/layout/console/console-layout.ts";
import { layoutConsole } from "../../src/layout/console/layout-console.ts";
import type { ConsoleFrame } from "../../src/parts/frame/frame-part.ts";
import { testLibrary } from "../support/test-library.ts";

export interface FrameText {
  readonly bays: readonly string[];
  readonly frame: string;
  /** Further lines of the console: who sits at it. */
  readonly more: string;
  readonly stock: string;
  readonly bed: string;
  readonly tools: string;
  /** The workshop's own limits. */
  readonly house: string;
}

/** The two bays of a side console, flat and rising, both tilted toward the operator. */
const USUAL: FrameText = {
  bays: [
    "aft: { mount: console-rail, at: [0, -420, 620], along: [1, 0, 0], cant: 8 deg, length: 60 modules, depth: 180 mm }",
    "forward: { mount: console-rail, at: [620, -420, 640], along: [1, 0, 0], slope: 12 deg, cant: 8 deg, length: 40 modules, depth: 150 mm }",
  ],
  frame: "{ type: side-console, sheet: birch-ply-12 }",
  more: "",
  stock:
    "{ material: plywood, colour: birch, light: opaque, nominal: 12 mm, measured: 11.6 mm, dated: 2026-10-02 }",
  bed: "[1500, 1500]",
  tools: "[{ diameter: 3.175 mm }]",
  house: "{}",
};

export interface Framed {
  readonly layout: ConsoleLayout;
  readonly frame: ConsoleFrame | null;
  readonly findings: readonly Finding[];
}

export const framed = (said: Partial<FrameText> = {}): Framed => {
  const { bays, frame, more, stock, bed, tools, house } = { ...USUAL, ...said };
  const workshop = workshopOf(
    `consolewright: 1\nkind: workshop\nname: shed\nstock:\n  birch-ply-12: ${stock}\nmachines:\n  router: { type: router, bed: ${bed}, tools: ${tools} }\nuse: { frame: router }\nhouse-rules: ${house}\n`,
  );
  const text = `consolewright: 1\nkind: console\nname: stand\nbays:\n${bays.map((bay) => `  ${bay}\n`).join("")}frame: ${frame}\n${more}`;
  const { design, frameDesign } = consoleOf(text);
  const { catalogue, lettering } = testLibrary();
  const { layout } = layoutConsole(design, { catalogue, panels: [], meshes: new Map() });
  return {
    layout,
    ...judgedFrame(
      layout,
      { design: frameDesign, workshop, catalogue, lettering },
      new Map([["console.yaml", text]]),
    ),
  };
};

/** A frame without a fault. */
export const soundFrame = (said: Partial<FrameText> = {}): ConsoleFrame => {
  const { frame, findings } = framed(said);
  if (frame === null) throw new Error(findings.map(({ message }) => message).join("\n"));
  return frame;
};

const workshopOf = (text: string): WorkshopDesign => {
  const { design, findings } = readDesign("workshop.yaml", text);
  if (design?.kind !== "workshop") throw new Error(findings.map(({ message }) => message).join());
  return design;
};

const consoleOf = (
  text: string,
): { readonly design: ConsoleDesign; readonly frameDesign: FrameDesign } => {
  const { design, findings } = readDesign("console.yaml", text);
  if (design?.kind !== "console" || design.frame === null)
    throw new Error(findings.map(({ message }) => message).join());
  return { design, frameDesign: design.frame };
};
