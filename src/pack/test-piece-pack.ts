// The pack of a laser test piece: its cut files, inspected like any other, and a page that says how to measure it.

import { markdownTable } from "../export/markdown-table.ts";
import type { ProcessColours } from "../export/process-colours.ts";
import { decimal } from "../geometry/number.ts";
import { TEST_FEATURES, type TestFeature } from "../parts/laser-test-piece.ts";
import type { SheetPart } from "../parts/sheet-part.ts";
import { colourKey } from "./colour-key.ts";
import { cutFilesOf } from "./cut-files.ts";
import { inspectionPapers } from "./inspection-papers.ts";
import { manifestFile, manifestOf } from "./manifest.ts";
import type { PackFile } from "./pack-file.ts";
import type { PanelPack } from "./panel-pack.ts";
import { paperFile } from "./paper-file.ts";
import { partHash } from "./part-hash.ts";

export const packOfTestPiece = (part: SheetPart, colours: ProcessColours): PanelPack => {
  const span = part.stock.written.span;
  const cut = cutFilesOf(part, { folder: "cut", colours, title: part.title, span });
  const files = [
    measuringPage(part),
    ...cut.files,
    colourKey(colours),
    ...inspectionPapers(cut.inspection),
  ];
  const panel = { name: part.id, revision: part.revision };
  return { ...cut, files: [...files, manifestFile(manifestOf(panel, files, [partHash(part)]))] };
};

const HOW: Readonly<Record<TestFeature["what"], string>> = {
  "piece-x": "the loose square, along the arrow X",
  "piece-y": "the loose square, across the arrow",
  "opening-x": "width of the upright slot",
  "opening-y": "width of the lying slot",
  circle: "diameter of the opening, two ways: note the mean",
  "pin-hole": "does a 1/4-40 bush (6.35 mm) go in by hand?",
};

const measuringPage = (part: SheetPart): PackFile =>
  paperFile(
    "measuring-list",
    "measure.md",
    [
      "# Measure the test piece",
      "",
      "1. Cut it at the settings, and with the masking and the coating, of the panel that is to come. Stay beside the laser.",
      "2. Let it cool. Mark which side faced the beam: a cut is wider there. Measure on that side, with a caliper, edges wiped clean.",
      "3. Write down what the caliper shows, to a hundredth.",
      "",
      markdownTable(
        [
          { title: "name", align: "left" },
          { title: "drawn, mm", align: "right" },
          { title: "what to measure", align: "left" },
          { title: "measured", align: "right" },
        ],
        TEST_FEATURES.map(({ id, nominal, what }) => [id, decimal(nominal, 2), HOW[what], ""]),
      ),
      "4. Read the lettering of 3, 3.5 and 4 mm from where the operator will sit: the smallest that reads well is the least that this machine should engrave.",
      "5. Hold the solid patch to a lamp: pinholes want another coat.",
      "6. Enter the readings. They go into the workshop file, and your next cut files hold them:",
      "",
      "```",
      `consolewright testpiece laser --workshop workshop.yaml --machine ${part.setUps[0]?.machine.id ?? ""} --stock ${part.stock.id} \\`,
      "  --read square-x=19.79,square-y=19.81,slot-x=3.21,slot-y=3.19 --pin 6.4 --dated 2026-01-31",
      "```",
      "",
      "The numbers in this line are an example; yours are on the piece.",
      "",
    ].join("\n"),
  );
