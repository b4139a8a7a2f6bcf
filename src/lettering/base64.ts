// Base64 to bytes (RFC 4648, section 4), for code that runs where neither Buffer nor atob is promised.
// Takes padded or unpadded text; any other character is a broken library, not a user's mistake.

import { invariant } from "../geometry/invariant.ts";

const ALPHABET = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
const NOT_A_DIGIT = 255;

export const bytesFromBase64 = (text: string): Uint8Array => {
  const digits = digitCount(text);
  const bytes = new Uint8Array(Math.floor((digits * 6) / 8));
  let pending = 0;
  let pendingBits = 0;
  let written = 0;
  for (let index = 0; index < digits; index += 1) {
    const value = DIGITS[text.charCodeAt(index)] ?? NOT_A_DIGIT;
    invariant(value !== NOT_A_DIGIT, "base64 text holds only its 64 digits and padding");
    pending = ((pending << 6) | value) & 0xffff;
    pendingBits += 6;
    if (pendingBits >= 8) {
      pendingBits -= 8;
      bytes[written] = (pending >> pendingBits) & 0xff;
      written += 1;
    }
  }
  return bytes;
};

const digitCount = (text: string): number => {
  let length = text.length;
  while (length > 0 && text[length - 1] === "=") length -= 1;
  return length;
};

const DIGITS: Uint8Array = (() => {
  const table = new Uint8Array(128).fill(NOT_A_DIGIT);
  for (let value = 0; value < ALPHABET.length; value += 1)
    table[ALPHABET.charCodeAt(value)] = value;
  return table;
})();
