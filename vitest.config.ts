import { configDefaults, defineConfig } from "vitest/config";
import { ALONE } from "./tests/support/alone.ts";

const alone = ALONE.map((each) => (each.endsWith("/") ? `${each}**/*.test.ts` : each));
const exclude = [...configDefaults.exclude, "tests/long/**"];

const both = {
  setupFiles: ["./tests/support/property-seed.ts"],
  // Generous, so that a busy machine fails nothing: speed is measured by `npm run bench`, not here.
  testTimeout: 120_000,
  hookTimeout: 180_000,
  expect: { poll: { timeout: 10_000 } },
};

export default defineConfig({
  test: {
    reporters: ["default", "./tests/support/closing-line.ts"],
    maxWorkers: 2,
    projects: [
      {
        test: {
          ...both,
          name: "together",
          include: ["tests/**/*.test.ts"],
          exclude: [...exclude, ...alone],
          isolate: false,
          sequence: { groupOrder: 0 },
        },
      },
      {
        test: { ...both, name: "alone", include: alone, exclude, sequence: { groupOrder: 1 } },
      },
    ],
  },
});
