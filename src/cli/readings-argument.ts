// What stands behind --read: names of the measuring page, each with what the caliper showed.

import { type WrongUse, wrongUse } from "./command.ts";

export const readingsArgument = (
  written: string,
  example: string,
): { readonly measured: Readonly<Record<string, number>> } | WrongUse => {
  const pairs = written
    .split(",")
    .map((pair) => /^\s*([a-z][a-z0-9-]*)\s*=\s*(\d+(?:\.\d+)?)\s*$/.exec(pair));
  if (pairs.some((pair) => pair === null))
    return wrongUse(`"${written}" can't be read; write ${example} and so on.`);
  return {
    measured: Object.fromEntries(pairs.map((pair) => [pair?.[1] ?? "", Number(pair?.[2])])),
  };
};
