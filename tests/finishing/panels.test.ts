import { describe, expect, test } from "vitest";
import { DEFAULT_COLOURS } from "../../src/export/process-colours.ts";
import { svgCutFile } from "../../src/export/svg-cut-file.ts";
import { contourExtent } from "../../src/geometry/measure.ts";
import type { CutOut } from "../../src/layout/panel-layout.ts";
import { compile, type PanelProject, type Project } from "../../src/project.ts";
import {
  type BenchGauge,
  finishSheet,
  type GaugeShape,
  tryFrame,
  tryGauge,
  tryThread,
} from "../support/finishing-bench.ts";
import { testLibrary } from "../support/test-library.ts";

// A panel cut, painted and tried on the finishing bench, which knows nothing but the written files. What the bench finds
// wrong must be what the program's findings named, neither more nor less.
// Figures: kerf tapers by 0.02 from top to bottom (common practice), paint 0.08 a side, ISO 7823-1's range for a 3 mm sheet.

const PANEL = (toggle: string, pot: string): string => `consolewright: 1
kind: panel
name: bench
title: Bench panel
workshop: workshop.yaml
mount: console-rail
height: 10 modules
stack:
  - { layer: face, sheet: opal, finish: painted }
  - { layer: backing, sheet: black, finish: painted, worked-from: rear }
fixings: { screws: m3, dowels: 3 mm }
components:
  brake: { part: toggle-12, at: { left: 38 mm, top: 34 mm }${toggle} }
  pump: { part: push-button-16, at: { left: 96 mm, top: 30 mm } }
  speed: { part: pot-16, at: { left: 60 mm, bottom: 30 mm }${pot} }
  lamp: { part: led-5-bezel, at: { left: 110 mm, bottom: 28 mm } }
`;

interface Shop {
  readonly kerf: string;
  readonly paint: string;
  readonly face: string;
}

const MEASURED: Shop = {
  kerf: "measured: [{ stock: opal, kerf: [0.21, 0.19], dated: 2026-10-02 }, { stock: black, kerf: [0.21, 0.19], dated: 2026-10-02 }]",
  paint: "thickness: 0.08 mm, dated: 2026-10-05, ",
  face: "measured: 2.86 mm, dated: 2026-10-02",
};

const WORKSHOP = ({ kerf, paint, face }: Shop): string => `consolewright: 1
kind: workshop
name: bench-shop
stock:
  opal: { material: acrylic-cast, colour: opal, light: translucent, nominal: 3 mm${face === "" ? "" : `, ${face}`} }
  black: { material: acrylic-cast, colour: black, light: opaque, nominal: 3 mm, measured: 2.95 mm, dated: 2026-10-02 }
finishes:
  painted: { coats: [black, black], ${paint}order: cut-paint-engrave }
machines:
  laser:
    type: co2-laser
    bed: [600, 400]
    spot: 0.15 mm
    kerf: in-file
${kerf === "" ? "" : `    ${kerf}\n`}use: { default: laser }
`;

const compiled = (
  shop: Shop,
  toggle = "",
  pot = "",
): { readonly project: Project; readonly panel: PanelProject } => {
  const files = new Map([
    ["panel.yaml", PANEL(toggle, pot)],
    ["workshop.yaml", WORKSHOP(shop)],
  ]);
  const project = compile({ entry: "panel.yaml", files }, testLibrary());
  const [panel] = project.panels;
  if (panel?.layout == null) throw new Error("the bench panel compiles");
  return { project, panel };
};

const BOTH_SHEETS = ", clamps: [face, backing]";

const TAPER = 0.02;

interface Truth {
  /** Kerf that the laser really takes, at the middle of the sheet. */
  readonly kerf: number;
  readonly paint: number;
}

/** Owners whose gauge fails in any layer, on sheets finished as `truth` says. */
const failing = (panel: PanelProject, truth: Truth): readonly string[] => {
  const failed = panel.sheetParts.flatMap((part) => {
    const [setUp] = part.setUps;
    if (setUp === undefined) throw new Error("a part has a set-up");
    const text = svgCutFile(part, setUp, { colours: DEFAULT_COLOURS, title: part.title });
    const sheet = finishSheet(text, {
      kerfTop: truth.kerf + TAPER / 2,
      kerfBottom: truth.kerf - TAPER / 2,
      paint: truth.paint,
      corner: { x: setUp.sheet.minX, y: setUp.sheet.minY },
    });
    const layer = panel.layout?.layers.find(({ id }) => id === part.layer);
    return (layer?.cutOuts ?? [])
      .filter(({ gauge }) => gauge !== null)
      .filter((cutOut) => !tryGauge(sheet, benchGauge(cutOut)).goes)
      .map(({ owner }) => owner);
  });
  return [...new Set(failed)].toSorted();
};

