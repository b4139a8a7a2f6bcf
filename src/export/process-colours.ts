// Which colour marks which process in a cut file. Takes the user's mapping, gives a full table and what it could not use.
// The defaults are told apart by people who confuse colours. A colour that two processes share is refused:
// laser software sorts by colour and would run both with one setting.

import type { Process } from "../parts/sheet-part.ts";
import { PROCESS_ORDER } from "./process-order.ts";

export type ProcessColours = Readonly<Record<Process, string>>;

/**
 * Okabe M. and Ito K., "Color Universal Design (CUD): how to make figures and presentations that are friendly to
 * colorblind people", 2008: the palette's black, vermillion, blue, bluish green, reddish purple and orange.
 */
export const DEFAULT_COLOURS: ProcessColours = {
  engrave: "#000000",
  score: "#009e73",
  "cut-inner": "#0072b2",
  "cut-outer": "#d55e00",
  witness: "#cc79a7",
  drill: "#e69f00",
};

export interface RefusedColour {
  readonly process: string;
  readonly colour: string;
  readonly why: string;
}

export interface ColourChoice {
  readonly colours: ProcessColours;
  readonly refused: readonly RefusedColour[];
}

/** The defaults with the user's own colours over them; keys are process names, values `#rrggbb`. */
export const processColours = (wanted: Readonly<Record<string, string>>): ColourChoice => {
  const colours: Record<Process, string> = { ...DEFAULT_COLOURS };
  const refused: RefusedColour[] = [];
  for (const name of Object.keys(wanted).toSorted()) {
    const colour = (wanted[name] ?? "").toLowerCase();
    const process = PROCESS_ORDER.find((known) => known === name);
    if (process === undefined) refused.push({ process: name, colour, why: "is not a process" });
    else if (!isColour(colour)) refused.push({ process: name, colour, why: "is not #rrggbb" });
    else colours[process] = colour;
  }
  return { colours, refused: [...refused, ...sharedColours(colours)] };
};

/** True for `#rrggbb`: nothing else is ever written as a colour. */
export const isColour = (text: string): boolean => /^#[0-9a-f]{6}$/.test(text);

const sharedColours = (colours: ProcessColours): RefusedColour[] =>
  PROCESS_ORDER.flatMap((process, index) => {
    const other = PROCESS_ORDER.slice(0, index).find((name) => colours[name] === colours[process]);
    if (other === undefined) return [];
    return [{ process, colour: colours[process], why: `is the colour of ${other} already` }];
  });
