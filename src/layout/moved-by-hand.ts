// A place that was read off a photograph says how far off it may be. Moved by hand it comes from no photograph any more: the
// edit that moves it takes that word away.

import { removeKey } from "../design/edit.ts";
import { pathAt } from "../design/path-at.ts";
import type { Step } from "../design/rewriting.ts";
import type { Source } from "../design/source.ts";
import type { MovableThing } from "./movable-things.ts";

const KEY = "residual";

/** Steps upon a text whose places stand where they were read, whatever their numbers are by now. */
export const residualSteps = (moved: readonly MovableThing[], from: Source): readonly Step[] => {
  const spans = moved.flatMap(({ place: { written } }) =>
    written.keys[KEY] === undefined ? [] : [written.span],
  );
  const distinct = spans.filter(
    ({ start }, index) => spans.findIndex((one) => one.start === start) === index,
  );
  return distinct.map((span): Step => {
    const path = pathAt(from, span);
    return (now) =>
      path === null
        ? { kind: "refused", why: "the text does not say where it stands" }
        : removeKey(now, path, KEY);
  });
};
