// One line of the inspection table: a feature of a written file, what it must be and what was read back.

export interface InspectionRow {
  readonly file: string;
  readonly feature: string;
  readonly what:
    | "x"
    | "y"
    | "size"
    | "area"
    | "process"
    | "count"
    | "outline"
    | "mirror"
    | "kerf"
    | "units"
    | "order";
  readonly expected: string;
  readonly measured: string;
  /** Absolute difference in mm (mm² for areas); null where it is not a number. */
  readonly difference: number | null;
  readonly passed: boolean;
}
