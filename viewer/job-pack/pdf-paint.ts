// A page's operators carried out (ISO 32000-1:2008, 8.4 and 8.5): paths with their paint, in millimetres, y down from the upper
// edge of the paper. Takes the content and what it places by name. An operator that no pack's page has throws.

import { decimal } from "../../src/geometry/number.ts";

export interface PaintedPage {
  /** Of the paper, in millimetres. */
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly PaintedShape[];
}

export interface PaintedShape {
  /** Path data. */
  readonly data: string;
  /** Colours as `rgb(…)`, made of the page's numbers. */
  readonly fill: string | null;
  readonly stroke: {
    readonly colour: string;
    readonly width: number;
    readonly dashes: string;
  } | null;
  /** Nothing is seen outside; null: of the whole page. */
  readonly clip: Rectangle | null;
}

export interface Rectangle {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface PageFrame {
  /** In points. */
  readonly width: number;
  readonly height: number;
  readonly form: (name: string) => string;
}

/** An inch has 72 points (8.3.2.3) and 25.4 mm. */
const POINT = 25.4 / 72;

export const paintedPage = (content: string, frame: PageFrame): PaintedPage => {
  const painting: Painting = {
    shapes: [],
    form: frame.form,
    state: {
      scale: POINT,
      x: 0,
      y: frame.height * POINT,
      fill: BLACK,
      stroke: BLACK,
      width: 1,
      dashes: [],
      clip: null,
    },
    saved: [],
    data: "",
    box: null,
    clipsNext: false,
  };
  carryOut(content, painting);
  return {
    width: frame.width * POINT,
    height: frame.height * POINT,
    shapes: painting.shapes,
  };
};

const BLACK = "rgb(0 0 0)";

/** A scale and a shift: a page of a pack is never turned. x grows to the right, y downward. */
interface State {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
  readonly fill: string;
  readonly stroke: string;
  readonly width: number;
  readonly dashes: readonly number[];
  readonly clip: Rectangle | null;
}

interface Painting {
  readonly shapes: PaintedShape[];
  readonly form: PageFrame["form"];
  readonly saved: State[];
  state: State;
  /** The path that is being made, and its last rectangle. */
  data: string;
  box: Rectangle | null;
  clipsNext: boolean;
}

const carryOut = (content: string, painting: Painting): void => {
  let operands: number[] = [];
  let name = "";
  for (const [token] of content.matchAll(/\[[^\]]*\]|\/\w+|[^\s[\]]+/g)) {
    if (token.startsWith("[")) {
      const dashes = token.slice(1, -1).trim().split(/\s+/).filter(Boolean).map(Number);
      painting.state = { ...painting.state, dashes };
    } else if (token.startsWith("/")) name = token.slice(1);
    else if (/^[-.\d]/.test(token)) operands.push(Number(token));
    else {
      takeOperator({ operator: token, operands, name }, painting);
      operands = [];
    }
  }
};

interface Operation {
  readonly operator: string;
  readonly operands: readonly number[];
  /** `F1` of `/F1 Do`. */
  readonly name: string;
}

const takeOperator = (operation: Operation, painting: Painting): void => {
  const { operator, name } = operation;
  if (operator === "Do") {
    const before = painting.state;
    carryOut(painting.form(name), painting);
    painting.state = before;
  } else if (!takeState(operation, painting) && !takePath(operation, painting))
    throw new Error(`a page with the operator ${operator}`);
};

const takeState = ({ operator, operands }: Operation, painting: Painting): boolean => {
  const { state } = painting;
  switch (operator) {
    case "q":
      painting.saved.push(state);
      return true;
    case "Q":
      painting.state = painting.saved.pop() ?? state;
      return true;
    case "cm":
      painting.state = moved(state, operands);
      return true;
    case "rg":
      painting.state = { ...state, fill: colour(operands) };
      return true;
    case "RG":
      painting.state = { ...state, stroke: colour(operands) };
      return true;
    case "w":
      painting.state = { ...state, width: (operands[0] ?? 0) * state.scale };
      return true;
    case "W":
      painting.clipsNext = true;
      return true;
    // Ends and corners of lines are those of the stylesheet; dashes were taken with their brackets.
    default:
      return ["J", "j", "d"].includes(operator);
  }
};

/** 8.3.4: the new matrix acts before the one in force. */
const moved = (state: State, operands: readonly number[]): State => {
  const [a, b, c, d, e = 0, f = 0] = operands;
  if (a === undefined || a !== d || b !== 0 || c !== 0) throw new Error("a page that is turned");
  return {
    ...state,
    scale: state.scale * a,
    x: state.x + state.scale * e,
    y: state.y - state.scale * f,
  };
};

const colour = (shares: readonly number[]): string =>
  `rgb(${shares.map((share) => Math.round(share * 255)).join(" ")})`;

const takePath = ({ operator, operands }: Operation, painting: Painting): boolean => {
  const { state } = painting;
  const places = (): string => {
    const numbers: string[] = [];
    for (let at = 0; at < operands.length; at += 2)
      numbers.push(
        written(acrossOf(operands[at], state)),
        written(downOf(operands[at + 1], state)),
      );
    return numbers.join(" ");
  };
  switch (operator) {
    case "m":
    case "l":
    case "c":
      painting.data += `${operator.toUpperCase()}${places()}`;
      return true;
    case "h":
      painting.data += "Z";
      return true;
    case "re":
      addRectangle(operands, painting);
      return true;
    case "S":
    case "f*":
    case "n":
      paint(operator, painting);
      return true;
    default:
      return false;
  }
};

const acrossOf = (x: number | undefined, state: State): number =>
  state.x + state.scale * (x ?? Number.NaN);

const downOf = (y: number | undefined, state: State): number =>
  state.y - state.scale * (y ?? Number.NaN);

/** A ten-thousandth of a millimetre. */
export const written = (value: number): string => decimal(value, 4);

const addRectangle = (operands: readonly number[], painting: Painting): void => {
  const { state } = painting;
  const [x = 0, y = 0, width = 0, height = 0] = operands;
  const box = {
    x: acrossOf(x, state),
    y: downOf(y + height, state),
    width: width * state.scale,
    height: height * state.scale,
  };
  const [left, top] = [written(box.x), written(box.y)];
  painting.data += `M${left} ${top}h${written(box.width)}v${written(box.height)}h${written(-box.width)}Z`;
  painting.box = box;
};

const paint = (operator: "S" | "f*" | "n", painting: Painting): void => {
  const { state, data, box } = painting;
  const { clip } = state;
  if (operator === "S") {
    const dashes = state.dashes.map((length) => written(length * state.scale)).join(" ");
    const stroke = { colour: state.stroke, width: state.width, dashes };
    painting.shapes.push({ data, fill: null, stroke, clip });
  } else if (operator === "f*")
    painting.shapes.push({ data, fill: state.fill, stroke: null, clip });
  if (painting.clipsNext && box !== null) painting.state = { ...state, clip: box };
  painting.data = "";
  painting.box = null;
  painting.clipsNext = false;
};
