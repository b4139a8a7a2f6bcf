// Stock that the machine may or may not cut.

import { stockVerdict } from "./stock-verdict.ts";

export const stockUntried = stockVerdict(
  {
    code: "checks/stock-untried",
    severity: "query",
    title: "stock that the machine may or may not cut",
    why: "It depends on colour, thickness and power. Cut the test piece first.",
    example: "# in the workshop; the panel's face is black-acrylic-3\nuse: { face: diode-laser }",
  },
  "try",
);
