// What is picked taken off the panel, as one step of the history.

import { offer, say, selectedEntries } from "./board.ts";
import { open } from "./open-panel.ts";
import { named } from "./panel-names.ts";
import { pickByLastStep } from "./picked-again.ts";
import { thingsRemoved } from "./removal-edits.ts";
import { takeEdit } from "./told-edit.ts";

/** At once where nothing else changes; what names it changes only with the person's word. */
export function removeSelection(): void {
  const on = open();
  const entries = selectedEntries.value;
  if (on === null || entries.length === 0) return;
  const { edit: made, says } = thingsRemoved(on.from, entries, on.layout);
  const what = `take off ${named(entries)}`;
  if (made.kind === "edit" && says.length > 0) {
    const title = `Take off ${named(entries)} all the same`;
    offer.value = { why: says.join("; "), title, edits: [made.edit], what };
    say(`Not yet taken off: ${says.join("; ")}.`);
    return;
  }
  if (takeEdit(made, what, `Taken off: ${named(entries)}`)) pickByLastStep([]);
}
