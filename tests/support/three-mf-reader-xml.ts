// XML, strictly, as far as a 3MF goes (XML 1.0, and the core specification's own bans: no DTD, UTF-8 only): one root, tags
// nested, attributes quoted and named once, only the five entities and numbers.

export interface XmlElement {
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
  readonly children: readonly XmlElement[];
  readonly text: string;
}

interface OpenElement {
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
  readonly children: XmlElement[];
  text: string;
}

export function readXml(bytes: Uint8Array): XmlElement {
  const text = new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  const declaration = /^<\?xml version="1\.0" encoding="UTF-8"\?>\s*/.exec(text);
  check(declaration !== null, "it opens with a declaration of UTF-8");
  const top: OpenElement = { name: "", attributes: new Map(), children: [], text: "" };
  const open: OpenElement[] = [top];
  const tag =
    /<(\/?)([A-Za-z_][\w.:-]*)((?:\s+[\w.:-]+\s*=\s*(?:"[^"<]*"|'[^'<]*'))*)\s*(\/?)>|([^<]+)/y;
  tag.lastIndex = declaration[0].length;
  while (tag.lastIndex < text.length) {
    const place = tag.lastIndex;
    const found = tag.exec(text);
    check(found !== null, `markup is well formed at character ${place}`);
    if (found[5] !== undefined) open.at(-1)!.text += unescaped(found[5]);
    else if (found[1] === "/") close(open, found[2]!);
    else start(open, found[2]!, { attributes: found[3]!, isEmpty: found[4] === "/" });
  }
  check(open.length === 1 && top.children.length === 1, "there is one root, closed");
  check(top.text.trim() === "", "no text stands outside the root");
  return top.children[0]!;
}

function start(
  open: OpenElement[],
  name: string,
  of: { readonly attributes: string; readonly isEmpty: boolean },
): void {
  const attributes = new Map<string, string>();
  for (const [, key, double, single] of of.attributes.matchAll(
    /([\w.:-]+)\s*=\s*(?:"([^"]*)"|'([^']*)')/g,
  )) {
    check(!attributes.has(key!), `${key} stands once`);
    attributes.set(key!, unescaped(double ?? single ?? ""));
  }
  const element: OpenElement = { name, attributes, children: [], text: "" };
  open.at(-1)!.children.push(element);
  if (!of.isEmpty) open.push(element);
}

function close(open: OpenElement[], name: string): void {
  check(open.length > 1 && open.at(-1)!.name === name, `${name} is closed where it is open`);
  open.pop();
}

const ENTITIES: Readonly<Record<string, string>> = {
  amp: "&",
  lt: "<",
  gt: ">",
  quot: '"',
  apos: "'",
};

const unescaped = (text: string): string =>
  text.replace(/&([^;\s]*;?)/g, (_whole, entity: string) => {
    const name = entity.slice(0, -1);
    const known =
      ENTITIES[name] ??
      (/^#\d+$/.test(name) ? String.fromCodePoint(Number(name.slice(1))) : undefined);
    check(entity.endsWith(";") && known !== undefined, `&${entity} is an entity`);
    return known;
  });

function check(condition: boolean, what: string): asserts condition {
  if (!condition) throw new Error(`xml: it does not hold that ${what}`);
}
