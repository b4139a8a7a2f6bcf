// Straight lines that a browser's own print holds, in millimetres as they lie on the paper: for tests of true size. Reads the
// pages and paths of a PDF that another program wrote (ISO 32000-1: 7.5, 8.3.4, 8.5.2); what it does not know it leaves out.

import { inflateSync } from "node:zlib";

export interface PrintedPage {
  /** In points. */
  readonly width: number;
  readonly height: number;
  readonly lines: readonly PrintedLine[];
}

export interface PrintedLine {
  /** Millimetres. */
  readonly length: number;
  readonly isAcross: boolean;
}

/** Shorter ones are of letters and ticks. */
const LONG = 50;

export const longLines = (bytes: Uint8Array): readonly PrintedPage[] => {
  const text = Buffer.from(bytes).toString("latin1");
  const objects = new Map(
    [...text.matchAll(/(?:^|\n)(\d+) 0 obj\s(.*?)endobj/gs)].map(([, number = "", body = ""]) => [
      Number(number),
      body,
    ]),
  );
  return [...objects.values()]
    .filter((body) => /\/Type\s*\/Page\b(?!s)/.test(body))
    .map((body) => {
      const [, , width = 0, height = 0] = (/\/MediaBox\s*\[([^\]]*)\]/.exec(body)?.[1] ?? "")
        .trim()
        .split(/\s+/)
        .map(Number);
      const contents = [
        ...(/\/Contents\s*(\[[^\]]*\]|\d+ 0 R)/.exec(body)?.[1] ?? "").matchAll(/(\d+) 0 R/g),
      ];
      const content = contents
        .map(([, number]) => streamOf(objects.get(Number(number)) ?? ""))
        .join("\n");
      return { width, height, lines: linesIn(content) };
    });
};

const streamOf = (body: string): string => {
  const data = /stream\r?\n(.*?)\r?\nendstream/s.exec(body)?.[1] ?? "";
  return inflateSync(Buffer.from(data, "latin1")).toString("latin1");
};

type Matrix = readonly [number, number, number, number, number, number];

interface Reading {
  readonly lines: PrintedLine[];
  readonly saved: Matrix[];
  matrix: Matrix;
  here: { readonly x: number; readonly y: number };
}

const linesIn = (content: string): readonly PrintedLine[] => {
  const reading: Reading = {
    lines: [],
    saved: [],
    matrix: [1, 0, 0, 1, 0, 0],
    here: { x: 0, y: 0 },
  };
  let operands: number[] = [];
  for (const token of content.split(/\s+/).filter(Boolean)) {
    const number = Number(token);
    if (Number.isFinite(number)) operands.push(number);
    else {
      take(token, operands, reading);
      operands = [];
    }
  }
  return reading.lines;
};

const take = (operator: string, operands: readonly number[], reading: Reading): void => {
  const { saved, matrix } = reading;
  switch (operator) {
    case "q":
      saved.push(matrix);
      return;
    case "Q":
      reading.matrix = saved.pop() ?? matrix;
      return;
    case "cm":
      reading.matrix = joined(operands, matrix);
      return;
    case "m":
      reading.here = placed(operands, matrix);
      return;
    case "l":
      drawTo(placed(operands, matrix), reading);
  }
};

const drawTo = (to: Reading["here"], reading: Reading): void => {
  const [across, up] = [to.x - reading.here.x, to.y - reading.here.y];
  const length = (Math.hypot(across, up) * 25.4) / 72;
  if (length > LONG) reading.lines.push({ length, isAcross: Math.abs(across) > Math.abs(up) });
  reading.here = to;
};

/** 8.3.4: the new matrix acts before the one in force. */
const joined = (operands: readonly number[], [a, b, c, d, e, f]: Matrix): Matrix => {
  const [p = 1, q = 0, r = 0, s = 1, t = 0, u = 0] = operands;
  return [
    p * a + q * c,
    p * b + q * d,
    r * a + s * c,
    r * b + s * d,
    t * a + u * c + e,
    t * b + u * d + f,
  ];
};

const placed = (
  operands: readonly number[],
  [a, b, c, d, e, f]: Matrix,
): { x: number; y: number } => {
  const [x = 0, y = 0] = operands;
  return { x: x * a + y * c + e, y: x * b + y * d + f };
};
