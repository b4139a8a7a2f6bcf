// What the panel view keeps for itself: how the sheet is looked at, what is in hand, what is offered. None of it is design
// and none of it history.

import { computed, signal } from "@preact/signals";
import { usualUnit, type WritingUnit } from "../../src/design/length-text.ts";
import type { TextEdit } from "../../src/diagnostics/text-edit.ts";
import type { PlacedComponent } from "../../src/layout/panel-layout.ts";
import { MM_PER_INCH } from "../../src/standards/inch.ts";
import type { PanelReading, PlacedFinding } from "../core-messages.ts";
import { findings, panel, selection, texts } from "../desk.ts";
import { store } from "../files/stored-state.ts";
import { emptiedWithLock } from "../locks.ts";
import type { PartCard } from "./panel-messages.ts";
import { type SheetThing, sheetThings } from "./sheet-things.ts";
import type { Guide, Shift } from "./snap.ts";
import { stillPicked } from "./still-picked.ts";
import { toldOnce } from "./told-once.ts";

/** Pixels a millimetre, and where the panel's lower left corner lies in the drawing, in pixels. */
export interface Sight {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

export interface Drag {
  readonly shift: Shift;
  readonly guides: readonly Guide[];
  /** Instance ids that go along. */
  readonly across: ReadonlySet<string>;
  readonly along: ReadonlySet<string>;
}

/** A move that no key can say, held out to the person who made it. */
export interface Offer {
  readonly why: string;
  readonly title: string;
  readonly edits: readonly TextEdit[];
  readonly what: string;
}

export type InHand =
  | { readonly kind: "nothing" }
  | { readonly kind: "part"; readonly card: PartCard; readonly at: Shift };

export type Extra = "rail" | "spanner" | "hand" | "grid";

/** null: the whole panel is fitted into the view. */
export const sight = signal<Sight | null>(null);
export const drag = signal<Drag | null>(null);
export const offer = signal<Offer | null>(null);
/** What was worked out from another text is no offer any more. */
texts.subscribe(() => {
  offer.value = null;
});

export const inHand = signal<InHand>({ kind: "nothing" });
export const extras = signal<ReadonlySet<Extra>>(new Set());
export const isSectionShown = signal(false);
export const isDrawerOpen = signal(false);
/** Read out by screen readers, and shown under the sheet: what was just done, or why it was not. */
export const said = signal("");
emptiedWithLock(said);
/** What was said of one design says nothing of the next, and each is first seen whole. */
store.subscribe(() => {
  said.value = "";
  sight.value = null;
});

export const unit = computed<WritingUnit>(() => {
  const file = panel.value?.file;
  return usualUnit(file === undefined ? "" : (texts.value.get(file) ?? ""));
});

/** Of coordinates: half a millimetre, or a thirty-second of an inch. */
export const gridStep = computed(() => (unit.value === "in" ? MM_PER_INCH / 32 : 0.5));

/** All that can be picked on the sheet, in the order of Tab. */
export const things = computed<readonly SheetThing[]>(() => {
  const { layout = null, picture = null } = panel.value ?? {};
  return layout === null || picture === null ? [] : sheetThings(layout, picture.boxes);
});

const chosen = computed(() => stillPicked(selection.value, things.value));

const selectedComponents = computed<readonly PlacedComponent[]>(() =>
  (panel.value?.layout?.components ?? []).filter(({ id }) => chosen.value.has(id)),
);

export const selectedThings = computed<readonly SheetThing[]>(() =>
  things.value.filter(({ id }) => chosen.value.has(id)),
);

/** Entries of the design that the selection stands for, each once: components, markings, screws and dowels. */
export const selectedEntries = computed<readonly string[]>(() => [
  ...new Set(selectedThings.value.map(({ entry }) => entry)),
]);

/** Of these, the components. */
export const componentEntries = computed<readonly string[]>(() => [
  ...new Set(selectedComponents.value.map(({ entry }) => entry)),
]);

export interface NumberedFinding {
  readonly number: number;
  readonly placed: PlacedFinding;
}

/** Everything that was found, gravest first. */
export const allFindings = computed<readonly NumberedFinding[]>(() =>
  inOrder(toldOnce(findings.value)),
);

/** What was found of the open panel and of what all panels share; the numbers stand in the picture too. */
export const panelFindings = computed<readonly NumberedFinding[]>(() =>
  inOrder(findings.value.filter(({ finding }) => isOf(finding.panel, panel.value))),
);

const inOrder = (all: readonly PlacedFinding[]): readonly NumberedFinding[] =>
  SEVERITIES.flatMap((severity) => all.filter(({ finding }) => finding.severity === severity)).map(
    (placed, index) => ({ number: index + 1, placed }),
  );

const SEVERITIES = ["fault", "query", "note"] as const;

const isOf = (name: string, open: PanelReading | null): boolean =>
  open === null || name === "" || name === open.name;

export function showExtra(name: Extra, isShown: boolean): void {
  const next = new Set(extras.value);
  if (isShown) next.add(name);
  else next.delete(name);
  extras.value = next;
}

export function say(words: string): void {
  said.value = words;
}
