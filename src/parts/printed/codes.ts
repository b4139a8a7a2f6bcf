// The table of what can't be printed as the panel asks for. Each is a finding in place of a weaker part.

import type { CodeEntry } from "../../diagnostics/finding.ts";
import { ANGLED_BOX_CODES } from "./angled-box-codes.ts";
import { LAMP_BOX_CODES } from "./lamp-box-codes.ts";
import { TRIM_CODES } from "./trim-codes.ts";

const LIT_SPACER =
  "stack:\n  - { layer: spacer, print: black-petg, depth: 14 mm, lighting: { strip: strip-60-12v, circuit: night } }";

export const NO_OPAQUE_WALL: CodeEntry = {
  code: "parts/no-opaque-wall",
  severity: "fault",
  title: "no room for a wall that keeps light in",
  why: "A printed wall keeps light in from a certain thickness, and only in whole lines of the nozzle: three lines of 0.45 mm are 1.35 mm, and 1.0 mm leaves a pinholed gap. Where a hole or the rail leaves less, the wall is not made thinner: the component moves, or the stock is a blacker one.",
  example: LIT_SPACER,
};

export const NO_SPACER_ROOM: CodeEntry = {
  code: "parts/no-spacer-room",
  severity: "fault",
  title: "a printed layer that the mount leaves no room for",
  why: "A part behind a panel stands clear of the rails and of the fasteners that hold it. On a very small panel nothing is left between them.",
  example: "mount: console-rail\nheight: 1 modules",
};

export const SPACER_TOO_SHALLOW: CodeEntry = {
  code: "parts/spacer-too-shallow",
  severity: "fault",
  title: "a lit spacer without depth for its floor and its lamps",
  why: "A lit spacer has a floor that keeps light in, a channel for the strip on it, and a seat for the foam in front. Its depth must hold them and still leave the light some way to go.",
  example: LIT_SPACER.replace("14 mm", "2 mm"),
};

export const UNKNOWN_STRIP: CodeEntry = {
  code: "parts/unknown-strip",
  severity: "fault",
  title: "a strip of lamps that the catalogue does not hold",
  why: "Channels are as wide as their strip, and as long as its cut marks allow. `consolewright list` prints the strips and LED boards that there are.",
  example: LIT_SPACER.replace("strip-60-12v", "no-such-strip"),
};

export const NO_LANE: CodeEntry = {
  code: "parts/no-lane",
  severity: "query",
  title: "a lit area that no strip fits into",
  why: "A strip is cut at its marks only, and a joint costs some length. Between rows of bodies there is often less than one cut of a 12 V strip (50 mm): a strip that is cut at each LED, or boards with LEDs, take short lanes.",
  example: LIT_SPACER,
};

export const NO_CABLE_WAY: CodeEntry = {
  code: "parts/no-cable-way",
  severity: "query",
  title: "no room for the cable of a lit area",
  why: "The cable leaves through the floor at the end of a passage that turns once, so that no light follows it, and that lets its plug through. That takes about 20 by 15 mm of free floor. Without it the cable must be led out by hand, and sealed.",
  example: LIT_SPACER,
};

export const NO_INSERT: CodeEntry = {
  code: "parts/no-insert",
  severity: "query",
  title: "no heat-set insert for the thread of the fixings",
  why: "Screws of the stack end in brass inserts in the last printed layer. Where the catalogue has none for their thread, the bosses are bored through and the screws take nuts.",
  example: "fixings: { screws: m8, dowels: 3 mm }",
};

export const UNKNOWN_AREA: CodeEntry = {
  code: "parts/unknown-area",
  severity: "fault",
  title: "a lit area round a component that is not on the panel",
  why: "An area on a circuit of its own stands round components by their names. A name that is not there leaves the area, or a corner of it, in the dark.",
  example:
    "lighting: { strip: strip-60-12v, circuit: night, apart: [{ circuit: day, around: [no-such] }] }",
};

export const NO_WHITE_STOCK: CodeEntry = {
  code: "parts/no-white-stock",
  severity: "query",
  title: "no white stock for the inside of a light box",
  why: "Black eats the light inside a light box. A white body or liner is printed from white filament, and the workshop's stock has none; the part is made black all through.",
  example: "inside: white-body",
};

