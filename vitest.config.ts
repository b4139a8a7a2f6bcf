import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    reporters: ["default", "./tests/support/closing-line.ts"],
    include: ["tests/**/*.test.ts"],
    exclude: ["tests/long/**"],
    setupFiles: ["./tests/support/property-seed.ts"],
    maxWorkers: 2,
    testTimeout: 30_000,
    hookTimeout: 60_000,
  },
});
