// Base64 against Node's own decoder and the examples of RFC 4648, section 10.

import fc from "fast-check";
import { expect, it } from "vitest";
import { bytesFromBase64 } from "../../src/lettering/base64.ts";

const bytesOf = (text: string): Uint8Array => new Uint8Array(Buffer.from(text, "latin1"));

it.each([
  ["", ""],
  ["Zg==", "f"],
  ["Zm8=", "fo"],
  ["Zm9v", "foo"],
  ["Zm9vYg==", "foob"],
  ["Zm9vYmE=", "fooba"],
  ["Zm9vYmFy", "foobar"],
])("%s decodes as RFC 4648 says", (encoded, plain) => {
  expect(bytesFromBase64(encoded)).toEqual(bytesOf(plain));
});

it("gives back what Node encoded", () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
      const decoded = bytesFromBase64(Buffer.from(bytes).toString("base64"));
      expect([...decoded]).toEqual([...bytes]);
    }),
  );
});

it.each(["Zg=", "Zm9v"])("takes %s with less padding than it should have", (encoded) => {
  expect(bytesFromBase64(encoded.replace(/=*$/, ""))).toEqual(
    new Uint8Array(Buffer.from(encoded, "base64")),
  );
});

it.each(["Zm9v!", "Zm 9v", "Zm9é"])("refuses %j", (encoded) => {
  expect(() => bytesFromBase64(encoded)).toThrow("64 digits");
});
