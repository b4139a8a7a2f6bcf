// A report as data, before it is any format: headings, lines of words and tables of cells. Formats decide how it looks.

export interface Report {
  readonly title: string;
  /** Lines under the title. */
  readonly facts: readonly string[];
  readonly sections: readonly ReportSection[];
}

export interface ReportSection {
  /** A word for programs, the same in every report: `reach`. */
  readonly id: string;
  readonly heading: string;
  /** What the numbers are, whose the limits; or that there is nothing to say. */
  readonly words: readonly string[];
  readonly table: ReportTable | null;
}

export interface ReportTable {
  readonly columns: readonly ReportColumn[];
  readonly rows: readonly (readonly ReportCell[])[];
}

export interface ReportColumn {
  /** A word for programs, the same in every report: `distance`. */
  readonly key: string;
  /** With its unit: "distance, mm". */
  readonly title: string;
  readonly kind: "words" | "number";
  /** Decimals that a reader is shown. */
  readonly places: number;
  /** What a cell without a value says. */
  readonly none: string;
}

/** null: nobody has written it, or there is none; the column says which. */
export type ReportCell = string | number | boolean | null;
