// A threaded brass insert that is set into a printed boss with heat. The pilot is the datasheet's finished hole; what a
// printer must add to get it is the printer's own number, and is never mixed with this one.

import type { Mm } from "../geometry/quantity.ts";
import type { MetricThread } from "../standards/metric-fasteners.ts";
import type { Figures } from "./part.ts";

export interface Insert {
  readonly kind: "insert";
  readonly id: string;
  readonly title: string;
  readonly thread: MetricThread;
  /** Over its knurl. */
  readonly outside: Mm;
  readonly length: Mm;
  /** Finished diameter of the hole that it is set into. */
  readonly pilot: Mm;
  /** Least diameter of the boss round it. */
  readonly boss: Mm;
  readonly figures: Figures;
}
