// The commands of the whole page by their letters, on keyboards of several layouts (UI Events: `key` is what it writes, `code` is
// its place). On a keyboard of another script the browser gives that script's letter with Control too.

import { expect, test } from "vitest";
import { commandKey } from "../../viewer/files/command-key.ts";

const NONE = { ctrlKey: false, metaKey: false, altKey: false, shiftKey: false };
const CONTROL = { ...NONE, ctrlKey: true };
const SHIFTED = { ...CONTROL, shiftKey: true };

test.each([
  ["z on a QWERTY keyboard", { key: "z", code: "KeyZ", ...CONTROL }, "undo"],
  [
    "z on an AZERTY keyboard, where W lies elsewhere",
    { key: "z", code: "KeyW", ...CONTROL },
    "undo",
  ],
  ["w on an AZERTY keyboard, at the place of Z", { key: "w", code: "KeyZ", ...CONTROL }, null],
  ["z on a QWERTZ keyboard", { key: "z", code: "KeyY", ...CONTROL }, "undo"],
  ["y on a QWERTZ keyboard", { key: "y", code: "KeyZ", ...CONTROL }, "redo"],
  ["Z with Shift", { key: "Z", code: "KeyZ", ...SHIFTED }, "redo"],
  ["the place of Z on a Russian keyboard", { key: "я", code: "KeyZ", ...CONTROL }, "undo"],
  ["the same with Shift", { key: "Я", code: "KeyZ", ...SHIFTED }, "redo"],
  ["the place of S on a Greek keyboard", { key: "σ", code: "KeyS", ...CONTROL }, "save"],
  ["s with the command key", { key: "s", code: "KeyS", ...NONE, metaKey: true }, "save"],
  ["s with Shift, which is the browser's", { key: "S", code: "KeyS", ...SHIFTED }, null],
  [
    "s with Alt, which writes another letter on some keyboards",
    { key: "s", code: "KeyS", ...CONTROL, altKey: true },
    null,
  ],
  ["z by itself", { key: "z", code: "KeyZ", ...NONE }, null],
])("%s", (_name, event, command) => {
  expect(commandKey(event)).toBe(command);
});
