// Moments in the page: by the person's own clock, and written as ISO 8601 writes them.

import { expect, test } from "vitest";
import { localTime } from "../../viewer/files/local-time.ts";

test("a moment is written by year, month and day, and by hours of the whole day", () => {
  // Months of `Date` begin with 0.
  expect(localTime(new Date(2026, 10, 27, 22, 16, 15).getTime())).toBe("2026-11-27 22:16");
  expect(localTime(new Date(2026, 0, 2, 3, 4, 59).getTime())).toBe("2026-01-02 03:04");
});

test("it is the moment that ISO 8601 means by it without a zone", () => {
  // ECMA-262, 21.4.1.32: a date with a time and no zone is local time.
  const when = Date.parse("2026-07-15T12:30");
  expect(localTime(when)).toBe("2026-07-15 12:30");
});
