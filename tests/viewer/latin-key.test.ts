// Keys by their letters, on keyboards of several layouts (UI Events: `key` is what it writes, `code` is its place).

import { expect, test } from "vitest";
import { latinKey } from "../../viewer/panel/latin-key.ts";

test.each([
  ["c on a QWERTY keyboard", "c", "KeyC", "c"],
  ["A with Shift, on an AZERTY keyboard where Q lies elsewhere", "A", "KeyQ", "a"],
  ["z on a QWERTZ keyboard", "z", "KeyY", "z"],
  ["the place of C on a Russian keyboard", "с", "KeyC", "c"],
  ["the place of T on a Greek keyboard", "τ", "KeyT", "t"],
  ["o with two dots, which is no letter of the help", "ö", "Semicolon", "ö"],
  ["a dotless i on a Turkish keyboard", "ı", "KeyI", "ı"],
  ["0 with Shift on an AZERTY keyboard", "0", "Digit0", "0"],
  ["the place of 0 on an AZERTY keyboard, where it writes a letter", "à", "Digit0", "0"],
  ["the place of 5 on an AZERTY keyboard, where it writes a bracket", "(", "Digit5", "5"],
  ["the place of 6 on an AZERTY keyboard, which writes the minus of the help", "-", "Digit6", "-"],
  ["the place of 1 on a Czech keyboard, which writes the plus of the help", "+", "Digit1", "+"],
  ["a key with a name", "PageUp", "PageUp", "PageUp"],
])("%s", (_name, key, code, letter) => {
  expect(latinKey({ key, code, shiftKey: false })).toBe(letter);
});

test("what a digit's key writes with Shift is no digit", () => {
  expect(latinKey({ key: "!", code: "Digit1", shiftKey: true })).toBe("!");
});
