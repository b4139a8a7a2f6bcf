// Whose limit it is that a finding judges by, in words for a reader.

import type { LimitSource } from "./finding.ts";

export const limitInWords = (source: LimitSource): string => {
  switch (source.kind) {
    case "standard":
    case "memory":
    case "guidance":
      return source.name;
    case "datasheet":
      return `datasheet, ${source.name}`;
    case "machine":
      return `machine, ${source.name}`;
    case "workshop":
      return `your workshop, ${source.name}`;
    case "house-rule":
      return `house rule, ${source.name} (house-rules: ${source.key})`;
    case "geometry":
      return `geometry, ${source.name}`;
    case "practice":
      return `common practice, ${source.name}`;
  }
};
