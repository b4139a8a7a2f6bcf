// A change to a design is a change to its text: one stretch replaced, everything else untouched.
// `baseHash` names the text that the edit was made for; on any other text it is refused.

export interface TextEdit {
  readonly file: string;
  readonly baseHash: string;
  readonly start: number;
  readonly end: number;
  readonly text: string;
}
