// One seed for every property in the gate, so that a failure is the change's and not the day's. PROPERTY_SEED chooses
// another; the long runs take a new one each time. Both print it.

import fc from "fast-check";

/** Any number serves; the day on which the first property was written. */
const GATE_SEED = 20261124;

const chosen = process.env["PROPERTY_SEED"];
const seed = chosen === undefined ? GATE_SEED : chosen === "new" ? Date.now() : Number(chosen);

fc.configureGlobal({ seed });
