// What a file says about itself in words, in an SVG's description or a DXF's comments: part, revision, face up, kerf.
// Takes its lines; gives each statement, null where the file does not make it.

export interface Statements {
  readonly part: string | null;
  readonly revision: string | null;
  readonly faceUp: "front" | "rear" | null;
  /** Kerf that is in the file, in mm; null also where the file leaves it to the cutter. */
  readonly kerf: number | null;
  readonly leavesKerf: boolean;
}

export const statementsIn = (lines: readonly string[]): Statements => {
  const face = firstMatch(lines, /^face up: *(front|rear)\b/i);
  const kerf = firstMatch(lines, /^kerf: *in[- ](?:this )?file,? *([\d.]+) *mm/i);
  return {
    part: firstMatch(lines, /^part:? +(.+?)(?:, revision .*)?$/i),
    revision: firstMatch(lines, /^(?:part .+?, )?revision:? +(.+?)(?:, panel .*)?$/i),
    faceUp: face === null ? null : face.toLowerCase() === "rear" ? "rear" : "front",
    kerf: kerf === null ? null : Number(kerf),
    leavesKerf: firstMatch(lines, /^kerf: *(left[- ]to[- ](?:the[- ])?cutter)/i) !== null,
  };
};

const firstMatch = (lines: readonly string[], pattern: RegExp): string | null => {
  for (const line of lines) {
    const found = pattern.exec(line.trim())?.[1];
    if (found !== undefined) return found;
  }
  return null;
};
