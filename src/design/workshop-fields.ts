// A workshop file. To add a key: a line in the record, its field in the workshop's types, and a line where it is built.

import { type Field, mapped, read, refined } from "./field.ts";
import { dispensable, optional, record, usual } from "./fields.ts";
import { FILE_KEYS } from "./file-keys.ts";
import { HOUSE_RULES_FIELD } from "./house-rules.ts";
import { MACHINE } from "./machine-fields.ts";
import { lookup, lookupOf } from "./map-fields.ts";
import { FINISH, STOCK } from "./stock-fields.ts";
import { colour, name, oneOf } from "./text-fields.ts";
import type { WorkshopDesign } from "./workshop-design.ts";

/** What the files for a machine tell apart, and what a colour may be given to. */
const PROCESSES = ["engrave", "score", "cut-inner", "cut-outer", "witness", "drill"] as const;

const PROCESS_COLOURS: Field<Readonly<Record<string, string>>> = mapped(
  record(
    "colours by process",
    Object.fromEntries(
      PROCESSES.map((process) => [
        process,
        optional(colour("a colour"), `Colour of ${process} in the files`),
      ]),
    ),
  ),
  (values) =>
    lookupOf(
      PROCESSES.flatMap((process) => {
        const value = values[process];
        return value === undefined || value === null ? [] : [[process, value] as const];
      }),
    ),
);

const NONE: Readonly<Record<string, never>> = lookupOf<never>([]);

const WORKSHOP_KEYS = {
  ...FILE_KEYS,
  stock: dispensable(
    usual(
      lookup("stock by name", STOCK, (stock, id) => ({ id, ...stock })),
      { value: NONE, about: "Sheet and filament" },
    ),
  ),
  finishes: dispensable(
    usual(
      lookup("finishes by name", FINISH, (finish, id) => ({ id, ...finish })),
      { value: NONE, about: "Paint and other finishes" },
    ),
  ),
  machines: dispensable(
    usual(
      lookup("machines by name", MACHINE, (machine, id) => ({ id, ...machine })),
      { value: NONE, about: "Machines and what was measured on them" },
    ),
  ),
  use: dispensable(
    usual(
      lookup("machines by layer", name("the name of a machine"), (machine) => machine),
      { value: NONE, about: "Which machine makes which layer; `default` for all others" },
    ),
  ),
  "house-rules": dispensable(
    usual(HOUSE_RULES_FIELD, {
      value: NONE,
      about: "Your own limits in place of the usual ones",
    }),
  ),
  "process-colours": dispensable(
    usual(PROCESS_COLOURS, { value: NONE, about: "Colours that your cutter's software expects" }),
  ),
  inside: dispensable(
    usual(oneOf("what makes a light box white inside", ["white-body", "liner", "paint"]), {
      value: "paint",
      about: "A second material in the print, a loose white liner, or paint",
    }),
  ),
  paper: dispensable(
    usual(oneOf("a size of paper", ["A4", "Letter"]), {
      value: "A4",
      about: "Paper for templates and drawings",
    }),
  ),
};

export const WORKSHOP: Field<WorkshopDesign> = refined(
  record("a workshop", WORKSHOP_KEYS),
  (values, node, { file }) =>
    read(
      {
        kind: "workshop",
        written: values.written,
        file,
        name: values.name,
        stock: values.stock,
        finishes: values.finishes,
        machines: values.machines,
        use: values.use,
        houseRules: values["house-rules"],
        processColours: values["process-colours"],
        paper: values.paper,
        inside: values.inside,
      },
      node,
    ),
);
