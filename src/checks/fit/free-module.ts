// The next module of its bay at which a panel is free of everything: a remedy that is tried with every body before it is
// offered. Coarse on the safe side, as a drag is.

import { spanOf } from "../../design/written.ts";
import type { Remedy } from "../../diagnostics/finding.ts";
import { bodyGroups } from "../../fit/body-groups.ts";
import { dragStep } from "../../fit/drag-step.ts";
import type { FitFacts } from "../../fit/fit-facts.ts";
import { type RailScene, railScene } from "../../fit/rail-scene.ts";
import { decimal } from "../../geometry/number.ts";
import { type Frame, movedFrame } from "../../geometry/space/frame.ts";
import { scaled } from "../../geometry/space/vector.ts";
import { arithmeticNoise } from "../../geometry/tolerance.ts";
import type { BayLayout, PanelPlace, PlacedPanel } from "../../layout/console/console-layout.ts";
import type { ConsoleFacts } from "./console-rule.ts";
import { nearLimit, searchedWithin } from "./near-limits.ts";

/**
 * An edit where `module:` is written and no other panel follows this one; nothing where no module is free. `suits`: what
 * else is asked of the panel's frame at its new place.
 */
export const freeModuleRemedies = (
  panel: PlacedPanel | undefined,
  facts: ConsoleFacts,
  suits: (frame: Frame) => boolean = () => true,
): readonly Remedy[] => {
  if (panel === undefined || panel.place.kind !== "bay") return [];
  const { layout, fit } = facts;
  const { place, use, name } = panel;
  const bay = layout.bays.find(({ id }) => id === place.bay);
  const follows = layout.panels.some((other) => other.use.after === name);
  if (bay === undefined || use.module === null || follows) return [];
  const module = freeModule({ panel, place, bay, rail: railOf(fit, bay), suits }, facts);
  if (module === null) return [];
  const text = decimal(module, 3);
  const title = `module: ${text} (${name})`;
  return [{ title, edits: [facts.edit(spanOf(use.written, "module"), text)] }];
};

const RAILS = new WeakMap<FitFacts, Map<string, RailScene>>();

const railOf = (fit: FitFacts, { id, frame }: BayLayout): RailScene => {
  const known = RAILS.get(fit) ?? new Map<string, RailScene>();
  RAILS.set(fit, known);
  const made = known.get(id) ?? railScene(bodyGroups(fit.bodies), frame);
  known.set(id, made);
  return made;
};

interface Search {
  readonly panel: PlacedPanel;
  readonly place: PanelPlace & { readonly kind: "bay" };
  readonly bay: BayLayout;
  readonly rail: RailScene;
  readonly suits: (frame: Frame) => boolean;
}

/** Whole modules, the nearest first; of two as near the one farther along. */
const freeModule = (search: Search, facts: ConsoleFacts): number | null => {
  const { place, bay } = search;
  const most = Math.ceil(bay.length / bay.pitch);
  for (let away = 1; away <= most; away += 1)
    for (const step of [away, -away]) {
      const shift = step * bay.pitch;
      if (isOnFreeRails(shift, search, facts) && isFree(shift, search, facts))
        return place.module + step;
    }
  return null;
};

const isOnFreeRails = (
  shift: number,
  { panel, place, bay }: Search,
  facts: ConsoleFacts,
): boolean => {
  const [from, to] = [place.from + shift, place.to + shift];
  if (from < -arithmeticNoise || to > bay.length + arithmeticNoise) return false;
  return facts.layout.panels.every(
    (other) =>
      other === panel ||
      other.place.kind !== "bay" ||
      other.place.bay !== bay.id ||
      other.place.to <= from + arithmeticNoise ||
      other.place.from >= to - arithmeticNoise,
  );
};

/** Nothing meets or touches, and nothing comes nearer than the table allows. */
const isFree = (
  shift: number,
  { panel, bay, rail, suits }: Search,
  facts: ConsoleFacts,
): boolean => {
  if (!suits(movedFrame(panel.frame, scaled(bay.frame.y, shift)))) return false;
  const within = searchedWithin(facts);
  return dragStep(rail, { panel: panel.name, by: shift }, () => within).every(
    ({ a, b, relation }) =>
      relation.kind === "apart" &&
      relation.gap >= (nearLimit(a, b, facts)?.room ?? 0) - arithmeticNoise,
  );
};
