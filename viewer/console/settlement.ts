// What a panel dropped at a module writes into its console's text: one edit where the design's own words can say it, a
// named choice where they can't, nothing where it has not moved.

import { nodeAt, setKey } from "../../src/design/edit.ts";
import { replacement, type Source, spanIn } from "../../src/design/source.ts";
import type { MapNode, TextNode } from "../../src/design/text-node.ts";
import { decimal } from "../../src/geometry/number.ts";
import { arithmeticNoise } from "../../src/geometry/tolerance.ts";
import type { ConsoleLayout, PlacedPanel } from "../../src/layout/console/console-layout.ts";
import type { PanelMove, Settlement, SettleOption } from "./console-messages.ts";
import { followersOf, leaderOf } from "./followers.ts";

export const settlement = (layout: ConsoleLayout, from: Source, move: PanelMove): Settlement => {
  const panel = layout.panels.find(({ name }) => name === move.panel);
  if (panel === undefined || panel.place.kind !== "bay")
    return { kind: "refused", why: `${move.panel} stands in no bay: it has no module to move by.` };
  if (Math.abs(panel.place.module - move.module) < arithmeticNoise) return { kind: "nothing" };
  if (move.module < 0)
    return { kind: "refused", why: `A bay begins at module 0; ${move.module} lies before it.` };
  const written = writtenAt(from, panel);
  if (written === null)
    return { kind: "refused", why: `The line of ${move.panel} can't be found in ${from.file}.` };
  const at = decimal(move.module, 3);
  return leaderOf(layout, panel) === null || panel.use.after === null
    ? ownModule(from, { written, panel, at })
    : behindOther(from, { written, panel, at, layout, move });
};

interface Written {
  readonly index: number;
  readonly node: MapNode;
}

const writtenAt = (from: Source, { use }: PlacedPanel): Written | null => {
  const list = nodeAt(from, ["panels"]);
  if (list?.kind !== "list") return null;
  const index = list.items.findIndex(({ span }) => span.start === use.written.span.start);
  const node: TextNode | undefined = list.items[index];
  return node?.kind === "map" ? { index, node } : null;
};

interface Place {
  readonly written: Written;
  readonly panel: PlacedPanel;
  readonly at: string;
}

const ownModule = (from: Source, { written, panel, at }: Place): Settlement => {
  const path = ["panels", `${written.index}`];
  const set = setKey(from, path, { key: "module", value: at });
  return set.kind === "refused"
    ? set
    : { kind: "edit", what: `move ${panel.name} to module ${at}`, edit: set.edit };
};

/** The design says what it follows: its new place is right behind another panel, or it must be set free of its neighbour. */
const behindOther = (
  from: Source,
  place: Place & { readonly layout: ConsoleLayout; readonly move: PanelMove },
): Settlement => {
  const { written, panel, at, layout, move } = place;
  const path = ["panels", `${written.index}`];
  const neighbour = neighbourAt(layout, panel, move.module);
  const after =
    neighbour === null ? null : setKey(from, path, { key: "after", value: neighbour.name });
  const free = freed(from, written.node, at);
  const options: readonly SettleOption[] = [
    ...(after?.kind === "edit" && neighbour !== null
      ? [{ words: `Stand behind ${neighbour.name}`, edit: after.edit }]
      : []),
    ...(free === null ? [] : [{ words: `Set free at module ${at}`, edit: free }]),
  ];
  if (options.length === 0)
    return { kind: "refused", why: `The text of ${panel.name} can't say module ${at}.` };
  return {
    kind: "choice",
    why: `${panel.name} is written to stand behind ${panel.use.after}; module ${at} is elsewhere.`,
    options,
  };
};

/** The panel that ends where the moved one begins, and is none of those that move along. */
const neighbourAt = (
  layout: ConsoleLayout,
  panel: PlacedPanel,
  module: number,
): PlacedPanel | null => {
  if (panel.place.kind !== "bay") return null;
  const { bay } = panel.place;
  const pitch = layout.bays.find(({ id }) => id === bay)?.pitch;
  if (pitch === undefined) return null;
  const moving = new Set([panel.name, ...followersOf(layout, panel.name).map(({ name }) => name)]);
  const found = layout.panels.find(
    ({ name, place }) =>
      !moving.has(name) &&
      place.kind === "bay" &&
      place.bay === bay &&
      Math.abs(Math.ceil(place.to / pitch - arithmeticNoise) - module) < arithmeticNoise,
  );
  return found === undefined || found.name === panel.use.after ? null : found;
};

/** `after: x` becomes `module: N`, in its place. */
const freed = (from: Source, node: MapNode, at: string): SettleOption["edit"] | null => {
  const entry = node.entries.find(({ key }) => key === "after");
  if (entry === undefined || entry.value.kind !== "scalar") return null;
  const span = spanIn(from, entry.keySpan.start, entry.value.span.end);
  return replacement(from, span, `module: ${at}`);
};
