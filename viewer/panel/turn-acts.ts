// What is picked turned, as one step of the history: by a quarter, or to an angle that was typed.

import { angleTyped } from "./angle-typed.ts";
import { say, selectedEntries } from "./board.ts";
import { open } from "./open-panel.ts";
import { named } from "./panel-names.ts";
import { takeEdit } from "./told-edit.ts";
import { thingsTurned } from "./turn-edits.ts";

export function turnSelection(by: number): void {
  const on = open();
  const entries = selectedEntries.value;
  if (on === null || entries.length === 0) return;
  const { edit, unturned } = thingsTurned(on.from, entries, { by, layout: on.layout });
  const what = `turn ${named(entries.filter((entry) => !unturned.includes(entry)))}`;
  const rest = unturned.length === 0 ? "" : `; ${named(unturned)} can't be turned`;
  takeEdit(edit, what, `${what}${rest}`);
}

/** `now`: the angle that it has, degrees. */
export function turnTo(now: number, typed: string): void {
  const angle = angleTyped(typed);
  if (angle.kind === "refused") say(`${angle.why}.`);
  else turnSelection(angle.value - now);
}