/** The gauge as a turner would make it: a plug of the part's own size at the part's own place. */
const benchGauge = (cutOut: CutOut): BenchGauge => {
  const { gauge } = cutOut;
  if (gauge === null) throw new Error("only gauged holes are tried");
  const box = contourExtent(gauge.go);
  const go: GaugeShape =
    gauge.go.kind === "circle"
      ? { kind: "round", diameter: 2 * gauge.go.radius }
      : { kind: "rectangle", width: box.maxX - box.minX, height: box.maxY - box.minY };
  return {
    what: gauge.what,
    x: (box.minX + box.maxX) / 2,
    y: (box.minY + box.maxY) / 2,
    go,
    noGoSize: gauge.noGo === null ? null : gauge.noGo + TAPER,
  };
};

const subjectsOf = (panel: PanelProject, code: string): readonly string[] => {
  const layers = new Set(panel.layout?.layers.map(({ id }) => id));
  const subjects = panel.findings
    .filter((found) => found.code === code)
    .flatMap((found) => found.subjects);
  return [...new Set(subjects)].filter((id) => !layers.has(id)).toSorted();
};

describe("a panel on the finishing bench", () => {
  test("with the test piece's numbers entered, everything goes", () => {
    const { panel } = compiled(MEASURED);
    expect(panel.findings.filter(({ severity }) => severity === "fault")).toEqual([]);
    expect(failing(panel, { kerf: 0.2, paint: 0.08 })).toEqual([]);
  });

  test("the finished panel goes between its neighbours on the rail", () => {
    const { panel } = compiled(MEASURED);
    const part = panel.sheetParts.find(({ layer }) => layer === "backing");
    const setUp = part?.setUps[0];
    if (part === undefined || setUp === undefined) throw new Error("there is a backing");
    const text = svgCutFile(part, setUp, { colours: DEFAULT_COLOURS, title: part.title });
    const sheet = finishSheet(text, { kerfTop: 0.21, kerfBottom: 0.19, paint: 0.08 });
    // MS25212: 146.05 wide; ten modules of 9.525.
    expect(tryFrame(sheet, { width: 146.05, height: 95.25 })).toMatchObject({ goes: true });
  });

  test("with kerf off by 0.1 and paint at its thickest, exactly the fits that were named fail", () => {
    // Nothing measured: the file assumes 0.23 for 3 mm acrylic and 0.1 of paint; the shop takes 0.13 and sprays 0.15.
    const { panel } = compiled({ ...MEASURED, kerf: "", paint: "" });
    const named = subjectsOf(panel, "checks/fit-unmeasured");
    expect(named.length).toBeGreaterThan(0);
    expect(failing(panel, { kerf: 0.13, paint: 0.15 })).toEqual(named);
  });

  test("a hole cut as drawn, its paint forgotten, is named and binds, and nothing else does", () => {
    // 12.0 mm less twice 0.08 is 11.84: a 15/32 in bush (11.906, the record's 11.9) stays out.
    const { panel } = compiled(MEASURED, ", hole: 12 mm");
    expect(subjectsOf(panel, "checks/hole-too-small")).toEqual(["brake"]);
    expect(failing(panel, { kerf: 0.2, paint: 0.08 })).toEqual(["brake"]);
  });

  test("on the 3.7 mm sheet that ISO 7823-1 allows, exactly the bushes that were named are too short", () => {
    // Cast acrylic, nominal 3: ±(0.4 + 0.1 x 3) = 2.3 to 3.7.
    const { panel } = compiled({ ...MEASURED, face: "" }, BOTH_SHEETS, BOTH_SHEETS);
    const short = (panel.layout?.components ?? [])
      .filter(({ part, clamped }) => {
        if (part.hold.kind !== "bush") return false;
        const layers = (panel.layout?.layers ?? []).slice(clamped.first, clamped.last + 1);
        const hardware = testLibrary().catalogue.hardware;
        const thickness = (id: string): number => {
          const piece = hardware.get(id);
          return piece?.kind === "washer" || piece?.kind === "nut" ? piece.thickness : 0;
        };
        return !tryThread({
          sheetThicknesses: layers.map(({ id }) => (id === "face" ? 3.7 : 2.95)),
          // The opal face is painted on its front only, so that light gets through it.
          paints: layers.flatMap(({ id }) => (id === "face" ? [0.08] : [0.08, 0.08])),
          washers: part.hold.washers.map(thickness),
          threadLength: part.hold.length,
          nut: thickness(part.hold.nut),
        }).goes;
      })
      .map(({ id }) => id);
    expect(short).toEqual(["speed"]);
    expect(subjectsOf(panel, "checks/thread-too-short")).toEqual(short);
  });
});
