// Builds everything that is shipped into dist/: the library's data, the command line, the importable library
// with its types, and the page. Run by `npm run build`, and before the tests. Any step that fails fails the build.

import { execFileSync } from "node:child_process";
import {
  chmodSync,
  copyFileSync,
  existsSync,
  mkdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { dirname, join } from "node:path";
import { build, type InlineConfig } from "vite";
import { buildLibrary } from "./build-library.ts";
import { EXAMPLE_PICTURES, exampleFiles, openedFiles } from "./example-files.ts";
import { noticesText } from "./notices.ts";

const root = dirname(import.meta.dirname);
const dist = join(root, "dist");

const quiet: InlineConfig = { logLevel: "warn", publicDir: false };

/** One start file for Node; whatever it imports lazily lies beside it, so that paths from `import.meta.url` agree. */
const nodeBundle = (entry: string, folder: string, bundled: boolean): InlineConfig => ({
  ...quiet,
  configFile: false,
  root,
  ssr: bundled ? { noExternal: true } : {},
  build: {
    ssr: join(root, entry),
    outDir: join(dist, folder),
    emptyOutDir: true,
    target: "node20",
    minify: false,
    rolldownOptions: { output: { chunkFileNames: "[name]-[hash].js" } },
  },
});

function libraryData(): void {
  mkdirSync(dist, { recursive: true });
  buildLibrary(join(dist, "library.json"));
  writeFileSync(join(dist, "NOTICES.txt"), noticesText(root));
  // The solid kernel's wasm, beside the library: the bundle carries its code.
  copyFileSync(join(root, "node_modules/manifold-3d/manifold.wasm"), join(dist, "manifold.wasm"));
}

async function commandLine(): Promise<void> {
  await build(nodeBundle("src/cli/main.ts", "cli", true));
  const start = join(dist, "cli/main.js");
  const text = readFileSync(start, "utf8");
  if (!text.startsWith("#!")) writeFileSync(start, `#!/usr/bin/env node\n${text}`);
  chmodSync(start, 0o755);
}

async function library(): Promise<void> {
  await build(nodeBundle("src/project.ts", "library", false));
}

async function page(): Promise<void> {
  const data = join(dist, "page-data");
  mkdirSync(data, { recursive: true });
  copyFileSync(join(dist, "library.json"), join(data, "library.json"));
  mkdirSync(join(data, "pictures"), { recursive: true });
  for (const [name, picture] of Object.entries(EXAMPLE_PICTURES))
    copyFileSync(
      join(root, "examples", name, "pictures", picture),
      join(data, "pictures", `${name}.svg`),
    );
  writeFileSync(join(data, "examples.json"), JSON.stringify(openedFiles(exampleFiles(root))));
  await build({
    logLevel: "warn",
    configFile: join(root, "vite.config.ts"),
    root: join(root, "viewer"),
  });
}

async function types(): Promise<void> {
  const folder = join(dist, "library/types");
  execFileSync(
    process.execPath,
    [join(root, "node_modules/typescript/bin/tsc"), "-p", "src", "--outDir", folder],
    { cwd: root, stdio: "inherit" },
  );
  rmSync(join(folder, "tsconfig.tsbuildinfo"), { force: true });
  if (!existsSync(join(folder, "project.d.ts"))) throw new Error("no types were written");
}

const steps = { libraryData, commandLine, library, page, types };

for (const [name, step] of Object.entries(steps)) {
  const started = performance.now();
  try {
    await step();
  } catch (reason) {
    console.error(`build: ${name} failed`);
    console.error(reason instanceof Error ? reason.message : reason);
    process.exit(1);
  }
  console.log(`build: ${name} in ${((performance.now() - started) / 1000).toFixed(1)} s`);
}
