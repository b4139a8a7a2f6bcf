// What a function may take for granted. A broken one is a programmer's mistake and stops the run at once;
// whatever a user can get wrong is a finding and never comes here.

/** Throws where `condition` does not hold; `whatMustHold` completes the sentence "it must hold that ...". */
export function invariant(condition: boolean, whatMustHold: string): asserts condition {
  if (!condition) throw new Error(`must hold: ${whatMustHold}`);
}
