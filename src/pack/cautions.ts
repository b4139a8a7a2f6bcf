// The cautions that apply to one panel, in plain words. They state what any workshop knows and defer to local codes,
// to data sheets and to licensed practice; nothing in them makes a job safe by itself.

import type { MachineDesign, Material } from "../design/workshop-design.ts";
import type { PanelForPack } from "./panel-pack.ts";

/** Where it stands among the steps of assembly; `making`: before any of them. */
export type CautionPlace = "making" | "fastening" | "lighting" | "plugging" | "using";

interface Caution {
  readonly place: CautionPlace;
  readonly applies: (panel: PanelForPack) => boolean;
  readonly text: string;
}

/** The shop's cautions first, then what single parts ask for, each once. */
export const cautionsFor = (panel: PanelForPack): readonly string[] => [
  ...CAUTIONS.filter(({ applies }) => applies(panel)).map(({ text }) => text),
  ...new Set(panel.layout.components.flatMap(({ part }) => part.caution ?? [])),
];

/** Those of one place in the work; single parts' own cautions stand with their steps. */
export const cautionsAt = (place: CautionPlace, panel: PanelForPack): readonly string[] =>
  CAUTIONS.filter((caution) => caution.place === place && caution.applies(panel)).map(
    ({ text }) => text,
  );

const isMadeBy =
  (...kinds: readonly MachineDesign["kind"][]) =>
  ({ sheetParts }: PanelForPack): boolean =>
    sheetParts.some(({ setUps }) => setUps.some(({ machine }) => kinds.includes(machine.kind)));

const holds =
  (...materials: readonly Material[]) =>
  ({ sheetParts }: PanelForPack): boolean =>
    sheetParts.some(({ stock }) => materials.includes(stock.material));

const hasFamily =
  (...families: readonly string[]) =>
  ({ layout }: PanelForPack): boolean =>
    layout.components.some(({ part }) => families.includes(part.family));

const isPainted = ({ layout }: PanelForPack): boolean =>
  layout.layers.some(({ finish }) => finish !== null);

const isDrilledByHand = ({ sheetParts }: PanelForPack): boolean =>
  sheetParts.some(({ handOperations }) =>
    handOperations.some(({ what }) => ["drill", "ream", "tap", "countersink"].includes(what)),
  );

const isLit = ({ layout }: PanelForPack): boolean =>
  layout.layers.some(({ design }) => design.kind === "spacer" && design.lighting !== null) ||
  layout.components.some(({ part }) => part.family === "lamp");

const isPrinted = ({ layout }: PanelForPack): boolean =>
  layout.layers.some(({ kind }) => kind === "spacer");

const always = (): boolean => true;

const CAUTIONS: readonly Caution[] = [
  {
    place: "making",
    applies: isMadeBy("co2-laser", "diode-laser"),
    text: "Laser: never leave it running alone; keep a fire blanket or extinguisher at hand and the fumes drawn off. Never cut PVC, vinyl or anything else with chlorine in it, masks included: paper or polyethylene masks only. Paint or laminate that you don't know goes in only with its data sheet.",
  },
  {
    place: "making",
    applies: isMadeBy("diode-laser"),
    text: "Diode laser: an open beam blinds. Goggles made for its wavelength and an enclosure; a blue beam passes clear acrylic and hits what lies behind.",
  },
  {
    place: "making",
    applies: isMadeBy("router"),
    text: "Router: eye and ear protection, the dust drawn off, small pieces held by tabs or tape and never by fingers.",
  },
  {
    place: "making",
    applies: isDrilledByHand,
    text: "Drilling: clamp the sheet on a backing board. Acrylic is grabbed and split by a metal drill: use one ground for plastics, slowly, with the eyes covered.",
  },
  {
    place: "fastening",
    applies: holds("acrylic-cast", "acrylic-extruded"),
    text: "Acrylic: no alcohol, solvent, superglue or thread-lock on it, above all not on cut edges: it crazes. Anneal it before painting, never in an oven that is used for food or burns gas.",
  },
  {
    place: "fastening",
    applies: holds("aluminium"),
    text: "Aluminium: cut edges are sharp until they are deburred. If there is any mains voltage in the console, metal panels and rails are bonded to protective earth, by a licensed electrician.",
  },
  {
    place: "making",
    applies: isPainted,
    text: "Paint: in moving air, away from sparks, with the mask that its data sheet asks for. Two-part paints with isocyanates need supplied air and belong to a trained sprayer.",
  },
  {
    place: "making",
    applies: isPrinted,
    text: "Printing: ventilate the room, and keep an eye on the printer. Prints and acrylic burn: ask your local fire code before they stand in public.",
  },
  {
    place: "lighting",
    applies: isLit,
    text: "Light: watts in a closed box become heat; mind the temperature that the material stands. Don't look into bare LEDs, and flash nothing faster than three times a second in public.",
  },
  {
    place: "plugging",
    applies: hasFamily("connector", "fuse-holder", "key-switch"),
    text: "Mains: this program plans extra-low-voltage DC only. Whatever carries mains is chosen, wired and tested by a licensed electrician under local codes.",
  },
  {
    place: "plugging",
    applies: always,
    text: "Low volts are not low amps: a fuse at the source of each branch, before the wire that it protects.",
  },
  {
    place: "using",
    applies: always,
    text: "Panels made with this program are for training, exhibits and desks, and no certified controls. Never fit one to a real vehicle, vessel, aircraft or machine. Nothing on it may look like an emergency stop; a real one is a matter for licensed practice (ISO 13850).",
  },
];
