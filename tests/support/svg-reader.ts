// A second reader of SVG, for tests only, written from the SVG 1.1 recommendation: the path grammar of section 8.3.9 and the
// arcs of appendix F.6. Takes a file's text; gives every path with its group and its runs, y down as in the file.
// It is strict: what the grammar does not allow throws.

export interface SvgFile {
  readonly root: ReadonlyMap<string, string>;
  readonly title: string;
  readonly description: string;
  readonly paths: readonly SvgPath[];
  /** Names of all elements, in the order of the file. */
  readonly elements: readonly string[];
}

export interface SvgPath {
  readonly group: string;
  readonly attributes: ReadonlyMap<string, string>;
  readonly runs: readonly SvgRun[];
}

export interface SvgRun {
  readonly closed: boolean;
  readonly edges: readonly SvgEdge[];
}

interface Place {
  readonly x: number;
  readonly y: number;
}

export type SvgEdge =
  | { readonly kind: "line"; readonly from: Place; readonly to: Place }
  | {
      readonly kind: "arc";
      readonly from: Place;
      readonly to: Place;
      readonly centre: Place;
      readonly radius: number;
      /** Angle of `from` seen from the centre, and the signed angle turned, both in the file's own axes. */
      readonly start: number;
      readonly turn: number;
    };

export const readSvgFile = (text: string): SvgFile => {
  const tags = nested(tagsOf(text));
  const opened = tags.filter(({ tag }) => tag.kind === "open" || tag.kind === "empty");
  return {
    root: opened[0]?.tag.attributes ?? new Map(),
    title: wordsIn(tags, "title"),
    description: wordsIn(tags, "desc"),
    elements: opened.map(({ tag }) => tag.name),
    paths: opened
      .filter(({ tag }) => tag.name === "path")
      .map(({ tag, parents }) => ({
        group:
          parents.findLast((parent) => parent.attributes.has("id"))?.attributes.get("id") ?? "",
        attributes: tag.attributes,
        runs: runsOf(tag.attributes.get("d") ?? ""),
      })),
  };
};

interface NestedTag {
  readonly tag: Tag;
  /** The elements that it stands in, the root first. */
  readonly parents: readonly Tag[];
}

const nested = (tags: readonly Tag[]): readonly NestedTag[] => {
  const open: Tag[] = [];
  const found = tags.map((tag): NestedTag => {
    if (tag.kind === "close" && open.pop()?.name !== tag.name)
      throw new Error(`</${tag.name}> closes nothing`);
    const parents = [...open];
    if (tag.kind === "open") open.push(tag);
    return { tag, parents };
  });
  if (open.length > 0) throw new Error("an element is never closed");
  return found;
};

const wordsIn = (tags: readonly NestedTag[], name: string): string =>
  tags
    .filter(({ tag, parents }) => tag.kind === "text" && parents.at(-1)?.name === name)
    .map(({ tag }) => tag.name)
    .join("");

interface Tag {
  readonly kind: "open" | "close" | "empty" | "text";
  /** Name of the element; of a text its words. */
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
}

/** XML 1.0, 2.4 to 3.1, as far as a cut file uses it; anything else throws. */
const tagsOf = (text: string): readonly Tag[] => {
  const tags: Tag[] = [];
  const pattern =
    /<\?xml [^?]*\?>|<(\/?)([A-Za-z][\w-]*)((?:\s+[\w-]+="[^"<]*")*)\s*(\/?)>|([^<]+)/y;
  while (pattern.lastIndex < text.length) {
    const at = pattern.lastIndex;
    const found = pattern.exec(text);
    if (found === null) throw new Error(`not XML at ${at}: ${text.slice(at, at + 40)}`);
    const [, slash, name, attributes, empty, words] = found;
    if (words !== undefined)
      tags.push({ kind: "text", name: unescaped(words), attributes: new Map() });
    else if (name !== undefined)
      tags.push({
        kind: slash === "/" ? "close" : empty === "/" ? "empty" : "open",
        name,
        attributes: attributesOf(attributes ?? ""),
      });
  }
  return tags;
};

const attributesOf = (text: string): ReadonlyMap<string, string> => {
  const attributes = new Map<string, string>();
  for (const [, name = "", value = ""] of text.matchAll(/([\w-]+)="([^"]*)"/g)) {
    if (attributes.has(name)) throw new Error(`attribute ${name} stands twice`);
    attributes.set(name, unescaped(value));
  }
  return attributes;
};

const ENTITIES: Readonly<Record<string, string>> = {
  amp: "&",
  lt: "<",
  gt: ">",
  quot: '"',
  "#39": "'",
};

const unescaped = (text: string): string =>
  text.replaceAll(/&([^;\s]*);?/g, (whole, name: string) => {
    const character = ENTITIES[name];
    if (character === undefined || !whole.endsWith(";")) throw new Error(`${whole} is no entity`);
    return character;
  });

/** Numbers that each command takes (8.3.9). */
const ARGUMENTS: Readonly<Record<string, number>> = { M: 2, L: 2, H: 1, V: 1, A: 7, Z: 0 };

