// What the fit report says of service: how each panel comes out, room for the driver, and the length of looms.

import { driverSource, liftSource, loopSource } from "../checks/fit/service-limits.ts";
import type { WorkshopDesign } from "../design/workshop-design.ts";
import { limitInWords } from "../diagnostics/limit-in-words.ts";
import type { ReportSection } from "../export/report.ts";
import type { DriverFact, FitFacts, LiftFact, LoopFact } from "../fit/fit-facts.ts";
import { MOST_TILT } from "../fit/service/tilted-way.ts";
import { decimal } from "../geometry/number.ts";
import { bodyWords } from "./body-words.ts";
import { factSection, numberColumn, saying, wordColumn } from "./report-section.ts";

export interface ServiceReportSource {
  readonly fit: FitFacts;
  readonly workshop: WorkshopDesign | null;
}

export const serviceSections = (source: ServiceReportSource): readonly ReportSection[] => [
  liftTable(source),
  driverTable(source),
  loopTable(source),
];

const liftTable = ({ fit, ...of }: ServiceReportSource): ReportSection =>
  factSection<LiftFact>({
    id: "lifts",
    heading: "How panels come out",
    words: [
      `Every neighbour in its place. Straight is along the panel's own upright: ${limitInWords(liftSource(of, MOST_TILT))}.`,
    ],
    empty: "No panel stands in a bay.",
    columns: [
      wordColumn("panel", "panel", ({ panel }) => panel),
      saying(
        "none that was tried is free",
        wordColumn("way", "way", ({ way }) => wayWords(way)),
      ),
      saying(
        "nothing",
        wordColumn("met", "met on the straight way", ({ blockers }) =>
          blockers.length === 0 ? null : blockers.map(bodyWords).join("; "),
        ),
      ),
    ],
    rows: fit.lifts,
  });

const wayWords = (way: LiftFact["way"]): string | null => {
  if (way === null) return null;
  if (way.kind === "straight") return "straight";
  const end = way.first === "low-end" ? "beginning" : "far end";
  return `${end} first, tilted ${decimal(way.tilt, 1)} degrees`;
};

const driverTable = ({ fit, ...of }: ServiceReportSource): ReportSection =>
  factSection<DriverFact>({
    id: "drivers",
    heading: "Room for the driver",
    words: [
      `Before each fastener of a panel, as wide and as long as its driver: ${limitInWords(driverSource(of))}.`,
    ],
    empty: "No fastener of a panel is turned in this console.",
    columns: [
      wordColumn("panel", "panel", ({ panel }) => panel),
      wordColumn("fastener", "fastener", ({ fastener }) => fastener),
      numberColumn("diameter", "needs across, mm", ({ needs }) => needs.diameter),
      numberColumn("length", "needs along, mm", ({ needs }) => needs.length),
      saying(
        "nothing",
        wordColumn("blocker", "in the way", ({ met }) => met && bodyWords(met.blocker)),
      ),
    ],
    rows: fit.drivers,
  });

const loopTable = ({ fit, ...of }: ServiceReportSource): ReportSection =>
  factSection<LoopFact>({
    id: "loops",
    heading: "Service loops",
    words: [
      `How long a loom must be to lay the panel on its face beside its place: ${limitInWords(loopSource(of))}.`,
    ],
    empty: "No panel has a loom.",
    columns: [
      wordColumn("panel", "panel", ({ panel }) => panel),
      saying(
        "not written",
        numberColumn("has", "written, mm", ({ has }) => has),
      ),
      numberColumn("needs", "needs, mm", ({ needs }) => needs),
      saying(
        "what is beside the console",
        wordColumn("onto", "laid on", ({ onto }) => onto),
      ),
      saying(
        "no plug",
        wordColumn("plug", "plug", ({ plug }) => plug && bodyWords(plug)),
      ),
    ],
    rows: fit.loops,
  });
