import { defineConfig } from "vite";

// The page. Relative addresses, so that it runs from any folder of any static host.
export default defineConfig({
  root: "viewer",
  base: "./",
  // The library and the examples, written by the build: served as they are.
  publicDir: "../dist/page-data",
  oxc: { jsx: { runtime: "automatic", importSource: "preact" } },
  worker: {
    format: "es",
    // What a worker does not ask for stays out: no module here does anything by being loaded, but for the workers
    // themselves. The core's worker packs to 326 kB in place of 454.
    rolldownOptions: { treeshake: { moduleSideEffects: (id) => id.includes(".worker.ts") } },
  },
  build: { outDir: "../dist/viewer", emptyOutDir: true, target: "es2023", modulePreload: false },
});
