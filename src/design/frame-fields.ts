// The frame of a console file. Usual values are common practice where nothing else is said beside them.

import { mm } from "../geometry/quantity.ts";
import { type Field, mapped } from "./field.ts";
import { list, optional, record, required, tuple, usual } from "./fields.ts";
import type {
  CablesDesign,
  FrameDesign,
  FramePanel,
  RailsDesign,
  RibsDesign,
  VentsDesign,
} from "./frame-design.ts";
import { millimetres, noOrSomeMillimetres, someMillimetres } from "./length-fields.ts";
import { name, oneOf } from "./text-fields.ts";

/** Slots are the measured thickness and 0.1 to 0.25 more, in all: common practice. */
const CLEARANCE = { value: mm(0.2), most: 1 };
const TOE = mm(60);
const SPACING = mm(300);
const RIB_WEB = mm(60);
/** From the clear width outward: the panel's edge, a slot for the rib, and a web on both sides of it. */
const RAIL_WIDTH = mm(30);
const CABLE_PASS = mm(40);

const PANEL = oneOf("a panel of the frame", ["top", "front", "back", "floor"]);
const ALL_PANELS: readonly FramePanel[] = ["top", "front", "back", "floor"];
const END = oneOf("front, back or none", ["front", "back", "none"]);

const RIBS: Field<RibsDesign> = record("the ribs", {
  spacing: usual(someMillimetres("a length"), {
    value: SPACING,
    about: "At most this far apart along a bay",
  }),
  web: usual(someMillimetres("a length"), {
    value: RIB_WEB,
    about: "What stands below the room of the panels",
  }),
});

const RAILS: Field<RailsDesign> = record("the rail bars", {
  width: usual(someMillimetres("a width"), {
    value: RAIL_WIDTH,
    about: "Least width of a bar; it runs on to the cheek",
  }),
  hole: optional(
    someMillimetres("a diameter"),
    "Holes in the bars; the panels' own where none is written. A receptacle wants its own: measure yours",
  ),
});

const CABLES: Field<CablesDesign> = record("the cable passes", {
  diameter: usual(someMillimetres("a diameter"), { value: CABLE_PASS, about: "How wide" }),
  through: usual(list("panels", PANEL, { most: 4 }), {
    value: ["back"],
    shown: "[back]",
    about: "Which panels they go through",
  }),
});

const VENTS: Field<VentsDesign> = record("the vents", {
  inlet: usual(END, { value: "back", about: "Low, where cool air comes in" }),
  outlet: usual(END, { value: "front", about: "High, where warm air leaves" }),
});

const KEYS = {
  type: required(
    oneOf("a type of frame", ["side-console", "front-desk"]),
    "Beside the operator, or before a knee space",
  ),
  sheet: required(name("the name of a stock"), "The stock it is cut from"),
  joints: usual(oneOf("a kind of joint", ["tab-and-slot", "half-lap", "dowel", "screws"]), {
    value: "tab-and-slot",
    about: "How its boards meet",
  }),
  clearance: usual(millimetres("a clearance", { least: 0, most: CLEARANCE.most }), {
    value: CLEARANCE.value,
    about: "Slot less measured thickness, in all: 0.1 to 0.25 is common",
  }),
  doorway: optional(
    tuple("a doorway", someMillimetres("a length"), ["width", "height"]),
    "What its sections must pass",
  ),
  width: optional(
    someMillimetres("a width"),
    "Between the cheeks of each row of bays, where wider than these ask",
  ),
  toe: usual(noOrSomeMillimetres("a height"), {
    value: TOE,
    about: "Underside of its floor board above the floor",
  }),
  beyond: optional(
    noOrSomeMillimetres("a length"),
    "How far the cheeks stand beyond bays, top, front and back; unwritten, 15, and in a thick sheet as far as leaves its thickness beside the slots",
  ),
  ribs: optional(RIBS, "Boards across, that carry the rails"),
  rails: optional(RAILS, "Bars that the panels stand on"),
  knees: optional(
    tuple("a knee space", someMillimetres("a length"), ["depth", "height"]),
    "Before a front desk where its operator sits: how deep from the bays on, and how high; unwritten, 440 at the knee and 600 at the foot, as far as the desk leaves it",
  ),
  hatch: usual(oneOf("a side", ["left", "right", "front", "back", "none"]), {
    value: "right",
    about: "The side of its access hatch; another where a row of bays stands before it",
  }),
  cables: optional(CABLES, "Passes for cables"),
  vents: optional(VENTS, "Air: 1 m³/h carries a third of a watt for each kelvin"),
  panels: usual(list("panels", PANEL, { most: 4 }), {
    value: ALL_PANELS,
    shown: "[top, front, back, floor]",
    about: "The boards that close it",
  }),
};

export const FRAME: Field<FrameDesign> = mapped(
  record("the frame", KEYS),
  ({ ribs, rails, cables, vents, ...frame }): FrameDesign => ({
    ...frame,
    ribs: ribs ?? { spacing: SPACING, web: RIB_WEB },
    rails: rails ?? { width: RAIL_WIDTH, hole: null },
    cables: cables ?? { diameter: CABLE_PASS, through: ["back"] },
    vents: vents ?? { inlet: "back", outlet: "front" },
  }),
);
