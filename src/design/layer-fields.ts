// The stack, front to back, and what holds it together.

import { countWords } from "../diagnostics/count-words.ts";
import { finding } from "../diagnostics/finding.ts";
import type { Degrees } from "../geometry/quantity.ts";
import type { MetricThread } from "../standards/metric-fasteners.ts";
import { byKey, shortOrLong } from "./choice-fields.ts";
import { MEANING_CODES } from "./codes-of-meaning.ts";
import { TEXT_CODES } from "./codes-of-text.ts";
import { VALUE_CODES } from "./codes-of-values.ts";
import { type Field, mapped, read, refined, unread } from "./field.ts";
import { list, optional, record, required, usual } from "./fields.ts";
import { told } from "./key-findings.ts";
import { LEAST_SCREWS } from "./least-screws.ts";
import { noOrSomeMillimetres, someMillimetres } from "./length-fields.ts";
import { angle } from "./number-fields.ts";
import type {
  FixingsDesign,
  LayerDesign,
  LightingDesign,
  LitAreaDesign,
  ScrewsDesign,
  TrayBoard,
} from "./panel-design.ts";
import { place } from "./place-fields.ts";
import { PLACE_OR_SEVERAL } from "./set-out-fields.ts";
import { name, oneOf, reference } from "./text-fields.ts";
import { about } from "./text-node.ts";
import { AREA_GAP, WINDOW_MARGIN } from "./usual-values.ts";
import { spanOf } from "./written.ts";

const LAYER = required(name("the name of a layer"), "Its name in the panel: face, backing, spacer");
const STOCK = name("the name of a stock");

const CIRCUIT = required(name("the name of a circuit"), "What switches and dims it");

const APART: Field<LitAreaDesign> = record("an area", {
  circuit: CIRCUIT,
  around: required(
    list("a list of components", reference("the name of a component"), { least: 1, most: 200 }),
    "The components whose faces and legends it lights",
  ),
  gap: usual(noOrSomeMillimetres("a gap"), {
    value: AREA_GAP,
    about: "From what stands in it to its wall",
  }),
});

const LIGHTING: Field<LightingDesign> = record("lighting", {
  strip: required(
    name("the name of a strip"),
    "The strip of lamps, or the board of them, from the catalogue",
  ),
  circuit: CIRCUIT,
  apart: usual(list("a list of areas", APART, { most: 50 }), {
    value: [],
    about: "Areas on circuits of their own, with a wall round each",
  }),
});

const SHEET: Field<LayerDesign> = mapped(
  record("a sheet", {
    layer: LAYER,
    sheet: required(STOCK, "The stock it is cut from"),
    finish: optional(name("the name of a finish"), "Paint or another finish"),
    "worked-from": usual(oneOf("a face", ["front", "rear"]), {
      value: "front",
      about: "Which face looks at the machine while it is cut",
    }),
    windows: usual(oneOf("what it opens behind", ["legends", "none"]), {
      value: "legends",
      about: "Where it is opaque and lamps lie behind it: a window behind each legend, or none",
    }),
    "window-margin": usual(noOrSomeMillimetres("a margin"), {
      value: WINDOW_MARGIN,
      about: "From a legend to the edge of the window behind it",
    }),
  }),
  ({
    layer: id,
    sheet,
    finish,
    "worked-from": workedFrom,
    windows,
    "window-margin": windowMargin,
    written,
  }) => ({
    kind: "sheet",
    id,
    sheet,
    finish,
    workedFrom,
    windows,
    windowMargin,
    written,
  }),
);

const SPACER: Field<LayerDesign> = mapped(
  record("a printed spacer", {
    layer: LAYER,
    print: required(STOCK, "The stock it is printed from"),
    depth: required(someMillimetres("a depth"), "From the sheet in front to the one behind"),
    lighting: optional(LIGHTING, "Lamps in the spacer"),
  }),
  ({ layer: id, print, depth, lighting, written }) => ({
    kind: "spacer",
    id,
    print,
    depth,
    lighting,
    written,
  }),
);

const AIR: Field<LayerDesign> = mapped(
  record("air", {
    layer: LAYER,
    air: required(someMillimetres("a depth"), "Depth of the gap"),
  }),
  ({ layer: id, air, written }) => ({ kind: "air", id, depth: air, written }),
);

