// What a part says that has nothing to be printed from.

import { type Finding, finding, type Span } from "../../diagnostics/finding.ts";
import { NO_PRINTED_STOCK } from "./codes.ts";

export const noPrintedStock = (what: string, span: Span): Finding =>
  finding(NO_PRINTED_STOCK, {
    message: `There is nothing to print ${what} from. Add stock to the workshop, black-petg: { material: petg, colour: black, opaque-from: 1.35 mm }.`,
    span,
  });