export const NO_SPLIT: CodeEntry = {
  code: "parts/no-split",
  severity: "fault",
  title: "a part larger than the printer's bed, with no place to split it",
  why: "A joint is a lap as wide as the part, and never goes through a window, a boss or a collar. Where components leave no free strip, move one, or print on a larger bed.",
  example: "mount: rack-19\nheight: 3 U",
};

export const UNKNOWN_BOARD: CodeEntry = {
  code: "parts/unknown-board",
  severity: "fault",
  title: "a board that the catalogue does not hold",
  why: "A tray has holes, clips and room for plugs where a board's record says. `consolewright list` prints the boards.",
  example: "stack:\n  - { layer: tray, behind: 18 mm, boards: [no-such-board] }",
};

export const NO_BOARD_ROOM: CodeEntry = {
  code: "parts/no-board-room",
  severity: "fault",
  title: "a tray without room for a board",
  why: "A board lies flat on the tray with its plugs beside it, clear of the posts that carry the tray and of whatever stands through it.",
  example: "stack:\n  - { layer: tray, behind: 18 mm, boards: [avr-2560-101x53, avr-2560-101x53] }",
};

export const NO_WASHER_ROOM: CodeEntry = {
  code: "parts/no-washer-room",
  severity: "query",
  title: "a light-tight washer without anything to close",
  why: "The washer lies round the nut in the opening of the layer in front of the clamped one, and closes it with a rim. A part that sits behind, or an opening that its nut already fills, leaves it no room.",
  example: "components:\n  a: { part: led-5, at: centre, washer: light-tight }",
};

export const NO_PRINTED_STOCK: CodeEntry = {
  code: "parts/no-printed-stock",
  severity: "fault",
  title: "nothing to print from",
  why: "A printed part takes the stock of a spacer, else the workshop's first printed stock, else the catalogue's. Where none of them has any there is no wall thickness to go by.",
  example: "stock:\n  black-petg: { material: petg, colour: black, opaque-from: 1.35 mm }",
};

export const NO_BLANKING_STOCK: CodeEntry = {
  code: "parts/no-blanking-stock",
  severity: "fault",
  title: "a blanking panel of nothing",
  why: "A blanking panel is cut from the sheet that its bay's first panel lies on the rails with, unless it says otherwise. In a bay where no other panel stands it must say what it is made of.",
  example: "panels:\n  - { blanking: 4 modules, bay: aft, module: 0 }",
};

export const SLIVER_LEFT_OUT: CodeEntry = {
  code: "parts/sliver-left-out",
  severity: "note",
  title: "a sliver that no printer makes",
  why: "Where a pocket breaks through the edge of a printed layer it may leave a piece by itself that is nowhere as wide as one line of the nozzle. A printer lays nothing there, so that it is in none of the part's files either. What is wider stays, and is counted among the loose pieces.",
  example: `mount: console-rail
height: 17 modules
stack:
  - { layer: backing, sheet: aluminium-2 }
  - { layer: spacer, print: black-petg, depth: 10 mm }
fixings: { screws: m3, dowels: 3 mm }
components:
  a: { part: toggle-12, at: { left: 125.5 mm, bottom: 14.35 mm } }`,
};

export const PRINTED_CODES: readonly CodeEntry[] = [
  NO_OPAQUE_WALL,
  NO_SPACER_ROOM,
  SPACER_TOO_SHALLOW,
  UNKNOWN_STRIP,
  NO_LANE,
  NO_CABLE_WAY,
  NO_INSERT,
  UNKNOWN_AREA,
  NO_WHITE_STOCK,
  NO_SPLIT,
  SLIVER_LEFT_OUT,
  UNKNOWN_BOARD,
  NO_BOARD_ROOM,
  NO_WASHER_ROOM,
  NO_PRINTED_STOCK,
  NO_BLANKING_STOCK,
  ...TRIM_CODES,
  ...LAMP_BOX_CODES,
  ...ANGLED_BOX_CODES,
];
