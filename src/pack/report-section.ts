// Sections of the fit report, made from rows of facts: a column says its title and what of a row stands in it.

import type { ReportCell, ReportColumn, ReportSection } from "../export/report.ts";

export interface FactColumn<Row> extends ReportColumn {
  readonly of: (row: Row) => ReportCell;
}

/** A rule reads no more than a hundredth. */
const RULE = 2;

export const wordColumn = <Row>(
  key: string,
  title: string,
  of: (row: Row) => string | boolean | null,
): FactColumn<Row> => ({ key, title, kind: "words", places: 0, none: "none", of });

export const numberColumn = <Row>(
  key: string,
  title: string,
  of: (row: Row) => number | null,
): FactColumn<Row> => ({ key, title, kind: "number", places: RULE, none: "none", of });

/** Modules of 9.525 mm (MIL-F-25173A) need a thousandth, or one panel's end is not the next one's beginning. */
export const exactly = <Row>(column: FactColumn<Row>): FactColumn<Row> => ({
  ...column,
  places: 3,
});

/** The column with words of its own where a row has no value. */
export const saying = <Row>(none: string, column: FactColumn<Row>): FactColumn<Row> => ({
  ...column,
  none,
});

export interface FactSection<Row> {
  readonly id: string;
  readonly heading: string;
  readonly words: readonly string[];
  /** What stands there instead of an empty table. */
  readonly empty: string;
  readonly columns: readonly FactColumn<Row>[];
  readonly rows: readonly Row[];
}

export const factSection = <Row>(section: FactSection<Row>): ReportSection => {
  const { id, heading, words, empty, columns, rows } = section;
  if (rows.length === 0) return { id, heading, words: [empty], table: null };
  return {
    id,
    heading,
    words,
    table: {
      columns: columns.map(({ of: _, ...column }) => column),
      rows: rows.map((row) => columns.map(({ of }) => of(row))),
    },
  };
};
