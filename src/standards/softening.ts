// From which temperature printed plastics give way under their own screws.

interface Softening {
  /** Lowest, in °C. */
  readonly from: number;
  readonly source: string;
}

/** PLA softens at 55 to 60 °C, PETG at about 75, ABS at about 95: common practice. */
export const SOFTENING: Readonly<Record<string, Softening>> = {
  pla: { from: 55, source: "PLA softens at 55 to 60 °C" },
  petg: { from: 75, source: "PETG softens at about 75 °C" },
  abs: { from: 95, source: "ABS softens at about 95 °C" },
};
