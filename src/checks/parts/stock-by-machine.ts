// Stock that the machine must not or cannot cut.

import { stockVerdict } from "./stock-verdict.ts";

export const stockByMachine = stockVerdict(
  {
    code: "checks/stock-by-machine",
    severity: "fault",
    title: "stock that the machine must not or cannot cut",
    why: "Some pairs don't work and some are dangerous: vinyl and PVC give chlorine under a laser, ABS and polycarbonate burn, a blue diode passes through clear acrylic, and metal wants a router or a drill.",
    example: "# in the workshop; the panel's backing is aluminium-2\nuse: { backing: co2-laser }",
  },
  "cannot",
);
