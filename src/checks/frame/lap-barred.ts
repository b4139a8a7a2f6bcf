// Half-lapped ribs that do not come down to their slots in the cheeks.

import { spanOf } from "../../design/written.ts";
import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { type BarredLap, barredLaps } from "../../parts/frame/laps.ts";
import { allSections } from "../../parts/frame/planned-frame.ts";
import type { SizedFrame } from "../../parts/frame/sized-frame.ts";
import { measureMm, millimetres } from "../words.ts";
import { frameRemedy } from "./frame-remedy.ts";
import type { FrameRule, PlanFacts } from "./frame-rule.ts";
import { worstOf } from "./worst-of.ts";

const entry: CodeEntry = {
  code: "checks/frame-lap",
  severity: "fault",
  title: "a half-lapped rib that can't be dropped in",
  why: "Half-lapped ribs go into the closed cheeks from above, square to their bay. Where a higher bay follows one that leans toward it, its cheek stands over the slots. Tabs go in from the side, before the cheeks are closed.",
  example:
    "bays:\n  aft: { mount: console-rail, at: [0, -420, 620], along: [1, 0, 0], slope: -30 deg, length: 24 modules, depth: 80 mm }\n  forward: { mount: console-rail, at: [240, -420, 920], along: [1, 0, 0], length: 24 modules, depth: 80 mm }\nframe: { type: side-console, sheet: birch-ply-12, joints: half-lap }",
};

export const lapBarred: FrameRule<PlanFacts> = {
  entry,
  judge: ({ plan, texts }) =>
    worstOf(
      allSections(plan).flatMap((section) =>
        barredLaps(section).map((lap) => barred(lap, section.design, texts)),
      ),
    ),
};

const barred = (
  { rib, bay, side, barred: length }: BarredLap,
  design: SizedFrame,
  texts: PlanFacts["texts"],
): Finding =>
  finding(entry, {
    message: `${rib} is dropped into its slots from above, square to ${bay}, and the ${side} cheek stands ${millimetres(length, 0)} deep over the slot there. joints: tab-and-slot goes in from the side.`,
    span: spanOf(design.written, "joints"),
    subjects: [rib],
    measured: measureMm(length),
    limit: measureMm(0),
    source: { kind: "geometry", name: "the way down to a half-lap" },
    remedies: [
      frameRemedy({ texts }, design, { group: null, key: "joints", value: "tab-and-slot" }),
    ],
  });
