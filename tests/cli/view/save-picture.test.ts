// A picture put into the design's folder by real requests: what is written, and everything that is not.

import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import type { OutgoingHttpHeaders } from "node:http";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { type Disk, realDisk } from "../../../src/cli/disk.ts";
import { PANEL, type Served, serveDesign } from "./served.ts";

/** The head of a PNG picture of 640 by 480 pixels (W3C PNG, 11.2.1), with a byte to tell copies apart. */
const picture = (last = 0): Uint8Array =>
  Uint8Array.from([
    137,
    80,
    78,
    71,
    13,
    10,
    26,
    10,
    0,
    0,
    0,
    13,
    73,
    72,
    68,
    82,
    0,
    0,
    2,
    128,
    0,
    0,
    1,
    224,
    last,
  ]);

const put = (
  { ask }: Served,
  path: string,
  { body = picture(), headers = {} }: { body?: Uint8Array; headers?: OutgoingHttpHeaders } = {},
) => ask(`/design/pictures/${path}`, { method: "PUT", body, headers });

describe("a picture", () => {
  test("is written below the root, once, and served when a text names it", async () => {
    const served = await serveDesign();
    const { root, ask } = served;
    expect((await put(served, "panels/old%20panel.png")).status).toBe(200);
    expect(new Uint8Array(readFileSync(join(root, "panels/old panel.png")))).toEqual(picture());
    // The same again is no change; another one is not written over it.
    expect((await put(served, "panels/old%20panel.png")).status).toBe(200);
    const other = await put(served, "panels/old%20panel.png", { body: picture(1) });
    expect(other.status).toBe(409);
    expect(new Uint8Array(readFileSync(join(root, "panels/old panel.png")))).toEqual(picture());
    expect(readdirSync(join(root, "panels"))).toEqual(["old panel.png", "pumps.yaml"]);
    const address = "/design/shapes/panels/old%20panel.png";
    expect((await ask(address)).status).toBe(404);
    writeFileSync(join(root, "panels/pumps.yaml"), `${PANEL}photo: { file: old panel.png }\n`);
    expect((await ask(address)).status).toBe(200);
  });

  test.each([
    "..%2Fold.png",
    "panels/../../old.png",
    "/old.png",
    "%2Fetc%2Fold.png",
    "panels%5Cold.png",
    "C:old.png",
    ".hidden/old.png",
    "panels/.old.png",
    "panels//old.png",
    "con.png",
    "old.yaml",
    "old.png.exe",
    "old%00.png",
  ])("is not written as %s", async (path) => {
    const served = await serveDesign();
    expect((await put(served, path)).status).toBe(403);
    expect(readdirSync(served.root).toSorted()).toEqual(["panels", "secret.yaml", "shed.yaml"]);
    expect(readdirSync(join(served.root, "panels"))).toEqual(["pumps.yaml"]);
  });

  test("is one by its bytes, not by its name", async () => {
    const served = await serveDesign();
    const body = Uint8Array.from(Buffer.from("<svg onload='alert(1)'/>"));
    expect((await put(served, "old.png", { body })).status).toBe(403);
    expect(existsSync(join(served.root, "old.png"))).toBe(false);
  });
});

describe("a picture is refused that", () => {
  test("goes through a link that leads out", async () => {
    const served = await serveDesign();
    const outside = join(served.root, "../outside");
    mkdirSync(outside);
    symlinkSync(outside, join(served.root, "pictures"));
    symlinkSync(join(outside, "old.png"), join(served.root, "old.png"));
    expect((await put(served, "pictures/old.png")).status).toBe(403);
    expect((await put(served, "old.png")).status).not.toBe(200);
    expect(readdirSync(outside)).toEqual([]);
  });

  test("comes without the key, from another page, or into a read-only design", async () => {
    const served = await serveDesign();
    const strangers: readonly (readonly [OutgoingHttpHeaders, number])[] = [
      [{ authorization: undefined }, 401],
      [{ origin: "http://evil.example" }, 403],
      [{ host: "evil.example" }, 403],
      [{ origin: undefined }, 403],
    ];
    for (const [headers, status] of strangers)
      expect((await put(served, "old.png", { headers })).status).toBe(status);
    expect(existsSync(join(served.root, "old.png"))).toBe(false);
    expect((await put(await serveDesign({ isReadOnly: true }), "old.png")).status).toBe(403);
  });

  test("has more than 25 million bytes, and is not read to its end", async () => {
    const served = await serveDesign();
    const headers = { "content-length": "25000001" };
    const answer = await put(served, "old.png", { headers }).catch(() => ({ status: 413 }));
    expect(answer.status).toBe(413);
    expect(existsSync(join(served.root, "old.png"))).toBe(false);
  });

  test("the disk has no room for, and nothing of it stays behind", async () => {
    const full = (): never => {
      throw Object.assign(new Error("no space left"), { code: "ENOSPC" });
    };
    const disks: readonly Disk[] = [
      { ...realDisk, write: full },
      { ...realDisk, rename: full },
    ];
    for (const disk of disks) {
      const served = await serveDesign({ disk });
      expect((await put(served, "panels/old.png")).status).toBe(507);
      expect(readdirSync(join(served.root, "panels"))).toEqual(["pumps.yaml"]);
    }
  });
});