const runsOf = (data: string): readonly SvgRun[] => {
  const runs: { closed: boolean; edges: SvgEdge[] }[] = [];
  let here: Place = { x: 0, y: 0 };
  let start: Place = here;
  for (const { command, values } of commandsOf(data)) {
    const [a = 0, b = 0] = values;
    if (command === "M") {
      here = { x: a, y: b };
      start = here;
      runs.push({ closed: false, edges: [] });
      continue;
    }
    const run = runs.at(-1);
    if (run === undefined || run.closed) throw new Error("a run begins with M");
    if (command === "Z") {
      if (here.x !== start.x || here.y !== start.y)
        run.edges.push({ kind: "line", from: here, to: start });
      run.closed = true;
      here = start;
      continue;
    }
    const edge = edgeOf(command, values, here);
    run.edges.push(edge);
    here = edge.to;
  }
  return runs;
};

const edgeOf = (command: string, values: readonly number[], from: Place): SvgEdge => {
  const [a = 0, b = 0, , , , x = 0, y = 0] = values;
  switch (command) {
    case "H":
      return { kind: "line", from, to: { x: a, y: from.y } };
    case "V":
      return { kind: "line", from, to: { x: from.x, y: a } };
    case "L":
      return { kind: "line", from, to: { x: a, y: b } };
    default:
      return arcOf(from, { x, y }, values);
  }
};

/** F.6.5 with rx = ry and no rotation; F.6.6.3 scales a radius that is too small. */
const arcOf = (from: Place, to: Place, values: readonly number[]): SvgEdge => {
  const [rx = 0, ry = 0, rotation = 0, large = 0, sweep = 0] = values;
  if (rx !== ry || rotation !== 0 || rx <= 0) throw new Error("an arc of a circle was expected");
  if (![0, 1].includes(large) || ![0, 1].includes(sweep)) throw new Error("a flag is 0 or 1");
  const halfX = (from.x - to.x) / 2;
  const halfY = (from.y - to.y) / 2;
  const half = Math.hypot(halfX, halfY);
  const radius = Math.max(rx, half);
  const factor = Math.sqrt(Math.max(0, radius * radius - half * half)) / half;
  const side = large === sweep ? -1 : 1;
  const centre = {
    x: side * factor * halfY + (from.x + to.x) / 2,
    y: -side * factor * halfX + (from.y + to.y) / 2,
  };
  const start = Math.atan2(from.y - centre.y, from.x - centre.x);
  const end = Math.atan2(to.y - centre.y, to.x - centre.x);
  let turn = end - start;
  if (sweep === 1 && turn < 0) turn += 2 * Math.PI;
  if (sweep === 0 && turn > 0) turn -= 2 * Math.PI;
  return { kind: "arc", from, to, centre, radius, start, turn };
};

const commandsOf = (
  data: string,
): readonly { readonly command: string; readonly values: readonly number[] }[] => {
  const commands: { command: string; values: readonly number[] }[] = [];
  const pattern = /\s*([A-Za-z])((?:[\s,]*[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?)*)\s*/y;
  while (pattern.lastIndex < data.length) {
    const at = pattern.lastIndex;
    const found = pattern.exec(data);
    if (found === null) throw new Error(`not path data at ${at}: ${data.slice(at, at + 30)}`);
    const command = found[1] ?? "";
    const values = (found[2] ?? "").match(/[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?/g) ?? [];
    if (ARGUMENTS[command] !== values.length)
      throw new Error(`${command} with ${values.length} numbers`);
    commands.push({ command, values: values.map(Number) });
  }
  return commands;
};

export interface SvgBox {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

export const runBox = (run: SvgRun): SvgBox => {
  const places = run.edges.flatMap((edge) => [edge.from, edge.to, ...outermost(edge)]);
  return {
    minX: Math.min(...places.map(({ x }) => x)),
    minY: Math.min(...places.map(({ y }) => y)),
    maxX: Math.max(...places.map(({ x }) => x)),
    maxY: Math.max(...places.map(({ y }) => y)),
  };
};

const outermost = (edge: SvgEdge): readonly Place[] => {
  if (edge.kind === "line") return [];
  const places: Place[] = [];
  for (let quarter = -8; quarter <= 8; quarter += 1) {
    const share = ((quarter * Math.PI) / 2 - edge.start) / edge.turn;
    if (share > 0 && share < 1) places.push(placeOnEdge(edge, share));
  }
  return places;
};

/** A place on the edge, `share` of the way along it. */
export const placeOnEdge = (edge: SvgEdge, share: number): Place => {
  if (edge.kind === "line")
    return {
      x: edge.from.x + share * (edge.to.x - edge.from.x),
      y: edge.from.y + share * (edge.to.y - edge.from.y),
    };
  const angle = edge.start + share * edge.turn;
  return {
    x: edge.centre.x + edge.radius * Math.cos(angle),
    y: edge.centre.y + edge.radius * Math.sin(angle),
  };
};

/** Signed area of a closed run; positive where it turns clockwise as seen on the screen (y down). */
export const runArea = (run: SvgRun): number => {
  let area = 0;
  for (const edge of run.edges) {
    area += (edge.from.x * edge.to.y - edge.to.x * edge.from.y) / 2;
    if (edge.kind === "arc") area += (edge.radius ** 2 * (edge.turn - Math.sin(edge.turn))) / 2;
  }
  return area;
};
