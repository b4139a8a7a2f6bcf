// The program: the real disk, the real streams, the library beside the bundle. Nothing else is decided here.

import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { realDisk } from "./disk.ts";
import { run } from "./run.ts";
import { wantsColour } from "./shell.ts";

const { env, stderr, stdout } = process;
const libraryFile = fileURLToPath(new URL("../library.json", import.meta.url));

const kernelFile = fileURLToPath(new URL("../manifold.wasm", import.meta.url));

const packageVersion = (): string => {
  const text = readFileSync(new URL("../../package.json", import.meta.url), "utf8");
  const found: unknown = JSON.parse(text);
  return typeof found === "object" && found !== null && "version" in found
    ? String(found.version)
    : "unknown";
};

// A reader that stops reading (`| head`) is no fault of anybody's.
for (const stream of [stdout, stderr])
  stream.on("error", (error: NodeJS.ErrnoException) => {
    if (error.code !== "EPIPE") throw error;
  });

process.exitCode = await run(
  process.argv.slice(2),
  {
    cwd: process.cwd(),
    disk: realDisk,
    stdout: (text) => void stdout.write(text),
    stderr: (text) => void stderr.write(text),
    colour: wantsColour(stderr, env["NO_COLOR"]),
    // Fonts and catalogue are opened only by the commands that need them: help stays quick.
    library: async () => (await import("./library-file.ts")).libraryFrom(libraryFile, realDisk),
    kernel: async () => (await import("./solid-kernel.ts")).openKernel(kernelFile),
    version: packageVersion,
    pageFolder: fileURLToPath(new URL("../viewer", import.meta.url)),
    untilStopped: () =>
      new Promise((stopped) => {
        for (const signal of ["SIGINT", "SIGTERM"]) process.once(signal, () => stopped());
      }),
  },
  (env["CONSOLEWRIGHT_TRACE"] ?? "") !== "",
);
