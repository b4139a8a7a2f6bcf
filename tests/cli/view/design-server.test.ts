// The server of `view` by real requests: who is let in, what is served, what is written and what is not.

import {
  chmodSync,
  existsSync,
  readdirSync,
  readFileSync,
  renameSync,
  symlinkSync,
  unlinkSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { type Disk, realDisk } from "../../../src/cli/disk.ts";
import { textHash } from "../../../src/diagnostics/text-edit.ts";
import { PANEL, type Served, serveDesign, WORKSHOP } from "./served.ts";

const change = (path: string, before: string | null, text: string): object => ({
  path,
  baseHash: before === null ? null : textHash(before),
  text,
});

const NEXT = `${PANEL}title: Bilge pumps\n`;
const PATH = "panels/pumps.yaml";

describe("who is let in", () => {
  // RFC 9110, 7.2: Host names the server that is asked for; a name pointed at this machine by a stranger differs.
  test.each(["evil.example", "evil.example:1234", "127.0.0.1", "127.0.0.1.evil.example", ""])(
    "not one that calls it %s",
    async (host) => {
      const { ask } = await serveDesign();
      for (const path of ["/", "/design"])
        expect((await ask(path, { headers: { host } })).status).toBe(403);
    },
  );

  test("loopback names with the right port are let in", async () => {
    const { ask, server } = await serveDesign();
    for (const name of ["127.0.0.1", "localhost", "[::1]"])
      expect((await ask("/", { headers: { host: `${name}:${server.port}` } })).status).toBe(200);
  });

  test("not another page, nor a write that names no page", async () => {
    const { save, ask, root, server } = await serveDesign();
    const strangers = [
      undefined,
      "null",
      "http://evil.example",
      `https://127.0.0.1:${server.port}`,
    ];
    for (const origin of [...strangers, "http://127.0.0.1:1"])
      expect((await save([change(PATH, PANEL, NEXT)], { origin })).status).toBe(403);
    expect((await ask("/design", { headers: { origin: "http://evil.example" } })).status).toBe(403);
    expect((await ask("/design", { headers: { "sec-fetch-site": "cross-site" } })).status).toBe(
      403,
    );
    expect(readFileSync(join(root, PATH), "utf8")).toBe(PANEL);
  });

  test("nobody without the key, to read or to write", async () => {
    const { ask, save, root, server } = await serveDesign();
    const keys = [undefined, "Bearer", "Bearer wrong", `Bearer ${server.key}x`, server.key];
    for (const authorization of keys) {
      expect((await ask("/design", { headers: { authorization } })).status).toBe(401);
      expect((await ask("/design/changes", { headers: { authorization } })).status).toBe(401);
      expect((await save([change(PATH, PANEL, NEXT)], { authorization })).status).toBe(401);
    }
    expect(readFileSync(join(root, PATH), "utf8")).toBe(PANEL);
  });

  test("each run has a key of its own, and it stands in the fragment, which no request carries", async () => {
    const [one, other] = [await serveDesign(), await serveDesign()];
    expect(one.server.key).not.toBe(other.server.key);
    // 128 bits or more, 6 to a character.
    expect(one.server.key.length * 6).toBeGreaterThanOrEqual(128);
    expect(new URL(one.server.address).hash).toContain(one.server.key);
    expect(new URL(one.server.address).search).toBe("");
  });

  test.each(["POST", "DELETE", "PATCH", "OPTIONS", "TRACE"])("not with %s", async (method) => {
    const { ask } = await serveDesign();
    const answer = await ask("/design/texts", { method });
    expect(answer.status).toBe(405);
    expect(answer.headers["allow"]).toBe("GET, HEAD, PUT");
  });
});

describe("the page", () => {
  test("is served with a policy that lets no script in but its own", async () => {
    const { ask } = await serveDesign();
    const { status, headers, text } = await ask("/", { headers: { authorization: undefined } });
    expect(status).toBe(200);
    expect(headers["content-type"]).toBe("text/html; charset=utf-8");
    expect(text).toContain(`<meta name="consolewright-design" content="served">`);
    const policy = String(headers["content-security-policy"]);
    expect(policy).toContain("default-src 'none'");
    expect(policy).toMatch(/script-src 'self' 'wasm-unsafe-eval';/);
    expect(policy).toContain("worker-src 'self'");
    expect(policy).not.toContain("unsafe-inline");
    expect(headers["x-content-type-options"]).toBe("nosniff");
  });

  test("HEAD has the head alone", async () => {
    const { ask } = await serveDesign();
    const { status, headers, text } = await ask("/assets/page.js", { method: "HEAD" });
    expect([status, text]).toEqual([200, ""]);
    expect(headers["content-type"]).toBe("text/javascript; charset=utf-8");
  });

  test.each([
    "/assets",
    "/assets/",
    "/../design/secret.yaml",
    "/..%2fdesign%2fsecret.yaml",
    "/assets/../../design/secret.yaml",
    "/%2e%2e/design/secret.yaml",
    "//etc/passwd",
    "/assets/page.js%00",
    "/%",
    "/no-such-file.js",
  ])("lists nothing and leads out nowhere: %s", async (path) => {
    const { ask } = await serveDesign();
    const { status, text } = await ask(path);
    expect([400, 404]).toContain(status);
    expect(text).not.toContain("kind: note");
  });
});

describe("the design", () => {
  test("is given with its texts and nothing else of its folder", async () => {
    const { ask } = await serveDesign();
    const { text } = await ask("/design");
    expect(JSON.parse(text)).toMatchObject({
      entry: PATH,
      isReadOnly: false,
      files: [
        { path: PATH, text: PANEL, isWritable: true },
        { path: "shed.yaml", text: WORKSHOP, isWritable: true },
      ],
      troubles: [],
    });
  });

  test("is saved, several files at once", async () => {
    const { save, root } = await serveDesign();
    const shed = `${WORKSHOP}# dry\n`;
    const answer = await save([change(PATH, PANEL, NEXT), change("shed.yaml", WORKSHOP, shed)]);
    expect([answer.status, JSON.parse(answer.text)]).toEqual([200, { kind: "saved" }]);
    expect(readFileSync(join(root, PATH), "utf8")).toBe(NEXT);
    expect(readFileSync(join(root, "shed.yaml"), "utf8")).toBe(shed);
    expect(readdirSync(join(root, "panels"))).toEqual(["pumps.yaml"]);
  });

  test("a stale text is not written over: the answer holds what stands there, and no file is touched", async () => {
    const { save, root } = await serveDesign();
    writeFileSync(join(root, PATH), `${PANEL}# by hand\n`);
    const answer = await save([
      change("shed.yaml", WORKSHOP, `${WORKSHOP}# dry\n`),
      change(PATH, PANEL, NEXT),
    ]);
    expect(answer.status).toBe(409);
    expect(JSON.parse(answer.text)).toEqual({
      kind: "changed-outside",
      files: [{ path: PATH, text: `${PANEL}# by hand\n` }],
    });
    expect(readFileSync(join(root, "shed.yaml"), "utf8")).toBe(WORKSHOP);
  });

  test("a deleted file is told of, and written anew only by who knows that it is gone", async () => {
    const { save, root } = await serveDesign();
    unlinkSync(join(root, "shed.yaml"));
    const stale = await save([change("shed.yaml", WORKSHOP, "a: 1\n")]);
    expect(stale.status).toBe(409);
    expect(JSON.parse(stale.text).files).toEqual([{ path: "shed.yaml", text: null }]);
    expect((await save([change("shed.yaml", null, WORKSHOP)])).status).toBe(200);
    expect(readFileSync(join(root, "shed.yaml"), "utf8")).toBe(WORKSHOP);
  });

  test("a text with a mark at its beginning is known again", async () => {
    const { save, root } = await serveDesign();
    writeFileSync(join(root, PATH), `\uFEFF${PANEL}`);
    expect((await save([change(PATH, `\uFEFF${PANEL}`, `\uFEFF${NEXT}`)])).status).toBe(200);
    expect(readFileSync(join(root, PATH), "utf8")).toBe(`\uFEFF${NEXT}`);
  });

  test.each([
    "secret.yaml",
    "../outside.yaml",
    "panels/../../outside.yaml",
    "/etc/passwd",
    "panels/new.yaml",
    "panels",
    "notes.txt",
    "",
  ])("what is no file of it is not written: %s", async (path) => {
    const { save, root } = await serveDesign();
    expect((await save([change(path, null, "a: 1\n")])).status).toBe(403);
    expect(existsSync(join(root, "../outside.yaml"))).toBe(false);
    expect(readFileSync(join(root, "secret.yaml"), "utf8")).toBe("kind: note\n");
  });
});

describe("what can go wrong with a save", () => {
  test("a link that leads out is neither read nor written, whether to a file or to a folder", async () => {
    const { ask, save, root } = await serveDesign();
    const outside = join(root, "../outside.yaml");
    writeFileSync(outside, WORKSHOP);
    unlinkSync(join(root, "shed.yaml"));
    symlinkSync(outside, join(root, "shed.yaml"));
    expect((await ask("/design")).text).toContain("leads out of the design's folder");
    for (const before of [WORKSHOP, null])
      expect((await save([change("shed.yaml", before, "a: 1\n")])).status).toBe(403);
    expect(readFileSync(outside, "utf8")).toBe(WORKSHOP);
    writeFileSync(join(root, PATH), PANEL.replace("../shed", "../away/shed"));
    symlinkSync(join(root, "../page"), join(root, "away"));
    expect((await save([change("away/shed.yaml", null, "a: 1\n")])).status).toBe(403);
    expect(existsSync(join(root, "../page/shed.yaml"))).toBe(false);
  });

  test("a huge body is refused before it is read, whether its length is told or not", async () => {
    const { ask, root } = await serveDesign();
    const body = "x".repeat(16_000_001);
    const told = await ask("/design/texts", { method: "PUT", body }).catch(() => null);
    // Either the refusal arrives or the line is cut while the rest is still being sent.
    expect([413, undefined]).toContain(told?.status);
    const large = await ask("/design/texts", {
      method: "PUT",
      headers: { "content-length": "99999999999" },
    }).catch(() => null);
    expect([413, undefined]).toContain(large?.status);
    const one = JSON.stringify({ changes: [change(PATH, PANEL, "x".repeat(4_000_001))] });
    expect((await ask("/design/texts", { method: "PUT", body: one })).status).toBe(413);
    expect(readFileSync(join(root, PATH), "utf8")).toBe(PANEL);
  });

  test.each(["", "null", "[]", "{}", `{"changes":[1]}`, `{"changes":[{"path":1}]}`, "{"])(
    "a body that says nothing of the kind is refused: %s",
    async (body) => {
      const { ask } = await serveDesign();
      expect((await ask("/design/texts", { method: "PUT", body })).status).toBe(400);
    },
  );

  test("a file that is marked read-only says so, and stays as it is", async () => {
    const { ask, save, root } = await serveDesign();
    chmodSync(join(root, PATH), 0o444);
    const [first] = JSON.parse((await ask("/design")).text).files;
    expect(first).toMatchObject({ path: PATH, isWritable: false });
    const answer = await save([change(PATH, PANEL, NEXT)]);
    expect(answer.status).toBe(403);
    expect(JSON.parse(answer.text).why).toContain("read-only");
    expect(readFileSync(join(root, PATH), "utf8")).toBe(PANEL);
  });

  test("opened read-only nothing is written", async () => {
    const { save, root } = await serveDesign({ isReadOnly: true });
    expect((await save([change(PATH, PANEL, NEXT)])).status).toBe(403);
    expect(readFileSync(join(root, PATH), "utf8")).toBe(PANEL);
  });

  test("a full disk is said, and what stood there stays whole", async () => {
    const disk: Disk = {
      ...realDisk,
      write: () => {
        throw Object.assign(new Error("no space"), { code: "ENOSPC" });
      },
    };
    const { save, root } = await serveDesign({ disk });
    const answer = await save([change(PATH, PANEL, NEXT)]);
    expect(answer.status).toBe(507);
    expect(JSON.parse(answer.text).why).toBe("the disk is full");
    expect(readFileSync(join(root, PATH), "utf8")).toBe(PANEL);
    expect(readdirSync(join(root, "panels"))).toEqual(["pumps.yaml"]);
  });
});

describe("changes outside", () => {
  const heard = async (
    act: (root: string) => void,
    given: Served | null = null,
  ): Promise<{ readonly text: string; readonly after: number }> => {
    const { root, server } = given ?? (await serveDesign());
    const answer = await fetch(`http://127.0.0.1:${server.port}/design/changes`, {
      headers: { authorization: `Bearer ${server.key}` },
    });
    const reader = answer.body!.pipeThrough(new TextDecoderStream()).getReader();
    await reader.read();
    const began = performance.now();
    act(root);
    const { value } = await reader.read();
    await reader.cancel();
    return { text: value ?? "", after: performance.now() - began };
  };

  test.each<readonly [string, (root: string) => void]>([
    ["written", (root) => writeFileSync(join(root, PATH), NEXT)],
    ["deleted", (root) => unlinkSync(join(root, "shed.yaml"))],
    [
      "moved, with a link to it in its place",
      (root) => {
        renameSync(join(root, "shed.yaml"), join(root, "barn.yaml"));
        symlinkSync("barn.yaml", join(root, "shed.yaml"));
      },
    ],
    ["made read-only", (root) => chmodSync(join(root, PATH), 0o444)],
    ["kept from being written by its folder", (root) => chmodSync(join(root, "panels"), 0o555)],
  ])("are told when a file is %s", async (_what, act) => {
    const { text, after } = await heard(act);
    expect(text).toBe("data: changed\n\n");
    // The poll looks every 2 s: a change that the system does not tell of is found by then.
    expect(after).toBeLessThan(4000);
  });

  test("are told when a photograph comes that was named before it was there", async () => {
    const photo = "photo: { file: old.jpg, marks: [] }\n";
    const served = await serveDesign();
    await heard((root) => writeFileSync(join(root, PATH), `${PANEL}${photo}`), served);
    const { text, after } = await heard(
      (root) => writeFileSync(join(root, "panels/old.jpg"), "picture"),
      served,
    );
    expect(text).toBe("data: changed\n\n");
    expect(after).toBeLessThan(4000);
    const { shapes } = JSON.parse((await served.ask("/design")).text);
    expect(shapes).toEqual(["panels/old.jpg"]);
  });
});
