// The keys of saving and of the history, anywhere on the page; where a text is being typed, undo and redo are its own.
// And the question of the browser before a window with unsaved edits is closed.

import { effect } from "@preact/signals";
import { consoleReading, designName, panels, redo, undo } from "../desk.ts";
import { inTurn } from "../when-current.ts";
import { commandKey } from "./command-key.ts";
import { save } from "./saving.ts";
import { unsaved } from "./stored-state.ts";

export function takeFileKeys(): void {
  document.addEventListener("keydown", (event) => {
    const act = actOf(event);
    if (act === null) return;
    event.preventDefault();
    act();
  });
  // Seen on the window's tab, whatever stands before it.
  effect(() => {
    const state = unsaved.value.length === 0 ? "" : " (not saved)";
    const title = titleOfDesign();
    document.title = `${title}${state}${title === "" && state === "" ? "" : ", "}Consolewright`;
  });
  window.addEventListener("beforeunload", (event) => {
    if (unsaved.value.length > 0) event.preventDefault();
  });
}

/** Of the console, of the only panel, else what was opened. */
function titleOfDesign(): string {
  const [only, ...others] = panels.value;
  const panel = others.length === 0 ? only?.title : undefined;
  return consoleReading.value?.design.title ?? panel ?? designName.value;
}

function actOf(event: KeyboardEvent): (() => void) | null {
  const command = event.defaultPrevented ? null : commandKey(event);
  if (command === "save") return () => void save();
  if (command === null || isTyping(event.target)) return null;
  return () => inTurn(command === "undo" ? undo : redo);
}

const isTyping = (target: EventTarget | null): boolean =>
  target instanceof HTMLTextAreaElement ||
  (target instanceof HTMLInputElement && TYPED.has(target.type)) ||
  (target instanceof HTMLElement && target.isContentEditable);

const TYPED = new Set(["text", "search", "number", "url", "email", "tel", "password"]);
