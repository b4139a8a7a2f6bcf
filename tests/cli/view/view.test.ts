// `view` as it is called: the address that it prints works until it is told to stop, and its wrong uses.

import { spawn } from "node:child_process";
import { chmodSync, mkdirSync, symlinkSync, writeFileSync } from "node:fs";
import { createServer } from "node:net";
import { join, resolve } from "node:path";
import { expect, onTestFinished, test } from "vitest";
import { designPort, readPort } from "../../../src/cli/view/design-port.ts";
import { textHash } from "../../../src/diagnostics/text-edit.ts";
import { runIn } from "../run-in.ts";
import { temporaryFolder } from "../temporary-folder.ts";
import { PANEL, WORKSHOP } from "./served.ts";

const program = resolve(import.meta.dirname, "../../../dist/cli/main.js");

const layDesign = (): string => {
  const root = temporaryFolder();
  mkdirSync(join(root, "panels"));
  writeFileSync(join(root, "shed.yaml"), WORKSHOP);
  writeFileSync(join(root, "panels/pumps.yaml"), PANEL);
  return root;
};

test("the printed address gives page and design, and Ctrl-C ends it with exit code 0", async () => {
  const root = layDesign();
  const child = spawn(process.execPath, [program, "view", "panels/pumps.yaml", "--port", "0"], {
    cwd: root,
  });
  onTestFinished(() => void child.kill("SIGKILL"));
  let printed = "";
  const address = await new Promise<URL>((done, failed) => {
    child.on("exit", () => failed(new Error(`ended: ${printed}`)));
    child.stdout.on("data", (piece) => {
      printed += piece;
      const found = /http:\S+/.exec(printed);
      if (found !== null && printed.includes("Ctrl-C")) done(new URL(found[0]));
    });
  });
  expect(address.hostname).toBe("127.0.0.1");
  expect(await (await fetch(address)).text()).toContain("<title>Consolewright</title>");
  const authorization = `Bearer ${address.hash.replace("#key=", "")}`;
  const design = await fetch(new URL("/design", address), { headers: { authorization } });
  expect((await design.json()).entry).toBe("panels/pumps.yaml");
  const listening = await fetch(new URL("/design/changes", address), {
    headers: { authorization },
  });
  child.removeAllListeners("exit");
  const ended = new Promise((done) => child.on("exit", done));
  child.kill("SIGINT");
  expect(await ended).toBe(0);
  await listening.text().catch(() => "");
});

test("what can't be saved is said when it is opened", async () => {
  const root = layDesign();
  chmodSync(join(root, "shed.yaml"), 0o444);
  const { stdout } = await runIn(root, ["view", "panels/pumps.yaml", "--port", "0"]);
  expect(stdout).toContain("Read-only on the disk, can't be saved: shed.yaml");
  const whole = await runIn(root, ["view", "panels/pumps.yaml", "--port", "0", "--read-only"]);
  expect(whole.stdout).toContain("Read-only: nothing is written.");
});

test("a folder whose design is a link to somewhere else is not served: nothing outside would be written", async () => {
  const root = layDesign();
  const elsewhere = join(temporaryFolder(), "panel.yaml");
  writeFileSync(elsewhere, PANEL);
  mkdirSync(join(root, "linked"));
  symlinkSync(elsewhere, join(root, "linked/panel.yaml"));
  for (const argument of ["linked", "linked/panel.yaml"]) {
    const { code, stdout, stderr } = await runIn(root, ["view", argument, "--port", "0"]);
    expect([code, stdout]).toEqual([2, ""]);
    expect(stderr).toContain(`is a link to ${elsewhere}`);
    expect(stderr).toContain(`name it: ${elsewhere}`);
  }
});

test("--json prints the address for programs", async () => {
  const { stdout } = await runIn(layDesign(), ["view", "panels/pumps.yaml", "--port=0", "--json"]);
  expect(JSON.parse(stdout)).toEqual({
    name: "panels/pumps.yaml",
    address: expect.stringMatching(/^http:\/\/127\.0\.0\.1:\d+\/#key=[\w-]+$/),
  });
});

const occupied = async (port: number): Promise<number> => {
  const other = createServer();
  await new Promise<void>((done, failed) => {
    other.once("error", failed);
    other.listen(port, "127.0.0.1", done);
  });
  onTestFinished(() => void other.close());
  const at = other.address();
  return typeof at === "object" && at !== null ? at.port : 0;
};

test("a port that was asked for and is taken is refused", async () => {
  const port = await occupied(0);
  const asked = await runIn(layDesign(), ["view", "panels/pumps.yaml", "--port", `${port}`]);
  expect(asked.code).toBe(2);
  expect(asked.stderr).toContain(`Port ${port} can't be used`);
});

test("where the design's own port is taken another is used, and what that costs is said", async () => {
  const root = layDesign();
  const port = await occupied(designPort(textHash(join(root, "panels/pumps.yaml"))));
  const { code, stdout, stderr } = await runIn(root, ["view", "panels/pumps.yaml"]);
  expect(code).toBe(0);
  expect(stderr).toContain(`Port ${port}, this design's own, is taken`);
  expect(stderr).toContain("recovery copies");
  expect(stdout).not.toContain(`:${port}/`);
});

test("a design keeps its port, and ports are what they can be", () => {
  expect(designPort("0123abcd0123abcd-9")).toBe(designPort("0123abcd0123abcd-9"));
  for (const id of ["00000000", "ffffffff", "0123abcd"]) {
    expect(designPort(id)).toBeGreaterThanOrEqual(20_000);
    // RFC 6335: dynamic ports begin at 49152; Linux hands out from 32768.
    expect(designPort(id)).toBeLessThan(32_768);
  }
  expect(["0", "8080", "65535"].map(readPort)).toEqual([0, 8080, 65_535]);
  expect(["65536", "-1", "1.5", "", "http", "1e3"].map(readPort)).toEqual(Array(6).fill(null));
});
