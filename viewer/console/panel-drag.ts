// Moving a panel along its rail, by hand or by keys: whole modules, what it meets at each, and one edit of the text at the
// end. While it lasts only the picture moves.

import { effect, signal } from "@preact/signals";
import { edit } from "../desk.ts";
import { ASKED } from "../panel/told-edit.ts";
import type { DragReading, SceneBay, ScenePanel, SettleOption } from "./console-messages.ts";
import { changeLook, choosePanelHere, client, look, said, scene } from "./console-state.ts";
import { dragWords } from "./drag-words.ts";
import { meetingMarks, meetingNotes } from "./meeting-marks.ts";

export interface Drag {
  readonly panel: string;
  readonly from: number;
  readonly module: number;
  readonly reading: DragReading | null;
}

export interface Offer {
  readonly panel: string;
  readonly why: string;
  readonly options: readonly SettleOption[];
}

export const drag = signal<Drag | null>(null);
export const offer = signal<Offer | null>(null);

export interface Railed {
  readonly panel: ScenePanel;
  readonly bay: SceneBay;
  readonly module: number;
}

/** null for a panel that stands in no bay. */
export const railed = (name: string | null): Railed | null => {
  const panel = scene.value?.panels.find((each) => each.name === name);
  const place = panel?.place ?? null;
  const bay = scene.value?.bays.find(({ id }) => id === place?.bay);
  return panel === undefined || place === null || bay === undefined
    ? null
    : { panel, bay, module: place.module };
};

export const dragTo = async (panel: string, module: number): Promise<void> => {
  const now = drag.value;
  if (offer.value !== null || (now?.panel === panel && now.module === module)) return;
  const from = railed(panel)?.module;
  if (from === undefined) return;
  drag.value = { panel, from, module, reading: now?.reading ?? null };
  const reply = await client.drag({ panel, module });
  if (reply?.kind !== "dragged" || drag.value?.panel !== panel) return;
  drag.value = { ...drag.value, reading: reply.step };
  changeLook({
    moved: new Map(reply.step.frames.map(({ panel: name, frame }) => [name, frame])),
    marks: reply.step.meetings.flatMap(meetingMarks),
    notes: meetingNotes(reply.step.meetings),
    stretch: null,
  });
  said.value = dragWords(reply.step);
};

const heldPanel = (): string | null => offer.value?.panel ?? drag.value?.panel ?? null;

/** Another panel chosen puts back the one that is held: what is settled then is always what is chosen. */
export const chooseToWork = (name: string): void => {
  const held = heldPanel();
  if (held !== name) cancelDrag();
  const before = said.value;
  choosePanelHere(name);
  if (held !== null && held !== name && said.value !== before)
    said.value = `${held} is put back. ${said.value}`;
};

/** However else another is chosen, by a finding or a new reading: the same. */
export const followChosen = (): (() => void) =>
  effect(() => {
    const { chosen } = look.value;
    const held = offer.peek()?.panel ?? drag.peek()?.panel ?? chosen;
    if (held !== chosen) cancelDrag();
  });

/** By keys: from where it stands, or from where it has been brought. */
export const nudge = (panel: string, by: number): void => {
  if (offer.value !== null) {
    said.value = `${offer.value.panel} is still held: choose what is written, or put it back.`;
    return;
  }
  const at = drag.value?.panel === panel ? drag.value.module : railed(panel)?.module;
  if (at !== undefined) void dragTo(panel, Math.max(0, at + by));
};

export const cancelDrag = (): void => {
  if (drag.value === null && offer.value === null) return;
  drag.value = null;
  offer.value = null;
  changeLook({ moved: new Map(), marks: [], notes: [], stretch: null });
  said.value = "Put back.";
};

export const settleDrag = async (): Promise<void> => {
  const now = drag.value;
  if (now === null || offer.value !== null) return;
  const { panel, module } = now;
  const reply = await client.settle({ panel, module });
  // It has been put back or moved on in the meantime: nothing is written of it.
  if (drag.value?.panel !== panel || drag.value.module !== module) return;
  if (reply.kind !== "settled") return refuse(reply.kind === "failed" ? reply.why : "");
  const { settlement } = reply;
  switch (settlement.kind) {
    case "nothing":
      cancelDrag();
      return;
    case "refused":
      refuse(settlement.why);
      return;
    case "choice":
      offer.value = { panel, why: settlement.why, options: settlement.options };
      said.value = settlement.why;
      return;
    case "edit":
      write({ words: settlement.what, edit: settlement.edit }, settlement.what);
  }
};

export const takeOption = (option: SettleOption): void => {
  const panel = offer.value?.panel ?? "";
  write(option, `move ${panel}: ${option.words}`);
};

/** The panel stays where it was dropped until the new reading has it there. */
const write = (option: SettleOption, what: string): void => {
  const outcome = edit([option.edit], what);
  switch (outcome.kind) {
    case "done":
      drag.value = null;
      offer.value = null;
      said.value = `Written: ${what}.`;
      return;
    case "asked":
      // It goes back until the person has chosen; what is chosen is read and seen then.
      refuse(ASKED);
      return;
    case "refused":
      refuse(outcome.why);
  }
};

const refuse = (why: string): void => {
  cancelDrag();
  said.value = why;
};
