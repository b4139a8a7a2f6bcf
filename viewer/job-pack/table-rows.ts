// The rows of a CSV file (RFC 4180): cells by comma, quoted where they hold one, a quote doubled. Takes text, gives words.

export const tableRows = (text: string): readonly (readonly string[])[] => {
  const rows: string[][] = [];
  let row: string[] = [];
  for (const [, quoted, plain = "", end] of text.matchAll(CELL)) {
    if (quoted === undefined && plain === "" && end === "" && row.length === 0) break;
    row.push(quoted === undefined ? plain : quoted.replaceAll('""', '"'));
    if (end === ",") continue;
    rows.push(row);
    row = [];
    if (end === "") break;
  }
  return rows;
};

const CELL = /(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r?\n|$)/g;
