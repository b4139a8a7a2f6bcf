import { defineConfig } from "vitest/config";

// Long runs (random designs by the hundred): `npm run test:long`, before a release and overnight.
export default defineConfig({
  test: {
    reporters: ["default", "./tests/support/closing-line.ts"],
    include: ["tests/long/**/*.test.ts"],
    setupFiles: ["./tests/support/property-seed.ts"],
    maxWorkers: 2,
    testTimeout: 600_000,
  },
});
