// What a hand works with at a step of assembly, and the room that it takes round its axis.

import { decimal } from "../geometry/number.ts";
import type { Mm } from "../geometry/quantity.ts";

export type Tool =
  | { readonly kind: "socket"; readonly diameter: Mm }
  | { readonly kind: "driver"; readonly diameter: Mm }
  | { readonly kind: "fingers" };

/** `a 14 mm socket`. */
export const toolWords = (tool: Tool): string => {
  switch (tool.kind) {
    case "socket":
      return `a socket ${decimal(tool.diameter, 1)} mm across`;
    case "driver":
      return `a driver under a head of ${decimal(tool.diameter, 1)} mm`;
    case "fingers":
      return "fingers";
  }
};