const BOARD = name("the name of a board");
const QUARTER = 90;

const QUARTER_TURN: Field<Degrees> = refined(
  angle("a quarter turn", { least: 0, most: 3 * QUARTER }),
  (turn, node) =>
    turn % QUARTER === 0
      ? read(turn, node)
      : unread(
          node,
          finding(VALUE_CODES.notAnAngle, {
            message: `${about(node)}a tray turns a board by quarters; write 0, 90, 180 or 270 deg`,
            span: node.span,
          }),
        ),
);

/** A board by its name, or with the quarter by which it is turned. */
const TRAY_BOARD: Field<TrayBoard> = shortOrLong(
  "a board",
  refined(BOARD, (board, node) => read({ board, turn: null, span: node.span }, node)),
  mapped(
    record("a board", {
      board: required(BOARD, "Its name"),
      turn: optional(
        QUARTER_TURN,
        "Counter-clockwise, seen from the front; the tray chooses where it is not written",
      ),
    }),
    ({ board, turn, written }) => ({
      board,
      turn,
      span: written.span,
    }),
  ),
);

const TRAY: Field<LayerDesign> = mapped(
  record("a tray", {
    layer: LAYER,
    behind: required(
      someMillimetres("a depth"),
      "Clear depth from the layer in front to the boards",
    ),
    boards: usual(list("a list of boards", TRAY_BOARD), {
      value: [],
      about: "The boards that it carries, from the catalogue",
    }),
  }),
  ({ layer: id, behind, boards, written }) => ({ kind: "tray", id, behind, boards, written }),
);

/** A layer's kind is told by its own key: sheet, print, air or behind. */
export const STACK: Field<readonly LayerDesign[]> = refined(
  list("the stack", byKey("a layer", { sheet: SHEET, print: SPACER, air: AIR, behind: TRAY }), {
    least: 1,
    most: 20,
  }),
  (layers, node) => {
    const findings = layers.flatMap((layer, index) => {
      const first = layers.find(({ id }) => id === layer.id);
      return first === undefined || layers.indexOf(first) === index
        ? []
        : [
            finding(TEXT_CODES.duplicateId, {
              message: `${about(node)}two layers are named ${layer.id}; give each a name of its own`,
              span: spanOf(layer.written, "layer"),
              related: [{ what: "the first is here", span: spanOf(first.written, "layer") }],
            }),
          ];
    });
    return read(layers, node, findings);
  },
);

const THREADS = [
  "m2",
  "m2.5",
  "m3",
  "m4",
  "m5",
  "m6",
  "m8",
] as const satisfies readonly MetricThread[];

const MOST_SCREWS = 100;

/** The members of a row or ring count each. */
const SCREWS: Field<readonly ScrewsDesign[]> = refined(
  list("a list of places", PLACE_OR_SEVERAL, { least: 1, most: MOST_SCREWS }),
  (items, node) => {
    const number = items.reduce((sum, { members }) => sum + members, 0);
    if (number >= LEAST_SCREWS && number <= MOST_SCREWS)
      return read(
        items.map(({ at, pattern }) => ({ place: at, pattern })),
        node,
      );
    const said = number < LEAST_SCREWS ? `at least ${LEAST_SCREWS}` : `at most ${MOST_SCREWS}`;
    return unread(
      node,
      told(
        MEANING_CODES.wrongCount,
        node,
        `has ${countWords(number, "screw")}; ${said} are needed`,
      ),
    );
  },
);

export const FIXINGS: Field<FixingsDesign> = mapped(
  record("fixings", {
    screws: required(oneOf("a thread", THREADS), "Thread of the screws"),
    dowels: required(someMillimetres("a diameter"), "Diameter of the two dowels"),
    at: optional(SCREWS, "Where the screws go; a row or ring of them is one item"),
    "dowels-at": optional(
      list("two places", place(), { least: 2, most: 2 }),
      "Where the dowels go: the round one and the slotted one",
    ),
  }),
  ({ screws, dowels, at, "dowels-at": dowelsAt, written }) => ({
    screws,
    dowels,
    at,
    dowelsAt,
    written,
  }),
);
