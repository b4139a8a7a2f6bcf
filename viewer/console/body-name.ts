// What a body of the console is called, for whoever reads of it beside the picture.

import type { ConsoleBody } from "../../src/fit/console-body.ts";
import type { BodyName } from "./console-messages.ts";

export const bodyName = ({ panel, id, thing, what }: ConsoleBody): BodyName => ({
  group: panel ?? "",
  id,
  words: `${what === "" || what === thing ? thing : `${what} of ${thing}`}${panel === null ? "" : ` on ${panel}`}`,
});
