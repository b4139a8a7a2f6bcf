// Component lists: every way in which a spreadsheet writes them, and what it leaves behind.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readComponentList } from "../../src/design/component-list.ts";
import { lineAndColumn } from "../../src/diagnostics/position.ts";
import { codesOf } from "./reading.ts";

const LINES = [
  { part: "toggle-12", quantity: 2, legend: "PUMP #3", group: "FUEL", note: null },
  { part: "led-5", quantity: 1, legend: null, group: null, note: "green, bright" },
];

const linesOf = (text: string): unknown => readComponentList("list.csv", text).lines;

describe("a component list", () => {
  test.each([
    [
      "commas",
      'part,quantity,legend,group,note\ntoggle-12,2,PUMP #3,FUEL,\nled-5,,,,"green, bright"\n',
    ],
    [
      "spaces and capitals",
      'Part , Quantity , LEGEND , group , note\n toggle-12 , 2 , PUMP #3 , FUEL ,\n led-5 , , , , "green, bright"',
    ],
    [
      "semicolons",
      "part;quantity;legend;group;note\ntoggle-12;2;PUMP #3;FUEL;\nled-5;1;;;green, bright",
    ],
    [
      "tabs",
      "part\tquantity\tlegend\tgroup\tnote\ntoggle-12\t2\tPUMP #3\tFUEL\t\nled-5\t1\t\t\tgreen, bright",
    ],
    [
      "another order",
      'note,legend,part,group,quantity\n,PUMP #3,toggle-12,FUEL,2.0\n"green, bright",,led-5,,1',
    ],
    [
      "byte order mark and CRLF",
      '\uFEFFpart,quantity,legend,group,note\r\ntoggle-12,2,PUMP #3,FUEL\r\n\r\nled-5,1,,,"green, bright"\r\n',
    ],
    [
      "a table of bars",
      "| part | quantity | legend | group | note |\n|---|:--:|---|---|---|\n| toggle-12 | 2 | PUMP #3 | FUEL | |\n| led-5 | 1 | | | green, bright |\n",
    ],
    [
      "empty lines first and last",
      '\n\npart,quantity,legend,group,note\ntoggle-12,2,"PUMP #3",FUEL\n,,,,\nled-5,1,,,"green, bright"\n\n',
    ],
  ])("with %s is read", (_what, text) => {
    const { lines, findings } = readComponentList("list.csv", text);
    expect(findings).toEqual([]);
    expect(lines).toMatchObject(LINES);
  });

  // RFC 4180, section 2, rules 5 to 7.
  test("takes quotation marks by the rules of CSV", () => {
    expect(linesOf('part,legend\n"toggle-12","SAY ""GO"", NOW"')).toMatchObject([
      { part: "toggle-12", legend: 'SAY "GO", NOW' },
    ]);
  });

  test("needs the column of parts only", () => {
    expect(linesOf("part\nled-5\nled-3")).toMatchObject([
      { part: "led-5", quantity: 1 },
      { part: "led-3", quantity: 1 },
    ]);
  });

  test("knows where each cell stands", () => {
    const text = "\uFEFFpart,legend\r\nled-5,😀 OK\r\n";
    const [line] = readComponentList("list.csv", text).lines;
    const span = line?.cells.legend;
    expect(text.slice(span?.start, span?.end)).toBe("😀 OK");
    expect(lineAndColumn(text, span?.start ?? 0)).toEqual({ line: 2, column: 7 });
  });
});

describe("a component list with a fault", () => {
  test.each([
    ["", "list-empty", 1],
    ["toggle-12, 2, BRAKE", "list-no-header", 1],
    ["part, number\nled-5, 1", "list-unknown-column", 1],
    ["part,,legend\nled-5,,A", "list-unknown-column", 1],
    ["part, part\nled-5, led-3", "list-column-twice", 1],
    ["part, legend", "list-empty", 1],
    ["part, legend\nled-5, LEFT, RIGHT", "list-cells", 2],
    ['part, legend\nled-5, "LEFT', "list-quotes", 2],
    ['part, legend\nled-5, "LEFT" x', "list-quotes", 2],
    ["part, quantity\n\nled-5, two", "list-quantity", 3],
    ["part, quantity\nled-5, 0", "list-quantity", 2],
    ["part, quantity\nled-5, 1.5", "list-quantity", 2],
    ["part, quantity\nled-5, -2", "list-quantity", 2],
    ["part, quantity\nled-5, 1e3", "list-quantity", 2],
    ["part, quantity\n, 2", "list-no-part", 2],
    ["part, legend\nLED 5, A", "not-a-name", 2],
    ["part, legend\nled-5, #REF!", "list-leftover", 2],
    ["part, legend\nled-5, #N/A", "list-leftover", 2],
    ["part, legend\nled-5, =A1", "list-leftover", 2],
    ["part, legend\nled-5, 01-Feb", "list-spreadsheet-date", 2],
    ["part, legend\nled-5, 1/2/2026", "list-spreadsheet-date", 2],
    ['part, legend\nled-5, "A\nB"', "text-of-lines", 2],
    ["part, legend\nled-5, A\u0007B", "hidden-character", 2],
    [`part, legend\nled-5, ${"A".repeat(300)}`, "text-too-long", 2],
    [`part, legend\n${"led-5, A\n".repeat(40_000)}`, "too-large", 1],
  ])("%j", (text, code, line) => {
    const { findings } = readComponentList("list.csv", text);
    expect(codesOf(findings)).toEqual([code]);
    expect(findings.map(({ span }) => lineAndColumn(text, span.start).line)).toEqual([line]);
  });

  test("still gives its other lines", () => {
    const { lines, findings } = readComponentList(
      "l.csv",
      "part,quantity\nled-5,x\nled-3,2\n,1\npot-16,",
    );
    expect(lines.map(({ part }) => part)).toEqual(["led-3", "pot-16"]);
    expect(codesOf(findings)).toEqual(["list-quantity", "list-no-part"]);
  });

  test("shows a name that would do", () => {
    expect(readComponentList("l.csv", "part\nToggle 12").findings[0]?.message).toContain(
      "`toggle-12`",
    );
  });
});

test("any text at all is a component list or has a finding", () => {
  const pieces = fc.constantFrom(
    "part",
    ",",
    ";",
    "\t",
    "\n",
    "\r\n",
    '"',
    "legend",
    "2",
    "|",
    "-",
    " ",
    "é",
    "\u0000",
    "=",
  );
  fc.assert(
    fc.property(
      fc.oneof(
        fc.string(),
        fc.array(pieces).map((each) => each.join("")),
      ),
      (text) => {
        const { lines, findings } = readComponentList("l.csv", text);
        expect(lines.length + findings.length).toBeGreaterThan(0);
      },
    ),
  );
});

test("of a part's name that is none the nearest that exist are offered", () => {
  const { findings } = readComponentList("list.csv", "part\npush button 16mm\n", [
    "led-5",
    "push-button-16",
    "push-button-12",
    "toggle-6",
  ]);
  expect(findings[0]?.message).toMatch(/nearest are push-button-16, push-button-12 and /);
});
