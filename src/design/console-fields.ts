// A console file. To add a key: a line in the record, its field in the console's types, and a line where it is built.

import { finding } from "../diagnostics/finding.ts";
import { mm } from "../geometry/quantity.ts";
import { blankingName } from "./blanking-name.ts";
import { byKey } from "./choice-fields.ts";
import { MEANING_CODES } from "./codes-of-meaning.ts";
import { TEXT_CODES } from "./codes-of-text.ts";
import type {
  BayDesign,
  BlankingUse,
  ConsoleDesign,
  OperatorDesign,
  PanelUse,
  StandDesign,
  UnreadPanel,
} from "./console-design.ts";
import { ENVELOPE, FLOOR_POINT, OBSTACLE, SPACE_POINT } from "./envelope-fields.ts";
import { type Field, mapped, type Reading, read, refined, unread } from "./field.ts";
import {
  dispensable,
  list,
  optional,
  record,
  recordWithUnread,
  required,
  tuple,
  usual,
} from "./fields.ts";
import { filePath } from "./file-field.ts";
import { FILE_KEYS } from "./file-keys.ts";
import { FRAME } from "./frame-fields.ts";
import { noOrSomeMillimetres, someMillimetres } from "./length-fields.ts";
import { lookupOf, mapById } from "./map-fields.ts";
import { angle, count, number } from "./number-fields.ts";
import { pitches, size } from "./size-fields.ts";
import { date, name, oneOf, revisionMark, text } from "./text-fields.ts";
import { about, type TextNode } from "./text-node.ts";
import { REVISION, UNTURNED } from "./usual-values.ts";
import { spanOf } from "./written.ts";

const QUARTER_TURN = 90;
const TILT = angle("an angle", { least: -QUARTER_TURN, most: QUARTER_TURN });

const PLACE_KEYS = {
  at: required(SPACE_POINT, "Where it begins: the middle of its width"),
  along: required(
    tuple("a direction", number("a number"), ["forward", "to the left", "up"]),
    "Where it runs",
  ),
  slope: usual(TILT, { value: UNTURNED, about: "Positive lowers the end where it begins" }),
  cant: usual(TILT, {
    value: UNTURNED,
    about: "Turned about its length: positive lowers the left edge",
  }),
};

/** More are no drawings that anyone reads: house figure. */
const MOST_SECTIONS = 12;

/** An angle or a bar: house figure. */
const RAIL_DEPTH = mm(12);

const BAY: Field<Omit<BayDesign, "id">> = refined(
  record("a bay", {
    mount: required(name("the name of a mount"), "The rails of the bay"),
    ...PLACE_KEYS,
    length: required(size("a length, like 60 modules"), "Usable length"),
    depth: required(someMillimetres("a depth"), "Clear depth behind the faces of its rails"),
    "clear-width": optional(
      someMillimetres("a width"),
      "Between its rails, where you measured it; of a mount that has none, the room that panels go into",
    ),
    "rail-depth": usual(someMillimetres("a depth"), {
      value: RAIL_DEPTH,
      about: "How deep its rails are behind their faces, where no frame makes them",
    }),
    sections: usual(list("sections", noOrSomeMillimetres("a length"), { most: MOST_SECTIONS }), {
      value: [],
      about:
        "How far from its beginning sections of it are drawn; one across its middle where none is written",
    }),
    loom: optional(SPACE_POINT, "Where the looms of its panels are tied to the console"),
  }),
  ({ "clear-width": clearWidth, "rail-depth": railDepth, ...bay }, node) =>
    running(bay, node) ?? read({ ...bay, clearWidth, railDepth }, node),
);

/** null where it runs somewhere. */
const running = (
  { along, written }: Pick<BayDesign, "along" | "written">,
  node: TextNode,
): Reading<never> | null => {
  if (along.some((part) => part !== 0)) return null;
  const message = `${about(node)}along: [0, 0, 0] runs nowhere; write where it runs, such as [1, 0, 0]`;
  return unread(
    node,
    finding(MEANING_CODES.noDirection, { message, span: spanOf(written, "along") }),
  );
};

const STAND: Field<StandDesign> = refined(
  record("a stand", PLACE_KEYS),
  (stand, node) => running(stand, node) ?? read(stand, node),
);

const USE_KEYS = {
  bay: optional(name("the name of a bay"), "The bay it stands in"),
  module: optional(count("a count"), "Modules from the beginning of the bay"),
  after: optional(name("the name of a panel"), "The panel it follows"),
};

