// The cautions that apply to a whole console, in plain words. They state what any workshop knows and defer to local codes and
// licensed practice; nothing in them makes a job safe by itself.

import type { MachineDesign } from "../design/workshop-design.ts";
import type { ConsoleForPack } from "./console-pack.ts";

interface Caution {
  readonly applies: (input: ConsoleForPack) => boolean;
  readonly text: string;
}

export const consoleCautions = (input: ConsoleForPack): readonly string[] =>
  CAUTIONS.filter(({ applies }) => applies(input)).map(({ text }) => text);

const always = (): boolean => true;
const hasFrame = ({ frame }: ConsoleForPack): boolean => frame !== null;
const isSloped = ({ layout }: ConsoleForPack): boolean =>
  layout.bays.some(({ frame }) => frame.z.z < LEVEL);
const hasLooms = ({ fit }: ConsoleForPack): boolean => fit.loops.length > 0;
const isWired = ({ layout }: ConsoleForPack): boolean =>
  layout.panels.some((panel) => panel.layout.components.length > 0);
const isCutBy =
  (...kinds: readonly MachineDesign["kind"][]) =>
  ({ frame }: ConsoleForPack): boolean =>
    (frame?.parts ?? []).some(({ sheetPart }) =>
      sheetPart.setUps.some(({ machine }) => kinds.includes(machine.kind)),
    );

/** A bay this far from level (a degree) lets a loose panel slide. */
const LEVEL = 0.99985;

const CAUTIONS: readonly Caution[] = [
  {
    applies: always,
    text: "Tipping: a console falls over when somebody leans or climbs on it, and the more easily the higher its panels stand. Fix it to the floor or to a wall, or widen its foot, before anybody uses it; where the public comes near, ask who is responsible for the building.",
  },
  {
    applies: hasFrame,
    text: "Lifting: what weighs more than 20 kg is carried by two people. Weigh one board before you lift the whole; take the panels out first.",
  },
  {
    applies: always,
    text: "Pinching: fingers are caught between a panel and its rails when it drops in, and between a hatch and its frame. Hold a panel by its edges, keep hands off the rails, and put a stay on whatever opens upward.",
  },
  {
    applies: isSloped,
    text: "Sloped bays: a panel whose last fastener is out slides down. Hold it, or leave one fastener in until a hand is under it.",
  },
  {
    applies: hasLooms,
    text: "Looms: switch off and unplug before a panel is lifted. Tie each loom where the report says, so that no wire is pulled and none lies on an edge.",
  },
  {
    applies: isWired,
    text: "Mains: this program plans extra-low-voltage DC only. Whatever carries mains is chosen, wired and tested by a licensed electrician under local codes; then metal panels, rails and frame are bonded to protective earth. A fuse stands at the source of each branch.",
  },
  {
    applies: isWired,
    text: "Heat and fire: electronics in a closed console need air in below and out above. Prints, acrylic and board burn: ask your local fire code before it stands in public.",
  },
  {
    applies: isCutBy("router"),
    text: "Router: eye and ear protection, the dust drawn off (dust of board and of some woods harms the lungs), small pieces held by tabs or tape and never by fingers.",
  },
  {
    applies: isCutBy("co2-laser", "diode-laser"),
    text: "Laser: never leave it running alone; an extinguisher at hand and the fumes drawn off. Board with unknown glue goes in only with its data sheet.",
  },
  {
    applies: always,
    text: "Edges: break every edge and corner that a hand, a knee or a child's head can meet.",
  },
  {
    applies: always,
    text: "A console made with this program is for training, exhibits and desks, and no certified control. Nothing on it may look like an emergency stop; a real one is a matter for licensed practice (ISO 13850).",
  },
];
