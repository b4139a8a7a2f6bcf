// Which command of the whole page a key is, by its letter: saving and the steps of the history.

import { type Key, latinKey } from "../panel/latin-key.ts";

export type FileCommand = "save" | "undo" | "redo";

type CommandKey = Key & Pick<KeyboardEvent, "ctrlKey" | "metaKey" | "altKey" | "shiftKey">;

/** null where it is none of them. */
export function commandKey(event: CommandKey): FileCommand | null {
  if (event.altKey || !(event.ctrlKey || event.metaKey)) return null;
  switch (latinKey(event)) {
    case "s":
      return event.shiftKey ? null : "save";
    case "z":
      return event.shiftKey ? "redo" : "undo";
    case "y":
      return event.shiftKey ? null : "redo";
    default:
      return null;
  }
}
