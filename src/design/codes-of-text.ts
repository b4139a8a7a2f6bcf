// Codes for a text that can't be taken as a tree of keys and values, or that would lose something on the way.

import type { CodeEntry } from "../diagnostics/finding.ts";

const fault = (
  name: string,
  title: string,
  { why, example }: { readonly why: string; readonly example: string },
): CodeEntry => ({ code: `design/${name}`, severity: "fault", title, why, example });

export const TEXT_CODES = {
  tooLarge: fault("too-large", "The file is larger than a design can be", {
    why: "A panel with a hundred components takes some thirty kilobytes. A much larger file is the wrong file, and reading it could take minutes. Split the design into files.",
    example: "(a file of more than 131,072 characters)",
  }),
  tooDeep: fault("too-deep", "Brackets or indentation are nested too deep", {
    why: "Nothing in a design lies deeper than a dozen levels. Deeper nesting is a slip of the keyboard or another kind of file.",
    example: "at: [[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[1]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]",
  }),
  tooManyKeys: fault(
    "too-many-keys",
    "The file has more keys, brackets or lines than a design can have",
    {
      why: "A panel with a hundred components has some three thousand. A file with many more is the wrong file, and reading it could take minutes. Split it if it is really meant.",
      example: "(a file of 20,000 keys)",
    },
  ),
  hiddenCharacter: fault("hidden-character", "The text holds a character that cannot be seen", {
    why: "Control characters, byte order marks in the middle and direction marks change what is read without showing. They come in with a paste from another program. Delete the place and type it again.",
    example: 'legend: "PUMP\\u0007"',
  }),
  empty: fault("empty-file", "The file says nothing", {
    why: "A design file begins with its format version, its kind and its name.",
    example: "# nothing but a comment",
  }),
  syntax: fault("syntax", "The text can't be taken apart into keys and values", {
    why: "A bracket or a quotation mark is not closed, a colon is missing, or a line is indented unlike its neighbours. Nothing of the file is used until it is mended, because everything after the place may have been meant otherwise.",
    example: "at: { left: 24 mm, top: 30 mm",
  }),
  tab: fault("tab-as-indent", "A line is indented with a tab", {
    why: "Tabs are shown in many widths, so that a line can seem to belong to another key than it does. Indent with spaces.",
    example: "components:\n\tbrake: {}",
  }),
  anchor: fault("anchor", "An anchor (&name) is not used in designs", {
    why: "A value that stands in one place and acts in another can't be changed safely. Write the value where it is used; a text that begins with & is put in quotation marks.",
    example: "legend: &brake BRAKE",
  }),
  alias: fault("alias", "An alias (*name) is not used in designs", {
    why: "See design/anchor. A text that begins with * is put in quotation marks.",
    example: "legend: *brake",
  }),
  tag: fault("tag", "A tag (!name) is not used in designs", {
    why: "Each key says by itself what belongs to it. A text that begins with ! is put in quotation marks.",
    example: "legend: !important BRAKE",
  }),
  directive: fault("directive", "A directive line (%...) is not used in designs", {
    why: "Directives change how the rest of the file is read. Take the line out.",
    example: "%YAML 1.1\n---\nkind: panel",
  }),
  mergeKey: fault("merge-key", "A merge key (<<) is not used in designs", {
    why: "Keys that come from another place can't be seen where they act. Write them out.",
    example: "brake:\n  <<: common",
  }),
  secondDocument: fault("second-document", "The file holds a second document", {
    why: "One file is one panel, one console or one workshop. What follows a line of --- would never be read. Put it into a file of its own.",
    example: "kind: panel\n---\nkind: panel",
  }),
  duplicateKey: fault("duplicate-key", "A key is written twice", {
    why: "One of the two would silently win. Keep the one that is meant.",
    example: "height: 11 modules\nheight: 12 modules",
  }),
  duplicateId: fault("duplicate-id", "Two things have the same name", {
    why: "Wires, legends, lists and positions go by the name. Give each thing a name of its own.",
    example:
      "components:\n  brake: { part: toggle-12, at: centre }\n  brake: { part: led-5, at: centre }",
  }),
  keyWithoutValue: fault("key-without-value", "A key has no value, or a text was taken for a key", {
    why: "Within braces a comma ends the value: in { legend: LEFT, RIGHT } the word RIGHT becomes a key of its own and is lost. Put the text in quotation marks, or give the key its value.",
    example: "legend: { text: LEFT, RIGHT }",
  }),
  commaInNumber: fault("comma-in-number", "A number is written with a decimal comma", {
    why: "A comma separates values: within braces 12,5 mm is read as 12 and a key `5 mm`. Write a point.",
    example: "at: { left: 12,5 mm, top: 30 mm }",
  }),
  commentInText: fault("comment-in-text", "A # cuts the text off", {
    why: "A # after a space begins a comment, so that PUMP #3 is read as PUMP. Put the text in quotation marks, or write a space after the # of a comment.",
    example: "legend: PUMP #3",
  }),
} as const;
