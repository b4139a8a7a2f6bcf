// One group of assembly steps in words: what goes in, from which side, with which tool and fastener, and before what.

import type { Part } from "../catalogue/part.ts";
import { decimal } from "../geometry/number.ts";
import type { LayerLayout, PlacedComponent } from "../layout/panel-layout.ts";
import type { AssemblyGroup } from "./assembly-groups.ts";
import { idWords, listWords } from "./list-words.ts";
import type { PanelForPack } from "./panel-pack.ts";
import { stackScrews } from "./stack-screws.ts";

export const assemblyWords = (group: AssemblyGroup, panel: PanelForPack): string =>
  [...sentences(group, panel), ...beforeWords(group), ...laterWords(group)].join(" ");

const sentences = (group: AssemblyGroup, panel: PanelForPack): readonly string[] => {
  switch (group.kind) {
    case "layer":
      return layerWords(group, panel);
    case "strip":
      return stripWords(group, panel);
    case "nut":
    case "screw":
      return heldWords(group, panel);
    case "plug":
      return [`Plug in ${idWords(group.owners)} ${fromSide(group)}.`];
    case "knob":
      return knobWords(group);
    case "stack-screw":
      return screwWords(group, panel);
  }
};

const fromSide = ({ side }: AssemblyGroup): string => `from the ${side}`;

const layerWords = (group: AssemblyGroup, { layout }: PanelForPack): readonly string[] => {
  const [owner] = group.owners;
  const layer = layout.layers.find(({ id }) => id === owner);
  if (layer === undefined) return [];
  const what = `${layer.id} (${madeOf(layer)})`;
  if (group.first === 1) return [`Begin with ${what}.`];
  const hasDowels = layout.fixings.some(({ kind }) => kind !== "screw");
  const dowels = hasDowels ? ", on the dowels: it goes on one way only" : "";
  return [`Lay ${what} on ${fromSide(group)}${dowels}.`];
};

const madeOf = ({ kind, stock, thickness }: LayerLayout): string => {
  if (kind === "tray") return "printed";
  const printed = kind === "spacer" ? "printed, " : "";
  return `${printed}${stock?.id ?? kind}, ${decimal(thickness.nominal, 2)} mm`;
};

const stripWords = (group: AssemblyGroup, panel: PanelForPack): readonly string[] => {
  const parts = panel.printedParts.filter(({ owner }) => group.owners.includes(owner));
  const channels = parts.flatMap(({ facts }) => facts.channels);
  const circuits = [...new Set(channels.map(({ circuit }) => circuit))];
  const laid = circuits.map((circuit) => {
    const own = channels.filter((channel) => channel.circuit === circuit);
    const kinds = [...new Set(own.map(({ part }) => part))];
    const runs = own.length === 1 ? "1 channel" : `${own.length} channels`;
    return `${circuit}: ${listWords(kinds)} in ${runs}`;
  });
  const led = parts.flatMap(({ facts }) => facts.notches).length;
  return [
    `Lay the lamps of ${listWords(group.owners)} in their channels ${fromSide(group)} (${laid.join("; ")}).`,
    ...(led === 0 ? [] : ["Lead their wires out through the passages, and light them once now."]),
  ];
};

/** What holds a component, and from where the component and its fastener come. */
const heldWords = (group: AssemblyGroup, panel: PanelForPack): readonly string[] => {
  const [first] = group.components;
  if (first === undefined) return [];
  const own = panel.printedParts.filter(
    ({ owner }) => owner === first.entry || group.owners.includes(owner),
  );
  const box = own.some(({ role }) => role === "lamp-box") ? "the lamp box of " : "";
  const who = `${box}${idWords(group.owners)} (${first.part.title})`;
  return [
    `Put in ${who} ${holdWords(first, group, panel)}.`,
    ...(own.some(({ role }) => role === "washer") ? ["Its printed washer goes under it."] : []),
    ...(own.some(({ role }) => role === "trim")
      ? ["Its printed trim goes on from the front, once the sheets lie."]
      : []),
  ];
};

const holdWords = (
  { part, clamped, depth }: PlacedComponent,
  group: AssemblyGroup,
  panel: PanelForPack,
): string => {
  const { hold } = part;
  const each = group.components.length > 1 ? " each" : "";
  const from = cameFrom(part);
  const layer = panel.layout.layers[clamped.first]?.id ?? "";
  switch (hold.kind) {
    case "bush": {
      const fasteners = [...hold.washers, hold.nut].map((id) => hardwareTitle(id, panel));
      return `${from} and fasten ${it(group)} to ${layer} ${fromSide(group)}:${each} ${listWords(fasteners)}${withTool(group)}`;
    }
    case "screws": {
      const through = decimal(depth.gripped.nominal + hold.standOff, 2);
      const screws = `${hold.holes.length} x ${hardwareTitle(hold.screw, panel)}`;
      return `${from} and screw ${it(group)} to ${layer} ${fromSide(group)}:${each} ${screws}, long enough for ${through} mm and the part's own thread or a nut${withTool(group)}`;
    }
    case "snap":
      return `${from} and push until ${group.components.length > 1 ? "each snaps" : "it snaps"} into ${layer}`;
    case "behind":
      return `${from}; nothing fastens ${it(group)} to a sheet, what lies behind does`;
  }
};

const it = ({ components }: AssemblyGroup): string => (components.length > 1 ? "them" : "it");

const cameFrom = ({ hold }: Part): string =>
  hold.seat === "front" ? "from the front" : "from the rear";

const withTool = ({ tool }: AssemblyGroup): string => (tool === null ? "" : `, with ${tool}`);

const hardwareTitle = (id: string, { catalogue }: PanelForPack): string =>
  catalogue.hardware.get(id)?.title ?? id;

const knobWords = (group: AssemblyGroup): readonly string[] => {
  const [first] = group.components;
  const fitted = (first?.fitted ?? [])
    .filter(({ kind }) => kind === "knob" || kind === "cap")
    .map(({ title }) => title);
  const what = fitted.length === 0 ? "knob or cap" : listWords(fitted);
  return [`Put on ${listWords(group.owners)}: ${what}, ${fromSide(group)}.`];
};

const screwWords = (group: AssemblyGroup, panel: PanelForPack): readonly string[] => {
  const rows = stackScrews(panel).filter(({ use }) => use === "stack");
  const what = rows.map(({ count, title }) => `${count} x ${title}`);
  const count = group.owners.length;
  return [
    `Screw the stack together ${fromSide(group)} (${count === 1 ? "1 screw" : `${count} screws`}: ${idWords(group.owners)})${withTool(group)}.`,
    ...(what.length === 0 ? [] : [`In all: ${listWords(what)}.`]),
    "First all hand-tight, then crosswise.",
  ];
};

const beforeWords = ({ before, kind }: AssemblyGroup): readonly string[] =>
  before.length === 0 || kind === "stack-screw"
    ? []
    : [`Do it now: ${listWords(before)} will stand in the way.`];

const laterWords = ({ components }: AssemblyGroup): readonly string[] =>
  components.some(({ common }) => common.fitted === "later")
    ? ["LATER: leave it out until the part is there, and come back to this step."]
    : [];
