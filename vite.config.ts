import { defineConfig } from "vite";

// The page. Relative addresses, so that it runs from any folder of any static host.
export default defineConfig({
  root: "viewer",
  base: "./",
  // The library and the examples, written by the build: served as they are.
  publicDir: "../dist/page-data",
  oxc: { jsx: { runtime: "automatic", importSource: "preact" } },
  worker: { format: "es" },
  build: { outDir: "../dist/viewer", emptyOutDir: true, target: "es2023", modulePreload: false },
});
