// What the fit report says of bays: the bays, their panels in order with depth, what is free and what would close it, and
// sums of tolerances.

import { blankingItem } from "../checks/fit/blanking-item.ts";
import type { ReportSection } from "../export/report.ts";
import type { DepthFact, FitFacts, ToleranceFact } from "../fit/fit-facts.ts";
import { decimal } from "../geometry/number.ts";
import type {
  BayLayout,
  ConsoleLayout,
  FreeRun,
  PlacedPanel,
} from "../layout/console/console-layout.ts";
import { bodyWords } from "./body-words.ts";
import { exactly, factSection, numberColumn, saying, wordColumn } from "./report-section.ts";

export const baySections = (layout: ConsoleLayout, facts: FitFacts): readonly ReportSection[] => [
  bayTable(layout.bays),
  panelTable(layout, facts.depths),
  freeTable(layout.bays),
  toleranceTable(facts.tolerances),
];

const bayTable = (bays: readonly BayLayout[]): ReportSection =>
  factSection<BayLayout>({
    id: "bays",
    heading: "Bays",
    words: [
      "Slope turns a bay about its width, cant about its length. Lengths are usable lengths.",
    ],
    empty: "No bay could be laid out.",
    columns: [
      wordColumn("bay", "bay", ({ id }) => id),
      wordColumn("mount", "mount", ({ mount }) => mount.id),
      numberColumn("length", "length, mm", ({ length }) => length),
      numberColumn("modules", "in its own count", ({ modules }) => modules),
      numberColumn("width", "width, mm", ({ width }) => width),
      numberColumn("clear", "between the rails, mm", ({ clearWidth }) => clearWidth),
      numberColumn("depth", "depth, mm", ({ depth }) => depth),
      numberColumn("slope", "slope, degrees", ({ design }) => design.slope),
      numberColumn("cant", "cant, degrees", ({ design }) => design.cant),
    ],
    rows: bays,
  });

interface PanelRow {
  readonly panel: PlacedPanel;
  readonly depth: DepthFact | null;
}

const panelTable = (
  { bays, panels }: ConsoleLayout,
  depths: readonly DepthFact[],
): ReportSection => {
  const ordered = [
    ...bays.flatMap(({ id }) =>
      panels
        .filter(({ place }) => place.kind === "bay" && place.bay === id)
        .toSorted((a, b) => fromOf(a) - fromOf(b)),
    ),
    ...panels.filter(({ place }) => place.kind === "stand"),
  ];
  return factSection<PanelRow>({
    id: "panels",
    heading: "Panels in order",
    words: [
      "By bay, from where it begins. Depth: what the bay has behind the seat, and what the deepest body takes, plug and bend included.",
    ],
    empty: "No panel is placed.",
    columns: [
      saying(
        "on its own feet",
        wordColumn("bay", "bay", ({ panel }) => bayOf(panel)),
      ),
      wordColumn("panel", "panel", ({ panel }) => panel.name),
      wordColumn("kind", "what", ({ panel }) =>
        panel.kind === "use" ? "panel" : "blanking panel",
      ),
      saying(
        "",
        numberColumn("module", "at module", ({ panel }) => placeOf(panel, "module")),
      ),
      saying("", exactly(numberColumn("from", "from, mm", ({ panel }) => placeOf(panel, "from")))),
      saying("", exactly(numberColumn("to", "to, mm", ({ panel }) => placeOf(panel, "to")))),
      saying(
        "",
        numberColumn("has", "depth there, mm", ({ depth }) => depth?.has ?? null),
      ),
      saying(
        "",
        numberColumn("takes", "depth taken, mm", ({ depth }) => depth?.takes ?? null),
      ),
      saying(
        "",
        numberColumn("spare", "left, mm", ({ depth }) => depth && depth.has - depth.takes),
      ),
      saying(
        "",
        wordColumn("deepest", "by", ({ depth }) => depth && bodyWords(depth.body)),
      ),
    ],
    rows: ordered.map((panel) => ({
      panel,
      depth: depths.find((each) => each.panel === panel.name) ?? null,
    })),
  });
};

const fromOf = ({ place }: PlacedPanel): number => (place.kind === "bay" ? place.from : 0);

const bayOf = ({ place }: PlacedPanel): string | null => (place.kind === "bay" ? place.bay : null);

const placeOf = ({ place }: PlacedPanel, key: "module" | "from" | "to"): number | null =>
  place.kind === "bay" ? place[key] : null;

interface FreeRow {
  readonly bay: BayLayout;
  readonly run: FreeRun;
}

const freeTable = (bays: readonly BayLayout[]): ReportSection =>
  factSection<FreeRow>({
    id: "free",
    heading: "Free places",
    words: ["A line of `panels:` closes each; nothing is closed unless you write it."],
    empty: "No place is free.",
    columns: [
      wordColumn("bay", "bay", ({ bay }) => bay.id),
      exactly(numberColumn("from", "from, mm", ({ run }) => run.from)),
      exactly(numberColumn("to", "to, mm", ({ run }) => run.to)),
      numberColumn("modules", "in its own count", ({ run }) => run.modules),
      saying(
        "no blanking panel can be made for it",
        wordColumn("proposal", "would close it", blankingLine),
      ),
    ],
    rows: bays.flatMap((bay) => bay.free.map((run) => ({ bay, run }))),
  });

/** Whole pitches alone: blanking panels are made to them. */
const blankingLine = ({ bay, run }: FreeRow): string | null => blankingItem(bay, run)?.text ?? null;

const toleranceTable = (tolerances: readonly ToleranceFact[]): ReportSection =>
  factSection<ToleranceFact>({
    id: "tolerances",
    heading: "Sums of tolerances",
    words: [
      "What is free along each bay at nominal size, and what every part's tolerance may take of it: all at their worst, and as the root of the sum of squares.",
    ],
    empty: "No panel stands in a bay: no tolerances add up.",
    columns: [
      wordColumn("bay", "bay", ({ bay }) => bay),
      numberColumn("free", "free, mm", ({ free }) => free),
      numberColumn("worst", "worst case, mm", ({ worstCase }) => worstCase),
      numberColumn("root", "root sum square, mm", ({ rootSumSquare }) => rootSumSquare),
      numberColumn("left", "left at worst, mm", ({ free, worstCase }) => free - worstCase),
      saying(
        "nothing adds up: each panel is where its own holes are",
        wordColumn("shares", "largest shares", ({ shares }) =>
          shares.length === 0 ? null : shareWords(shares),
        ),
      ),
    ],
    rows: tolerances,
  });

/** As many as are read at a glance. */
const SHARES = 4;

const shareWords = (shares: ToleranceFact["shares"]): string => {
  const said = shares
    .slice(0, SHARES)
    .map(({ what, plusMinus }) => `${what} ±${decimal(plusMinus, 3)}`);
  const more = shares.length - said.length;
  return [...said, ...(more > 0 ? [`${more} more`] : [])].join("; ");
};