type Use =
  | { readonly kind: "panel"; readonly use: PanelUse }
  | { readonly kind: "blanking"; readonly use: BlankingUse };

const PANEL_USE: Field<Use> = refined(
  record("a panel", {
    file: required(filePath("the path of a file"), "The panel's file"),
    as: required(name("a name"), "What it is called here; one file can stand twice"),
    ...USE_KEYS,
    stand: optional(STAND, "Where it stands when it lies in no bay"),
    loop: optional(someMillimetres("a length"), "Its service loop, from the console's tie"),
  }),
  (use, node) => inOnePlace(use, node) ?? once(node, use, { kind: "panel", use }),
);

/** null where a bay or a stand says it, not both. */
const inOnePlace = (
  use: Pick<PanelUse, "bay" | "stand" | "written">,
  node: TextNode,
): Reading<never> | null =>
  use.bay === null || use.stand === null
    ? null
    : unread(
        node,
        finding(MEANING_CODES.contradiction, {
          message: `${about(node)}bay and stand both say where it is; keep one of them`,
          span: spanOf(use.written, "stand"),
          related: [{ what: "bay is here", span: spanOf(use.written, "bay") }],
        }),
      );

const BLANKING_USE: Field<Use> = refined(
  record("a blanking panel", {
    blanking: required(pitches("a length, like 4 modules"), "Its length"),
    as: optional(name("a name"), "What it is called"),
    sheet: optional(name("the name of a stock"), "The stock it is cut from"),
    print: optional(name("the name of a stock"), "The stock it is printed of"),
    ...USE_KEYS,
  }),
  ({ blanking: length, ...rest }, node) =>
    ofOneStock(rest, node) ??
    once(node, rest, { kind: "blanking", use: { length, number: 1, ...rest } }),
);

/** null where it is cut or printed, not both. */
const ofOneStock = (
  use: Pick<BlankingUse, "sheet" | "print" | "written">,
  node: TextNode,
): Reading<never> | null =>
  use.sheet === null || use.print === null
    ? null
    : unread(
        node,
        finding(MEANING_CODES.contradiction, {
          message: `${about(node)}sheet and print both say what it is made of; keep one of them`,
          span: spanOf(use.written, "print"),
          related: [{ what: "sheet is here", span: spanOf(use.written, "sheet") }],
        }),
      );

/** A place in a bay is a number of modules or a neighbour, not both. */
const once = (
  node: TextNode,
  use: Pick<PanelUse, "module" | "after" | "written">,
  reading: Use,
): Reading<Use> =>
  use.module !== null && use.after !== null
    ? unread(
        node,
        finding(MEANING_CODES.contradiction, {
          message: `${about(node)}module and after both say where it stands; keep one of them`,
          span: spanOf(use.written, "after"),
          related: [{ what: "module is here", span: spanOf(use.written, "module") }],
        }),
      )
    : read(reading, node);

/** The panels that can be read, and what is known of the others. */
interface Panels {
  readonly read: readonly Use[];
  readonly unread: readonly UnreadPanel[];
}

const PANELS: Field<Panels> = refined(
  list("the panels", byKey<Use>("a panel", { file: PANEL_USE, blanking: BLANKING_USE }), {
    leaveOut: true,
  }),
  (uses, node) => {
    const first = new Map<string, Use["use"]>();
    const findings = uses.flatMap(({ use }) => {
      const before = use.as === null ? undefined : first.get(use.as);
      if (use.as !== null && before === undefined) {
        first.set(use.as, use);
      }
      return before === undefined
        ? []
        : [
            finding(TEXT_CODES.duplicateId, {
              message: `${about(node)}two panels are called ${use.as}; give each a name of its own with \`as\``,
              span: spanOf(use.written, "as"),
              related: [{ what: "the first is here", span: spanOf(before.written, "as") }],
            }),
          ];
    });
    const items = node.kind === "list" ? node.items : [];
    const blankings = items.filter(isBlanking).map(({ span }) => span.start);
    const numbered = uses.map((each): Use => {
      if (each.kind === "panel") return each;
      const number = 1 + blankings.indexOf(each.use.written.span.start);
      return { ...each, use: { ...each.use, number } };
    });
    const starts = new Set(uses.map(({ use }) => use.written.span.start));
    const unread = items.filter(({ span }) => !starts.has(span.start));
    return read(
      { read: numbered, unread: unread.map((item) => unreadPanel(item, blankings)) },
      node,
      findings,
    );
  },
);

