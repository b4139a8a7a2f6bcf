// The fields of a material: how far its thickness strays, the fit of a bush in it, which machine may touch it.

import { type Field, mapped } from "../../design/field.ts";
import { list, record, required, tuple } from "../../design/fields.ts";
import { noOrSomeMillimetres } from "../../design/length-fields.ts";
import { mapById, type NameRule } from "../../design/map-fields.ts";
import { number } from "../../design/number-fields.ts";
import { oneOf, text } from "../../design/text-fields.ts";
import { mm } from "../../geometry/quantity.ts";
import { MACHINE_KINDS, type MaterialRecord, type ThicknessTolerance } from "../record.ts";
import { titleField } from "./basic-fields.ts";
import { figuresField } from "./figures-field.ts";

const noOrSome = noOrSomeMillimetres("a length");

const deviationField: Field<ThicknessTolerance["plus"]> = mapped(
  tuple("a deviation", number("a number", { least: 0, most: 10 }), ["fixed", "share"]),
  ([fixed, share]) => ({ fixed: mm(fixed), share }),
);

const toleranceField: Field<ThicknessTolerance> = mapped(
  record("a range of thickness", {
    from: required(noOrSome, "holds from this nominal thickness up"),
    plus: required(deviationField, "[fixed, share of the nominal] above"),
    minus: required(deviationField, "[fixed, share of the nominal] below"),
  }),
  ({ from, plus, minus }) => ({ from, plus, minus }),
);

const verdictField: Field<MaterialRecord["byMachine"][string]> = mapped(
  record("a verdict", {
    verdict: required(oneOf("a verdict", ["can", "cannot", "try"]), "can, cannot, or try it"),
    why: required(text("a reason", 160), "why"),
  }),
  ({ verdict, why }) => ({ verdict, why }),
);

const MACHINES: NameRule = {
  pattern: new RegExp(`^(?:${MACHINE_KINDS.join("|")})(?:/(?:opaque|translucent|clear))?$`),
  hint: () => `a kind of machine (${MACHINE_KINDS.join(", ")}), with /clear for clear stock only`,
  isInstance: false,
};

/** Reads everything but the material's name, which is the key it stands under. */
export const materialField: Field<Omit<MaterialRecord, "id">> = mapped(
  record("a material", {
    title: required(titleField, "what it is called in lists"),
    tolerance: required(
      list("ranges", toleranceField, { least: 1 }),
      "how far its thickness strays",
    ),
    "bush-fit": required(noOrSome, "added to a bush's diameter for its hole"),
    "by-machine": required(
      mapById("verdicts by kind of machine", verdictField, MACHINES),
      "which machine may touch it",
    ),
    figures: required(figuresField, "where the numbers come from"),
  }),
  (value) => ({
    kind: "material",
    title: value.title,
    tolerance: value.tolerance,
    bushFit: value["bush-fit"],
    byMachine: Object.fromEntries(
      value["by-machine"].flatMap((entry) =>
        entry.kind === "read" ? [[entry.id, entry.value] as const] : [],
      ),
    ),
    figures: value.figures,
  }),
);
