// Lit panels with gaps planted in them: compiled from text, then one thing is spoilt in layout or print at a time. A seal
// is the same panel without that one.

import { difference } from "../../src/geometry/boolean.ts";
import { type Contour, circle, type Point } from "../../src/geometry/contour.ts";
import { extent } from "../../src/geometry/extent.ts";
import { contourExtent } from "../../src/geometry/measure.ts";
import { offsetContour } from "../../src/geometry/offset.ts";
import { mm } from "../../src/geometry/quantity.ts";
import { rectangle } from "../../src/geometry/shapes.ts";
import { type LayeredSolid, type SolidLayer, solidRegion } from "../../src/geometry/solid/solid.ts";
import type { CutOut, LayerLayout, PanelLayout } from "../../src/layout/panel-layout.ts";
import type { PrintedPart } from "../../src/parts/printed/printed-part.ts";
import { compile, type Library } from "../../src/project.ts";
import { testLibrary } from "../support/test-library.ts";

export interface LitPanel {
  readonly layout: PanelLayout;
  readonly printedParts: readonly PrintedPart[];
}

/** Spoils a panel in one way, or changes its text first. */
export type Spoil = (panel: LitPanel) => LitPanel;

const WORKSHOP = `consolewright: 1
kind: workshop
name: shed
stock:
  opal: { material: acrylic-cast, colour: opal, nominal: 3 mm, measured: 2.9 mm, dated: 2026-01-31 }
  black: { material: acrylic-cast, colour: black, nominal: 3 mm, measured: 2.9 mm, dated: 2026-01-31 }
  black-petg: { material: petg, colour: black, opaque-from: 1.35 mm }
finishes:
  painted: { coats: [black, black], thickness: 0.08 mm, dated: 2026-01-31, order: cut-paint-engrave }
`;

const HEAD = `consolewright: 1
kind: panel
name: dark
workshop: shed.yaml
mount: console-rail
height: 9 modules
stack:
  - { layer: face, sheet: opal, finish: painted }
  - { layer: backing, sheet: black, windows: none }
  - { layer: spacer, print: black-petg, depth: 14 mm, lighting: { strip: strip-60-5v-addressable, circuit: night } }
fixings: { screws: m3, dowels: 3 mm }
`;

const compiled = new Map<string, LitPanel>();

const litPanel = (lines: string, nutHole = 12): LitPanel => {
  const key = `${nutHole} ${lines}`;
  const known = compiled.get(key) ?? compiledPanel(lines, libraryWith(nutHole));
  compiled.set(key, known);
  return known;
};

/** A miniature toggle whose nut wants a hole of another size in the sheet before it. */
const libraryWith = (nutHole: number): Library => {
  const library = testLibrary();
  const { catalogue } = library;
  const toggle = catalogue.parts.get("toggle-6")!;
  const front = { kind: "round", diameter: mm(nutHole) } as const;
  const wider = { ...toggle, openings: { ...toggle.openings, front } };
  return {
    ...library,
    catalogue: { ...catalogue, parts: new Map(catalogue.parts).set(toggle.id, wider) },
  };
};

const compiledPanel = (lines: string, library: Library, head = HEAD): LitPanel => {
  const files = new Map([
    ["panel.yaml", head + lines],
    ["shed.yaml", WORKSHOP],
  ]);
  const project = compile({ entry: "panel.yaml", files }, library);
  const [panel] = project.panels;
  const faults = [...project.findings, ...(panel?.findings ?? [])].filter(
    ({ severity }) => severity === "fault",
  );
  if (panel?.layout == null || faults.length > 0)
    throw new Error(faults.map(({ message }) => message).join("\n"));
  return { layout: panel.layout, printedParts: panel.printedParts };
};

/** A lever and a window for light behind its legend. `window` is the height of the window's middle. */
export const leverPanel = (window = 57, more = "", nutHole = 12): LitPanel =>
  litPanel(
    `components:
  pump: { part: toggle-6, turn: 90 deg, at: { left: 40 mm, top: 40 mm }, legend: PUMP${more} }
markings:
  - window: { at: { x: 40 mm, y: ${window} mm }, width: 24 mm, height: 10 mm, corner: 1 mm, layers: [backing] }
`,
    nutHole,
  );

/** The lever again, with the window that opens by itself. */
export const selfOpenPanel = (): LitPanel =>
  compiledPanel(
    "components:\n  pump: { part: toggle-6, turn: 90 deg, at: { left: 40 mm, top: 40 mm }, legend: PUMP }\n",
    testLibrary(),
    HEAD.replace(", windows: none", ""),
  );

export const displayPanel = (): LitPanel =>
  litPanel(`components:
  depth: { part: seven-segment-4-056, at: { x: centre, top: 40 mm }, legend: DEPTH }
markings:
  - window: { at: { x: centre, y: 62 mm }, width: 30 mm, height: 8 mm, corner: 1 mm, layers: [backing] }
`);

export const shaftPanel = (): LitPanel =>
  litPanel(`components:
  speed: { part: pot-16, at: { x: centre, top: 40 mm }, legend: SPEED }
markings:
  - window: { at: { x: centre, y: 63 mm }, width: 24 mm, height: 8 mm, corner: 1 mm, layers: [backing] }
`);

/** Two windows in a black sheet, their lamp box behind it and nothing round it. */
export const windowPanel = (): LitPanel =>
  compiledPanel(
    `components:
  window: { row: { part: lamp-window-18x12, count: 2, pitch: 24 mm }, at: centre, lamp-box: { print: black-petg, diffuser: opal } }
`,
    testLibrary(),
    BOX_HEAD,
  );