const isBlanking = (item: TextNode): boolean =>
  item.kind === "map" && item.entries.some(({ key }) => key === "blanking");

const unreadPanel = (item: TextNode, blankings: readonly number[]): UnreadPanel => {
  const entries = item.kind === "map" ? item.entries : [];
  const written = entries.find(({ key }) => key === "as")?.value;
  const bay = entries.find(({ key }) => key === "bay")?.value;
  const number = 1 + blankings.indexOf(item.span.start);
  const unnamed = number > 0 ? blankingName({ as: null, number }) : item.path;
  return {
    name: written?.kind === "scalar" ? written.text : unnamed,
    bay: item.kind === "map" && bay === undefined ? null : unreadBay(bay),
    span: item.span,
  };
};

const unreadBay = (bay: TextNode | undefined): UnreadPanel["bay"] =>
  bay?.kind === "scalar" ? { kind: "named", id: bay.text } : { kind: "any" };

const OPERATOR: Field<OperatorDesign> = mapped(
  record("the operator", {
    "seat-height": required(someMillimetres("a height"), "Height of the seat above the floor"),
    at: required(FLOOR_POINT, "Where the plane of the seat back meets the seat, in the middle"),
    hand: usual(oneOf("a hand", ["right", "left"]), {
      value: "right",
      about: "The hand that works",
    }),
    eye: optional(SPACE_POINT, "Where the eye is, where you measured it"),
  }),
  ({ "seat-height": seatHeight, ...operator }) => ({ seatHeight, ...operator }),
);

/** The bays that can be read, and the names of the others. */
const BAYS = mapped(mapById("bays by name", BAY), (entries) => ({
  read: lookupOf(
    entries.flatMap((entry) =>
      entry.kind === "read" ? [[entry.id, { id: entry.id, ...entry.value }] as const] : [],
    ),
  ),
  unread: entries.flatMap(({ kind, id }) => (kind === "unreadable" ? [id] : [])),
}));

const CONSOLE_KEYS = {
  ...FILE_KEYS,
  title: dispensable(optional(text("a title"), "What people call it")),
  revision: dispensable(
    usual(revisionMark("a revision"), {
      value: REVISION,
      about: "Changes whenever the console or its frame changes",
    }),
  ),
  dated: dispensable(optional(date("a date"), "Date of the revision")),
  workshop: dispensable(optional(filePath("the path of a file"), "The workshop that makes it")),
  catalogue: dispensable(
    usual(list("a list of files", filePath("the path of a file"), { leaveOut: true }), {
      value: [],
      about: "Files of your own parts",
    }),
  ),
  operator: dispensable(optional(OPERATOR, "Who sits at it, and where")),
  bays: dispensable(
    usual(BAYS, {
      value: { read: lookupOf<BayDesign>([]), unread: [] },
      about: "Pairs of rails that panels stand on",
    }),
  ),
  panels: dispensable(
    usual(PANELS, { value: { read: [], unread: [] }, about: "The panels and where they stand" }),
  ),
  envelope: dispensable(
    optional(
      ENVELOPE,
      "The inside of the console, where it stands already; written beside a frame it counts in place of what the frame's cheeks enclose",
    ),
  ),
  frame: dispensable(optional(FRAME, "The parts that make the console")),
  obstacles: dispensable(
    usual(list("obstacles", OBSTACLE, { leaveOut: true }), {
      value: [],
      about: "What is in the way",
    }),
  ),
};

export const CONSOLE: Field<ConsoleDesign> = refined(
  recordWithUnread("a console", CONSOLE_KEYS),
  (values, node, { file }) => {
    const { panels, title, ...rest } = values;
    return read(
      {
        kind: "console",
        written: rest.written,
        file,
        name: rest.name,
        title: title ?? rest.name,
        revision: rest.revision,
        dated: rest.dated,
        workshop: rest.workshop,
        catalogue: rest.catalogue,
        bays: rest.bays.read,
        unreadBays: rest.bays.unread,
        panels: panels.read.flatMap((each) => (each.kind === "panel" ? [each.use] : [])),
        unreadPanels: panels.unread,
        blankings: panels.read.flatMap((each) => (each.kind === "blanking" ? [each.use] : [])),
        operator: rest.operator,
        envelope: rest.envelope,
        frame: rest.frame,
        obstacles: rest.obstacles,
        unread: rest.unread,
      },
      node,
    );
  },
);
