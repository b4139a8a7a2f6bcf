// Steps of assembly as a builder takes them: neighbours that do the same to the same kind of part, from one side with one
// tool, are one. Numbers stay those of the order, which findings name.

import type { PlacedComponent } from "../layout/panel-layout.ts";
import type { ServiceItem } from "../service/service-item.ts";
import { closedOver, type ServiceOrder, type ServiceStep } from "../service/service-order.ts";
import { toolWords } from "../service/tool.ts";
import type { PanelForPack } from "./panel-pack.ts";

export interface AssemblyGroup {
  readonly first: number;
  readonly last: number;
  readonly kind: ServiceItem["kind"];
  readonly side: ServiceItem["side"];
  /** null: nothing is held in the hand but the thing itself. */
  readonly tool: string | null;
  /** Ids, in the order of the layout. */
  readonly owners: readonly string[];
  /** Set for what belongs to components; all of them are of one part, but for plugs. */
  readonly components: readonly PlacedComponent[];
  /** What goes on later and closes over it. */
  readonly before: readonly string[];
}

export const assemblyGroups = (
  order: ServiceOrder,
  panel: Pick<PanelForPack, "layout" | "printedParts">,
): readonly AssemblyGroup[] => {
  const closed = closedOver(order);
  const groups: AssemblyGroup[] = [];
  for (const step of order.steps) {
    const next = groupOf(step, closed.get(step.item.id) ?? [], panel);
    const last = groups.at(-1);
    if (last !== undefined && areAlike(last, next)) groups[groups.length - 1] = joined(last, next);
    else groups.push(next);
  }
  return groups;
};

const groupOf = (
  { number, item }: ServiceStep,
  closed: readonly string[],
  { layout, printedParts }: Pick<PanelForPack, "layout" | "printedParts">,
): AssemblyGroup => ({
  first: number,
  last: number,
  kind: item.kind,
  side: item.side,
  tool: item.tool === null ? null : toolWords(item.tool),
  owners: [item.owner],
  components: layout.components.filter(({ id }) => id === item.owner),
  before: [
    ...new Set(
      // A printed part of the stack goes by its layer's name, as in the steps.
      closed.map((owner) => printedParts.find(({ id }) => id === owner)?.owner ?? owner),
    ),
  ],
});

const areAlike = (one: AssemblyGroup, other: AssemblyGroup): boolean =>
  one.kind === other.kind &&
  one.kind !== "layer" &&
  one.side === other.side &&
  one.tool === other.tool &&
  kindOf(one) === kindOf(other) &&
  one.before.join() === other.before.join() &&
  // What closes over its neighbour is a step of its own.
  !other.owners.some((owner) => one.before.includes(owner));

/** Plugs are plugs, whatever they belong to. */
const kindOf = ({ kind, components }: AssemblyGroup): string => {
  const [first] = components;
  if (first === undefined) return "";
  if (kind === "plug") return first.common.fitted;
  return [first.part.id, first.common.fitted, ...first.fitted.map(({ id }) => id)].join(" ");
};

/** The order was found backward: the later step is the earlier in the layout. */
const joined = (one: AssemblyGroup, other: AssemblyGroup): AssemblyGroup => ({
  ...one,
  last: other.last,
  owners: [...other.owners, ...one.owners],
  components: [...other.components, ...one.components],
});
