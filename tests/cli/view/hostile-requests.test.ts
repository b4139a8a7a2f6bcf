// Requests that no browser sends, written out byte by byte on a bare connection: what is said twice, half, too slowly or not in whole
// characters.

import { readFileSync } from "node:fs";
import { connect } from "node:net";
import { join } from "node:path";
import { expect, onTestFinished, test } from "vitest";
import { realDisk } from "../../../src/cli/disk.ts";
import { startServer } from "../../../src/cli/view/design-server.ts";
import { textHash } from "../../../src/diagnostics/text-edit.ts";
import { PANEL, serveDesign } from "./served.ts";

/** All that comes back until the connection is closed by the server, and after how long, ms. */
const sent = (
  port: number,
  lines: readonly string[],
): Promise<{ readonly text: string; readonly after: number }> =>
  new Promise((done, failed) => {
    const began = performance.now();
    const connection = connect(port, "127.0.0.1");
    let text = "";
    connection.on("data", (piece) => {
      text += piece;
    });
    connection.on("close", () => done({ text, after: performance.now() - began }));
    connection.on("error", failed);
    connection.write(lines.join("\r\n"));
    onTestFinished(() => void connection.destroy());
  });

// RFC 9112, 3.2: a request with more than one Host is answered by 400.
test("a second Host, Origin or key is refused, whichever of the two is right", async () => {
  const { server } = await serveDesign();
  const host = `127.0.0.1:${server.port}`;
  const twice: readonly (readonly [string, string, string])[] = [
    ["Host", host, "evil.example"],
    ["Origin", `http://${host}`, "http://evil.example"],
    ["Authorization", `Bearer ${server.key}`, "Bearer wrong"],
  ];
  for (const [name, right, wrong] of twice)
    for (const [first, second] of [
      [right, wrong],
      [wrong, right],
    ]) {
      const others = name === "Host" ? [] : [`Host: ${host}`];
      const head = ["GET /design HTTP/1.1", ...others, `${name}: ${first}`, `${name}: ${second}`];
      const { text } = await sent(server.port, [...head, "Connection: close", "", ""]);
      expect(text).toMatch(/^HTTP\/1.1 400 /);
      expect(text).toContain(`says its ${name} twice`);
    }
});

test("a request that says no Host is told so in words", async () => {
  const { server } = await serveDesign();
  const { text } = await sent(server.port, ["GET / HTTP/1.0", "", ""]);
  expect(text).toMatch(/^HTTP\/1.1 403 /);
  expect(text).toContain("the request says no Host");
});

test.each([
  ["head", ["GET / HTTP/1.1", "Host: 127"]],
  ["body", null],
])("a %s that does not come to its end is not waited for", async (_part, given) => {
  const { root } = await serveDesign();
  const started = await startServer(
    {
      source: { place: { root, entry: "panels/pumps.yaml" }, isReadOnly: false, disk: realDisk },
      page: () => null,
      port: 0,
    },
    { head: 200, request: 400, look: 50 },
  );
  if (started.kind !== "started") throw new Error(started.kind);
  const { server } = started;
  onTestFinished(() => server.close());
  const host = `127.0.0.1:${server.port}`;
  const body = [
    "PUT /design/texts HTTP/1.1",
    `Host: ${host}`,
    `Origin: http://${host}`,
    `Authorization: Bearer ${server.key}`,
    "Content-Length: 100",
    "",
    "{",
  ];
  const { text, after } = await sent(server.port, given ?? body);
  expect(text).toMatch(/^HTTP\/1.1 408 /);
  expect(after).toBeLessThan(3000);
});

// A half of a pair (UTF-16) has no UTF-8: written, it would come back as another character.
test("a text with half a character is refused, and the file stays", async () => {
  const { root, save } = await serveDesign();
  const text = `${PANEL}title: "\ud83d"\n`;
  const change = { path: "panels/pumps.yaml", baseHash: textHash(PANEL), text };
  const answer = await save([change]);
  expect(answer.status).toBe(400);
  expect(JSON.parse(answer.text).why).toBe(
    "panels/pumps.yaml holds half a character, which no file can; take it out at line 5",
  );
  expect(readFileSync(join(root, "panels/pumps.yaml"), "utf8")).toBe(PANEL);
  const whole = { ...change, text: `${PANEL}title: "\ud83d\udd27"\n` };
  expect((await save([whole])).status).toBe(200);
});
