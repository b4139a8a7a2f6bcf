// The fit report: hand-made facts must come out in every format with both numbers, in the same order, and as words only.

import { expect, test } from "vitest";
import { reportCsv } from "../../src/export/report-csv.ts";
import { reportHtml } from "../../src/export/report-html.ts";
import { reportJson } from "../../src/export/report-json.ts";
import { reportMarkdown } from "../../src/export/report-markdown.ts";
import { FIT_REPORT_FORMAT, fitReport } from "../../src/pack/fit-report.ts";
import { HOSTILE_NAMES } from "../export/bureau-plate.ts";
import { DESK, deskProject, sceneOf } from "./desk-console.ts";
import { deskFacts } from "./desk-facts.ts";

const reportOf = (text = DESK, name = "main") => {
  const project = deskProject(text);
  const { layout, bodies } = sceneOf(project);
  const { findings, files: texts } = project;
  return fitReport({
    layout,
    fit: deskFacts(bodies, name),
    frame: null,
    workshop: null,
    findings,
    texts,
  });
};
const report = reportOf();
const json = JSON.parse(reportJson(report, FIT_REPORT_FORMAT));
const row = (section: string, at = 0): Record<string, unknown> => json.sections[section].rows[at];

test("panels stand by bay and place, with the depth that there is and that is taken, and by whom", () => {
  const panels: readonly Record<string, unknown>[] = json.sections.panels.rows;
  expect(panels.map(({ bay, panel }) => `${bay}: ${panel}`)).toEqual([
    "level: one",
    "level: two",
    "raised: three",
  ]);
  // 6 modules of 9.525 mm.
  expect(panels[1]).toMatchObject({ module: 6, from: 57.15, to: 114.3, has: null });
  expect(panels[0]).toMatchObject({ has: 120, takes: 45.5, spare: 74.5 });
});

test("what is free has a line that closes it", () => {
  // 20 modules less 12; before and after panel three 2 and 2 of 10.
  expect(json.sections.free.rows.map((each: { proposal: string }) => each.proposal)).toEqual([
    "{ blanking: 8 modules, bay: level, module: 12 }",
    "{ blanking: 2 modules, bay: raised, module: 0 }",
    "{ blanking: 2 modules, bay: raised, module: 8 }",
  ]);
});

test("a proposed line, written into the design, closes the place", () => {
  const closed = DESK.replace(
    "operator:",
    "  - { blanking: 8 modules, bay: level, module: 12 }\noperator:",
  );
  const project = deskProject(closed);
  expect(project.findings.filter(({ severity }) => severity === "fault")).toEqual([]);
  expect(project.console?.layout.bays[0]?.free).toEqual([]);
});

test("both numbers stand beside each other", () => {
  expect(row("reach")).toMatchObject({ distance: 640.25, functional: 677, spare: 36.75 });
  expect(row("hands")).toMatchObject({ gap: 17, needs: 19 });
  expect(row("knees", 1)).toMatchObject({ has: 430, needs: 440 });
  // A seat of 430 and the thighs of the 95th-percentile man on it, 186: NUREG-0700 Rev 3, table 11.4.
  expect(row("knees", 3)).toMatchObject({ has: 650, needs: 616 });
  expect(row("loops")).toMatchObject({ has: 300, needs: 262 });
  expect(row("loops", 1)).toMatchObject({ has: null, needs: 250 });
  expect(row("clashes")).toMatchObject({ depth: 1.25, volume: 12.5 });
  expect(json.sections.clearances.rows.map(({ gap }: { gap: number }) => gap)).toEqual(
    [...json.sections.clearances.rows.map(({ gap }: { gap: number }) => gap)].sort(
      (a: number, b: number) => a - b,
    ),
  );
  expect(row("lifts", 1)["way"]).toBe("beginning first, tilted 20 degrees");
});

test("silence is no yes: what nobody wrote is listed", () => {
  const bare = reportOf(DESK.replace(/^operator:.*\n/m, "").replace(/^envelope:.*\n/m, ""));
  const words = reportMarkdown(bare);
  expect(words).toContain("No operator is written");
  expect(words).toContain("No envelope is written");
  expect(words).toContain("No frame is made");
  expect(reportMarkdown(report)).not.toContain("No operator is written");
});

test("the same facts give the same bytes", () => {
  const again = reportOf();
  for (const format of [reportMarkdown, reportCsv, (each: typeof report) => reportHtml(each, null)])
    expect(format(again)).toBe(format(report));
});

test("a table of the CSV has four columns on every line", () => {
  const lines = reportCsv(report).trimEnd().split("\r\n");
  expect(lines[0]).toBe("section,row,what,value");
  expect(lines).toContain("reach,1,distance,640.25");
  for (const line of lines)
    expect(line.replaceAll(/"(?:[^"]|"")*"/g, "quoted").split(",")).toHaveLength(4);
});

test("the page runs nothing and loads nothing; the picture stands in it", () => {
  const page = reportHtml(report, '<?xml version="1.0"?>\n<svg role="img"></svg>\n');
  expect(page).toContain('<figure><svg role="img"></svg>');
  expect(page).not.toContain("<?xml");
  expect(page).not.toMatch(/<script|https?:|src=|href=|\son\w+=/i);
  expect(page).toContain("default-src 'none'");
});

test.each(HOSTILE_NAMES.map((name) => [name.slice(0, 30), name]))(
  "%j is words in every format",
  (_, name) => {
    const hostile = reportOf(DESK, name);
    const page = reportHtml(hostile, null);
    const tags = [...page.matchAll(/<\/?([a-z0-9]+)/gi)].map(([, tag]) => tag?.toLowerCase());
    const known = [...reportHtml(report, null).matchAll(/<\/?([a-z0-9]+)/gi)].map(([, tag]) =>
      tag?.toLowerCase(),
    );
    expect(tags).toEqual(known);
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for
    expect(page).not.toMatch(/[\u0000-\u0008\u000b-\u001f\u202e\u2066]/);
    const markdown = reportMarkdown(hostile);
    expect(markdown).not.toMatch(/<script|<!--|<svg/i);
    expect(markdown.split("\n")).toHaveLength(reportMarkdown(report).split("\n").length);
    expect(() => JSON.parse(reportJson(hostile, FIT_REPORT_FORMAT))).not.toThrow();
    expect(reportCsv(hostile)).not.toMatch(/,[=+@]/);
  },
);
