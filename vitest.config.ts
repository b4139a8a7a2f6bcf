import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    reporters: ["default", "./tests/support/closing-line.ts"],
    include: ["tests/**/*.test.ts"],
  },
});
