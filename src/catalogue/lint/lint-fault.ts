// What the linter says about a record: which field, and what about it can't be so.

export interface LintFault {
  /** Path of the field, as in figures: "hold.grip". */
  readonly path: string;
  readonly says: string;
}

/** Makes one fault where the condition does not hold. */
export const unless = (holds: boolean, path: string, says: string): readonly LintFault[] =>
  holds ? [] : [{ path, says }];
