// A reader of plain PDF files, for tests only, written from ISO 32000-1:2008: cross-reference table (7.5.4), objects, page tree
// and the path operators of section 8.5. Takes bytes; gives pages with their runs in millimetres. Whatever does not agree throws.

import { inflateSync } from "node:zlib";

export interface PdfFile {
  readonly catalogue: string;
  readonly information: string;
  readonly trailer: string;
  readonly pages: readonly PdfReadPage[];
  /** What pages and forms place by name (8.10), in the order of the resources. */
  readonly forms: ReadonlyMap<string, string>;
}

export interface PdfReadPage {
  /** In points. */
  readonly width: number;
  readonly height: number;
  readonly content: string;
  readonly runs: readonly PdfRun[];
}

export interface PdfPlace {
  readonly x: number;
  readonly y: number;
}

export type PdfPiece =
  | { readonly kind: "line"; readonly from: PdfPlace; readonly to: PdfPlace }
  | {
      readonly kind: "curve";
      readonly from: PdfPlace;
      readonly first: PdfPlace;
      readonly second: PdfPlace;
      readonly to: PdfPlace;
    };

export interface PdfRun {
  readonly closed: boolean;
  readonly pieces: readonly PdfPiece[];
  /** The painting operator: `S`, `f*`, or `n` of a clip. */
  readonly painted: string;
}

const MILLIMETRES_A_POINT = 25.4 / 72;

export const readPdf = (bytes: Uint8Array): PdfFile => {
  const text = Buffer.from(bytes).toString("latin1");
  const objects = objectsOf(text);
  const trailer = /trailer\s*<<(.*?)>>\s*startxref/s.exec(text)?.[1] ?? "";
  const catalogue = referred(objects, trailer, "Root");
  const tree = referred(objects, catalogue, "Pages");
  const kids = [...(/\/Kids \[(.*?)\]/.exec(tree)?.[1] ?? "").matchAll(/(\d+) 0 R/g)];
  if (Number(/\/Count (\d+)/.exec(tree)?.[1]) !== kids.length) throw new Error("count of pages");
  const first = objects.get(Number(kids[0]?.[1])) ?? "";
  return {
    catalogue,
    information: referred(objects, trailer, "Info"),
    trailer,
    forms: formsOf(objects, referred(objects, first, "Resources")),
    pages: kids.map(([, number = ""]) => pageOf(objects, objects.get(Number(number)) ?? "")),
  };
};

const referred = (objects: ReadonlyMap<number, string>, from: string, key: string): string => {
  const number = new RegExp(`/${key} (\\d+) 0 R`).exec(from)?.[1];
  const found = objects.get(Number(number));
  if (found === undefined) throw new Error(`no ${key}`);
  return found;
};

const objectsOf = (text: string): ReadonlyMap<number, string> => {
  const start = Number(/startxref\n(\d+)\n%%EOF\n$/.exec(text)?.[1]);
  const table = /^xref\n0 (\d+)\n((?:\d{10} \d{5} [fn] \n)+)trailer/.exec(text.slice(start));
  if (table === null) throw new Error("no cross-reference table where startxref points");
  const entries = (table[2] ?? "").match(/.{20}/gs) ?? [];
  if (entries.length !== Number(table[1])) throw new Error("size of the table");
  const objects = new Map<number, string>();
  for (const [number, entry] of entries.entries()) {
    if (number === 0) continue;
    const found = new RegExp(`^${number} 0 obj\\n(.*?)\\nendobj\\n`, "s").exec(
      text.slice(Number(entry.slice(0, 10))),
    );
    if (found === null) throw new Error(`object ${number} is not where the table says`);
    objects.set(number, found[1] ?? "");
  }
  return objects;
};

const pageOf = (objects: ReadonlyMap<number, string>, page: string): PdfReadPage => {
  const box = (/\/MediaBox \[(.*?)\]/.exec(page)?.[1] ?? "").split(" ").map(Number);
  const content = streamOf(referred(objects, page, "Contents"));
  const resources = referred(objects, page, "Resources");
  const form = (name: string): string => streamOf(referred(objects, resources, name));
  return { width: box[2] ?? 0, height: box[3] ?? 0, content, runs: runsOf(content, form) };
};

/** A form that places others has the page's resources (7.8.3): without them its names mean nothing. */
const formsOf = (
  objects: ReadonlyMap<number, string>,
  resources: string,
): ReadonlyMap<string, string> =>
  new Map(
    [...resources.matchAll(/\/(\w+) (\d+) 0 R/g)].map(([, name = "", number = ""]) => {
      const object = objects.get(Number(number)) ?? "";
      const stream = streamOf(object);
      const isAlone = !/ Do\n/.test(stream);
      if (
        !isAlone &&
        referred(objects, object.slice(0, object.indexOf(">>")), "Resources") !== resources
      )
        throw new Error(`${name} places forms without resources`);
      return [name, stream];
    }),
  );

/** 7.3.8 and 7.4.4: a stream of the length that it states, deflated. */
const streamOf = (object: string): string => {
  const found = /^<< [^>]*\/Filter \/FlateDecode \/Length (\d+) >>\nstream\n(.*)\nendstream$/s.exec(
    object,
  );
  const data = found?.[2] ?? "";
  if (Number(found?.[1]) !== data.length) throw new Error("length of a stream");
  return inflateSync(Buffer.from(data, "latin1")).toString("latin1");
};

