// A second opinion on outlines: SVG path data (M, L, Q, C, Z, absolute) as Bézier curves, and their exact area.

export interface SvgPoint {
  readonly x: number;
  readonly y: number;
}

/** Start, controls and end: two points for a line, three for a quadratic, four for a cubic. */
export interface SvgCurve {
  readonly points: readonly SvgPoint[];
}

const NUMBERS: Readonly<Record<string, number>> = { M: 2, L: 2, Q: 4, C: 6, Z: 0 };

export const readSvgCurves = (data: string): readonly SvgCurve[] => {
  const curves: SvgCurve[] = [];
  let start: SvgPoint = { x: 0, y: 0 };
  let here = start;
  const close = (): void => {
    if (here.x !== start.x || here.y !== start.y) curves.push({ points: [here, start] });
    here = start;
  };
  for (const [, letter = "", written = ""] of data.matchAll(/([MLQCZ])([^MLQCZ]*)/g)) {
    const numbers = written.match(/-?\d*\.?\d+/g)?.map(Number) ?? [];
    if (numbers.length !== NUMBERS[letter])
      throw new Error(`unexpected path data: ${letter}${written}`);
    const points: SvgPoint[] = [];
    for (let index = 0; index < numbers.length; index += 2)
      points.push({ x: numbers[index]!, y: numbers[index + 1]! });
    const end = points.at(-1);
    if (letter === "Z" || end === undefined) close();
    else if (letter === "M") {
      close();
      start = end;
      here = end;
    } else {
      curves.push({ points: [here, ...points] });
      here = end;
    }
  }
  close();
  return curves;
};

/** Area enclosed by closed runs of curves, by Green's theorem: the integral of x dy - y dx over each polynomial, halved. */
export const signedArea = (curves: readonly SvgCurve[]): number =>
  curves.reduce((total, curve) => total + curveArea(curve.points), 0) / 2;

const cross = (a: SvgPoint, b: SvgPoint): number => a.x * b.y - a.y * b.x;

const curveArea = (points: readonly SvgPoint[]): number => {
  const [a, b, c, d] = points;
  if (a === undefined || b === undefined) throw new Error("a curve has two points");
  if (c === undefined) return cross(a, b);
  if (d === undefined) return (2 * cross(a, b) + 2 * cross(b, c) + cross(a, c)) / 3;
  return (
    (6 * cross(a, b) +
      3 * cross(a, c) +
      cross(a, d) +
      3 * cross(b, c) +
      3 * cross(b, d) +
      6 * cross(c, d)) /
    10
  );
};
