// Zips, read by a reader of the tests' own that was written from the format's specification (PKWARE APPNOTE 6.3), and by the
// tools of this machine where it has them.

import { execFileSync, spawnSync } from "node:child_process";
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, onTestFinished, test } from "vitest";
import { zipFile } from "../../src/export/zip.ts";
import { temporaryFolder } from "../cli/temporary-folder.ts";
import { zipEntries } from "../support/zip-reader.ts";

const bytesOf = (text: string): Uint8Array => new Uint8Array(Buffer.from(text));

const ENTRIES = [
  { path: "winch/drawings/winch-front.svg", bytes: bytesOf("<svg/>".repeat(2000)) },
  { path: "winch/README.md", bytes: bytesOf("# Winch\n") },
  { path: "winch/empty.csv", bytes: new Uint8Array() },
  { path: "winch/1", bytes: Uint8Array.from({ length: 5000 }, (_, at) => (at * 7919) % 251) },
];

const read = (zip: Uint8Array) => zipEntries(Buffer.from(zip));

test("another reader finds every file, whole, in the order of names", () => {
  const found = read(zipFile(ENTRIES));
  expect(found.map(({ name }) => name)).toEqual([
    "winch/1",
    "winch/README.md",
    "winch/drawings/winch-front.svg",
    "winch/empty.csv",
  ]);
  for (const { path, bytes } of ENTRIES)
    expect(found.find(({ name }) => name === path)?.bytes.equals(bytes)).toBe(true);
});

test("whatever files in whatever order: the same files give the same bytes and come back", () => {
  const name = fc.stringMatching(/^[a-z0-9][a-z0-9.-]{0,12}$/);
  const entry = fc.record({
    path: fc.array(name, { minLength: 1, maxLength: 3 }).map((steps) => steps.join("/")),
    bytes: fc.uint8Array({ maxLength: 300 }),
  });
  const files = fc.uniqueArray(entry, { selector: ({ path }) => path, maxLength: 12 });
  fc.assert(
    fc.property(files, (entries) => {
      const zip = zipFile(entries);
      expect(Buffer.from(zipFile(entries.toReversed())).equals(zip)).toBe(true);
      const found = new Map(read(zip).map(({ name, bytes }) => [name, bytes]));
      expect(found.size).toBe(entries.length);
      for (const { path, bytes } of entries) expect(found.get(path)?.equals(bytes)).toBe(true);
    }),
  );
});

test("carries one date for everything, whatever the clock and the zone", () => {
  // 2000-01-01 12:00:00 as APPNOTE 4.4.6 packs it: year from 1980, month, day; hours, minutes, seconds by two.
  const stamp = (((2000 - 1980) << 9) | (1 << 5) | 1) * 0x10000 + (12 << 11);
  const zone = process.env["TZ"];
  // Others share the process, and the zone is put back even where nothing is written.
  onTestFinished(() => {
    if (zone === undefined) delete process.env["TZ"];
    else process.env["TZ"] = zone;
  });
  const near = zipFile(ENTRIES);
  process.env["TZ"] = "Pacific/Kiritimati";
  const far = zipFile(ENTRIES);
  expect(Buffer.from(far).equals(near)).toBe(true);
  expect(read(far).every((entry) => entry.stamp === stamp)).toBe(true);
});

test.each([
  "../precious.txt",
  "winch/../../precious.txt",
  "/etc/precious.txt",
  "C:/precious.txt",
  "winch\\..\\precious.txt",
  "winch//a",
  "",
  "winch/.hidden",
  "winch/a b",
  "__proto__",
])("a name that could lead anywhere is a bug and gives no zip: %j", (path) => {
  expect(() => zipFile([{ path, bytes: new Uint8Array() }])).toThrow("must hold");
});

test("a name twice, also on a disk that is blind to capitals, gives no zip", () => {
  const twice = ["winch/README.md", "winch/readme.md"];
  expect(() => zipFile(twice.map((path) => ({ path, bytes: bytesOf(path) })))).toThrow("once");
});

describe("sabotage", () => {
  test("the reader objects to every single byte that is changed, but for what says by whom and for whom", () => {
    const zip = Buffer.from(zipFile(ENTRIES.slice(1, 3)));
    const silent: number[] = [];
    for (let at = 0; at < zip.length; at += 1) {
      const spoilt = Buffer.from(zip);
      spoilt[at] = (spoilt[at] ?? 0) ^ 0x55;
      try {
        const found = zipEntries(spoilt);
        const isSame = found.every(
          ({ name, bytes, stamp }, index) =>
            name === zipEntries(zip)[index]?.name &&
            bytes.equals(zipEntries(zip)[index]?.bytes ?? Buffer.alloc(1)) &&
            stamp === zipEntries(zip)[index]?.stamp,
        );
        if (isSame) silent.push(at);
      } catch {
        // It objects.
      }
    }
    // Of two headers of 30 and 46 bytes a file and an end of 22: versions, flags and dates of the local header, attributes,
    // disk numbers. Nothing that is a name, a place, a size, a checksum or content.
    expect(silent.length).toBeLessThan(90);
    const names = [...zip.toString("latin1").matchAll(/winch\/[\w.]+/g)].map(({ index }) => index);
    expect(names).toHaveLength(4);
    for (const at of names) expect(silent).not.toContain(at);
  });
});

const has = (program: string, args: readonly string[]): boolean =>
  spawnSync(program, args).status === 0;

/** Programs that a bare machine may lack: what they say is welcome, the reader above is what holds. */
describe("programs of this machine", () => {
  const laid = (): string => {
    const file = join(temporaryFolder(), "winch.zip");
    writeFileSync(file, zipFile(ENTRIES));
    return file;
  };

  test.skipIf(!has("unzip", ["-v"]))("unzip finds no error (skipped where there is none)", () => {
    expect(execFileSync("unzip", ["-t", laid()]).toString()).toContain("No errors detected");
  });

  test.skipIf(!has("python3", ["-c", "import zipfile"]))(
    "Python's zipfile finds no error (skipped where there is none)",
    () => {
      const program = "import sys, zipfile; print(zipfile.ZipFile(sys.argv[1]).testzip())";
      expect(execFileSync("python3", ["-c", program, laid()]).toString().trim()).toBe("None");
    },
  );
});
