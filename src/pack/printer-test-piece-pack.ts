// The pack of a printer's test piece: its print files, inspected like any other, and a page that says how to measure it.

import { markdownTable } from "../export/markdown-table.ts";
import { decimal } from "../geometry/number.ts";
import type { Kernel } from "../geometry/solid/kernel.ts";
import type { PrintedPart } from "../parts/printed/printed-part.ts";
import { PRINTER_TEST_FEATURES } from "../parts/printed/printer-test-piece-features.ts";
import { inspectionPapers } from "./inspection-papers.ts";
import { manifestFile, manifestOf } from "./manifest.ts";
import type { PackFile } from "./pack-file.ts";
import type { PanelPack } from "./panel-pack.ts";
import { paperFile } from "./paper-file.ts";
import { printFilesOf } from "./print-files.ts";

export const packOfPrinterTestPiece = (
  parts: readonly PrintedPart[],
  kernel: Kernel,
): PanelPack => {
  const printed = parts.map((part) => printFilesOf(part, kernel));
  const inspection = printed.flatMap((one) => one.inspection);
  const [plate] = parts;
  const name = plate?.id ?? "test-piece";
  const files = [
    ...(plate === undefined ? [] : [measuringPage(plate)]),
    ...printed.flatMap((one) => one.files),
    ...inspectionPapers(inspection),
  ];
  const manifest = manifestOf({ name, revision: plate?.revision ?? "A" }, files, []);
  return { files: [...files, manifestFile(manifest)], inspection, findings: [] };
};

const measuringPage = (part: PrintedPart): PackFile =>
  paperFile(
    "measuring-list",
    "measure.md",
    [
      "# Measure the test piece",
      "",
      "1. Print plate and key with the filament, nozzle, layer and speed of the parts that are to come, and with no correction of holes or first layers in the slicer: they would be counted twice. Air the room.",
      "2. Let them cool on the bed. Take the strings off; file nothing.",
      "3. Measure with a caliper, to a hundredth. Leave out what you can't read.",
      "4. Try the key in the slots from the loosest to the tightest. The number beside a slot is its clearance a side.",
      "5. In a dark room hold a bright lamp close behind each wall. The number beside it counts its lines; note the thinnest that stays dark.",
      "6. Set an M3 insert into each boss with the iron: hot brass and plastic fumes, so hold it with pliers and air the room. The number beside a boss is what its hole is larger than the datasheet's pilot.",
      "",
      markdownTable(
        [
          { title: "name", align: "left" },
          { title: "drawn, mm", align: "right" },
          { title: "what to read", align: "left" },
          { title: "read", align: "right" },
        ],
        PRINTER_TEST_FEATURES.map(({ id, nominal, how }) => [
          id,
          nominal === null ? "" : decimal(nominal, 2),
          how,
          "",
        ]),
      ),
      "7. Enter the readings. They become the printer's profile in the workshop file, and the next parts are made by it:",
      "",
      "```",
      `consolewright testpiece printer --workshop workshop.yaml --machine ${part.printer?.id ?? ""} --stock ${part.stock.id} \\`,
      "  --read hole-3=2.68,hole-6=5.74,peg-5=5.08,foot=130.5,above=129.9,press=0.05,snug=0.15,sliding=0.2,loose=0.4,opaque=3,insert=0.3",
      "```",
      "",
      "The numbers in this line are an example; yours are on the piece.",
      "",
    ].join("\n"),
  );
