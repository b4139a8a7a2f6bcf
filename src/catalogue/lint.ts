// Proves one record: that its shapes can be drawn, that it fits itself and its hardware, and that its numbers have
// sources. Takes the catalogue that its names lead into; gives what can't be so, by field.

import { boardFaults, insertFaults, ledBoardFaults, stripFaults } from "./lint/lint-boards.ts";
import { bodyFaults } from "./lint/lint-bodies.ts";
import type { LintFault } from "./lint/lint-fault.ts";
import { figureFaults } from "./lint/lint-figures.ts";
import { hardwareFaults, materialFaults, mountFaults } from "./lint/lint-hardware.ts";
import { holdFaults } from "./lint/lint-hold.ts";
import { openingFaults } from "./lint/lint-openings.ts";
import { shapeFaults, shapesOf } from "./lint/lint-shape.ts";
import { useFaults } from "./lint/lint-use.ts";
import type { Part } from "./part.ts";
import type { Catalogue, CatalogueRecord } from "./record.ts";

export function lintRecord(record: CatalogueRecord, catalogue: Catalogue): readonly LintFault[] {
  switch (record.kind) {
    case "part":
      return [...partFaults(record, catalogue), ...figureFaults(record)];
    case "mount":
      return [...mountFaults(record, catalogue), ...figureFaults(record)];
    case "material":
      return [...materialFaults(record), ...figureFaults(record)];
    case "board":
      return [...boardFaults(record), ...figureFaults(record)];
    case "strip":
      return [...stripFaults(record), ...figureFaults(record)];
    case "led-board":
      return [...ledBoardFaults(record), ...figureFaults(record)];
    case "insert":
      return [...insertFaults(record), ...figureFaults(record)];
    case "knob":
    case "cap":
    case "guard":
    case "bezel":
    case "boot":
    case "plug":
    case "nut":
    case "washer":
    case "standoff":
    case "screw":
    case "stud":
    case "retainer":
    case "receptacle":
      return [...hardwareFaults(record), ...figureFaults(record)];
  }
}

/** Sizes are compared only where every shape can be drawn. */
function partFaults(part: Part, catalogue: Catalogue): readonly LintFault[] {
  const broken = shapesOf(part).flatMap(([path, shape]) => shapeFaults(shape, path));
  if (broken.length > 0) return broken;
  return [
    ...holdFaults(part, catalogue),
    ...openingFaults(part, catalogue),
    ...bodyFaults(part),
    ...useFaults(part, catalogue),
  ];
}
