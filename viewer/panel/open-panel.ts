// The open panel as something to work on: its layout and the text that this was read from; or nothing, and why is said.

import { type Source, source } from "../../src/design/source.ts";
import type { PanelLayout } from "../../src/layout/panel-layout.ts";
import type { PanelReading } from "../core-messages.ts";
import { isCurrent, panel, texts, unread } from "../desk.ts";
import { unreadWords } from "../kept-panels.ts";
import { say } from "./board.ts";

export interface Open {
  readonly panel: PanelReading;
  readonly layout: PanelLayout;
  readonly from: Source;
}

export const STILL_READING = "Still reading the last change: a moment.";

/** null where there is nothing to work on, or where the picture is not yet that of the text. */
export function open(): Open | null {
  const now = panel.value;
  const text = now === null ? undefined : texts.value.get(now.file);
  if (now === null || now.layout === null || text === undefined) return null;
  if (!isCurrent.value) {
    say(STILL_READING);
    return null;
  }
  if (isUnread()) return null;
  return { panel: now, layout: now.layout, from: source(now.file, text) };
}

/** Whether the picture is an older one than the text, which is said then: nothing is done in it. */
export function isUnread(): boolean {
  const why = unread.value;
  if (why !== null) say(`Not done: ${unreadWords(why, panel.value?.file ?? "")}.`);
  return why !== null;
}