/** A scale and a shift: all that a page's matrix may be here. */
interface Matrix {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

interface Reading {
  readonly runs: PdfRun[];
  making: { closed: boolean; pieces: PdfPiece[] }[];
  matrix: Matrix;
  readonly saved: Matrix[];
  here: PdfPlace;
  start: PdfPlace;
}

/** 8.3.4: the new matrix acts before the one in force. */
const movedMatrix = (matrix: Matrix, operands: readonly number[]): Matrix => {
  const [a, b, c, d, e = 0, f = 0] = operands;
  if (a === undefined || a !== d || b !== 0 || c !== 0) throw new Error("scale and shift only");
  return {
    scale: matrix.scale * a,
    x: matrix.x + matrix.scale * e,
    y: matrix.y + matrix.scale * f,
  };
};

const runsOf = (content: string, form: (name: string) => string): readonly PdfRun[] => {
  const reading: Reading = {
    runs: [],
    making: [],
    matrix: { scale: MILLIMETRES_A_POINT, x: 0, y: 0 },
    saved: [],
    here: { x: 0, y: 0 },
    start: { x: 0, y: 0 },
  };
  readOperators(content, reading, form);
  if (reading.saved.length > 0 || reading.making.length > 0) throw new Error("a page without end");
  return reading.runs;
};

const readOperators = (content: string, reading: Reading, form: (name: string) => string): void => {
  for (const { operator, operands, name } of operatorsOf(content)) {
    if (operator === "Do") {
      reading.saved.push(reading.matrix);
      readOperators(form(name), reading, form);
      reading.matrix = reading.saved.pop() ?? reading.matrix;
    } else if (!takeState(operator, operands, reading) && !takePath(operator, operands, reading))
      throw new Error(`operator ${operator}`);
  }
};

const takeState = (operator: string, operands: readonly number[], reading: Reading): boolean => {
  switch (operator) {
    case "q":
      reading.saved.push(reading.matrix);
      return true;
    case "Q": {
      const saved = reading.saved.pop();
      if (saved === undefined) throw new Error("Q without q");
      reading.matrix = saved;
      return true;
    }
    case "cm":
      reading.matrix = movedMatrix(reading.matrix, operands);
      return true;
    default:
      return ["J", "j", "w", "d", "rg", "RG", "W"].includes(operator);
  }
};

const takePath = (operator: string, operands: readonly number[], reading: Reading): boolean => {
  const { scale, x, y } = reading.matrix;
  const at = (index: number): PdfPlace => ({
    x: x + scale * (operands[index] ?? Number.NaN),
    y: y + scale * (operands[index + 1] ?? Number.NaN),
  });
  const add = (piece: PdfPiece): void => {
    reading.making.at(-1)?.pieces.push(piece);
    reading.here = piece.to;
  };
  const paint = (painted: string): void => {
    reading.runs.push(...reading.making.map((run) => ({ ...run, painted })));
    reading.making = [];
  };
  switch (operator) {
    case "m":
      reading.making.push({ closed: false, pieces: [] });
      reading.here = at(0);
      reading.start = reading.here;
      return true;
    case "l":
      add({ kind: "line", from: reading.here, to: at(0) });
      return true;
    case "c":
      add({ kind: "curve", from: reading.here, first: at(0), second: at(2), to: at(4) });
      return true;
    case "h": {
      const run = reading.making.at(-1);
      if (run !== undefined) run.closed = true;
      reading.here = reading.start;
      return true;
    }
    case "re":
      reading.making.push({ closed: true, pieces: [] });
      return true;
    case "S":
    case "f*":
    case "n":
      paint(operator);
      return true;
    default:
      return false;
  }
};

interface Operation {
  readonly operator: string;
  readonly operands: readonly number[];
  /** `F1` of `/F1 Do`. */
  readonly name: string;
}

const operatorsOf = (content: string): readonly Operation[] => {
  const found: Operation[] = [];
  let operands: number[] = [];
  let name = "";
  for (const token of content.replaceAll(/\[[^\]]*\]/g, " ").split(/\s+/)) {
    if (token === "") continue;
    if (/^-?\d+(\.\d+)?$/.test(token)) operands.push(Number(token));
    else if (token.startsWith("/")) name = token.slice(1);
    else {
      found.push({ operator: token, operands, name });
      operands = [];
    }
  }
  return found;
};

/** A place on a piece (8.5.2.2: cubic Bézier curves). */
export const placeOnPiece = (piece: PdfPiece, share: number): PdfPlace => {
  const rest = 1 - share;
  if (piece.kind === "line")
    return {
      x: rest * piece.from.x + share * piece.to.x,
      y: rest * piece.from.y + share * piece.to.y,
    };
  const { from, first, second, to } = piece;
  const weights = [rest ** 3, 3 * rest ** 2 * share, 3 * rest * share ** 2, share ** 3] as const;
  return {
    x: weights[0] * from.x + weights[1] * first.x + weights[2] * second.x + weights[3] * to.x,
    y: weights[0] * from.y + weights[1] * first.y + weights[2] * second.y + weights[3] * to.y,
  };
};
