import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    reporters: ["default", "./tests/support/closing-line.ts"],
    include: ["tests/**/*.test.ts"],
    exclude: ["tests/long/**"],
    setupFiles: ["./tests/support/property-seed.ts"],
    maxWorkers: 2,
    // Generous, so that a busy machine fails nothing: speed is measured by `npm run bench`, not here.
    testTimeout: 120_000,
    hookTimeout: 180_000,
    expect: { poll: { timeout: 10_000 } },
  },
});
