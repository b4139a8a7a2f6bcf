// A moment as the person's own clock has it, written as dates are everywhere else: 2026-11-27 22:16 (ISO 8601, to the minute).

/** `when`: milliseconds since 1970. */
export function localTime(when: number): string {
  const at = new Date(when);
  const date = [at.getFullYear(), at.getMonth() + 1, at.getDate()].map(twoDigits).join("-");
  return `${date} ${[at.getHours(), at.getMinutes()].map(twoDigits).join(":")}`;
}

const twoDigits = (part: number): string => `${part}`.padStart(2, "0");
