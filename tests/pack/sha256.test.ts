import { createHash } from "node:crypto";
import { expect, test } from "vitest";
import { sha256 } from "../../src/pack/sha256.ts";

const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);

// The examples published with FIPS 180-4 (NIST, "SHA-256 example values": one block, two blocks,
// and the million letters of FIPS 180-2 appendix B.3), and the empty message.
test.each([
  ["", "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"],
  ["abc", "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"],
  [
    "abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq",
    "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1",
  ],
  ["a".repeat(1_000_000), "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0"],
])("gives the published digest of %.20j", (message, digest) => {
  expect(sha256(bytesOf(message))).toBe(digest);
});

test("agrees with the platform's own digest at every length round a block boundary", () => {
  for (let length = 0; length < 200; length++) {
    const bytes = Uint8Array.from({ length }, (_, index) => (index * 37 + length) & 255);
    expect(sha256(bytes)).toBe(createHash("sha256").update(bytes).digest("hex"));
  }
});