const BOX_HEAD = `consolewright: 1
kind: panel
name: dark
workshop: shed.yaml
mount: console-rail
height: 9 modules
stack:
  - { layer: face, sheet: black }
`;

/** An LED in the sheet beside a lever: no strip lights the panel. */
export const ledPanel = (): LitPanel =>
  compiledPanel(
    `components:
  pump: { part: toggle-6, turn: 90 deg, at: { left: 40 mm, top: 40 mm } }
  run: { part: led-5, at: { left: 56 mm, top: 40 mm } }
`,
    libraryWith(13),
    HEAD.replace(", lighting: { strip: strip-60-5v-addressable, circuit: night }", ""),
  );

/** The face was painted before it was cut: the walls of its holes are bare, its edges too. */
export const bareWalls: Spoil = ({ layout, printedParts }) => ({
  layout: { ...layout, layers: layout.layers.map(bareLayer) },
  printedParts,
});

const bareLayer = (layer: LayerLayout): LayerLayout =>
  layer.finish === null
    ? layer
    : { ...layer, finish: { ...layer.finish, order: "paint-then-cut" } };

/** A slot through every layer of the lamp box. */
export const slotInBox =
  (from: Point, to: Point): Spoil =>
  ({ layout, printedParts }) => ({
    layout,
    printedParts: printedParts.map((part) => {
      if (part.role !== "lamp-box") return part;
      const slot = rectangle(extent(from.x, from.y, to.x, to.y));
      return withLayers(part, (layer) => ({
        ...layer,
        regions: difference(
          layer.regions.map(({ outline, holes }) => ({
            outline: outline.contour,
            holes: holes.map(({ contour }) => contour),
          })),
          [slot],
        ).map((region) => solidRegion(region)),
      }));
    }),
  });

/** Holes of a component are wider than they should be, all round. */
export const widerHoles =
  (owner: string, purpose: CutOut["purpose"], more: number): Spoil =>
  ({ layout, printedParts }) => ({
    layout: withCutOuts(layout, (cutOut) => {
      if (cutOut.owner !== owner || cutOut.purpose !== purpose) return cutOut;
      const wider = offsetContour(cutOut.contour, more);
      if (wider.kind === "refused") throw new Error(wider.why);
      return { ...cutOut, contour: wider.contour };
    }),
    printedParts,
  });

const withCutOuts = (layout: PanelLayout, change: (cutOut: CutOut) => CutOut): PanelLayout => ({
  ...layout,
  layers: layout.layers.map((layer) => ({ ...layer, cutOuts: layer.cutOuts.map(change) })),
});

/** One more LED in the first channel. */
export const ledAt =
  (at: Point): Spoil =>
  ({ layout, printedParts }) => ({
    layout,
    printedParts: printedParts.map((part) => {
      const [first, ...others] = part.facts.channels;
      if (first === undefined) return part;
      const channels = [{ ...first, leds: [...first.leds, at] }, ...others];
      return { ...part, facts: { ...part.facts, channels } };
    }),
  });

/** The spacer without the wall round a component: only what stands inside its pocket is gone from every layer. */
export const noCollar =
  (owner: string): Spoil =>
  ({ layout, printedParts }) => ({
    layout,
    printedParts: printedParts.map((part) => {
      const collar = part.facts.collars.find(({ owners }) => owners.includes(owner));
      if (collar === undefined) return part;
      return withLayers(part, (layer) => ({
        ...layer,
        regions: layer.regions.filter(
          ({ holes }) => holes.length !== 1 || !isRound(holes[0]!.contour, collar.inner),
        ),
      }));
    }),
  });

const isRound = (hole: Contour, inner: Contour): boolean => {
  const [a, b] = [contourExtent(hole), contourExtent(inner)];
  return Math.abs(a.minX - b.minX) + Math.abs(a.maxX - b.maxX) + Math.abs(a.maxY - b.maxY) < 0.01;
};

/** The spacer ends short of the sheet that it should touch. */
export const shortSpacer: Spoil = ({ layout, printedParts }) => ({
  layout,
  printedParts: printedParts.map((part) =>
    part.role !== "spacer"
      ? part
      : withLayers(part, (layer, last) => (last ? { ...layer, to: mm(layer.from + 0.05) } : layer)),
  ),
});

/** A hole through the spacer's floor. */
export const holeInFloor =
  (at: Point, radius: number): Spoil =>
  ({ layout, printedParts }) => ({
    layout,
    printedParts: printedParts.map((part) => {
      if (part.role !== "spacer") return part;
      const hole = { contour: circle(at, radius), clearance: "exact" as const };
      const spoilt = withLayers(part, (layer) => {
        const [first, ...others] = layer.regions;
        return first === undefined || layer.regions.length > 1
          ? layer
          : { ...layer, regions: [{ ...first, holes: [...first.holes, hole] }, ...others] };
      });
      const notch = part.facts.notches[0];
      const notches = notch === undefined ? [] : [{ ...notch, at, exit: hole.contour }];
      return { ...spoilt, facts: { ...spoilt.facts, notches } };
    }),
  });

const withLayers = (
  part: PrintedPart,
  change: (layer: SolidLayer, isLast: boolean) => SolidLayer,
): PrintedPart => {
  const [body, ...others] = part.bodies;
  if (body === undefined || body.solid.kind !== "layered") return part;
  const { layers } = body.solid;
  const solid: LayeredSolid = {
    kind: "layered",
    layers: layers.map((layer, index) => change(layer, index === layers.length - 1)),
  };
  const bodies = [{ ...body, solid }, ...others];
  return { ...part, bodies, pieces: [{ number: 1, bodies }] };
};
