// A DXF's text as pairs of a group code and its value, one pair every two lines (DXF reference, "Group codes").
// Takes the text; gives the pairs up to the first code that is not a number. Comments (999) stay in.

export interface DxfGroup {
  readonly code: number;
  readonly value: string;
}

export const dxfGroups = (text: string): readonly DxfGroup[] => {
  const lines = text.split(/\r\n|\r|\n/);
  const groups: DxfGroup[] = [];
  for (let at = 0; at + 1 < lines.length; at += 2) {
    const code = Number(lines[at]?.trim() || Number.NaN);
    if (!Number.isInteger(code)) break;
    groups.push({ code, value: (lines[at + 1] ?? "").trim() });
  }
  return groups;
};
