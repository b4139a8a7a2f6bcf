// What the fit report says of the operator: reach, sight, hands, the front edge, knees.

import type { ReportSection } from "../export/report.ts";
import type {
  FitFacts,
  FrontEdgeFact,
  HandFact,
  KneeFact,
  KneeRoom,
  ReachFact,
  SightFact,
} from "../fit/fit-facts.ts";
import type { PosedOperator } from "../layout/console/console-layout.ts";
import { kneeHeightNeeded } from "../standards/knee-height.ts";
import { DEPTH_FROM_FRONT_EDGE, KNEE_BOX, SEATED_PERSON } from "../standards/reach.ts";
import { bodyWords } from "./body-words.ts";
import { factSection, numberColumn, saying, wordColumn } from "./report-section.ts";

export const operatorSections = (
  operator: PosedOperator | null,
  facts: FitFacts,
): readonly ReportSection[] => [
  reachTable(facts.reaches),
  sightTable(facts.sights),
  handTable(facts.hands),
  frontEdgeTable(facts.frontEdges),
  kneeTable(operator, facts.knees),
];

const reachTable = (reaches: readonly ReachFact[]): ReportSection =>
  factSection<ReachFact>({
    id: "reach",
    heading: "Reach",
    words: [
      `From the shoulder of the working hand in the plane of the seat back, for the smallest person: ${SEATED_PERSON.source}.`,
    ],
    empty: "Reach was not asked: no operator is written, or nothing is reached for.",
    columns: [
      wordColumn("panel", "panel", ({ panel }) => panel),
      wordColumn("component", "component", ({ component }) => component),
      wordColumn("important", "important", ({ isImportant }) => isImportant),
      numberColumn("distance", "distance, mm", ({ distance }) => distance),
      numberColumn("functional", "functional reach, mm", ({ functional }) => functional),
      numberColumn("extended", "extended reach, mm", ({ extended }) => extended),
      numberColumn(
        "spare",
        "left of functional, mm",
        ({ functional, distance }) => functional - distance,
      ),
    ],
    rows: reaches,
  });

const sightTable = (sights: readonly SightFact[]): ReportSection =>
  factSection<SightFact>({
    id: "sight",
    heading: "Sight",
    words: [
      "Each legend from the eye that sees it smaller: its distance, how far from square on, and the angle that its capitals fill.",
    ],
    empty: "Sight was not asked: no operator is written, or nothing is read.",
    columns: [
      wordColumn("panel", "panel", ({ panel }) => panel),
      wordColumn("owner", "of", ({ owner }) => owner),
      wordColumn("marking", "legend", ({ marking }) => marking),
      wordColumn("important", "important", ({ isImportant, isAlerting }) =>
        isAlerting ? "alert" : isImportant,
      ),
      numberColumn("capital", "capitals, mm", ({ capHeight }) => capHeight),
      numberColumn("distance", "distance, mm", ({ distance }) => distance),
      numberColumn("obliquity", "off square, degrees", ({ obliquity }) => obliquity),
      numberColumn("minutes", "minutes of arc", ({ arcMinutes }) => arcMinutes),
      wordColumn("eye", "eye", ({ eye }) => (eye === "small" ? "smallest" : "largest")),
      saying(
        "nothing",
        wordColumn("hidden", "hidden by", ({ hiddenBy }) => hiddenBy && bodyWords(hiddenBy)),
      ),
    ],
    rows: sights,
  });

const handTable = (hands: readonly HandFact[]): ReportSection =>
  factSection<HandFact>({
    id: "hands",
    heading: "Hands, from panel to panel",
    words: ["Two controls of different panels, edge to edge, and what a hand needs between them."],
    empty: "No controls of two panels stand near each other.",
    columns: [
      wordColumn("a", "one", ({ a }) => `${a.panel}: ${a.component}`),
      wordColumn("b", "other", ({ b }) => `${b.panel}: ${b.component}`),
      numberColumn("gap", "gap, mm", ({ gap }) => gap),
      numberColumn("needs", "needs, mm", ({ needs }) => needs),
      wordColumn("source", "by", ({ source }) => source),
    ],
    rows: hands,
  });

const frontEdgeTable = (edges: readonly FrontEdgeFact[]): ReportSection =>
  factSection<FrontEdgeFact>({
    id: "front-edge",
    heading: "From the front edge",
    words: [
      `Along the surface of the panels; at most ${DEPTH_FROM_FRONT_EDGE.most} mm by ${DEPTH_FROM_FRONT_EDGE.source}.`,
    ],
    empty: "The front edge was not asked: no operator is written.",
    columns: [
      wordColumn("panel", "panel", ({ panel }) => panel),
      wordColumn("component", "component", ({ component }) => component),
      wordColumn("important", "important", ({ isImportant }) => isImportant),
      numberColumn("distance", "distance, mm", ({ distance }) => distance),
      numberColumn("most", "at most, mm", () => DEPTH_FROM_FRONT_EDGE.most),
    ],
    rows: edges,
  });

interface KneeRow {
  readonly what: string;
  readonly room: KneeRoom;
  readonly needs: number;
}

const kneeTable = (operator: PosedOperator | null, knees: KneeFact | null): ReportSection =>
  factSection<KneeRow>({
    id: "knees",
    heading: "Knees and feet",
    words: [
      `Free room under the console; sizes by ${KNEE_BOX.source}, height by ${SEATED_PERSON.source}.`,
    ],
    empty: "Room for knees was not asked: nobody sits at this console.",
    columns: [
      wordColumn("what", "what", ({ what }) => what),
      numberColumn("has", "free, mm", ({ room }) => room.has),
      numberColumn("needs", "wanted, mm", ({ needs }) => needs),
      saying(
        "nothing near",
        wordColumn("by", "bounded by", ({ room }) =>
          room.by.length === 0 ? null : room.by.map(bodyWords).join("; "),
        ),
      ),
    ],
    rows: knees === null || operator === null ? [] : kneeRows(operator, knees),
  });

const kneeRows = ({ design }: PosedOperator, knees: KneeFact): readonly KneeRow[] => [
  { what: "width", room: knees.width, needs: KNEE_BOX.width },
  { what: "depth at the knee", room: knees.depthAtKnee, needs: KNEE_BOX.depthAtKnee },
  { what: "depth at the foot", room: knees.depthAtFoot, needs: KNEE_BOX.depthAtFoot },
  { what: "height", room: knees.height, needs: kneeHeightNeeded(design.seatHeight) },
];
